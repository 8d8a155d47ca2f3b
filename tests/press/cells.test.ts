import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Paper } from '../../src/physics/paper.ts'
import { papers } from '../../src/physics/paper.ts'
import { heldFilm, wetSplit } from '../../src/physics/transfer.ts'
import { nipAccount } from '../../src/press/account.ts'
import type { CellPrint } from '../../src/press/cell-stage.ts'
import { nothingMet, paperTorn } from '../../src/press/cell-stage.ts'
import { meanFilmByInk, printCells } from '../../src/press/cells.ts'
import { readSheet } from '../../src/press/readings.ts'
import type { Run } from '../../src/press/run.ts'
import { runPress } from '../../src/press/run.ts'
import type { SetUp } from '../../src/press/setup.ts'
import { anySetUp, checkSetUp } from './legal-setups.ts'

const withSeed = (run: Run, seed: number): Run => ({ ...run, setUp: { ...run.setUp, seed } })
const share = (codes: Uint8Array, code: number) =>
  codes.reduce((sum, each) => sum + Number(each === code), 0) / codes.length
const mean = (values: ArrayLike<number>) => Array.from(values).reduce((sum, value) => sum + value, 0) / values.length

const [all, cell] = [0b111, { width: 64, height: 64 }]
const unbreakable: Paper = { ...papers.coated, surfaceStrength: 1e6 }
const inksOf = (tacks: readonly number[]) => checkSetUp(tacks).inks

/**
 * Set-ups whose last nip meets even films: before it every spot of every film parted alike, but for the few named.
 * Cells lie in one grid per seed and hang together there, so that each seed's mean counts as one draw.
 */
const nips: { name: string; setUp: SetUp }[] = [
  {
    name: 'bare paper that tears',
    setUp: { ...checkSetUp([16, 14]), inks: inksOf([16, 2]), paper: { ...papers.coated, surfaceStrength: 14 } },
  },
  { name: 'equal tacks', setUp: { ...checkSetUp([12, 12]), paper: unbreakable } },
  { name: 'reversed tacks', setUp: { ...checkSetUp([10, 16]), paper: unbreakable } },
  {
    name: 'reversed on newsprint',
    setUp: { ...checkSetUp([10, 14]), paper: { ...papers.newsprint, surfaceStrength: 1e6 } },
  },
  {
    name: 'paper that draws in as much as any legal one',
    setUp: { ...checkSetUp([10, 24]), paper: { ...unbreakable, settingGain: 2, settingTime: 0.05, evenness: 8 } },
  },
  {
    // Film 1 breaks at unit 2 in (40/6)^-8, less than one spot in a million.
    name: 'three films, the first far too strong to break',
    setUp: { ...checkSetUp([40, 6, 6]), paper: { ...unbreakable, evenness: 8 } },
  },
  {
    // Much water at unit 1 and much setting after it, so that only the second nip tears: the first in 3 of 10,000 spots.
    name: 'wet ink on paper that tears',
    setUp: {
      ...checkSetUp([12, 24]),
      inks: inksOf([12, 24]).map((ink, unit) => ({ ...ink, dampening: unit === 0 ? 2 : 0 })),
      paper: { ...papers.coated, surfaceStrength: 20, evenness: 8, settingGain: 0.6, settingTime: 0.1, wetLoss: 0 },
    },
  },
]

describe.each(nips)('the cells of one nip: $name', { timeout: 60_000 }, ({ name, setUp }) => {
  const run = runPress(setUp)
  const unit = name.startsWith('bare') ? 0 : setUp.inks.length - 1
  const account = nipAccount(run, unit, all)
  const codes = [...Array(unit + 1).keys(), paperTorn]
  const expected = [
    ...account.films.map((film) => film.broke),
    account.blanket.broke,
    account.torn,
    ...account.after.map((film) => film.thickness),
  ]
  const seeds = Array.from({ length: 80 }, (_, seed) => seed + 1)
  const draws = seeds.map((seed) => {
    const stage = printCells(withSeed(run, seed), all, cell).stages[unit]
    return [...codes.map((code) => share(stage.broke, code)), ...stage.thickness.map(mean)]
  })

  it('part on average as the mean field does, and leave its films, within three standard errors', () => {
    expected.forEach((value, i) => {
      const found = draws.map((draw) => draw[i])
      const average = mean(found)
      const variance = found.reduce((sum, each) => sum + (each - average) ** 2, 0) / (found.length - 1)
      // Beside chance, logarithms from a table are wrong by 2.5e-4, which moves a share by at most as much.
      expect(Math.abs(average - value)).toBeLessThan(3 * Math.sqrt(variance / found.length) + 2.5e-4 * value + 1e-6)
    })
  })
})

describe('cell by cell', () => {
  const torn = { ...papers.coated, surfaceStrength: 15 }
  const dried = checkSetUp([16, 14, 12, 10]).inks.map((ink, unit) => ({ ...ink, dryBefore: unit === 2 }))
  const prints: [string, SetUp, number][] = [
    ['all four inks, reversed, paper that tears', { ...checkSetUp([10, 12, 14, 16]), paper: torn }, 0b1111],
    ['an unprinted patch of a soiled press', checkSetUp([10, 12, 14, 16]), 0b0101],
    ['dried half way', { ...checkSetUp([16, 14, 12, 10]), inks: dried, paper: torn }, 0b1111],
    ['no ink at all', checkSetUp([16, 14, 12, 10]), 0],
  ]

  it.each(prints)('every film is what its breaking leaves, no ink appears or vanishes: %s', (_, setUp, patch) => {
    const run = runPress(setUp)
    const print = printCells(run, patch, { width: 40, height: 30 })
    const held = new Float32Array(40 * 30)
    let onPaper = -1
    print.stages.forEach(({ broke, thickness }, unit) => {
      const before = unit > 0 ? print.stages[unit - 1].thickness : []
      const { firstWet } = run.line.units[unit]
      const film = print.brought[unit]
      const bare = nipAccount(run, unit, patch).onBare
      if (bare) onPaper = unit
      for (let i = 0; i < broke.length; i++) {
        const wet = before.reduce((sum, layer, j) => sum + (j >= firstWet ? layer[i] : 0), 0)
        const contact = 1 - Math.exp(-run.line.paper.contactRate * (film + wet))
        const heldAtOnce = bare ? heldFilm(run.line.paper, film) : 0
        const gain = bare ? heldAtOnce + run.line.paper.freeSplit * (film - heldAtOnce) : wetSplit * film
        const code = broke[i]
        const left = before.map((layer, j) => {
          if (code === nothingMet) return layer[i]
          if (code === paperTorn || (code < unit && j > code)) return layer[i] * (1 - contact)
          if (j !== code) return layer[i]
          const free = j === onPaper ? Math.max(0, layer[i] - held[i]) : layer[i]
          return layer[i] - 0.5 * contact * free
        })
        left.push(code === unit ? contact * gain : 0)
        if (code === paperTorn) held[i] *= 1 - contact
        if (code === unit && bare) held[i] = contact * heldAtOnce
        left.forEach((value, j) => {
          if (!(Math.abs(thickness[j][i] - value) < 2e-6))
            expect.fail(`cell ${i}, film ${j}: ${thickness[j][i]} for ${value}`)
        })
      }
    })
    expect(print.stages).toHaveLength(4)
    expect(print.onPaper.layer).toBe(onPaper)
    if (patch === 0) expect(print.stages.every(({ broke }) => broke.every((code) => code === nothingMet))).toBe(true)
  })

  it('gives the mean film of every ink by its share in each layer', () => {
    const print = printCells(runPress(checkSetUp([10, 12, 14, 16])), 0b1111, { width: 16, height: 16 })
    const last = print.stages[3].thickness
    const byHand = [0, 1, 2, 3].map((ink) =>
      last.reduce((sum, layer, j) => sum + print.mixture[j][ink] * mean(layer), 0),
    )
    meanFilmByInk(print).forEach((film, ink) => expect(film).toBeCloseTo(byHand[ink], 6))
    print.mixture.forEach((shares) => expect(shares.reduce((sum, each) => sum + each, 0)).toBeCloseTo(1, 12))
  })

  it('stays sound over the whole legal range, for any patch', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(anySetUp(2, 4), fc.nat(15), (setUp, number) => {
        const patch = number % (1 << setUp.inks.length)
        const print = printCells(runPress(setUp), patch, { width: 9, height: 7 })
        print.stages.forEach(({ broke, thickness }, unit) => {
          expect(broke.every((code) => code <= unit || code === paperTorn || code === nothingMet)).toBe(true)
          expect(thickness).toHaveLength(unit + 1)
          expect(thickness.every((film) => film.every((um) => Number.isFinite(um) && um >= 0))).toBe(true)
        })
        expect(meanFilmByInk(print).every((um) => Number.isFinite(um) && um >= 0)).toBe(true)
      }),
      { numRuns: 150, seed: 61 },
    )
  })

  it('is the same for the same seed, whatever was printed before, and another for another', () => {
    const run = runPress(checkSetUp([10, 12, 14, 16]))
    const films = (print: CellPrint) => print.stages.map((stage) => stage.thickness)
    const first = films(printCells(withSeed(run, 5), 0b1111, cell))
    for (let seed = 100; seed < 104; seed++) printCells(withSeed(run, seed), 0b0111, { width: 96, height: 32 })
    expect(films(printCells(withSeed(run, 5), 0b1111, cell))).toEqual(first)
    expect(films(printCells(withSeed(run, 6), 0b1111, cell))).not.toEqual(first)
  })

  it('keeps its strengths when a tack changes, so that only what the change moves will move', () => {
    const one = printCells(runPress(checkSetUp([16, 14, 12, 10])), 0b1111, cell)
    const other = printCells(runPress(checkSetUp([16, 14, 12, 10.2])), 0b1111, cell)
    expect(other.stages[2]).toEqual(one.stages[2])
    const moved = other.stages[3].broke.filter((code, i) => code !== one.stages[3].broke[i]).length
    expect(moved).toBeGreaterThan(0)
    expect(moved).toBeLessThan(0.02 * one.stages[3].broke.length)
  })
})

describe('cells over a whole press, against the mean field', { timeout: 60_000 }, () => {
  /** Points of share by which each film of the four-film patch differs, over four seeds. */
  function differences(setUp: SetUp): number[] {
    const run = runPress(setUp)
    const { films, onBare } = readSheet(run)
    const printed = [1, 2, 3, 4].map((seed) =>
      meanFilmByInk(printCells(withSeed(run, seed), 0b1111, { width: 192, height: 192 })),
    )
    return onBare.map((bare, ink) => (100 * (mean(printed.map((film) => film[ink])) - films[0b1111][ink])) / bare)
  }
  const largest = (setUp: SetUp) => Math.max(...differences(setUp).map(Math.abs))

  it('take 32.5 % for 29.6 % on the fourth film of the reversed set (trial value of the specification)', () => {
    const reversed = checkSetUp([10, 12, 14, 16], { reading: 'first' })
    expect(differences(reversed)[3]).toBeGreaterThan(2)
    expect(differences(reversed)[3]).toBeLessThan(4)
  })

  it.each([
    { tacks: [16, 14, 12, 10], reading: 'first' as const },
    { tacks: [13, 13, 13, 13], reading: 'first' as const },
    { tacks: [10, 12, 14, 16], reading: 'first' as const },
    { tacks: [14, 16, 12, 10], reading: 'first' as const },
    { tacks: [16, 14, 12, 10], reading: 'settled' as const },
    { tacks: [13, 13, 13, 13], reading: 'settled' as const },
    { tacks: [10, 12, 14, 16], reading: 'settled' as const },
    { tacks: [14, 16, 12, 10], reading: 'settled' as const },
  ])('stay under 4 points for $tacks, $reading, coated and dampened', ({ tacks, reading }) => {
    expect(largest(checkSetUp(tacks, { reading }))).toBeLessThan(4)
  })

  // Not promised under 4 points. Over many seeds the fourth film differs by 4.3, 3.5 and 4.7: the bench prints all.
  it.each([
    { tacks: [13, 13, 13, 13], reading: 'first' as const, waterless: true },
    { tacks: [13, 13, 13, 13], reading: 'settled' as const, waterless: true },
    { tacks: [10, 12, 14, 16], reading: 'settled' as const, waterless: true },
  ])('go further, but under 6 points, for $tacks, $reading, waterless $waterless', ({ tacks, reading, waterless }) => {
    expect(largest(checkSetUp(tacks, { reading, waterless }))).toBeLessThan(6)
  })
})
