import { describe, expect, it } from 'vitest'
import { aimedColours } from '../../src/measure/order-colours.ts'
import { runRow, sheetsToRead } from '../../src/measure/run-rows.ts'
import { papers } from '../../src/physics/paper.ts'
import { longRun } from '../../src/press/long-run.ts'
import { readSheet } from '../../src/press/readings.ts'
import { runPress } from '../../src/press/run.ts'
import { checkSetUp } from '../press/legal-setups.ts'

describe('a row of a run chart', () => {
  // Uneven weak paper, so that some of it tears, and inks that soil each other.
  const setUp = { ...checkSetUp([10, 12, 14]), paper: { ...papers['weak uncoated'], surfaceStrength: 20 } }
  const run = longRun(setUp, { sheets: 60, events: [] })

  it.each([2, 60])('says of sheet %d what a press turned so often prints, within the 2e-5 of long runs', (sheet) => {
    const row = runRow(run, sheet, undefined)
    const { traps, contamination, worstTorn } = readSheet(runPress({ ...setUp, reading: { sheet } }))
    expect(row.sheet).toBe(sheet)
    expect(row.massTraps).toHaveLength(3)
    row.massTraps.forEach((trap, pair) => expect(Math.abs(trap - traps[pair].massTrap)).toBeLessThan(1e-4))
    row.contamination.forEach((share, unit) => expect(Math.abs(share - contamination[unit])).toBeLessThan(1e-4))
    expect(worstTorn).toBeGreaterThan(0.01)
    expect(Math.abs(row.picking - worstTorn)).toBeLessThan(1e-4)
    expect(row.differences).toEqual([])
  })

  it('holds a colour difference for every patch that has an aim: 7 of three inks', () => {
    expect(runRow(run, 60, aimedColours(setUp)).differences).toHaveLength(7)
  })
})

describe('the sheets read for a table', () => {
  it.each([
    [1000, 250, [], [1, 250, 500, 750, 1000]],
    [1000, 300, [{ sheet: 701 }, { sheet: 300 }], [1, 300, 600, 701, 900, 1000]],
    [5, 100, [{ sheet: 6 }], [1, 5]],
    [3, 1, [], [1, 2, 3]],
  ])('of %d, every %d, with events at %j, are %j', (sheets, every, events, read) => {
    expect(sheetsToRead(sheets, every, events)).toEqual(read)
  })
})
