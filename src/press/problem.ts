/**
 * Something wrong with what came from outside, as a message of the catalogue and its values: the page says it in its own
 * language. `message` is the same sentence in English, which the commands print.
 */
import { IntlMessageFormat } from 'intl-messageformat'
import { checker } from '../words/en/checker.ts'
import { problems } from '../words/en/problems.ts'

const sentences = { ...problems, ...checker }
export type ProblemKey = keyof typeof sentences

export interface ProblemSaid {
  readonly message: ProblemKey
  /** a part of the sentence may be a message of its own */
  readonly values: Readonly<Record<string, string | number | ProblemSaid>>
}

export interface Problem {
  /** where, such as inks[2].tack; empty for the whole */
  path: string
  /** what is wrong and what is allowed, in English */
  message: string
  /** the same to be said in any language */
  said: ProblemSaid
}

export function problem(path: string, message: ProblemKey, values: ProblemSaid['values'] = {}): Problem {
  return problemAt(path, said(message, values))
}

function problemAt(path: string, found: ProblemSaid): Problem {
  return { path, message: inEnglish(found), said: found }
}

export function said(message: ProblemKey, values: ProblemSaid['values'] = {}): ProblemSaid {
  return { message, values }
}

const formats = new Map<ProblemKey, IntlMessageFormat>()

/** The sentence as the commands print it. */
export function inEnglish({ message, values }: ProblemSaid): string {
  const format = formats.get(message) ?? new IntlMessageFormat(sentences[message], 'en')
  formats.set(message, format)
  return String(format.format<string>(withParts(values, inEnglish)))
}

/** The values of a message, its parts put into words. */
export function withParts(
  values: ProblemSaid['values'],
  inWords: (part: ProblemSaid) => string,
): Record<string, string | number> {
  const words = Object.entries(values).map(
    ([name, value]) => [name, typeof value === 'object' ? inWords(value) : value] as const,
  )
  return Object.fromEntries(words)
}

/** Schemas carry what they have to say as one text: this makes it, and `problemFrom` reads it. */
export function carried(message: ProblemKey, values: ProblemSaid['values'] = {}): string {
  return carry(said(message, values))
}

export function carry(found: ProblemSaid): string {
  return `${mark}${JSON.stringify(found)}`
}

export function problemFrom(path: string, text: string): Problem {
  return problemAt(path, saidFrom(text))
}

/** A text that was not carried is a schema's own, in English; every schema here has messages, so there should be none. */
export function saidFrom(text: string): ProblemSaid {
  return text.startsWith(mark)
    ? (JSON.parse(text.slice(mark.length)) as ProblemSaid)
    : said('checker.other', { words: text })
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
