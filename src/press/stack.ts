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
}

export function emptyStack(units: number, inks: number): Stack {
  return {
    weight: 0,
    thickness: 0,
    weights: new Float64Array(units),
    lifted: new Float64Array(inks),
    torn: new Float64Array(inks),
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
  stack.weight = 0
  stack.thickness = 0
  stack.lifted.fill(0)
  stack.torn.fill(0)
  const firstFilm = patch * sheet.units
  for (let layer = 0; layer < sheet.units; layer++) {
    const film = firstFilm + layer
    const thickness = sheet.thickness[film]
    stack.weights[layer] = 0
    if (thickness === 0) continue
    const from = film * inks
    for (let ink = 0; ink < inks; ink++) stack.torn[ink] += sheet.amounts[from + ink]
    if (layer < unit.firstWet) continue
    const { term, rise } = unit.below[layer]
    const lnPull =
      lnTackOf(lnTack, sheet.amounts, from, thickness) +
      term +
      thicknessTerm(thickness) +
      settingTerm(rise, stack.thickness)
    const weight = planeWeight(lnPull, paper.evenness)
    stack.weights[layer] = weight
    stack.weight += weight
    stack.thickness += thickness
    // Breaking at this film takes half its free part; breaking at any film below takes all of it.
    const leaving = weight * leavingShare(thickness, sheet.held[film]) + (stack.weight - weight)
    for (let ink = 0; ink < inks; ink++) stack.lifted[ink] += leaving * sheet.amounts[from + ink]
  }
  if (stack.weight > 0) for (let ink = 0; ink < inks; ink++) stack.lifted[ink] /= stack.weight
}

/** The um of `ink` that leave the sheet with the blanket, over the whole area. */
export function liftedInk(parting: Parting, stack: Stack, ink: number): number {
  const { contact, torn, blanketBreaks } = parting
  return contact * ((1 - torn) * (1 - blanketBreaks) * stack.lifted[ink] + torn * stack.torn[ink])
}
