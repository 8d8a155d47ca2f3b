/** Paper and solids of each ink set against the data set it is named for. */
import { describe, expect, test } from 'vitest'
import { colourDifference } from '../../src/colour/colour-difference.ts'
import { densitiesMinusPaper } from '../../src/colour/density.ts'
import { processInkNames, type ProcessInkName } from '../../src/colour/ink-set.ts'
import { labOfReflectance, type Lab } from '../../src/colour/lab.ts'
import { inkSets } from '../../src/colour/paper-optics.ts'
import { aimOfOverprint, aimsNamed } from '../../src/colour/published-aim.ts'
import { reflectance } from '../../src/colour/reflectance.ts'

type SetName = keyof typeof inkSets
type Solids<Value> = Readonly<Record<ProcessInkName, Value>>

/** FOGRA47L is not among the published aims here; its solids are those of ISO 12647-2:2004/Amd 1, paper type 4 (from memory). */
const uncoatedSolids: Solids<Lab> & { readonly paper: Lab } = {
  paper: [95, 0, -2],
  cyan: [60, -26, -44],
  magenta: [56, 61, -1],
  yellow: [89, -4, 78],
  black: [31, 1, 1],
}

/** Densities minus paper through red, green and blue, worked out with the reconstruction by another program, to 0.001. */
const solidDensities: Readonly<
  Record<SetName, Readonly<Record<'E' | 'T', Solids<readonly [number, number, number]>>>>
> = {
  coated: {
    E: {
      cyan: [1.331, 0.376, 0.188],
      magenta: [0.207, 1.381, 0.641],
      yellow: [0.028, 0.113, 1.305],
      black: [1.62, 1.621, 1.637],
    },
    T: {
      cyan: [1.331, 0.376, 0.145],
      magenta: [0.207, 1.381, 0.721],
      yellow: [0.028, 0.113, 0.97],
      black: [1.62, 1.621, 1.633],
    },
  },
  uncoated: {
    E: {
      cyan: [0.984, 0.334, 0.137],
      magenta: [0.069, 1.01, 0.565],
      yellow: [0.007, 0.092, 1.071],
      black: [1.105, 1.128, 1.153],
    },
    T: {
      cyan: [0.984, 0.334, 0.141],
      magenta: [0.068, 1.01, 0.572],
      yellow: [0.007, 0.092, 0.749],
      black: [1.105, 1.128, 1.148],
    },
  },
  newsprint: {
    E: {
      cyan: [0.791, 0.256, 0.103],
      magenta: [0.041, 0.734, 0.481],
      yellow: [0.001, 0.081, 0.845],
      black: [0.836, 0.858, 0.877],
    },
    T: {
      cyan: [0.791, 0.256, 0.113],
      magenta: [0.041, 0.734, 0.389],
      yellow: [0.001, 0.081, 0.555],
      black: [0.836, 0.858, 0.874],
    },
  },
}

function solid(set: SetName, name: ProcessInkName): number[] {
  return reflectance(inkSets[set], [{ absorbance: inkSets[set].absorbance[name], amount: 1 }])
}

function published(set: SetName, name: ProcessInkName | 'paper'): Lab {
  if (set === 'uncoated') return uncoatedSolids[name]
  const aims = aimsNamed(inkSets[set].dataSet)
  if (!aims) throw new Error(`${inkSets[set].dataSet} is among the published sets`)
  return aimOfOverprint(aims, name === 'paper' ? [] : [name])
}

describe.each(Object.keys(inkSets) as SetName[])('the %s set', (set) => {
  test('has the published Lab of its paper, within dE00 0.01', () => {
    expect(colourDifference(labOfReflectance(inkSets[set].paper), published(set, 'paper'))).toBeLessThan(0.01)
  })

  test.each(processInkNames)('has the published Lab of solid %s, within dE00 0.01', (name) => {
    expect(colourDifference(labOfReflectance(solid(set, name)), published(set, name))).toBeLessThan(0.01)
  })

  test.each(processInkNames)('reads the densities of solid %s within 0.005', (name) => {
    for (const status of ['E', 'T'] as const) {
      const { red, green, blue } = densitiesMinusPaper(solid(set, name), inkSets[set].paper, status)
      ;[red, green, blue].forEach((read, filter) =>
        expect(Math.abs(read - solidDensities[set][status][name][filter])).toBeLessThan(0.005),
      )
    }
  })
})
