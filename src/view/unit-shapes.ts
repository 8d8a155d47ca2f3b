/** One printing unit from the side: ink roller, dampening roller, plate, blanket, impression cylinder, and their ink. */
import { dampeningAt } from '../press/setup.ts'
import type { Cylinder } from './cylinder-shapes.ts'
import { cylinderShapes, rimShapes } from './cylinder-shapes.ts'
import type { UnitFilms } from './line-films.ts'
import type { LineLayout } from './line-layout.ts'
import type { BenchPicture } from './picture.ts'
import type { Shape } from './shapes.ts'

export interface UnitParts {
  inkRoller: Cylinder
  /** null where no water is used */
  dampening: Cylinder | null
  plate: Cylinder
  blanket: Cylinder
  impression: Cylinder
}

const degree = Math.PI / 180
/** Where things touch, in degrees clockwise from the right: on the plate the roller, the water and the blanket. */
const inkOnPlate = -48
const waterOnPlate = 200
const blanketOnPlate = 38
const nipOnBlanket = 90

/** The cylinders of unit `unit` once the sheet has moved `place` spacings; each turns as far as its surface has rolled. */
export function unitParts(picture: BenchPicture, unit: number, place: number, layout: LineLayout): UnitParts {
  const { radius, spacing, first, track } = layout
  const rolled = place * spacing
  const x = first + unit * spacing
  const turn = (own: number, clockwise: 1 | -1, start: number) => start + (clockwise * rolled) / own
  const beside = (from: { x: number; y: number }, angle: number, distance: number) => ({
    x: from.x + distance * Math.cos(angle * degree),
    y: from.y + distance * Math.sin(angle * degree),
  })
  const film = layout.filmOnRoller
  const blanket = { x, y: track - radius - film, radius, turned: turn(radius, -1, 0.4) }
  const plate = {
    ...beside(blanket, blanketOnPlate + 180, 2 * radius + 2 * film),
    radius,
    turned: turn(radius, 1, 0.9),
  }
  const roller = 0.55 * radius
  const damper = 0.42 * radius
  const { press, inks } = picture.run.setUp
  return {
    blanket,
    plate,
    impression: { x, y: track + layout.paper + radius, radius, turned: turn(radius, 1, 0.2) },
    inkRoller: {
      ...beside(plate, inkOnPlate, radius + roller + 3 * film),
      radius: roller,
      turned: turn(roller, -1, 0),
    },
    dampening:
      dampeningAt(press, inks[unit]) > 0
        ? { ...beside(plate, waterOnPlate, radius + damper + 2 * film), radius: damper, turned: turn(damper, -1, 0.3) }
        : null,
  }
}

export function unitShapes(parts: UnitParts, films: UnitFilms, layout: LineLayout, { theme }: BenchPicture): Shape[] {
  const { inkRoller, dampening, plate, blanket, impression } = parts
  const rim = (cylinder: Cylinder, film: keyof UnitFilms, from: number, to: number) =>
    rimShapes(cylinder, films[film], from * degree, to * degree, layout.filmOnRoller)
  return [
    ...cylinderShapes(impression, theme),
    ...(dampening ? cylinderShapes(dampening, theme) : []),
    ...cylinderShapes(plate, theme),
    ...cylinderShapes(inkRoller, theme),
    ...cylinderShapes(blanket, theme, true),
    ...rim(inkRoller, 'rollerBefore', inkOnPlate + 180, inkOnPlate + 345),
    ...rim(inkRoller, 'rollerAfter', inkOnPlate - 15, inkOnPlate + 180),
    ...rim(plate, 'plateBefore', inkOnPlate, blanketOnPlate),
    ...rim(plate, 'plateAfter', blanketOnPlate, inkOnPlate + 360),
    ...rim(blanket, 'blanketBefore', nipOnBlanket, blanketOnPlate + 180),
    ...rim(blanket, 'blanketAfter', blanketOnPlate - 180, nipOnBlanket),
  ]
}
