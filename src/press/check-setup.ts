/**
 * Reads a set-up from the outside: JSON of unknown origin in, a legal set-up or every problem in words out. Everything
 * but the inks has a default.
 */
import { closest } from 'fastest-levenshtein'
import * as v from 'valibot'
import type { Paper, PaperName } from '../physics/paper.ts'
import { paperNames, papers } from '../physics/paper.ts'
import type { Problem } from './problem.ts'
import { carried, given, pathOf, problemFrom } from './problem.ts'
import { intervalAt, usualCoverage, usualFilm, usualPress } from './presets.ts'
import type { RangeName } from './ranges.ts'
import { inkCount, longestName, rangeSaid, ranges } from './ranges.ts'
import type { Ink, Lab, Press, SetUp } from './setup.ts'

export type Checked = { setUp: SetUp } | { problems: Problem[] }

type Refusal = Readonly<{ input: unknown }>

function number(name: RangeName) {
  const { least, most, ...range } = ranges[name]
  const message = ({ input }: Refusal) => carried('problem.number', { given: given(input), ...rangeSaid(name) })
  const inRange = (value: number) => value >= least && value <= most && (!('whole' in range) || Number.isInteger(value))
  return v.pipe(v.number(message), v.check(inRange, message))
}

const flag = v.boolean(({ input }) => carried('problem.flag', { given: given(input) }))

function oneOf<const Names extends readonly string[]>(names: Names, what: 'paper' | 'kind') {
  return v.picklist(names, ({ input }) => {
    const near = typeof input === 'string' && input.length <= longestName ? closest(input, [...names]) : 'none'
    return carried('problem.choice', { given: given(input), what, allowed: names.join(', '), near })
  })
}

const nameMessage = ({ input }: Refusal) => carried('problem.name', { given: given(input), most: longestName })

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
  ({ input }) => carried('problem.colour', { given: given(input) }),
)

/** An object with these fields and no others; a field that is not known is named, with the nearest that is. */
function fields<const Entries extends v.ObjectEntries>(what: string, entries: Entries) {
  const known = Object.keys(entries)
  const allowed = known.join(', ')
  const isObject = (input: unknown) => typeof input === 'object' && input !== null && !Array.isArray(input)
  return v.pipe(
    v.custom<object>(isObject, ({ input }) => carried('problem.object', { given: given(input), what, allowed })),
    v.strictObject(entries, (issue) => {
      if (issue.expected !== 'never') return carried('problem.missing', { what })
      const key = issue.path?.[0]?.key
      const near = typeof key === 'string' && key.length <= longestName ? closest(key, known) : 'none'
      return carried('problem.unknown', { near, allowed })
    }),
  )
}

const inkSchema = fields('ink', {
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

const paperSchema = fields('paper', {
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

const pressSchema = fields('press', {
  kind: v.optional(oneOf(['sheet-fed', 'web'], 'kind'), 'sheet-fed'),
  speed: v.exactOptional(number('speed')),
  interval: v.exactOptional(number('interval')),
  temperature: v.exactOptional(number('temperature')),
  dampening: v.exactOptional(number('dampening')),
  waterless: v.exactOptional(flag),
})

const readingSchema = v.lazy((input) =>
  typeof input === 'object' && input !== null
    ? fields('reading', { sheet: number('sheet') })
    : v.picklist(['first', 'settled'], ({ input }) =>
        carried('problem.reading', { given: given(input), ...rangeSaid('sheet') }),
      ),
)

const inksSchema = v.pipe(
  v.array(v.unknown(), ({ input }) => carried('problem.inks', { given: given(input) })),
  v.check(
    (inks) => inks.length >= inkCount.least && inks.length <= inkCount.most,
    ({ input }) => carried('problem.inkCount', { count: input.length, ...inkCount }),
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
          message: carried('problem.loadedAlready', { given: given(ink.name) }),
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

const setUpSchema = fields('set-up', {
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
    return { problems: result.issues.map(({ path, message }) => problemFrom(pathOf(path), message)) }
  }
  const { inks, paper, press, reading, seed } = result.output
  return { setUp: { inks: inks satisfies Ink[], paper: paperOf(paper), press: pressOf(press), reading, seed } }
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
