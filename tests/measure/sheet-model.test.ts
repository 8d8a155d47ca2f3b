import { describe, expect, it } from 'vitest'
import { densityFilters } from '../../src/colour/density.ts'
import { isRefused } from '../../src/measure/said.ts'
import { colourless, sheetModel } from '../../src/measure/sheet-model.ts'
import { readPatch, stripOf } from '../../src/measure/strip.ts'
import { patchOf } from '../../src/press/patches.ts'
import { runPress } from '../../src/press/run.ts'
import { checkSetUp } from '../press/legal-setups.ts'

const setUp = checkSetUp([16, 14, 12, 10], { reading: 'first' })
const patches = [0, patchOf([1]), patchOf([1, 2]), patchOf([0, 1, 2, 3])]

describe('the densities that a fit computes', () => {
  it.each(['E', 'T'] as const)('are those of the settled sheet’s strip, in status %s', (status) => {
    const strip = stripOf(runPress({ ...setUp, reading: 'settled' }))
    sheetModel(setUp, status)(setUp, patches).forEach((densities, i) => {
      const { colour } = readPatch(strip, patches[i])
      if (isRefused(colour)) throw new Error(colour.refused.message)
      for (const filter of densityFilters)
        expect(densities[filter]).toBeCloseTo(colour.densitiesMinusPaper[status][filter], 9)
    })
  })

  it('leave out an ink without a colour, which is named where it prints', () => {
    const silver = { ...setUp, inks: setUp.inks.map((ink, unit) => (unit === 2 ? { ...ink, name: 'silver' } : ink)) }
    expect(colourless(silver, [patchOf([1]), patchOf([1, 2])])).toBe(2)
    expect(colourless(silver, [patchOf([1]), patchOf([0, 3])])).toBeNull()
    expect(colourless(setUp, patches)).toBeNull()
    // Where it lies as soil alone, the rest is read as if it were not there.
    const [cyan] = sheetModel(silver, 'T')(silver, [patchOf([1])])
    const { colour } = readPatch(stripOf(runPress({ ...silver, reading: 'settled' })), patchOf([1]))
    expect(cyan.red).toBeCloseTo(isRefused(colour) ? NaN : colour.densitiesMinusPaper.T.red, 9)
  })
})
