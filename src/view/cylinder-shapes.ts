/** Cylinders and rollers seen from their ends: a disc, a hub, spokes that show the turning, and rims of ink. */
import type { RollerFilm } from './line-films.ts'
import type { PictureTheme } from './picture.ts'
import type { Shape } from './shapes.ts'
import { stroke } from './shapes.ts'
import { between, metalOf, outlineOf } from './tone.ts'

export interface Cylinder {
  x: number
  y: number
  radius: number
  /** radians it has turned, clockwise */
  turned: number
}

/** The bare cylinder; `rubber` marks a soft cover. */
export function cylinderShapes({ x, y, radius, turned }: Cylinder, theme: PictureTheme, rubber = false): Shape[] {
  const spokes = [0, 1, 2].map((spoke) => {
    const angle = turned + (spoke * 2 * Math.PI) / 3
    const [dx, dy] = [Math.cos(angle), Math.sin(angle)]
    return stroke(
      [x + 0.28 * radius * dx, y + 0.28 * radius * dy, x + 0.72 * radius * dx, y + 0.72 * radius * dy],
      between(metalOf(theme), theme.graphite, 0.36),
      Math.max(1, radius * 0.07),
    )
  })
  return [
    { kind: 'disc', x, y, radius, fill: metalOf(theme), line: theme.graphite, width: 1.25 },
    ...(rubber && radius > 9
      ? [
          {
            kind: 'disc',
            x,
            y,
            radius: radius * 0.86,
            line: between(metalOf(theme), theme.graphite, 0.45),
            width: 1,
          } as const,
        ]
      : []),
    ...spokes,
    { kind: 'disc', x, y, radius: 0.2 * radius, fill: theme.ground, line: theme.graphite, width: 1 },
  ]
}

/** Ink on a cylinder between two angles (radians), as thick as its film. */
export function rimShapes(
  { x, y, radius }: Cylinder,
  { thickness, fill }: RollerFilm,
  from: number,
  to: number,
  perMicrometre: number,
): Shape[] {
  const width = thickness * perMicrometre
  if (width < 0.3) return []
  const outer = radius + width
  return [
    { kind: 'arc', x, y, radius: radius + width / 2, from, to, line: fill, width },
    { kind: 'arc', x, y, radius: outer, from, to, line: outlineOf(fill), width: 1 },
  ]
}
