/** Filaments between sheet and blanket, and the tufts of torn paper. */
import type { Neck } from './filament.ts'
import { isStep } from './film-bands.ts'
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
      neckShapes(thread, bodies, layout, thread.layer === inPaper ? fibre : inks[thread.layer]),
    ),
    ...bodies.threads
      .filter(({ layer }) => layer === inPaper)
      .flatMap(({ column }) => tuftShapes(column, bodies, layout, fibre)),
  ]
}

/**
 * The outline of a neck or tail: up its left side, down its right. Its upper end leans with the blanket, which rises
 * from column to column by `rise` px.
 */
function neckOutline(
  { column: place, foot, pulled }: Thread,
  neck: Neck,
  { left, column, floor }: SectionLayout,
  rise = 0,
): number[] {
  const middle = left + (place + 0.5) * column
  const whole = Math.max(...pulled.necks.map(({ heights }) => Math.max(...heights)))
  const points: number[] = []
  const add = (i: number, side: number) => {
    const off = side * 0.5 * neck.widths[i]
    points.push(middle + off * column, floor - foot - neck.heights[i] - (off * rise * neck.heights[i]) / whole)
  }
  for (let i = 0; i < neck.widths.length; i++) add(i, -1)
  for (let i = neck.widths.length - 1; i >= 0; i--) add(i, 1)
  return points
}

/** px by which the blanket rises over column `i`; 0 beside a step. */
function riseAt(surface: Float64Array, i: number, column: number): number {
  if (i === 0 || i === surface.length - 1) return 0
  const rises = [surface[i] - surface[i - 1], surface[i + 1] - surface[i]]
  return rises.some((rise) => isStep(rise, column)) ? 0 : 0.5 * (rises[0] + rises[1])
}

function neckShapes(
  thread: Thread,
  bodies: Bodies,
  layout: SectionLayout,
  look: { fill: number; outline: number },
): Shape[] {
  const rise = riseAt(bodies.blanketSurface, thread.column, layout.column)
  return thread.pulled.necks.map((neck) => ({
    kind: 'outline',
    points: neckOutline(thread, neck, layout, rise),
    closed: true,
    fill: look.fill,
    // A film that has hardly begun to neck is still whole.
    line: Math.min(...neck.widths) > 0.9 ? look.fill : look.outline,
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
