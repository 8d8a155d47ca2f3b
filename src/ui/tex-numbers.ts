/** Numbers in an equation as a language writes them. */
import { decimalSign } from './write-number.ts'

/** The braces keep the typesetter from taking a comma for the mark between two things, with a blank after it. */
export function texNumbers(tex: string, tag: string): string {
  return decimalSign(tag) === ',' ? tex.replaceAll(/(?<=\d)[.,](?=\d)/g, '{,}') : tex
}
