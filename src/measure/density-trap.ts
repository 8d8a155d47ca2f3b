import type { DensityFilter } from '../colour/data/density-weights.ts'
import type { Refused } from './said.ts'
import { isRefused, refuse } from './said.ts'
import type { TrapDensities, TrapEquation } from './trap-equations.ts'
import { apparentTrap, checkDensities } from './trap-equations.ts'

/** Percent trap by every equation, or why the densities tell nothing about trap. */
export type ApparentTrap = { readonly percent: Readonly<Record<TrapEquation, number>> } | Refused

/** Least D2 from which trap is read: chosen so that the last digit of a reading (0.01) moves it by 10 points at most. */
const leastSecondDensity = 0.1

/**
 * Percent trap by the three equations, where densities can tell it: the second ink must darken this filter visibly, and
 * the first must leave it light to take. Where the first ink alone reads as high as the second alone, hardly any is left.
 *
 * @param ink name of the second ink, for the words
 */
export function densityTrap(densities: TrapDensities, ink: string, filter: DensityFilter): ApparentTrap {
  const refused = checkDensities(densities)
  if (refused) return refused
  const { D1, D2 } = densities
  if (D2 < leastSecondDensity) return refuse('trap.readsNextToNothing', { ink, filter, D2 })
  if (D1 >= D2) return refuse('trap.noLightLeft', { ink, filter, D1, D2 })
  const preucil = apparentTrap('preucil', densities)
  const ritz = apparentTrap('ritz', densities)
  const brunner = apparentTrap('brunner', densities)
  if (isRefused(preucil)) return preucil
  if (isRefused(ritz)) return ritz
  if (isRefused(brunner)) return brunner
  return { percent: { preucil: preucil.percent, ritz: ritz.percent, brunner: brunner.percent } }
}
