/**
 * What holds over the whole legal range, and where a rule of thumb ends. Searched beyond what runs here: 20,000 set-ups
 * of 2 to 4 inks, 15,000 of 2 and 500 of 5 to 8. Where counterexamples were found the rule stands with the range in which none was,
 * and counterexamples.ts keeps one outside it.
 */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { papers } from '../../src/physics/paper.ts'
import { readSheet } from '../../src/press/readings.ts'
import type { Run } from '../../src/press/run.ts'
import { runPress } from '../../src/press/run.ts'
import type { Reading, SetUp } from '../../src/press/setup.ts'
import {
  moreSpeedLessPicking,
  moreTackMoreFilm,
  moreTimeLessTrap,
  strongerPaperMorePicking,
} from './counterexamples.ts'
import { anySetUp, checkSetUp } from './legal-setups.ts'

const timeout = 60_000
const anyReading: fc.Arbitrary<Reading> = fc.oneof(
  fc.constant('first' as const),
  fc.constant('settled' as const),
  fc.integer({ min: 2, max: 6 }).map((sheet) => ({ sheet })),
)
const only = (reading: Reading) => fc.constant(reading)
/** How far a number is raised, as a share of the way to its largest legal value. */
const raise = fc.integer({ min: 1, max: 100 }).map((step) => step / 100)
const raised = (from: number, most: number, share: number) => from + (most - from) * share

/** Rounding, and what settling leaves open where paper is torn nearly everywhere. */
const slack = 1e-7

const clean = (setUp: SetUp): SetUp => ({ ...setUp, inks: setUp.inks.map((ink) => ({ ...ink, soiled: 0 })) })
const neverDried = (setUp: SetUp): SetUp => ({
  ...setUp,
  inks: setUp.inks.map((ink) => ({ ...ink, dryBefore: false })),
})
const unbreakable = (setUp: SetUp): SetUp => ({ ...setUp, paper: { ...setUp.paper, surfaceStrength: 1e9 } })
const withTack = (setUp: SetUp, unit: number, tack: number): SetUp => ({
  ...setUp,
  inks: setUp.inks.map((ink, index) => (index === unit ? { ...ink, tack } : ink)),
})
const withPress = (setUp: SetUp, change: Partial<SetUp['press']>): SetUp => ({
  ...setUp,
  press: { ...setUp.press, ...change },
})
const withStrength = (setUp: SetUp, surfaceStrength: number): SetUp => ({
  ...setUp,
  paper: { ...setUp.paper, surfaceStrength },
})

/** um of its own ink in the film that `unit` has just left on `patch`, as the sheet leaves that unit. */
function filmLeft(run: Run, unit: number, patch: number): number {
  const { amounts, units, inks } = run.sheets[unit + 1]
  return amounts[(patch * units + unit) * inks + unit]
}

/** Trap of `later` on `earlier` as the sheet leaves the later ink's unit. */
const trapAtUnit = (run: Run, earlier: number, later: number) =>
  filmLeft(run, later, (1 << earlier) | (1 << later)) / filmLeft(run, later, 1 << later)

const torn = (setUp: SetUp) => readSheet(runPress(setUp)).worstTorn

describe('every legal set-up', () => {
  const sound = (setUp: SetUp) => {
    const run = runPress(setUp)
    const { traps, onBare, films, torn, contamination, lifted } = readSheet(run)
    const shares = [...torn, ...contamination, ...lifted.flat()]
    const amounts = [...onBare, ...films.flatMap((film) => [...film]), ...traps.map((trap) => trap.massTrap)]
    expect(run.balance).toBeLessThan(1e-9)
    expect([...shares, ...amounts].every((value) => Number.isFinite(value) && value >= 0)).toBe(true)
    expect(shares.every((share) => share <= 1)).toBe(true)
  }

  it('of 2 to 5 inks keeps every ink, and reads as finite numbers, none below 0', { timeout }, () => {
    fc.assert(fc.property(anySetUp(2, 5, anyReading), sound), { numRuns: 1000, seed: 11 })
  })

  it('of 6 to 8 inks does too', { timeout }, () => {
    fc.assert(fc.property(anySetUp(6, 8, anyReading), sound), { numRuns: 48, seed: 12 })
  })

  it('has films that no later ink can touch: what prints after a unit makes no difference to it', { timeout }, () => {
    fc.assert(
      fc.property(anySetUp(3, 4, fc.oneof(only('settled'), only('first'))), (setUp) => {
        const whole = runPress(setUp)
        const inks = setUp.inks.slice(0, -1)
        const part = runPress({ ...setUp, inks })
        inks.forEach((_, unit) => {
          for (let patch = 0; patch < 2 << unit; patch++) {
            expect(Math.abs(filmLeft(whole, unit, patch) - filmLeft(part, unit, patch))).toBeLessThan(slack)
          }
        })
      }),
      { numRuns: 240, seed: 13 },
    )
  })
})

describe("raising a later ink's tack", () => {
  const never = (setUp: SetUp, place: number, share: number) => {
    const unit = 1 + (place % (setUp.inks.length - 1))
    const [one, other] = [runPress(setUp), runPress(withTack(setUp, unit, raised(setUp.inks[unit].tack, 40, share)))]
    const wetBefore = (patch: number) => (patch & ((1 << unit) - 1)) >> one.line.units[unit].firstWet
    for (let patch = 1 << unit; patch < 2 << unit; patch++) {
      if (!wetBefore(patch)) continue
      const before = filmLeft(one, unit, patch)
      expect(filmLeft(other, unit, patch)).toBeLessThanOrEqual(before * (1 + slack) + 1e-9)
    }
  }

  it('never raises the film it leaves on wet ink, as the sheet leaves that unit: settled', { timeout }, () => {
    fc.assert(fc.property(anySetUp(2, 5), fc.nat(7), raise, never), { numRuns: 600, seed: 21 })
  })

  it('nor on the first sheet, from stores that are not soiled', { timeout }, () => {
    fc.assert(
      fc.property(anySetUp(2, 5, only('first')), fc.nat(7), raise, (setUp, place, share) =>
        never(clean(setUp), place, share),
      ),
      { numRuns: 600, seed: 22 },
    )
  })

  it('yet can raise what stays on the final sheet, as the units after it lift less: 10 to 14 before 14 and 16', () => {
    const [soft, hard] = [
      [16, 10, 14, 16],
      [16, 14, 14, 16],
    ].map((tacks) => runPress(checkSetUp(tacks, { reading: 'first' })))
    expect(filmLeft(hard, 1, 0b0011)).toBeLessThan(filmLeft(soft, 1, 0b0011))
    expect(readSheet(hard).films[0b1111][1]).toBeGreaterThan(1.2 * readSheet(soft).films[0b1111][1])
  })

  it('can raise it on an early sheet where the paper tears: a counterexample, 4 %', () => {
    const { setUp, unit, tack } = moreTackMoreFilm
    const ratio = filmLeft(runPress(withTack(setUp, unit, tack)), unit, 3) / filmLeft(runPress(setUp), unit, 3)
    expect(ratio).toBeGreaterThan(1.01)
    expect(torn(setUp)).toBeGreaterThan(0.05)
  })
})

describe('raising speed', () => {
  const never = (setUp: SetUp, share: number) => {
    const before = torn(setUp)
    if (before > 0.05) return
    const faster = withPress(setUp, { speed: raised(setUp.press.speed, 20, share) })
    expect(torn(faster)).toBeGreaterThanOrEqual(before - slack)
  }

  it('never lowers picking, where less than 5 % of the worst patch is torn', { timeout }, () => {
    fc.assert(fc.property(anySetUp(2, 5, anyReading), raise, never), { numRuns: 800, seed: 31 })
  })

  it('can lower it where the paper is torn nearly everywhere: a counterexample, 81 to 80 %', () => {
    const { setUp, speed } = moreSpeedLessPicking
    expect(torn(withPress(setUp, { speed }))).toBeLessThan(torn(setUp) - 0.01)
    expect(torn(setUp)).toBeGreaterThan(0.05)
  })
})

describe('stronger paper', () => {
  const never = (setUp: SetUp, share: number) => {
    const before = torn(setUp)
    if (before > 0.5) return
    expect(torn(withStrength(setUp, raised(setUp.paper.surfaceStrength, 200, share)))).toBeLessThanOrEqual(
      before + slack,
    )
  }

  it(
    'never raises picking, where nothing is dried between units and less than half of the worst patch is torn',
    { timeout },
    () => {
      fc.assert(
        fc.property(anySetUp(2, 5, anyReading), raise, (setUp, share) => never(neverDried(setUp), share)),
        { numRuns: 800, seed: 41 },
      )
    },
  )

  it('can raise it where nearly all is torn: a counterexample, 99.65 to 99.72 %', () => {
    const { setUp, surfaceStrength } = strongerPaperMorePicking
    expect(torn(withStrength(setUp, surfaceStrength))).toBeGreaterThan(torn(setUp) + 1e-4)
    expect(torn(setUp)).toBeGreaterThan(0.99)
  })
})

describe('more time between units, where nothing picks', () => {
  const never = (setUp: SetUp, share: number) => {
    const strong = unbreakable(setUp)
    const one = runPress(strong)
    const other = runPress(withPress(strong, { interval: raised(strong.press.interval, 10, share) }))
    for (let later = 1; later < setUp.inks.length; later++) {
      const trap = trapAtUnit(one, later - 1, later)
      expect(trapAtUnit(other, later - 1, later)).toBeGreaterThanOrEqual(trap - slack)
    }
  }

  it(
    'never lowers the trap of an ink on the one printed just before, as it leaves its unit: first sheet',
    { timeout },
    () => {
      fc.assert(fc.property(anySetUp(2, 5, only('first')), raise, never), { numRuns: 600, seed: 51 })
    },
  )

  it('nor the settled trap of a press with two inks', { timeout }, () => {
    fc.assert(fc.property(anySetUp(2, 2), raise, never), { numRuns: 600, seed: 52 })
  })

  it('can lower the settled trap on an ink further back: a counterexample, 22.3 to 21.8 %', () => {
    const { setUp, interval, earlier, later } = moreTimeLessTrap
    const before = trapAtUnit(runPress(setUp), earlier, later)
    expect(trapAtUnit(runPress(withPress(setUp, { interval })), earlier, later)).toBeLessThan(before - 0.003)
  })
})

describe('mass trap', () => {
  // 1 um on the form roller brings some 0.8: bare newsprint is touched in half the area then, wet ink below makes it more.
  it('can exceed 1: a thin, soft last film covers wet ink better than it covers rough paper', () => {
    const setUp: SetUp = {
      ...checkSetUp([12, 12, 2], { reading: 'first' }),
      paper: papers.newsprint,
    }
    setUp.inks.forEach((ink, unit) => Object.assign(ink, { film: [8, 3.6, 1][unit] }))
    const { traps, worstTorn } = readSheet(runPress(setUp))
    const trap = traps.find(({ earlier, later }) => earlier === 0 && later === 2)
    expect(trap?.massTrap).toBeGreaterThan(1.1)
    expect(worstTorn).toBeLessThan(0.01)
  })

  it('stays below 1 on coated paper for every set of the check table', () => {
    for (const tacks of [
      [16, 14, 12, 10],
      [13, 13, 13, 13],
      [10, 12, 14, 16],
    ]) {
      for (const { massTrap } of readSheet(runPress(checkSetUp(tacks))).traps) expect(massTrap).toBeLessThan(1)
    }
  })
})
