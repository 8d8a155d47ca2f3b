/**
 * Percent trap from three densities minus paper, all through one filter: D1 the first ink on paper, D2 the second ink
 * on paper, D3 both. Each equation is a definition of its own and reads on a scale of its own (with nothing trapped
 * Preucil and Ritz read 0, Brunner well above it): never compare a number of one with a number of another.
 */
import type { Refused } from './said.ts'
import { refuse } from './said.ts'

export const trapEquations = ['preucil', 'ritz', 'brunner'] as const
export type TrapEquation = (typeof trapEquations)[number]

/** Densities minus paper, through one filter. */
export interface TrapDensities {
  /** the first ink alone */
  readonly D1: number
  /** the second ink alone */
  readonly D2: number
  /** the second ink printed over the first */
  readonly D3: number
}

/** Chosen: far above any print (the surface of a sheet turns back a 250th of the light), so that 14 for 1.4 is caught. */
export const highestDensity = 4

/** Percent trap; more than 100 and less than 0 occur, where the overprint reads above the sum or below the first ink. */
export type TrapValue = { readonly percent: number } | Refused

const equations: Readonly<Record<TrapEquation, (densities: TrapDensities) => number>> = {
  /** F. Preucil, 1953: read as the density that the second ink adds, against what it has alone. */
  preucil: ({ D1, D2, D3 }) => (100 * (D3 - D1)) / D2,
  /** Ritz: the light that the second ink takes of what the first lets through, against what it takes alone (form from memory). */
  ritz: ({ D1, D2, D3 }) => (100 * (1 - 10 ** -(D3 - D1))) / (1 - 10 ** -D2),
  /** Brunner: the light that both take, against what they would take if densities added up (form from memory). */
  brunner: ({ D1, D2, D3 }) => (100 * (1 - 10 ** -D3)) / (1 - 10 ** -(D1 + D2)),
}

/** Percent trap by one equation; refused when a density is no number, negative, too high to be one, or D2 is 0. */
export function apparentTrap(equation: TrapEquation, densities: TrapDensities): TrapValue {
  return checkDensities(densities) ?? { percent: equations[equation](densities) }
}

/** Null when the three can be used; the same check stands before every equation. */
export function checkDensities(densities: TrapDensities): Refused | null {
  for (const symbol of ['D1', 'D2', 'D3'] as const) {
    const value = densities[symbol]
    if (!Number.isFinite(value)) return refuse('trap.notANumber', { symbol })
    if (value < 0) return refuse('trap.negative', { symbol, value })
    if (value > highestDensity) return refuse('trap.tooHigh', { symbol, value, most: highestDensity })
  }
  return densities.D2 === 0 ? refuse('trap.secondReadsNothing') : null
}

/**
 * Mass trap, as a share of 1: the film (or weight) of an ink taken on wet ink, against what bare or dry paper takes.
 * Source: R. Chung and F. Hsu, A Study of Ink Trapping and Ink Trapping Ratio, Test Targets 8.
 *
 * @param onWet film (um) or weight (g/m2) on the wet ink
 * @param onBare the same on bare paper, in the same unit
 */
export function massTrap(onWet: number, onBare: number): { readonly share: number } | Refused {
  if (!Number.isFinite(onWet) || !Number.isFinite(onBare)) return refuse('trap.filmNotANumber')
  if (onWet < 0 || onBare < 0) return refuse('trap.filmNegative')
  return onBare === 0 ? refuse('trap.nothingOnBare') : { share: onWet / onBare }
}
