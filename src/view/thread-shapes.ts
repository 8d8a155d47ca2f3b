/** Filaments between sheet and blanket, and the tufts of torn paper. */
import type { LayerInk } from './layer-inks.ts'
import type { PictureTheme } from './picture.ts'
import type { Bodies, Thread } from './section-bodies.ts'
import { inPaper } from './section-columns.ts'
import type { SectionLayout } from './section-layout.ts'
import type { Shape } from './shapes.ts'
import { stroke } from './shapes.ts'
import { between, darkOf } from './tone.ts'

export function threadShapes(
  bodies: Bodies,
  layout: SectionLayout,
  inks: readonly LayerInk[],
  theme: PictureTheme,
): Shape[] {
  const fibre = { fill: theme.paper, outline: between(theme.paper, darkOf(theme), 0.55) }
  return [
    ...bodies.threads.flatMap((thread) =>
      neckShapes(thread, layout, thread.layer === inPaper ? fibre : inks[thread.layer]),
    ),
    ...bodies.threads
      .filter(({ layer }) => layer === inPaper)
      .flatMap(({ column }) => tuftShapes(column, bodies, layout, fibre)),
  ]
}

/** The outline of a neck or tail: up its left side, down its right. */
export function neckOutline(thread: Thread, neck: { heights: number[]; widths: number[] }, layout: SectionLayout) {
  const { left, column, floor } = layout
  const middle = left + (thread.column + 0.5) * column
  const points: number[] = []
  const y = (i: number) => floor - thread.foot - neck.heights[i]
  neck.widths.forEach((width, i) => points.push(middle - 0.5 * column * width, y(i)))
  for (let i = neck.widths.length - 1; i >= 0; i--) points.push(middle + 0.5 * column * neck.widths[i], y(i))
  return points
}

function neckShapes(
  thread: Thread,
  layout: SectionLayout,
  { fill, outline }: { fill: number; outline: number },
): Shape[] {
  return thread.pulled.necks.map((neck) => ({
    kind: 'outline',
    points: neckOutline(thread, neck, layout),
    closed: true,
    fill,
    // A film that has hardly begun to neck is still whole.
    line: Math.min(...neck.widths) > 0.9 ? fill : outline,
    width: 1,
  }))
}

/** A tuft below the blanket's films: a clump of paper with a fringe of torn fibres. */
function tuftShapes(
  i: number,
  { blanketSurface, blanket, tuft }: Bodies,
  { left, column, floor }: SectionLayout,
  { fill, outline }: { fill: number; outline: number },
): Shape[] {
  const top = floor - blanketSurface[i] + blanket.reduce((sum, film) => sum + film[i], 0)
  const bottom = top + tuft[i]
  const x = left + i * column
  const clump = [
    x,
    top,
    x + column,
    top,
    x + 0.85 * column,
    bottom - 2,
    x + 0.5 * column,
    bottom,
    x + 0.1 * column,
    bottom - 2,
  ]
  return [
    { kind: 'outline', points: clump, closed: true, fill, line: outline, width: 1 },
    ...[0.2, 0.5, 0.8].map((place, fibre) =>
      stroke(
        [x + place * column, bottom - 3, x + (place + 0.2 * (fibre - 1)) * column, bottom + 0.4 * tuft[i]],
        outline,
        1,
      ),
    ),
  ]
}
