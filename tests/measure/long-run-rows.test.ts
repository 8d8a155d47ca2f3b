import { describe, expect, it } from 'vitest'
import { longRunRows, sheetsToChart } from '../../src/measure/long-run-rows.ts'
import { aimedColours } from '../../src/measure/order-colours.ts'
import { runRow } from '../../src/measure/run-rows.ts'
import { longRun } from '../../src/press/long-run.ts'
import type { RunEvent } from '../../src/press/run-events.ts'
import { checkSetUp } from '../press/legal-setups.ts'

const setUp = checkSetUp([16, 14, 12])
const events: RunEvent[] = [{ kind: 'wash-up', sheet: 700, unit: 2 }]

function inSteps() {
  const steps = longRunRows(setUp, 1500, events)
  const shares: number[] = []
  for (;;) {
    const step = steps.next()
    if (step.done) return { rows: step.value, shares }
    shares.push(step.value)
  }
}

describe('the rows of a run chart', () => {
  it('are those of the same run printed at once', () => {
    const { rows } = inSteps()
    const run = longRun(setUp, { sheets: 1500, events })
    expect(rows).toEqual(sheetsToChart(1500, events).map((sheet) => runRow(run, sheet, aimedColours(setUp))))
  })

  it('tell a share that only grows, up to all of it', () => {
    const { shares } = inSteps()
    expect(shares).toEqual(shares.toSorted((a, b) => a - b))
    expect(shares[0]).toBeGreaterThanOrEqual(0)
    expect(shares.at(-1)).toBe(1)
  })

  it('are read from the first sheet to the last, and on both sides of every event', () => {
    for (const sheets of [1, 2, 50, 1500, 100_000]) {
      const chosen = sheetsToChart(sheets, events)
      expect(chosen[0]).toBe(1)
      expect(chosen.at(-1)).toBe(sheets)
      expect(chosen).toEqual([...new Set(chosen)].sort((a, b) => a - b))
      expect(chosen).toEqual(expect.arrayContaining([1, 2, 3, 5].filter((sheet) => sheet <= sheets)))
      // No more than a chart can show, and no gap wider than a hundredth of it.
      expect(chosen.length).toBeLessThan(250)
      chosen.slice(1).forEach((sheet, i) => expect(sheet - chosen[i]).toBeLessThanOrEqual(Math.ceil(sheets / 100)))
      if (sheets > 700) expect(chosen).toEqual(expect.arrayContaining([699, 700, 701]))
    }
  })
})
