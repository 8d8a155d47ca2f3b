/** The wet films of one patch as one unit meets them: which would break first, and what would leave with the blanket. */
import type { Parting } from '../physics/nip.ts'
import { settingTerm, thicknessTerm } from '../physics/pull.ts'
import { planeWeight } from '../physics/weakest.ts'
import type { Line, Unit } from './line.ts'
import type { Sheet } from './sheet.ts'

export interface Stack {
  /** sum of the films' weights F^-m */
  weight: number
  /** um of wet film */
  thickness: number
  /** of each film, lowest first: its weight F^-m, 0 where there is none or it is dry */
  weights: Float64Array
  /** um by ink that leave where an earlier film breaks, averaged over which of them it is */
  lifted: Float64Array
  /** um by ink that leave where the paper is torn: all that lies on it, dry or wet */
  torn: Float64Array
  /** sums over the inks of `lifted` and `torn`: um, and um times ln of tack */
  liftedFilm: number
  liftedLnTack: number
  tornFilm: number
  tornLnTack: number
}

export function emptyStack(units: number, inks: number): Stack {
  return {
    weight: 0,
    thickness: 0,
    weights: new Float64Array(units),
    lifted: new Float64Array(inks),
    torn: new Float64Array(inks),
    liftedFilm: 0,
    liftedLnTack: 0,
    tornFilm: 0,
    tornLnTack: 0,
  }
}

/** Half of the free part of a film leaves when it breaks; the held part stays with the paper. Share of the film, 0 to 1/2. */
export function leavingShare(thickness: number, held: number): number {
  return thickness > held ? (0.5 * (thickness - held)) / thickness : 0
}

/** ln of the tack of a mixture, `amounts` being um by ink: the geometric mean by share. */
export function lnTackOf(lnTack: Float64Array, amounts: Float64Array, from: number, total: number): number {
  let sum = 0
  for (let ink = 0; ink < lnTack.length; ink++) sum += amounts[from + ink] * lnTack[ink]
  return sum / total
}

/** Sums up what lies on `patch` of `sheet` when it reaches `unit`. Writes into `stack`. */
export function surveyStack(line: Line, unit: Unit, sheet: Sheet, patch: number, stack: Stack): void {
  const { inks } = sheet
  const { lnTack, paper } = line
  const { lifted, torn, weights } = stack
  let weightBelow = 0
  let wetBelow = 0
  lifted.fill(0)
  torn.fill(0)
  stack.liftedFilm = stack.liftedLnTack = stack.tornFilm = stack.tornLnTack = 0
  for (let layer = 0; layer < sheet.units; layer++) {
    const film = patch * sheet.units + layer
    const thickness = sheet.thickness[film]
    weights[layer] = 0
    if (thickness === 0) continue
    const from = film * inks
    let filmLnTack = 0
    for (let ink = 0; ink < inks; ink++) {
      torn[ink] += sheet.amounts[from + ink]
      filmLnTack += sheet.amounts[from + ink] * lnTack[ink]
    }
    stack.tornFilm += thickness
    stack.tornLnTack += filmLnTack
    if (layer < unit.firstWet) continue
    const { term, rise } = unit.below[layer]
    const lnPull = filmLnTack / thickness + term + thicknessTerm(thickness) + settingTerm(rise, wetBelow)
    const weight = planeWeight(lnPull, paper.evenness)
    // Breaking at this film takes half its free part; breaking at any film below takes all of it.
    const leaving = weight * leavingShare(thickness, sheet.held[film]) + weightBelow
    for (let ink = 0; ink < inks; ink++) lifted[ink] += leaving * sheet.amounts[from + ink]
    stack.liftedFilm += leaving * thickness
    stack.liftedLnTack += leaving * filmLnTack
    weights[layer] = weight
    weightBelow += weight
    wetBelow += thickness
  }
  stack.weight = weightBelow
  stack.thickness = wetBelow
  if (weightBelow === 0) return
  for (let ink = 0; ink < inks; ink++) lifted[ink] /= weightBelow
  stack.liftedFilm /= weightBelow
  stack.liftedLnTack /= weightBelow
}

/** The um of `ink` that leave the sheet with the blanket, over the whole area. */
export function liftedInk(parting: Parting, stack: Stack, ink: number): number {
  const { contact, torn, blanketBreaks } = parting
  return contact * ((1 - torn) * (1 - blanketBreaks) * stack.lifted[ink] + torn * stack.torn[ink])
}
