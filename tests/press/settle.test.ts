import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { papers } from '../../src/physics/paper.ts'
import { usualPress } from '../../src/press/presets.ts'
import { ranges } from '../../src/press/ranges.ts'
import { readSheet } from '../../src/press/readings.ts'
import { emptyPassage, printSheet, runPress, settleLine, startingTrains } from '../../src/press/run.ts'
import { lineOf } from '../../src/press/line.ts'
import { mostTurns } from '../../src/press/settle.ts'
import type { SetUp } from '../../src/press/setup.ts'
import type { Train } from '../../src/press/train.ts'
import { twoSettledStates } from './counterexamples.ts'
import { anySetUp, checkSetUp } from './legal-setups.ts'

/** The most turns that any unit of a set-up takes. */
const turnsOf = (setUp: SetUp) => Math.max(...settleLine(lineOf(setUp)).map(({ turns }) => turns))

const copyOf = ({ store, plate, blanket }: Train): Train => ({
  store: store.slice(),
  plate: plate.slice(),
  blanket: blanket.slice(),
})

/** How far one revolution moves the settled rollers and stores: um or share, relative to films of more than 1 um. */
function restlessness(setUp: SetUp): number {
  const line = lineOf(setUp)
  const settled = settleLine(line).map(({ train }) => train)
  const turned = settled.map(copyOf)
  printSheet(line, turned, emptyPassage(line))
  let most = 0
  settled.forEach((train, unit) => {
    for (const part of ['store', 'plate', 'blanket'] as const) {
      train[part].forEach((before, i) => {
        const moved = Math.abs(turned[unit][part][i] - before) / Math.max(1, before)
        most = moved <= most ? most : moved
      })
    }
  })
  return most
}

/** Readings after `sheets` plain revolutions, without any stride, from the first sheet's rollers. */
function afterRevolving(setUp: SetUp, sheets: number) {
  const line = lineOf(setUp)
  const trains = startingTrains(line, settleLine(line))
  const passage = emptyPassage(line)
  for (let sheet = 0; sheet < sheets; sheet++) printSheet(line, trains, passage)
  return {
    films: Array.from(passage.sheets[line.units.length].amounts),
    stores: trains.map(({ store }) => Array.from(store)),
  }
}

function settledReadings(setUp: SetUp) {
  const run = runPress(setUp)
  return {
    films: Array.from(run.sheets[setUp.inks.length].amounts),
    stores: run.trains.map(({ store }) => Array.from(store)),
  }
}

const apart = (one: readonly number[], other: readonly number[]) =>
  one.reduce((most, value, i) => Math.max(most, Math.abs(value - other[i])), 0)

const { least, most } = ranges.tack
const ends = (count: number) => Array.from({ length: count }, (_, i) => (i % 2 === 0 ? least : most))
const inksOf = (tacks: readonly number[], change: object = {}): SetUp['inks'] =>
  tacks.map((tack, unit) => ({ name: `ink ${unit + 1}`, tack, film: 4, coverage: 0.5, ...change }))

/** A unit that lifts more than it prints: a hard, thin, rarely printed ink after soft, thick ones, no water, slow setting. */
const flooded: SetUp = {
  ...checkSetUp([]),
  inks: [
    ...inksOf([12, 10], { film: 7, coverage: 1 }),
    ...inksOf([22], { film: 2, coverage: 0.3, temperature: 18 }).map((ink) => ({ ...ink, name: 'hard' })),
  ],
  press: { ...usualPress('sheet-fed'), waterless: true },
}

const extremes: [string, SetUp][] = [
  ['tacks at both ends, soft first', { ...checkSetUp([]), inks: inksOf(ends(4)) }],
  ['tacks at both ends, hard first', { ...checkSetUp([]), inks: inksOf(ends(5).slice(1)) }],
  ['all coverage 1', { ...checkSetUp([]), inks: inksOf([10, 12, 14, 16], { coverage: 1 }) }],
  ['least coverage and film', { ...checkSetUp([]), inks: inksOf([10, 12, 14, 16], { coverage: 0.02, film: 1 }) }],
  ['waterless, reversed steeply', { ...checkSetUp([], { waterless: true }), inks: inksOf([5, 10, 20, 40]) }],
  ['eight inks rising', { ...checkSetUp([], { waterless: true }), inks: inksOf([8, 9, 10, 11, 12, 13, 14, 15]) }],
  [
    'paper that tears nearly everywhere',
    { ...checkSetUp([40, 30, 20, 40]), paper: { ...papers.newsprint, surfaceStrength: 5 } },
  ],
  ['a store that runs over', flooded],
]

describe('settling', () => {
  it.each(extremes)('ends well before it gives up, in a state that a revolution does not move: %s', (_, setUp) => {
    expect(turnsOf(setUp)).toBeLessThan(mostTurns / 2)
    expect(restlessness(setUp)).toBeLessThan(1e-8)
  })

  it('does so all over the legal range', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(anySetUp(2, 5), (setUp) => {
        expect(turnsOf(setUp)).toBeLessThan(mostTurns / 2)
        expect(restlessness(setUp)).toBeLessThan(1e-7)
      }),
      { numRuns: 200, seed: 1 },
    )
  })

  // Steps of Newton double the digits: what halved the error each time would need 40 turns to 1e-12.
  it('takes no more than 7 turns for half of all units', () => {
    const setUps = fc.sample(anySetUp(2, 4), { numRuns: 200, seed: 1 })
    const turns = setUps.flatMap((setUp) => settleLine(lineOf(setUp)).map((unit) => unit.turns)).sort((a, b) => a - b)
    expect(turns[Math.floor(turns.length / 2)]).toBeLessThanOrEqual(7)
  })

  // Stores forget at a rate of about their own turnover, 80 um / (4 um x coverage x share taken): in 20,000 sheets all of it.
  it.each([
    ['descending', checkSetUp([16, 14, 12, 10])],
    ['reversed, waterless', checkSetUp([10, 12, 14, 16], { waterless: true })],
    ['soiled at the start', { ...checkSetUp([]), inks: inksOf([14, 13, 12], { soiled: 0.4 }) }],
    ['a store that runs over', flooded],
  ])('finds what 20,000 plain revolutions come to, to 1e-6: %s', { timeout: 30_000 }, (_, setUp) => {
    const [settled, revolved] = [settledReadings(setUp), afterRevolving(setUp, 20_000)]
    expect(apart(settled.films, revolved.films)).toBeLessThan(1e-6)
    expect(apart(settled.stores.flat(), revolved.stores.flat())).toBeLessThan(1e-6)
  })

  it('forgets how soiled the stores began', () => {
    const clean = checkSetUp([10, 12, 14, 16])
    const soiled = { ...clean, inks: clean.inks.map((ink) => ({ ...ink, soiled: 0.5 })) }
    const [one, other] = [settledReadings(clean), settledReadings(soiled)]
    expect(apart(one.films, other.films)).toBeLessThan(1e-10)
  })
})

describe('where paper is torn nearly everywhere', () => {
  it(
    'there can be two settled states, the start deciding: a counterexample; the clean one is given',
    { timeout: 60_000 },
    () => {
      const { setUp, unit, soiled } = twoSettledStates
      const begun = { ...setUp, inks: setUp.inks.map((ink, index) => (index === unit ? { ...ink, soiled } : ink)) }
      const sheets = 12_000
      const own = (stores: number[][]) => stores[unit][unit]
      expect(own(afterRevolving(setUp, sheets).stores)).toBeGreaterThan(0.99)
      expect(own(afterRevolving(begun, sheets).stores)).toBeLessThan(0.01)
      for (const given of [setUp, begun]) expect(own(settledReadings(given).stores)).toBeGreaterThan(0.99)
    },
  )
})

describe('a store that runs over', () => {
  it('lets no own ink in and turns into what it lifts, while every ink stays accounted for', () => {
    const run = runPress(flooded)
    expect(run.turns[2].fresh).toBe(0)
    expect(run.turns[2].discarded.reduce((sum, amount) => sum + amount, 0)).toBeGreaterThan(0.001)
    expect(run.trains[2].store[2]).toBeLessThan(1e-9)
    expect(run.balance).toBeLessThan(1e-9)
    for (const { massTrap } of readSheet(run).traps) expect(massTrap).toBeGreaterThan(0)
  })
})
