import type { DensityFilter } from '../colour/data/density-weights.ts'
import type { Densities } from '../colour/density.ts'
import { strongestFilter } from '../colour/density.ts'
import type { Said } from './said.ts'

/** A filter and why it was chosen. */
export interface FilterChoice {
  readonly filter: DensityFilter
  readonly because: Said
}

/** The filter that lets through the light each of these inks takes. */
const complementary: Readonly<Record<string, DensityFilter>> = { cyan: 'red', magenta: 'green', yellow: 'blue' }

/**
 * The filter through which trap onto another ink is read: complementary to the second ink where that is cyan, magenta
 * or yellow; for every other ink, black included, the filter in which its solid reads highest.
 *
 * @param ink name of the second ink
 * @param isProcess whether it has the process ink's own colour under that name
 * @param solid densities of its solid, minus paper
 */
export function trapFilter(ink: string, isProcess: boolean, solid: Densities): FilterChoice {
  if (isProcess && Object.hasOwn(complementary, ink)) {
    const filter = complementary[ink]
    return { filter, because: { message: 'filter.complementary', values: { ink, filter } } }
  }
  const filter = strongestFilter(solid)
  return { filter, because: { message: 'filter.strongest', values: { ink, filter } } }
}

/** That this is not the right filter for the second ink, and what follows; null when it is. */
export function cautionFor(ink: string, filter: DensityFilter, right: FilterChoice): Said | null {
  return filter === right.filter ? null : { message: 'filter.wrong', values: { ink, filter, right: right.filter } }
}
