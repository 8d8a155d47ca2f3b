/**
 * Reads a set-up from the outside: JSON of unknown origin in, a legal set-up or every problem in words out. Everything
 * but the inks has a default.
 */
import { closest } from 'fastest-levenshtein'
import * as v from 'valibot'
import type { Paper, PaperName } from '../physics/paper.ts'
import { paperNames, papers } from '../physics/paper.ts'
import { intervalAt, usualCoverage, usualFilm, usualPress } from './presets.ts'
import type { RangeName } from './ranges.ts'
import { allowed, inkCount, longestName, ranges } from './ranges.ts'
import type { Ink, Lab, Press, SetUp } from './setup.ts'

export interface Problem {
  /** where, such as inks[2].tack; empty for the whole */
  path: string
  /** what is wrong and what is allowed */
  message: string
}

export type Checked = { setUp: SetUp } | { problems: Problem[] }

/** What was given, shortly and safely, for a message. */
function shown(value: unknown): string {
  if (value === undefined) return 'nothing'
  if (value === null) return 'null'
  if (Array.isArray(value)) return 'a list'
  if (typeof value === 'number' || typeof value === 'boolean' || typeof value === 'bigint') return String(value)
  if (typeof value !== 'string') return typeof value === 'symbol' ? 'a symbol' : 'an object'
  const text = JSON.stringify(value)
  return text.length > 60 ? `${text.slice(0, 57)}..."` : text
}

function number(name: RangeName) {
  const { least, most, ...range } = ranges[name]
  const message = ({ input }: { input: unknown }) => `${shown(input)} is not allowed; allowed are ${allowed(name)}`
  const inRange = (value: number) => value >= least && value <= most && (!('whole' in range) || Number.isInteger(value))
  return v.pipe(v.number(message), v.check(inRange, message))
}

const flag = v.boolean(({ input }) => `${shown(input)} is not allowed; allowed are true and false`)

function oneOf<const Names extends readonly string[]>(names: Names, what: string) {
  return v.picklist(names, ({ input }) => {
    const near =
      typeof input === 'string' && input.length <= longestName ? `; did you mean ${closest(input, [...names])}?` : ''
    return `${shown(input)} is no ${what}; allowed are ${names.join(', ')}${near}`
  })
}

const nameMessage = ({ input }: { input: unknown }) =>
  `${shown(input)} is no name; allowed is a text of 1 to ${String(longestName)} characters on one line, without the word "on" standing alone`

const name = v.pipe(
  v.string(nameMessage),
  v.trim(),
  v.check(
    (text) =>
      text.length >= 1 && text.length <= longestName && !/\p{Cc}|[\u2028\u2029]/u.test(text) && !text.includes(' on '),
    nameMessage,
  ),
)

const isWithin = (value: unknown, least: number, most: number) =>
  typeof value === 'number' && value >= least && value <= most
const isLab = (value: unknown) =>
  Array.isArray(value) &&
  value.length === 3 &&
  isWithin(value[0], 0, 100) &&
  isWithin(value[1], -150, 150) &&
  isWithin(value[2], -150, 150)

const colour = v.custom<string | Lab>(
  (input) => (typeof input === 'string' ? /^#[0-9a-f]{6}$/i.test(input) : isLab(input)),
  ({ input }) =>
    `${shown(input)} is no colour; allowed are "#rrggbb" and [L, a, b] with L from 0 to 100, a and b from -150 to 150`,
)

/** An object with these fields and no others; a field that is not known is named, with the nearest that is. */
function fields<const Entries extends v.ObjectEntries>(what: string, entries: Entries) {
  const known = Object.keys(entries)
  const isObject = (input: unknown) => typeof input === 'object' && input !== null && !Array.isArray(input)
  return v.pipe(
    v.custom<object>(
      isObject,
      ({ input }) => `${shown(input)} is not allowed; ${what} is an object with ${known.join(', ')}`,
    ),
    v.strictObject(entries, (issue) => {
      if (issue.expected !== 'never') return `is missing; ${what} needs it`
      const near = issue.path?.[0]?.key
      const hint =
        typeof near === 'string' && near.length <= longestName ? ` (did you mean ${closest(near, known)}?)` : ''
      return `not known here${hint}; allowed are ${known.join(', ')}`
    }),
  )
}

const inkSchema = fields('an ink', {
  name,
  tack: number('tack'),
  film: v.optional(number('film'), usualFilm),
  coverage: v.optional(number('coverage'), usualCoverage),
  temperature: v.exactOptional(number('temperature')),
  dampening: v.exactOptional(number('dampening')),
  colour: v.exactOptional(colour),
  soiled: v.exactOptional(number('soiled')),
  dryBefore: v.exactOptional(flag),
})

const paperSchema = fields('a paper', {
  base: v.optional(oneOf(paperNames, 'paper'), 'coated'),
  name: v.exactOptional(name),
  surfaceStrength: v.exactOptional(number('surfaceStrength')),
  absorbency: v.exactOptional(number('absorbency')),
  evenness: v.exactOptional(number('evenness')),
  contactRate: v.exactOptional(number('contactRate')),
  holdLimit: v.exactOptional(number('holdLimit')),
  freeSplit: v.exactOptional(number('freeSplit')),
  settingGain: v.exactOptional(number('settingGain')),
  settingTime: v.exactOptional(number('settingTime')),
  wetLoss: v.exactOptional(number('wetLoss')),
})

const pressSchema = fields('a press', {
  kind: v.optional(oneOf(['sheet-fed', 'web'], 'kind of press'), 'sheet-fed'),
  speed: v.exactOptional(number('speed')),
  interval: v.exactOptional(number('interval')),
  temperature: v.exactOptional(number('temperature')),
  dampening: v.exactOptional(number('dampening')),
  waterless: v.exactOptional(flag),
})

const readingSchema = v.lazy((input) =>
  typeof input === 'object' && input !== null
    ? fields('a reading', { sheet: number('sheet') })
    : v.picklist(
        ['first', 'settled'],
        ({ input }) =>
          `${shown(input)} is no reading; allowed are "first", "settled" and {"sheet": N}, N ${allowed('sheet')}`,
      ),
)

const inksSchema = v.pipe(
  v.array(v.unknown(), ({ input }) => `${shown(input)} is not allowed; allowed is a list of inks in unit order`),
  v.check(
    (inks) => inks.length >= inkCount.least && inks.length <= inkCount.most,
    ({ input }) =>
      `${input.length === 1 ? '1 ink is' : `${String(input.length)} inks are`} not allowed; allowed are ${String(inkCount.least)} to ${String(inkCount.most)}`,
  ),
  v.array(inkSchema),
  v.rawCheck(({ dataset, addIssue }) => {
    if (!dataset.typed) return
    const inks = dataset.value
    const seen = new Set<string>()
    inks.forEach((ink, index) => {
      const key = ink.name.toLowerCase()
      if (seen.has(key)) {
        addIssue({
          message: `${shown(ink.name)} is already loaded; every ink needs a name of its own`,
          path: [
            { type: 'array', origin: 'value', input: inks, key: index, value: ink },
            { type: 'object', origin: 'value', input: { ...ink }, key: 'name', value: ink.name },
          ],
        })
      }
      seen.add(key)
    })
  }),
)

const setUpSchema = fields('a set-up', {
  inks: inksSchema,
  paper: v.optional(
    v.lazy((input) => (typeof input === 'object' && input !== null ? paperSchema : oneOf(paperNames, 'paper'))),
    'coated',
  ),
  press: v.optional(pressSchema, {}),
  reading: v.optional(readingSchema, 'settled'),
  seed: v.optional(number('seed'), 1),
})

/** Checks `input`, which may be anything at all, and fills in the defaults. Never throws. */
export function checkSetUp(input: unknown): Checked {
  const result = v.safeParse(setUpSchema, input)
  if (!result.success) {
    return { problems: result.issues.map((issue) => ({ path: pathOf(issue.path), message: issue.message })) }
  }
  const { inks, paper, press, reading, seed } = result.output
  return { setUp: { inks: inks satisfies Ink[], paper: paperOf(paper), press: pressOf(press), reading, seed } }
}

/** inks[2].tack */
function pathOf(path: readonly { key: unknown }[] | undefined): string {
  return (path ?? [])
    .map(({ key }) => (typeof key === 'number' ? `[${String(key)}]` : `.${String(key)}`))
    .join('')
    .replace(/^\./, '')
}

function paperOf(given: PaperName | v.InferOutput<typeof paperSchema>): Paper {
  if (typeof given === 'string') return papers[given]
  return { ...papers[given.base], ...given }
}

function pressOf(given: v.InferOutput<typeof pressSchema>): Press {
  const usual = usualPress(given.kind, given.speed)
  const pinned = given.interval !== undefined
  return { ...usual, ...given, intervalPinned: pinned, interval: given.interval ?? intervalAt(given.kind, usual.speed) }
}
