/** Films drawn as flat bands with a darker outline, their ink's mark repeated in them. */
import { inkMark } from './ink-marks.ts'
import type { LayerInk } from './layer-inks.ts'
import type { Shape } from './shapes.ts'

/** One film over all columns, px from the view's top. */
export interface Band {
  ink: LayerInk
  top: Float64Array
  bottom: Float64Array
}

/** px: where the columns stand */
export interface Across {
  left: number
  column: number
}

/** px: a film thinner than this cannot be seen, and its outline would lie. */
const thinnest = 0.4

/** Whether neighbouring columns `column` px wide differ so much in height that it looks like a step. */
export function isStep(rise: number, column: number): boolean {
  return Math.abs(rise) >= 0.5 * column
}

/**
 * The outline of heights by column, left to right: steps where neighbours differ much, straight lines where little.
 * Both are even about the columns' edges, so that the area below is the sum of the columns'. Written to `points` as
 * x, y in turn.
 */
export function steppedLine(heights: ArrayLike<number>, { left, column }: Across, points: number[] = []): number[] {
  points.push(left, heights[0])
  for (let i = 1; i < heights.length; i++) {
    const slant = isStep(heights[i] - heights[i - 1], column) ? 0.16 : 0.5
    points.push(left + (i - slant) * column, heights[i - 1], left + (i + slant) * column, heights[i])
  }
  points.push(left + heights.length * column, heights[heights.length - 1])
  return points
}

/** The band's outlines, one wherever there is film without a break; their area is the film's amount. */
export function bandOutlines({ top, bottom }: Pick<Band, 'top' | 'bottom'>, across: Across): number[][] {
  const end = top.length - 1
  return stretches(top, bottom).map(([from, to]) => {
    // A stretch runs out into the empty columns beside it, and ends where it has: on them it would be an edge without film.
    const first = Math.max(0, from - 1)
    const last = Math.min(end, to + 1)
    const shifted = { left: across.left + first * across.column, column: across.column }
    const cut = (heights: Float64Array) => {
      const line = steppedLine(heights.subarray(first, last + 1), shifted)
      return line.slice(first < from ? 2 : 0, last > to ? -2 : undefined)
    }
    const upper = cut(top)
    const lower = cut(bottom)
    for (let i = lower.length - 2; i >= 0; i -= 2) upper.push(lower[i], lower[i + 1])
    return upper
  })
}

/** First and last column of each stretch that holds film. */
function stretches(top: Float64Array, bottom: Float64Array): [number, number][] {
  const found: [number, number][] = []
  for (let i = 0; i < top.length; i++) {
    if (bottom[i] - top[i] < thinnest) continue
    const previous = found.at(-1)
    if (previous?.[1] === i - 1) previous[1] = i
    else found.push([i, i])
  }
  return found
}

/** A band as shapes: fill, outline, marks. */
export function bandShapes(band: Band, across: Across): Shape[] {
  const { fill, outline } = band.ink
  return [
    ...bandOutlines(band, across).map((points): Shape => ({
      kind: 'outline',
      points,
      closed: true,
      fill,
      line: outline,
      width: 1.25,
    })),
    ...bandMarks(band, across),
  ]
}

/** px between two marks of one film */
const markSpacing = 22

function bandMarks({ ink, top, bottom }: Band, { left, column }: Across): Shape[] {
  const step = Math.max(1, Math.round(markSpacing / column))
  const marks: Shape[] = []
  const end = left + top.length * column
  for (let i = ink.ink % step; i < top.length; i += step) {
    const room = bottom[i] - top[i]
    if (room < 7) continue
    const reach = Math.min(5, 0.32 * room, 0.5 * column * step)
    const x = left + (i + 0.5) * column
    if (x - reach < left || x + reach > end) continue
    marks.push(...inkMark(ink.ink, x, (top[i] + bottom[i]) / 2, reach, ink.outline))
  }
  return marks
}
