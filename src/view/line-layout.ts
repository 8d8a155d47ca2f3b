/** Where the units of the press line stand. Cylinders roll on each other and on the sheet without slipping. */
import { letterSize } from './shapes.ts'

export interface LineLayout {
  /** px: radius of plate, blanket and impression cylinder */
  radius: number
  /** px between two nips, and from the left to the first */
  spacing: number
  first: number
  /** px from the top of the paper's surface at the nips */
  track: number
  /** px a film of 1 um is thick on the sheet, and on rollers */
  filmOnSheet: number
  filmOnRoller: number
  paper: number
  letters: number
}

/** In radii: all of one unit above and below the paper, and from left to right. */
const above = 4.55
const below = 2.1
const across = 4.75
/** In radii: how far a unit reaches to the left of its nip. */
export const unitReach = 3.7
/** In radii: how far the nip is right of a unit's middle. */
const aside = 1.28
/** In radii: units further apart than this would look like separate machines. */
const widest = 11

export function lineLayout(size: { width: number; height: number }, units: number, largeType: boolean): LineLayout {
  const letters = letterSize(largeType)
  const names = letters + 12
  const radius = Math.max(6, Math.min((size.height - names - 6) / (above + below), size.width / units / across))
  const spacing = Math.min(size.width / units, widest * radius)
  return {
    radius,
    spacing,
    first: (size.width - spacing * (units - 1)) / 2 + aside * radius,
    track: Math.max(above * radius + 4, (size.height - names + (above - below) * radius) / 2),
    filmOnSheet: Math.max(1.2, 0.13 * radius),
    filmOnRoller: Math.max(0.6, 0.055 * radius),
    paper: Math.max(2.5, 0.17 * radius),
    letters,
  }
}
