/** Reading the file a command is given: its size, its encoding and its JSON are checked, in words. */
import { readFileSync, statSync } from 'node:fs'

/** Bytes of the largest file read: thousands of times what eight inks need. */
const largestFile = 1_000_000

/** Something the user can mend; the command prints it and ends with exit code 2. */
export class InputProblem extends Error {}

/** The text of `file`, or of standard input for "-". Throws InputProblem. */
export function readInput(file: string, standardInput: () => string): string {
  try {
    if (file !== '-' && statSync(file).size > largestFile) throw tooLarge(file)
    // Some editors begin a file with a byte order mark, which is no part of its text.
    const text = (file === '-' ? standardInput() : readFileSync(file, 'utf8')).replace(/^\uFEFF/, '')
    if (text.length > largestFile) throw tooLarge(file)
    return text
  } catch (error) {
    if (error instanceof InputProblem) throw error
    throw new InputProblem(
      `${file}: cannot be read (${reason(error)}); give the name of a file, or - for standard input`,
    )
  }
}

/** The JSON value in `text`. Throws InputProblem. */
export function parseJson(file: string, text: string): unknown {
  try {
    return JSON.parse(text)
  } catch (error) {
    throw new InputProblem(`${file}: is not JSON (${reason(error)}); allowed is one JSON object`)
  }
}

function tooLarge(file: string): InputProblem {
  return new InputProblem(`${file}: is larger than ${String(largestFile / 1000)} kB; a set-up is far smaller`)
}

function reason(error: unknown): string {
  return (error instanceof Error ? error.message : String(error)).slice(0, 120).replaceAll(/\s+/g, ' ')
}
