import { describe, expect, it } from 'vitest'
import { nipAccount } from '../../src/press/account.ts'
import { inksIn, liftedShares, readSheet } from '../../src/press/readings.ts'
import { runPress } from '../../src/press/run.ts'
import { checkSetUp } from './legal-setups.ts'

const rising = checkSetUp([10, 12, 14, 16], { reading: 'first' })

describe('the readings of a sheet', () => {
  it('measure the first sheet’s traps against the film settled on bare paper: 1.118 um in the trial of the model', () => {
    readSheet(runPress(rising)).onBare.forEach((film) => expect(film).toBeCloseTo(1.118, 2))
  })

  it('of a soiled unit, against its own ink’s share of that film', () => {
    const soiled = { ...rising, inks: rising.inks.map((ink, unit) => (unit === 2 ? { ...ink, soiled: 0.25 } : ink)) }
    const { onBare } = readSheet(runPress(soiled))
    const clean = readSheet(runPress(rising)).onBare
    // The ink that soils it is less tacky, which moves the film itself by a hair.
    expect(onBare[2] / clean[2]).toBeCloseTo(0.75, 2)
    expect(onBare[1]).toBe(clean[1])
  })

  // Trial of the model, first sheet, reversed: unit 4 lifts 6, 45 and 57 % of the three films below.
  it('say what each unit lifted off each film below, where all print', () => {
    const { lifted } = readSheet(runPress(rising))
    expect(lifted.map((shares) => shares.length)).toEqual([0, 1, 2, 3])
    const trial = [0.06, 0.45, 0.57]
    lifted[3].forEach((share, ink) => expect(Math.abs(share - trial[ink])).toBeLessThan(0.05))
    const { films, after } = nipAccount(runPress(rising), 3, 15)
    films.forEach(({ amounts }, ink) => {
      expect(lifted[3][ink]).toBeCloseTo(1 - after[ink].amounts[ink] / amounts[ink], 1)
    })
  })

  it('say nothing was lifted where nothing lay: the second unit alone finds bare paper', () => {
    expect(liftedShares(nipAccount(runPress(rising), 1, 0b10))).toEqual([0])
  })

  it('name the inks of a patch, first to last', () => {
    expect(inksIn(runPress(rising), 0b1010)).toEqual(['cyan', 'yellow'])
  })
})
