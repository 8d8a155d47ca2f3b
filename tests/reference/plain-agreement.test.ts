/** The program against the plain reference: the same equations, written a second time, slowly, by someone else. */
import { describe, expect, it, vi } from 'vitest'
import type { Paper } from '../../src/physics/paper.ts'
import { paperNames, papers } from '../../src/physics/paper.ts'
import { nipAccount } from '../../src/press/account.ts'
import { lineOf, storeFilm } from '../../src/press/line.ts'
import { usualPress } from '../../src/press/presets.ts'
import { readSheet } from '../../src/press/readings.ts'
import type { Run } from '../../src/press/run.ts'
import { runPress, settleLine, startingTrains } from '../../src/press/run.ts'
import type { SetUp } from '../../src/press/setup.ts'
import type { Train } from '../../src/press/train.ts'
import { checkSetUp } from '../press/legal-setups.ts'
import type { PressState, Revolution } from './plain/press.ts'
import { contamination } from './plain/readings.ts'
import { runFrom, settled } from './plain/run.ts'
import type { Setup } from './plain/setup.ts'

// The table of pick chances keeps to 1e-6 of each (see the tests of pick.ts); here every chance is integrated afresh, so
// that all else can be held to 1e-9.
vi.mock(import('../../src/physics/pick.ts'), async (original) => {
  const pick = await original()
  return {
    ...pick,
    pickChance: (evenness) => (lnRatio) => (lnRatio === -Infinity ? 0 : pick.integratePick(lnRatio, evenness).chance),
  }
})

/** The same set-up in the reference's words; it knows no absorbency, which stands for b and tau changed. */
function plainly({ inks, paper, press }: SetUp): Setup {
  const { holdLimit, settingTime, absorbency } = paper
  return { inks, press, paper: { ...paper, holdLimit: holdLimit * absorbency, settingTime: settingTime / absorbency } }
}

/** What `trains` hold, in the reference's words. */
function plainState(setUp: SetUp, trains: readonly Train[]): PressState {
  const inks = setUp.inks.length
  const patches = Array.from({ length: 1 << inks }, (_, patch) => patch)
  return {
    stores: trains.map(({ store }) => Array.from(store, (share) => storeFilm * share)),
    rollers: trains.map(({ plate, blanket }, unit) =>
      patches.map((patch) => {
        const at = (patch & ((2 << unit) - 1)) * inks
        const film = (films: Float64Array) => Array.from(films.subarray(at, at + inks))
        return { plate: film(plate), blanket: film(blanket) }
      }),
    ),
  }
}

/** Every number both programs know of a sheet: films by patch and ink, the stores, and how each nip parted. */
function ours(run: Run): number[] {
  const { films, contamination } = readSheet(run)
  const units = run.line.units.length
  return films.flatMap((film, patch) => [
    ...film,
    ...contamination,
    ...Array.from({ length: units }, (_, unit) => {
      const { contact, torn, films: below, blanket, pullOnPaper, strength } = nipAccount(run, unit, patch)
      const bare = pullOnPaper === 0 ? [] : [pullOnPaper / strength]
      return [
        1 - contact,
        contact * torn,
        ...below.map((each) => contact * each.broke),
        contact * blanket.broke,
        ...bare,
      ]
    }).flat(),
  ])
}

function theirs(revolution: Revolution, setup: Setup): number[] {
  const { evenness, surfaceStrength, wetLoss = 0 } = setup.paper
  return revolution.patches.flatMap(({ film, nips }) => [
    ...film,
    ...contamination(revolution),
    ...nips.flatMap(({ shares, pulls }, unit) => {
      const weight = pulls.reduce((sum, pull) => sum + pull ** -evenness, 0)
      const water = setup.inks
        .slice(0, unit + 1)
        .reduce((sum, ink) => sum + (setup.press.waterless ? 0 : (ink.dampening ?? setup.press.dampening)), 0)
      const bare = weight === 0 ? [] : [(weight ** (-1 / evenness) * (1 + wetLoss * water)) / surfaceStrength]
      return [...shares, ...bare]
    }),
  ])
}

/** Largest difference, relative to the larger of the two, or to 1e-3 (um or share) where both are smaller. */
function furthestApart(one: number[], other: number[]): number {
  expect(one).toHaveLength(other.length)
  return one.reduce(
    (most, value, i) =>
      Math.max(most, Math.abs(value - other[i]) / Math.max(1e-3, Math.abs(value), Math.abs(other[i]))),
    0,
  )
}

const changed = (tacks: readonly number[], paper: Paper, change: (setUp: SetUp) => void = () => undefined): SetUp => {
  const setUp = { ...checkSetUp(tacks), paper }
  change(setUp)
  return setUp
}

const setUps: [string, SetUp][] = [
  ...paperNames.map((name, i): [string, SetUp] => [
    `reversed on ${name}`,
    changed([10, 12, 14, 16].slice(i % 2), papers[name]),
  ]),
  [
    'a web press',
    changed([12, 11, 10, 9], papers['light-weight coated'], (setUp) => (setUp.press = usualPress('web'))),
  ],
  ['waterless', changed([10, 13, 16], papers.coated, (setUp) => (setUp.press.waterless = true))],
  [
    'uneven coverage, films, temperature and dampening by unit',
    changed([14, 9, 12], papers.uncoated, (setUp) => {
      Object.assign(setUp.inks[0], { coverage: 0.9, film: 6, temperature: 32 })
      Object.assign(setUp.inks[1], { coverage: 0.13, film: 2.5, dampening: 2 })
      Object.assign(setUp.inks[2], { coverage: 1, film: 3, temperature: 17, dampening: 0.4 })
      setUp.press.temperature = 29
    }),
  ],
  [
    'soiled stores',
    changed([16, 14, 12, 10], papers.coated, (setUp) =>
      setUp.inks.forEach((ink, unit) => (ink.soiled = 0.1 * unit + 0.1)),
    ),
  ],
  [
    'dried before the third unit',
    changed([16, 14, 12, 10], papers.coated, (setUp) => (setUp.inks[2].dryBefore = true)),
  ],
  [
    'dry ink on paper that tears, absorbent',
    changed([16, 18, 14], { ...papers.newsprint, surfaceStrength: 16, absorbency: 2 }, (setUp) => {
      setUp.inks[1].dryBefore = true
      setUp.inks[1].soiled = 0.3
    }),
  ],
]

describe('the first five sheets, from the same rollers', { timeout: 60_000 }, () => {
  it.each(setUps)('are those of the plain reference to 1e-9: %s', (_, setUp) => {
    const setup = plainly(setUp)
    const line = lineOf(setUp)
    let state = plainState(setUp, startingTrains(line, settleLine(line)))
    for (let sheet = 1; sheet <= 5; sheet++) {
      const revolution = runFrom(state, 1, setup)
      state = revolution.state
      const run = runPress({ ...setUp, reading: { sheet } })
      expect(furthestApart(ours(run), theirs(revolution, setup))).toBeLessThan(1e-9)
      if (sheet === 1) expect(ours(runPress({ ...setUp, reading: 'first' }))).toEqual(ours(run))
    }
  })
})

describe('the settled press', { timeout: 60_000 }, () => {
  it.each(setUps)('stays as it is when the plain reference revolves it, to 1e-9: %s', (_, setUp) => {
    const setup = plainly(setUp)
    const trains = settleLine(lineOf(setUp)).map(({ train }) => train)
    const start = plainState(setUp, trains)
    const { state, ...revolution } = runFrom(start, 1, setup)
    expect(furthestApart(ours(runPress(setUp)), theirs({ ...revolution, state }, setup))).toBeLessThan(1e-9)
    expect(furthestApart(start.stores.flat(), state.stores.flat())).toBeLessThan(1e-9)
    const films = ({ rollers }: PressState) =>
      rollers.flatMap((patches) => patches.flatMap(({ plate, blanket }) => [...plate, ...blanket]))
    expect(furthestApart(films(start), films(state))).toBeLessThan(1e-9)
  })

  // Thick films over the whole sheet turn a store over some fifty revolutions, so that 900 leave less than a millionth.
  it.each([
    { tacks: [10, 14], waterless: false },
    { tacks: [10, 16], waterless: true },
  ])('is what the plain reference comes to from an empty press, to 1e-6: $tacks', ({ tacks, waterless }) => {
    const setUp = checkSetUp(tacks, { waterless })
    setUp.inks.forEach((ink) => Object.assign(ink, { film: 8, coverage: 1 }))
    const setup = plainly(setUp)
    expect(furthestApart(ours(runPress(setUp)), theirs(settled(setup, 900), setup))).toBeLessThan(1e-6)
  })
})
