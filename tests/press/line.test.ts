import { describe, expect, it } from 'vitest'
import { lineOf } from '../../src/press/line.ts'
import type { Ink, SetUp } from '../../src/press/setup.ts'
import { checkSetUp } from './legal-setups.ts'

const plain = checkSetUp([16, 14, 12, 10])
const withInks = (change: (unit: number) => Partial<Ink>): SetUp => ({
  ...plain,
  inks: plain.inks.map((ink, unit) => ({ ...ink, ...change(unit) })),
})

describe('the line made ready', () => {
  it('starts a soiled store with the ink of the unit before, the first with that of the second', () => {
    const { units } = lineOf(withInks(() => ({ soiled: 0.2 })))
    const shares = [
      [0.8, 0.2, 0, 0],
      [0.2, 0.8, 0, 0],
      [0, 0.2, 0.8, 0],
      [0, 0, 0.2, 0.8],
    ]
    expect(units.map(({ startingStore }) => Array.from(startingStore))).toEqual(shares)
  })

  it('keeps what was dried once dry for all later units', () => {
    const firstWet = (dried: number[]) =>
      lineOf(withInks((unit) => ({ dryBefore: dried.includes(unit) }))).units.map((unit) => unit.firstWet)
    expect(firstWet([])).toEqual([0, 0, 0, 0])
    expect(firstWet([1])).toEqual([0, 1, 1, 1])
    expect(firstWet([1, 3])).toEqual([0, 1, 1, 3])
  })

  it('knows at every unit the films of those before it, and the water laid by then', () => {
    const { units } = lineOf(withInks((unit) => ({ dampening: [1, 0.5, 0, 2][unit] })))
    expect(units.map(({ below }) => below.length)).toEqual([0, 1, 2, 3])
    expect(units.map(({ water }) => water)).toEqual([1, 1.5, 1.5, 3.5])
  })
})
