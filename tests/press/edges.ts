/** Set-ups at the ends of what is legal: every control at its least and its most, alone and in pairs. */
import { usualFilm } from '../../src/press/presets.ts'
import type { RangeName } from '../../src/press/ranges.ts'
import { ranges } from '../../src/press/ranges.ts'
import type { SetUp } from '../../src/press/setup.ts'
import { checkSetUp } from './legal-setups.ts'

/** One control of a press with so many inks, and what it takes to put it at a value. */
export interface Knob {
  readonly name: string
  readonly least: number
  readonly most: number
  readonly put: (setUp: SetUp, value: number) => SetUp
}

/** One control put at one end of its range. */
export interface End {
  readonly knob: Knob
  readonly value: number
}

const ofInk = ['tack', 'film', 'coverage', 'soiled', 'temperature', 'dampening'] as const
const ofPaper = [
  'surfaceStrength',
  'absorbency',
  'evenness',
  'contactRate',
  'holdLimit',
  'freeSplit',
  'settingGain',
  'settingTime',
  'wetLoss',
] as const
const ofPress = ['speed', 'interval', 'temperature', 'dampening'] as const

function knob(name: string, range: RangeName, put: Knob['put']): Knob {
  const { least, most } = ranges[range]
  return { name, least, most, put }
}

/** Every control that is a number; of a press's and an ink's temperature and water both. */
export function knobs(inks: number): Knob[] {
  return [
    ...Array.from({ length: inks }, (_, unit) =>
      ofInk.map((field) =>
        knob(`${field} of ink ${unit + 1}`, field, (setUp, value) => ({
          ...setUp,
          inks: setUp.inks.map((ink, index) => (index === unit ? { ...ink, [field]: value } : ink)),
        })),
      ),
    ).flat(),
    ...ofPaper.map((field) =>
      knob(`${field} of the paper`, field, (setUp, value) => ({ ...setUp, paper: { ...setUp.paper, [field]: value } })),
    ),
    ...ofPress.map((field) =>
      knob(`${field} of the press`, field, (setUp, value) => ({
        ...setUp,
        press: { ...setUp.press, intervalPinned: true, [field]: value },
      })),
    ),
  ]
}

export function ends(all: readonly Knob[]): End[] {
  return all.flatMap((each) => [each.least, each.most].map((value) => ({ knob: each, value })))
}

/** Any two controls, each at each of its ends. */
export function pairsOfEnds(all: readonly Knob[]): [End, End][] {
  const list = ends(all)
  return list.flatMap((one, at) =>
    list.slice(at + 1).flatMap((other): [End, End][] => (one.knob === other.knob ? [] : [[one, other]])),
  )
}

export function putAt(setUp: SetUp, at: readonly End[]): SetUp {
  return at.reduce((changed, { knob, value }) => knob.put(changed, value), setUp)
}

/** A usual set-up of so many inks, tack falling from 16. */
export function usual(inks: number): SetUp {
  const names = ['black', 'cyan', 'magenta', 'yellow', 'spot 5', 'spot 6', 'spot 7', 'spot 8']
  const setUp = checkSetUp([16])
  return {
    ...setUp,
    inks: names.slice(0, inks).map((name, unit) => ({ name, tack: 16 - 1.5 * unit, film: usualFilm, coverage: 0.5 })),
  }
}
