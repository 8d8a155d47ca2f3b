/** The section at the nip as shapes: a pure function of picture and size. */
import { bandOutlines, bandShapes } from './film-bands.ts'
import type { Band } from './film-bands.ts'
import { latest } from './latest.ts'
import type { LayerInk } from './layer-inks.ts'
import { layerInks, settingInk } from './layer-inks.ts'
import { clamp, pullGrown, timePassed } from './nip-curve.ts'
import { shownPhase } from './phases.ts'
import type { BenchPicture } from './picture.ts'
import { blanketShapes, paperShapes } from './section-ground.ts'
import { pullArrow } from './pull-arrow.ts'
import { pullBars } from './pull-bars.ts'
import type { Bodies } from './section-bodies.ts'
import { bodiesAt } from './section-bodies.ts'
import type { Columns } from './section-columns.ts'
import { columnsOf } from './section-columns.ts'
import type { SectionLayout } from './section-layout.ts'
import { sectionLayout } from './section-layout.ts'
import { sectionLabels } from './section-labels.ts'
import type { Shape, Size } from './shapes.ts'
import { rectangle, stroke } from './shapes.ts'
import { threadShapes } from './thread-shapes.ts'
import { airOf, between, darkOf } from './tone.ts'

const layoutOf = latest(sectionLayout)

/** Everything the section shows, back to front. */
export function sectionDrawing(picture: BenchPicture, { width, height }: Size): Shape[] {
  const { run, accounts, cells, unit, row, theme } = picture
  const phase = shownPhase(picture)
  const columns = columnsOf(run, accounts, cells, unit, row)
  const layout = layoutFor(picture, width, height, columns.count)
  const bodies = bodiesAt(columns, phase, layout)
  const inks = layerInks(picture)
  const passed = timePassed(phase)
  const onSheet = inks.map((ink, layer) => (layer < unit ? settingInk(ink, passed) : ink))
  const bands = { sheet: sheetBands(bodies, layout, onSheet), blanket: blanketBands(bodies, layout, inks) }
  return [
    rectangle(0, 0, width, height, { fill: theme.ground }),
    rectangle(layout.left, 0, layout.right - layout.left, height, { fill: airOf(theme) }),
    ...paperShapes(bodies, layout, theme, height),
    ...soakedShapes(columns, bodies, layout, inks, theme),
    ...bands.sheet.flatMap((band) => bandShapes(band, layout)),
    ...blanketShapes(bodies, layout, theme),
    ...bands.blanket.flatMap((band) => bandShapes(band, layout)),
    ...threadShapes(bodies, layout, inks, theme),
    ...openSpots(columns, bodies, layout, airOf(theme)),
    ...weakestPlanes(bodies, layout, pullGrown(phase), theme),
    ...pullArrow(bodies, layout, phase, theme),
    ...sectionLabels(picture, layout, bands, { width, height }),
    ...(picture.words.pull === '' ? [] : pullBars(picture, layout, phase)),
  ]
}

const sizes = latest((width: number, height: number) => ({ width, height }))

function layoutFor({ accounts, largeType }: BenchPicture, width: number, height: number, columns: number) {
  return layoutOf(sizes(width, height), accounts, columns, largeType)
}

/** Films on the sheet, lowest first. */
function sheetBands({ surface, sheet }: Bodies, { floor }: SectionLayout, inks: readonly LayerInk[]): Band[] {
  let bottom = surface.map((height) => floor - height)
  return sheet.map((film, layer) => {
    const top = bottom.map((y, i) => y - film[i])
    const band = { ink: inks[layer], top, bottom }
    bottom = top
    return band
  })
}

/** Films below the blanket, its own first. */
function blanketBands(
  { blanketSurface, blanket }: Bodies,
  { floor }: SectionLayout,
  inks: readonly LayerInk[],
): Band[] {
  let top = blanketSurface.map((height) => floor - height)
  return blanket
    .map((film, layer) => ({ film, layer }))
    .reverse()
    .map(({ film, layer }) => {
      const bottom = top.map((y, i) => y + film[i])
      const band = { ink: inks[layer], top, bottom }
      top = bottom
      return band
    })
}

/** What the paper holds fast: the lowest film's ink among the paper's fibres, below its surface. */
function soakedShapes(
  columns: Columns,
  bodies: Bodies,
  layout: SectionLayout,
  inks: readonly LayerInk[],
  theme: BenchPicture['theme'],
): Shape[] {
  const { lowest } = columns
  if (lowest < 0) return []
  const { fill, outline } = inks[lowest]
  const top = bodies.surface.map((height) => layout.floor - height)
  const bottom = top.map((y, i) => y + bodies.soaked[i])
  const outlines = bandOutlines({ top, bottom }, layout).map((points): Shape => ({
    kind: 'outline',
    points,
    closed: true,
    fill: between(fill, theme.paper, 0.3),
    line: outline,
    width: 1,
  }))
  return [...outlines, ...hatch(top, bottom, layout, outline)]
}

/** Slanted strokes at even distances, within their columns. */
function hatch(top: Float64Array, bottom: Float64Array, { left, column }: SectionLayout, colour: number): Shape[] {
  const strokes: Shape[] = []
  for (let x = 5; x < top.length * column - 5; x += 9) {
    const i = Math.floor(x / column)
    if (bottom[i] - top[i] < 3) continue
    const lean = Math.min(4, 0.3 * column, 0.3 * (bottom[i] - top[i]))
    strokes.push(stroke([left + x - lean, bottom[i] - 1, left + x + lean, top[i] + 1], colour, 1))
  }
  return strokes
}

/** Spots in no contact: a small hole between the blanket's film and what lies below, as wide as the open share. */
function openSpots({ contact, before }: Columns, bodies: Bodies, { left, column, floor }: SectionLayout, fill: number) {
  const last = before.length - 1
  return bodies.meeting.flatMap((meeting, i): Shape[] => {
    const half = 0.5 * column * (1 - contact[i])
    const film = bodies.sheet[last][i]
    if (meeting !== 'closed' || half < 0.5 || film <= 0) return []
    const x = left + i * column + half
    const y = floor - (bodies.blanketSurface[i] - film)
    const rise = Math.min(5, 0.4 * film)
    return [{ kind: 'outline', points: [x - half, y, x, y - rise, x + half, y, x, y + rise / 2], closed: true, fill }]
  })
}

/** The plane at which each closed column will part, marked from the leading edge on as the pull grows: a stair. */
function weakestPlanes(
  { meeting, plane }: Bodies,
  { left, column, floor }: SectionLayout,
  grown: number,
  theme: BenchPicture['theme'],
): Shape[] {
  if (grown <= 0) return []
  const from = Math.ceil((1 - clamp(grown)) * plane.length)
  const lines: number[][] = []
  let open: number[] | null = null
  for (let i = from; i < plane.length; i++) {
    if (meeting[i] !== 'closed' || Number.isNaN(plane[i])) {
      open = null
      continue
    }
    const y = floor - plane[i]
    if (!open) lines.push((open = []))
    open.push(left + i * column, y, left + (i + 1) * column, y)
  }
  return lines.flatMap((points): Shape[] => [
    // White with dark edges: white alone is lost on yellow, and a dark line is one more edge of a film.
    { kind: 'outline', points, closed: false, line: darkOf(theme), width: 5.5 },
    { kind: 'outline', points, closed: false, line: theme.paper, width: 2.75 },
  ])
}
