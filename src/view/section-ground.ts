/** Paper with its fibres below, the blanket's rubber above. */
import { uniformAt } from '../physics/random.ts'
import { steppedLine } from './film-bands.ts'
import { latest } from './latest.ts'
import type { PictureTheme } from './picture.ts'
import type { Bodies } from './section-bodies.ts'
import type { SectionLayout } from './section-layout.ts'
import type { Shape } from './shapes.ts'
import { stroke } from './shapes.ts'
import { between, darkOf, rubberOf } from './tone.ts'

export function paperShapes(
  { surface }: Bodies,
  { left, right, column, floor }: SectionLayout,
  theme: PictureTheme,
  height: number,
): Shape[] {
  const top = surface.map((rise) => floor - rise)
  const points = steppedLine(top, { left, column }, [right, height, left, height])
  const dark = darkOf(theme)
  return [
    { kind: 'outline', points, closed: true, fill: theme.paper, line: between(theme.paper, dark, 0.45), width: 1.25 },
    ...fibres(left, right, floor + 10, height).map((fibre) => stroke(fibre, between(theme.paper, dark, 0.2), 1.5)),
  ]
}

/** Fibres at fixed places; only a likeness, paper is not computed fibre by fibre. */
const fibres = latest((left: number, right: number, top: number, bottom: number): number[][] => {
  const number = Math.round(((right - left) * (bottom - top)) / 700)
  return Array.from({ length: number }, (_, i) => {
    const draw = (stream: number) => uniformAt(1, stream, i)
    const x = left + (right - left) * draw(0)
    const y = top + (bottom - top) * draw(1)
    const slope = 2 * draw(2) - 1
    const bend = 2 * draw(3) - 1
    const reach = 12 + 14 * draw(4)
    const points: number[] = []
    for (let step = -3; step <= 3; step++) {
      const along = (step / 3) * reach
      points.push(
        Math.min(right - 1, Math.max(left + 1, x + along)),
        Math.max(top, y + 0.3 * slope * along + 0.6 * bend * (step * step - 4)),
      )
    }
    return points
  })
})

export function blanketShapes(
  { blanketSurface }: Bodies,
  { left, right, column, floor }: SectionLayout,
  theme: PictureTheme,
): Shape[] {
  const surface = blanketSurface.map((height) => floor - height)
  const points = steppedLine(surface, { left, column }, [right, 0, left, 0])
  const face = rubberOf(theme)
  const plies = [0.3, 0.55].map((share) =>
    stroke(
      points.slice(4).map((part, i) => (i % 2 === 0 ? part : part * (1 - share) - share * 4)),
      between(face, theme.graphite, 0.22),
      1,
    ),
  )
  return [{ kind: 'outline', points, closed: true, fill: face, line: theme.graphite, width: 1.5 }, ...plies]
}
