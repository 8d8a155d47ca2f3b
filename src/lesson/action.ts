/** What a learner can do to the bench, as a lesson writes it, one change at a time. */
import * as v from 'valibot'
import { paperNames } from '../physics/paper.ts'
import { checkSetUp } from '../press/check-setup.ts'
import type { ProblemSaid } from '../press/problem.ts'
import { carried, said } from '../press/problem.ts'
import { usualSpeed } from '../press/presets.ts'
import { ranges } from '../press/ranges.ts'
import type { Ink, SetUp } from '../press/setup.ts'
import type { Bench } from './bench.ts'
import { benchOf, unitOf } from './bench.ts'
import type { Control } from './control.ts'
import type { Amount } from './field.ts'
import { fields, flag, inkName, kindMessage, listOf, number, oneOf, wholeNumber } from './field.ts'
import { setUpSchema } from './start.ts'

const inkFields = {
  tack: 'tack',
  film: 'film',
  coverage: 'coverage',
  'unit temperature': 'temperature',
  'unit dampening': 'dampening',
} as const satisfies Record<string, keyof Ink>
type InkField = keyof typeof inkFields

type PressField = 'speed' | 'interval' | 'temperature' | 'dampening'

const paperFields = { 'surface strength': 'surfaceStrength', absorbency: 'absorbency' } as const
type PaperField = keyof typeof paperFields

/** Changes of one number of one ink, of the press and of the paper. */
function inkChange<const Name extends InkField>(name: Name) {
  return fields(['change', name], { change: v.literal(name), of: inkName, to: within(inkFields[name]) })
}

function pressChange<const Name extends PressField>(name: Name) {
  return fields(['change', name], { change: v.literal(name), to: within(name) })
}

function paperChange<const Name extends PaperField>(name: Name) {
  return fields(['change', name], { change: v.literal(name), to: within(paperFields[name]) })
}

function within(name: Amount & keyof typeof ranges) {
  return number(name, ranges[name].least, ranges[name].most)
}

const changeNames = [
  'order',
  'tack',
  'film',
  'coverage',
  'unit temperature',
  'unit dampening',
  'speed',
  'interval',
  'temperature',
  'dampening',
  'surface strength',
  'absorbency',
  'paper',
  'kind',
  'waterless',
  'sheet',
  'patch',
  'set-up',
] as const

/** Which sheet is read, as a lesson writes it. */
export const sheetSchema = v.union(
  [v.literal('first'), v.literal('settled'), wholeNumber('sheet', ranges.sheet.least, ranges.sheet.most)],
  carried('checker.sheet', { least: ranges.sheet.least, most: ranges.sheet.most }),
)

export const actionSchema = v.variant(
  'change',
  [
    /** takes the ink out and puts it in at unit `to`, counted from 1 */
    fields(['change', 'order'], { change: v.literal('order'), of: inkName, to: wholeNumber('unit', 1, 8) }),
    inkChange('tack'),
    inkChange('film'),
    inkChange('coverage'),
    inkChange('unit temperature'),
    inkChange('unit dampening'),
    pressChange('speed'),
    pressChange('interval'),
    pressChange('temperature'),
    pressChange('dampening'),
    paperChange('surface strength'),
    paperChange('absorbency'),
    fields(['change', 'paper'], { change: v.literal('paper'), to: oneOf('paper', paperNames) }),
    fields(['change', 'kind'], { change: v.literal('kind'), to: oneOf('kindOfPress', ['sheet-fed', 'web']) }),
    fields(['change', 'waterless'], { change: v.literal('waterless'), to: flag }),
    fields(['change', 'sheet'], { change: v.literal('sheet'), to: sheetSchema }),
    fields(['change', 'patch'], { change: v.literal('patch'), to: listOf(inkName, 'inks', 1, 8) }),
    fields(['change', 'set-up'], { change: v.literal('set-up'), to: setUpSchema }),
  ],
  kindMessage('change', 'change', changeNames),
)
export type Action = v.InferOutput<typeof actionSchema>

/** The control a learner would use for it; none for a whole new set-up, which only the lesson itself makes. */
export function controlFor(action: Action): Control | undefined {
  return action.change === 'set-up' ? undefined : action.change
}

/** The bench with the change made, or why it cannot be; `bench` itself stays as it is. */
export function act(bench: Bench, action: Action): Bench | { problem: ProblemSaid } {
  if (action.change === 'set-up') return benchOf(action.to)
  if (action.change === 'patch') return lookAt(bench, action.to)
  const unit = 'of' in action ? unitOf(bench.setUp, action.of) : 0
  if (typeof unit !== 'number') return unit
  const checked = checkSetUp(changed(bench.setUp, action, unit))
  if ('setUp' in checked) return { ...bench, setUp: checked.setUp }
  const [{ path, said: problem }] = checked.problems
  return { problem: path === '' ? problem : said('checker.inSetUp', { place: path, problem }) }
}

function lookAt(bench: Bench, names: readonly string[]): Bench | { problem: ProblemSaid } {
  const unknown = names.map((name) => unitOf(bench.setUp, name)).find((unit) => typeof unit !== 'number')
  return unknown ?? { ...bench, patch: names }
}

type SetUpAction = Exclude<Action, { change: 'set-up' | 'patch' }>

function changed(setUp: SetUp, action: SetUpAction, unit: number): unknown {
  const given = written(setUp)
  switch (action.change) {
    case 'order':
      return { ...given, inks: moved(setUp.inks, unit, action.to - 1) }
    case 'tack':
    case 'film':
    case 'coverage':
    case 'unit temperature':
    case 'unit dampening':
      return { ...given, inks: setUp.inks.with(unit, { ...setUp.inks[unit], [inkFields[action.change]]: action.to }) }
    case 'speed':
    case 'interval':
    case 'temperature':
    case 'dampening':
    case 'waterless':
      return { ...given, press: { ...given.press, [action.change]: action.to } }
    case 'kind':
      return { ...given, press: { ...withoutInterval(given.press), kind: action.to, speed: usualSpeed[action.to] } }
    case 'surface strength':
    case 'absorbency':
      return { ...given, paper: { ...given.paper, [paperFields[action.change]]: action.to } }
    case 'paper':
      return { ...given, paper: action.to }
    case 'sheet':
      return { ...given, reading: typeof action.to === 'number' ? { sheet: action.to } : action.to }
  }
}

/** The set-up as a file would give it: an interval that was not stated is left to follow from the speed. */
function written({ press: { intervalPinned, ...press }, ...rest }: SetUp) {
  return { ...rest, press: intervalPinned ? press : withoutInterval(press) }
}

/** The interval is left to follow from spacing and speed; JSON has no word for "not stated" but leaving it out. */
function withoutInterval<Given extends object>(press: Given): Given {
  return Object.fromEntries(Object.entries(press).filter(([field]) => field !== 'interval')) as Given
}

function moved<Item>(items: readonly Item[], from: number, to: number): Item[] {
  return items.toSpliced(from, 1).toSpliced(to, 0, items[from])
}
