/** Building blocks of the lesson format; each says in words what is wrong with its field and what is allowed. */
import { distance } from 'fastest-levenshtein'
import * as v from 'valibot'

/** Characters in an id. */
const longestId = 60
/** Characters in one text of a lesson. */
const longestText = 6000

/** What was given, shortly and safely, for a message. */
export function shown(value: unknown): string {
  if (value === undefined) return 'nothing'
  if (Array.isArray(value)) return 'a list'
  if (typeof value === 'object' && value !== null) return 'a group of fields'
  const text = JSON.stringify(value)
  return text.length > 60 ? `${text.slice(0, 57)}..."` : text
}

/** "; did you mean plate?", where one of the names is near what was given; else nothing. */
export function didYouMean(given: unknown, names: readonly string[]): string {
  const near = nearestTo(given, names)
  return near === undefined ? '' : `; did you mean ${near}?`
}

export function nearestTo(given: unknown, names: readonly string[]): string | undefined {
  if (typeof given !== 'string' || given.length > longestId) return undefined
  return names
    .map((name) => ({ name, off: distance(given.toLowerCase(), name.toLowerCase()) }))
    .filter(({ off }) => off <= Math.max(2, given.length / 3))
    .sort((a, b) => a.off - b.off)
    .at(0)?.name
}

/** An object with these fields and no others. */
export function fields<const Entries extends v.ObjectEntries>(what: string, entries: Entries) {
  const known = Object.keys(entries)
  return v.strictObject(entries, (issue) => {
    if (issue.expected === 'never') {
      const field = issue.path?.at(-1)?.key
      return `${shown(field)} is no field of ${what}${didYouMean(field, known)}; allowed are ${known.join(', ')}`
    }
    if (issue.path) return `${shown(issue.path.at(-1)?.key)} is missing; ${what} needs it`
    return `${shown(issue.input)} is not allowed; ${what} has the fields ${known.join(', ')}`
  })
}

export function oneOf<const Names extends readonly string[]>(what: string, names: Names) {
  return v.picklist(
    names,
    ({ input }) => `${shown(input)} is no ${what}; allowed are ${names.join(', ')}${didYouMean(input, names)}`,
  )
}

/** One of several kinds of object, told apart by the field `by`. */
export function kindMessage(what: string, by: string, names: readonly string[]) {
  return ({ input, path }: { input: unknown; path?: readonly { key: unknown }[] | undefined }): string => {
    const allowed = `allowed are ${names.join(', ')}`
    if (path?.at(-1)?.key === by) {
      const given = input === undefined ? `${by} is missing` : `${shown(input)} is no kind of ${what}`
      return `${given}; ${allowed}${didYouMean(input, names)}`
    }
    return `${shown(input)} is not allowed; write fields, and say in ${by} which kind of ${what} it is; ${allowed}`
  }
}

const idRule = 'allowed are small letters and digits in words joined by hyphens, such as two-inks'

export const id = v.pipe(
  v.string(({ input }) => `${shown(input)} is no id; ${idRule}`),
  v.regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/, ({ input }) => `${shown(input)} is no id; ${idRule}`),
  v.maxLength(longestId, `is longer than ${String(longestId)} characters; ${idRule}`),
)

const noText = ({ input }: { input: unknown }) =>
  `${shown(input)} is no text; allowed are words (use | for several lines)`

/** Words, perhaps Markdown. */
export const text = v.pipe(
  v.string(noText),
  v.check((given) => given.trim().length > 0, 'is empty; allowed are words'),
  v.maxLength(longestText, `is longer than ${String(longestText)} characters; cut it in two steps`),
)

/** The name of an ink on the press. */
export const inkName = v.pipe(v.string(noText), v.minLength(1, 'is empty; allowed is the name of an ink'))

export function number(what: string, least: number, most: number) {
  const allowed = `allowed are numbers from ${String(least)} to ${String(most)}`
  const message = ({ input }: { input: unknown }) => `${shown(input)} is no ${what}; ${allowed}`
  return v.pipe(v.number(message), v.minValue(least, message), v.maxValue(most, message))
}

export function wholeNumber(what: string, least: number, most: number) {
  return v.pipe(
    number(what, least, most),
    v.integer(({ input }) => `${shown(input)} is no ${what}; allowed are whole numbers`),
  )
}

export const flag = v.boolean(({ input }) => `${shown(input)} is not allowed; allowed are true and false`)

export function listOf<const Item extends v.GenericSchema>(item: Item, what: string, least = 1, most = 40) {
  const message = ({ input }: { input: unknown }) =>
    `${shown(input)} is not allowed; allowed is a list of ${String(least)} to ${String(most)} ${what}`
  const count = ({ input }: { input: unknown[] }) =>
    `${String(input.length)} ${what} are not allowed; allowed are ${String(least)} to ${String(most)}`
  return v.pipe(v.array(item, message), v.minLength(least, count), v.maxLength(most, count))
}
