/** What is held of a case, and the words for what does not hold. */
import { isDeepStrictEqual } from 'node:util'
import { stringify } from 'fast-check'
import type { ProblemSaid } from '../../src/press/problem.ts'

export function tell(what: string): never {
  throw new Error(what)
}

export function same(found: unknown, wanted: unknown): void {
  if (!isDeepStrictEqual(found, wanted)) tell(`Found ${brief(found)} where ${brief(wanted)} was wanted.`)
}

const ofTheMachine = ['[object ', 'undefined', 'NaN', 'Maximum call stack', 'is not a function', 'Cannot read']

/** A sentence for a person: there is something in it, and nothing of the machine, unless it quotes what was `given`. */
export function spoken(sentence: string, given: string): void {
  if (!/[\p{L}\p{N}]/u.test(sentence)) tell('A problem is told without a word.')
  if (ofTheMachine.some((words) => sentence.includes(words) && !given.includes(words))) {
    tell(`The machine speaks: ${brief(sentence)}`)
  }
  if (sentence.length > 2000) tell(`A problem takes ${sentence.length} characters.`)
}

/** No part of it is a library's sentence, which is in English alone. */
export function ownWords({ message, values }: ProblemSaid): void {
  if (message === 'checker.other') tell(`A library speaks: ${brief(values)}`)
  for (const value of Object.values(values)) if (typeof value === 'object') ownWords(value)
}

/** Every number in it is one. */
export function finite(value: unknown, where = ''): void {
  if (typeof value === 'number' && !Number.isFinite(value)) tell(`${where} is ${value}.`)
  if (ArrayBuffer.isView(value))
    Array.from(value as Float64Array).forEach((each, at) => finite(each, `${where}[${at}]`))
  else if (typeof value === 'object' && value !== null) {
    for (const [key, each] of Object.entries(value)) finite(each, `${where}.${key}`)
  }
}

function brief(value: unknown): string {
  return stringify(value).slice(0, 400)
}
