import { densityWeights, type DensityFilter, type DensityStatus } from './data/density-weights.ts'
import { weightedSum, type Spectrum } from './spectrum.ts'

export const densityFilters: readonly DensityFilter[] = ['red', 'green', 'blue']

/** Density through each filter: 0 turns all light back, 1 a tenth of it, 2 a hundredth. */
export type Densities = Readonly<Record<DensityFilter, number>>

/**
 * Density of a reflectance spectrum, a perfect white being 0 (absolute: the paper is part of it).
 *
 * @throws RangeError when nothing at all is reflected through a filter, for which no density exists
 */
export function densities(reflectance: Spectrum, status: DensityStatus): Densities {
  const read = (filter: DensityFilter) => densityThrough(densityWeights[status][filter], reflectance, filter)
  return { red: read('red'), green: read('green'), blue: read('blue') }
}

/** Density above that of the bare paper, as a press crew reads it. */
export function densitiesMinusPaper(reflectance: Spectrum, paper: Spectrum, status: DensityStatus): Densities {
  const print = densities(reflectance, status)
  const bare = densities(paper, status)
  return { red: print.red - bare.red, green: print.green - bare.green, blue: print.blue - bare.blue }
}

/** The filter through which these densities read highest: the one an ink is judged by. */
export function strongestFilter(read: Densities): DensityFilter {
  return densityFilters.reduce((best, filter) => (read[filter] > read[best] ? filter : best))
}

/** Source: ISO 5-3:2009; minus the decimal logarithm of the weighted mean reflectance. */
function densityThrough(weights: Spectrum, reflectance: Spectrum, filter: DensityFilter): number {
  const response = weightedSum(weights, reflectance) / weights.reduce((sum, weight) => sum + weight, 0)
  if (response > 0) return -Math.log10(response)
  throw new RangeError(
    `The reflectance seen through the ${filter} filter is ${response}. A density needs some light, above 0.`,
  )
}
