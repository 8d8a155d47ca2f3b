/** Where the units of the press line stand. Cylinders roll on each other and on the sheet without slipping. */
import { letterSize, textWidth } from './shapes.ts'

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
  /** whether the units' names stand beside their impression cylinders, or below for want of room there */
  beside: boolean
}

/** In radii: all of one unit above and below the paper, and from left to right. */
const above = 4.55
const below = 2.1
const across = 4.75
/** In radii: how far a unit reaches to the left of its nip. */
export const unitReach = 3.7
/** In radii: units further apart than this would look like separate machines. */
const widest = 11

/** In spacings: where the leading edge of a sheet is that has left the last nip (sheet-travel.ts, sheet-shapes.ts). */
const behindLast = 0.89

/** px of the longest of the units' names, its dot of ink included. */
export function nameWidth(names: readonly string[], letters: number): number {
  return Math.max(...names.map((name) => textWidth(name, letters))) + letters
}

export function lineLayout(
  size: { width: number; height: number },
  names: readonly string[],
  largeType: boolean,
): LineLayout {
  const letters = letterSize(largeType)
  const name = nameWidth(names, letters)
  const units = names.length
  const beside = fitted(size.width, size.height, units, letters, name + 12)
  const closest = Math.max((unitReach + 1) * beside.radius, 2 * beside.radius + name + 20)
  return beside.spacing >= closest ? beside : fitted(size.width, size.height - letters - 12, units, letters, 0)
}

/** The layout within `width` and `height`; `beside` px are kept free for a name to the right of each unit. */
function fitted(width: number, height: number, units: number, letters: number, beside: number): LineLayout {
  const narrowest = across * (units - 1 + behindLast) + unitReach
  const radius = Math.max(6, Math.min((height - 8) / (above + below), width / narrowest))
  const ends = (unitReach + 1.1) * radius + beside
  const spacing = Math.min(
    width / units,
    widest * radius,
    (width - ends) / (units - 1),
    (width - unitReach * radius) / (units - 1 + behindLast),
  )
  const right = Math.max(1.1 * radius + beside, behindLast * spacing)
  return {
    radius,
    spacing,
    first: (width - spacing * (units - 1) - unitReach * radius - right) / 2 + unitReach * radius,
    track: Math.max(above * radius + 4, (height + (above - below) * radius) / 2),
    filmOnSheet: Math.max(1.2, 0.13 * radius),
    filmOnRoller: Math.max(0.6, 0.055 * radius),
    paper: Math.max(2.5, 0.17 * radius),
    letters,
    beside: beside > 0,
  }
}
