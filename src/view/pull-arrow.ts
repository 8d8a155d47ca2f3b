/** An arrow in the blanket, up from where it parts from the sheet: as long as the pull has grown there. */
import { clamp, openingAt, pullGrown } from './nip-curve.ts'
import type { PictureTheme } from './picture.ts'
import type { Bodies } from './section-bodies.ts'
import type { SectionLayout } from './section-layout.ts'
import type { Shape } from './shapes.ts'

/** Share of the height above the films that the arrow may take: chosen so that the blanket's name stays clear of it. */
const longest = 0.6

export function pullArrow(
  { blanketSurface }: Bodies,
  { left, right, column, floor, letters }: SectionLayout,
  phase: number,
  theme: PictureTheme,
): Shape[] {
  const grown = pullGrown(phase)
  const place = openingAt(phase)
  if (grown <= 0 || place <= 0) return []
  const half = 0.55 * letters
  const x = Math.min(right - half - 6, left + clamp(place) * (right - left))
  const surface = floor - blanketSurface[Math.min(blanketSurface.length - 1, Math.floor((x - left) / column))]
  const foot = surface - 4
  const room = longest * (foot - 1.6 * letters)
  if (room < 2 * letters) return []
  const tip = foot - grown * room
  const head = Math.min(1.1 * half, foot - tip)
  const shaft = 0.4 * half
  return [
    {
      kind: 'outline',
      points: [
        ...[x - shaft, foot, x - shaft, tip + head, x - half, tip + head],
        ...[x, tip, x + half, tip + head, x + shaft, tip + head, x + shaft, foot],
      ],
      closed: true,
      fill: theme.graphite,
      line: theme.ground,
      width: 1.25,
    },
  ]
}
