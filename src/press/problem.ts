/**
 * Something wrong with what came from outside, as a message of the catalogue and its values: the page says it in its own
 * language. `message` is the same sentence in English, which the commands print.
 */
import { IntlMessageFormat } from 'intl-messageformat'
import type { ProblemKey } from '../words/en/problems.ts'
import { problems as sentences } from '../words/en/problems.ts'

export interface ProblemSaid {
  readonly message: ProblemKey
  readonly values: Readonly<Record<string, string | number>>
}

export interface Problem {
  /** where, such as inks[2].tack; empty for the whole */
  path: string
  /** what is wrong and what is allowed, in English */
  message: string
  /** the same to be said in any language; absent where a part that speaks English alone found it (the lesson format) */
  said?: ProblemSaid
}

export function problem(path: string, message: ProblemKey, values: ProblemSaid['values'] = {}): Problem {
  const sentence = new IntlMessageFormat(sentences[message], 'en').format<string>({ ...values })
  return { path, message: String(sentence), said: { message, values } }
}

/** Schemas carry what they have to say as one text: this makes it, and `problemFrom` reads it. */
export function carried(message: ProblemKey, values: ProblemSaid['values'] = {}): string {
  return `${mark}${JSON.stringify({ message, values })}`
}

export function problemFrom(path: string, text: string): Problem {
  if (!text.startsWith(mark)) return { path, message: text }
  const { message, values } = JSON.parse(text.slice(mark.length)) as ProblemSaid
  return problem(path, message, values)
}

/** No sentence starts with it. */
const mark = '\u0001'

/** What was given, shortly and safely, as a message names it. */
export function given(value: unknown): string | number {
  if (value === undefined) return 'nothing'
  if (value === null) return 'null'
  if (Array.isArray(value)) return 'list'
  // A number is written as the page's language has it, unless it is far from any that is allowed.
  if (typeof value === 'number') return Math.abs(value) < farOff ? value : String(value)
  if (typeof value === 'boolean' || typeof value === 'bigint') return String(value)
  if (typeof value !== 'string') return typeof value === 'symbol' ? 'symbol' : 'object'
  // Quoted, so that no text is taken for one of the words above.
  const text = JSON.stringify(value)
  return text.length > longestGiven ? `${text.slice(0, longestGiven - 3)}..."` : text
}

/** Characters of what was given that are told; enough to find it again. */
const longestGiven = 60
const farOff = 1e15

/** inks[2].tack */
export function pathOf(path: readonly { key: unknown }[] | undefined): string {
  return (path ?? [])
    .map(({ key }) => (typeof key === 'number' ? `[${String(key)}]` : `.${String(key)}`))
    .join('')
    .replace(/^\./, '')
}
