/** Building blocks of the lesson format; each says in words what is wrong with its field and what is allowed. */
import { distance } from 'fastest-levenshtein'
import * as v from 'valibot'
import type { ProblemKey, ProblemSaid } from '../press/problem.ts'
import { carried, given, said } from '../press/problem.ts'

/** Characters in an id. */
const longestId = 60
/** Characters in one text of a lesson. */
const longestText = 6000

type Issue = Readonly<{ input: unknown }>

/** Last words of the keys of one kind of part, such as checker.one.paper. */
export type NameOf<Kind extends string> = ProblemKey extends infer Key
  ? Key extends `checker.${Kind}.${infer Name}`
    ? Name
    : never
  : never

/** What an object is, perhaps with the word that tells it from others of its kind. */
type Whole = NameOf<'whole'> | readonly [NameOf<'whole'>, string]

function wholeSaid(what: Whole): ProblemSaid {
  return typeof what === 'string' ? said(`checker.whole.${what}`) : said(`checker.whole.${what[0]}`, { word: what[1] })
}

/** The name that is near what was given, as a message has it: none where there is no such name. */
export function nearOr(wrong: unknown, names: readonly string[]): string {
  return nearestTo(wrong, names) ?? 'none'
}

export function nearestTo(wrong: unknown, names: readonly string[]): string | undefined {
  if (typeof wrong !== 'string' || wrong.length > longestId) return undefined
  return names
    .map((name) => ({ name, off: distance(wrong.toLowerCase(), name.toLowerCase()) }))
    .filter(({ off }) => off <= Math.max(2, wrong.length / 3))
    .sort((a, b) => a.off - b.off)
    .at(0)?.name
}

/** An object with these fields and no others. */
export function fields<const Entries extends v.ObjectEntries>(whole: Whole, entries: Entries) {
  const known = Object.keys(entries)
  const allowed = known.join(', ')
  const what = wholeSaid(whole)
  return v.strictObject(entries, (issue) => {
    const field = issue.path?.at(-1)?.key
    if (issue.expected === 'never') {
      return carried('checker.unknownField', { given: given(field), what, near: nearOr(field, known), allowed })
    }
    if (issue.path) return carried('checker.missingField', { given: given(field), what })
    return carried('checker.noFields', { given: given(issue.input), what, allowed })
  })
}

export function oneOf<const Names extends readonly string[]>(what: NameOf<'one'>, names: Names) {
  const kept = { what: said(`checker.one.${what}`), allowed: names.join(', ') }
  return v.picklist(names, ({ input }) =>
    carried('checker.choice', { ...kept, given: given(input), near: nearOr(input, names) }),
  )
}

/** One of several kinds of object, told apart by the field `by`. */
export function kindMessage(kind: NameOf<'kindOf'>, by: string, names: readonly string[]) {
  const kept = { what: said(`checker.kindOf.${kind}`), allowed: names.join(', ') }
  return ({ input, path }: Issue & { path?: readonly { key: unknown }[] | undefined }): string => {
    if (path?.at(-1)?.key !== by) return carried('checker.noKind', { ...kept, given: given(input), word: by })
    if (input === undefined) return carried('checker.kindMissing', { word: by, allowed: kept.allowed })
    return carried('checker.kind', { ...kept, given: given(input), near: nearOr(input, names) })
  }
}

const noId = ({ input }: Issue) => carried('checker.id', { given: given(input) })

export const id = v.pipe(
  v.string(noId),
  v.regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/, noId),
  v.maxLength(longestId, carried('checker.longId', { most: longestId })),
)

const noText = ({ input }: Issue) => carried('checker.text', { given: given(input) })

/** Words, perhaps Markdown. */
export const text = v.pipe(
  v.string(noText),
  v.check((words) => words.trim().length > 0, carried('checker.empty')),
  v.maxLength(longestText, carried('checker.longText', { most: longestText })),
)

/** The name of an ink on the press. */
export const inkName = v.pipe(v.string(noText), v.minLength(1, carried('checker.emptyInk')))

export type Amount = NameOf<'amount'>

export function number(name: Amount, least: number, most: number) {
  const what = said(`checker.amount.${name}`)
  const message = ({ input }: Issue) => carried('checker.number', { given: given(input), what, least, most })
  return v.pipe(v.number(message), v.minValue(least, message), v.maxValue(most, message))
}

export function wholeNumber(name: Amount, least: number, most: number) {
  const what = said(`checker.amount.${name}`)
  return v.pipe(
    number(name, least, most),
    v.integer(({ input }) => carried('checker.wholeNumber', { given: given(input), what })),
  )
}

export const flag = v.boolean(({ input }) => carried('checker.flag', { given: given(input) }))

export function listOf<const Item extends v.GenericSchema>(item: Item, name: NameOf<'many'>, least = 1, most = 40) {
  const kept = { what: said(`checker.many.${name}`), least, most }
  const message = ({ input }: Issue) => carried('checker.list', { ...kept, given: given(input) })
  const length = ({ input }: { input: unknown[] }) => carried('checker.listLength', { ...kept, count: input.length })
  return v.pipe(v.array(item, message), v.minLength(least, length), v.maxLength(most, length))
}
