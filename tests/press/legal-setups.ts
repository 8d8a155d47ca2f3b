/** Set-ups drawn from the whole legal range, for the property tests; they shrink towards plain ones. */
import fc from 'fast-check'
import type { Paper } from '../../src/physics/paper.ts'
import { paperNames, papers } from '../../src/physics/paper.ts'
import { usualPress } from '../../src/press/presets.ts'
import type { RangeName } from '../../src/press/ranges.ts'
import { ranges } from '../../src/press/ranges.ts'
import type { Ink, Press, Reading, SetUp } from '../../src/press/setup.ts'

/** A number of a range, its ends included, in a thousand even steps. */
function within(name: RangeName): fc.Arbitrary<number> {
  const { least, most } = ranges[name]
  return fc.integer({ min: 0, max: 1000 }).map((step) => least + ((most - least) * step) / 1000)
}

const { least, most } = ranges.evenness

/** One of the papers, now and then with any of its numbers anywhere in its range. */
const anyPaper: fc.Arbitrary<Paper> = fc
  .tuple(
    fc.constantFrom(...paperNames),
    fc.record(
      {
        surfaceStrength: within('surfaceStrength'),
        absorbency: within('absorbency'),
        // In coarse steps: a table is integrated for each, and kept.
        evenness: fc.integer({ min: 0, max: 12 }).map((step) => least + ((most - least) * step) / 12),
        contactRate: within('contactRate'),
        holdLimit: within('holdLimit'),
        freeSplit: within('freeSplit'),
        settingGain: within('settingGain'),
        settingTime: within('settingTime'),
        wetLoss: within('wetLoss'),
      },
      { requiredKeys: [] },
    ),
  )
  .map(([name, own]) => ({ ...papers[name], ...own }))

const anyPress: fc.Arbitrary<Press> = fc.record({
  kind: fc.constantFrom('sheet-fed' as const, 'web' as const),
  speed: within('speed'),
  interval: within('interval'),
  intervalPinned: fc.constant(true),
  temperature: within('temperature'),
  dampening: within('dampening'),
  waterless: fc.boolean(),
})

const anyInk: fc.Arbitrary<Omit<Ink, 'name'>> = fc.record(
  {
    tack: within('tack'),
    film: within('film'),
    coverage: fc.oneof({ weight: 3, arbitrary: within('coverage') }, { weight: 1, arbitrary: fc.constant(1) }),
    temperature: within('temperature'),
    dampening: within('dampening'),
    soiled: within('soiled'),
    dryBefore: fc.boolean(),
  },
  { requiredKeys: ['tack', 'film', 'coverage'] },
)

/** Any legal set-up of `least` to `most` inks. */
export function anySetUp(
  least: number,
  most: number,
  reading: fc.Arbitrary<Reading> = fc.constant('settled' as const),
): fc.Arbitrary<SetUp> {
  return fc.record({
    inks: fc
      .array(anyInk, { minLength: least, maxLength: most })
      .map((inks) => inks.map((ink, unit) => ({ ...ink, name: `ink ${unit + 1}` }))),
    paper: anyPaper,
    press: anyPress,
    reading,
    seed: fc.constant(1),
  })
}

/** The check set-up: K, C, M, Y on coated paper, sheet-fed at 2.5 m/s, 0.45 s between units. */
export function checkSetUp(tacks: readonly number[], change: { waterless?: boolean; reading?: Reading } = {}): SetUp {
  return {
    inks: tacks.map((tack, unit) => ({
      name: ['black', 'cyan', 'magenta', 'yellow'][unit],
      tack,
      film: 4,
      coverage: 0.5,
    })),
    paper: papers.coated,
    press: { ...usualPress('sheet-fed'), waterless: change.waterless ?? false },
    reading: change.reading ?? 'settled',
    seed: 1,
  }
}
