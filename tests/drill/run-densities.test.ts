import { expect, test, vi } from 'vitest'
import { deviationOf } from '../../src/drill/evidence.ts'
import { makeDrill } from '../../src/drill/drill.ts'
import { casebookOf } from '../../src/drill/casebook.ts'
import { runDensities } from '../../src/drill/run-densities.ts'

/** ms: on a machine that may be busy with other things */
vi.setConfig({ testTimeout: 120_000 })

test('the drawn run goes from the first sheet to the settled one, as the table of the run chart has it', () => {
  for (const seed of [3, 5, 9]) {
    const drill = makeDrill({ seed, level: 'medium' })
    const rows = runDensities(drill)
    const { quantities } = casebookOf(drill.job)
    quantities.forEach((quantity, index) => {
      const { evidence, name, patch = 0, filter = 'red' } = quantity
      if (evidence.kind !== 'run chart' || name !== 'drift') return
      const ink = Math.log2(patch)
      const gained = rows[rows.length - 1].solids[ink][filter] - rows[0].solids[ink][filter]
      // Two readings of the chart against one of the table: four standard deviations.
      expect(Math.abs(gained - drill.readings[index])).toBeLessThan(4 * Math.SQRT2 * deviationOf(quantity))
    })
  }
})

test('the same drill draws the same run', () => {
  const drill = makeDrill({ seed: 3, level: 'easy' })
  expect(runDensities(drill)).toEqual(runDensities(drill))
})
