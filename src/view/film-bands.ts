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

/** The band's outline wherever there is film: through the columns' middles, so that its area is the film's amount. */
export function bandOutlines({ top, bottom }: Band, { left, column }: Across): number[][] {
  return stretches(top, bottom).map(([from, to]) => {
    const first = from === 0
    const last = to === top.length - 1
    const upper = first ? [left, top[from]] : [middle(from - 1), bottom[from - 1]]
    const lower = first ? [left, bottom[from]] : []
    for (let i = from; i <= to; i++) {
      upper.push(middle(i), top[i])
      lower.push(middle(i), bottom[i])
    }
    const right = left + column * top.length
    if (last) upper.push(right, top[to], right, bottom[to])
    else upper.push(middle(to + 1), bottom[to + 1])
    for (let i = lower.length - 2; i >= 0; i -= 2) upper.push(lower[i], lower[i + 1])
    return upper
  })
  function middle(i: number): number {
    return left + (i + 0.5) * column
  }
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
  for (let i = ink.ink % step; i < top.length; i += step) {
    const room = bottom[i] - top[i]
    if (room < 7) continue
    const reach = Math.min(5, 0.32 * room, 0.5 * column * step)
    marks.push(...inkMark(ink.ink, left + (i + 0.5) * column, (top[i] + bottom[i]) / 2, reach, ink.outline))
  }
  return marks
}
