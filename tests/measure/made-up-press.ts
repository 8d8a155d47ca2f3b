/** A press made up for the tests: its true values are known, and its sheet is what the model prints with them. */
import type { DensityStatus } from '../../src/colour/data/density-weights.ts'
import { densityFilters } from '../../src/colour/density.ts'
import type { FitParameter } from '../../src/measure/fit-parameter.ts'
import { withParameters } from '../../src/measure/fit-parameter.ts'
import type { PressSheet } from '../../src/measure/press-sheet.ts'
import { sheetModel } from '../../src/measure/sheet-model.ts'
import { stripPatches } from '../../src/measure/strip.ts'
import { normalPairAt } from '../../src/physics/random.ts'
import type { SetUp } from '../../src/press/setup.ts'

export interface MadeUp {
  setUp: SetUp
  parameters: readonly FitParameter[]
  truth: readonly number[]
  status: DensityStatus
  /** standard deviation of a reading, density; above 0 the readings are also rounded to two places */
  noise: number
  seed: number
  patches?: readonly number[]
}

export function sheetOfMadeUpPress({ setUp, parameters, truth, status, noise, seed, patches }: MadeUp): PressSheet {
  const read = patches ?? stripPatches(setUp.inks.length).slice(1)
  const printed = sheetModel(setUp, status)(withParameters(setUp, parameters, truth), read)
  const reading = (density: number, index: number) =>
    noise === 0 ? density : Math.max(0, Math.round(100 * (density + noise * normalPairAt(seed, 0, index)[0])) / 100)
  return {
    inks: setUp.inks.map(({ name }) => name),
    paper: null,
    patches: read.map((patch, i) => {
      const [red, green, blue] = densityFilters.map((filter, f) => reading(printed[i][filter], 3 * i + f))
      return { patch, count: 1, spread: null, densities: { red, green, blue } }
    }),
  }
}
