/** Spot inks of our own making: names and screen colours made up for this program. */
import { usualInk } from '../press/presets.ts'
import type { Ink } from '../press/setup.ts'

/** tack units: in the middle of the graded sheet-fed set, as a spot ink may run in any unit. */
const spotTack = 13

export const spotInks: readonly Ink[] = [
  spot('harvest orange', '#e3711b'),
  spot('reed green', '#2f8a4c'),
  spot('plum violet', '#6a2e85'),
  spot('brick red', '#b5372c'),
  spot('dusk blue', '#2c4d9c'),
  spot('straw gold', '#c39a2b'),
]

function spot(name: string, colour: string): Ink {
  return { ...usualInk(name, spotTack), colour }
}
