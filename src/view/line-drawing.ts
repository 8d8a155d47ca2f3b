/** The press line from the side as shapes: a pure function of picture and size. */
import { layerInks } from './layer-inks.ts'
import { lineFilms } from './line-films.ts'
import { lineLabels } from './line-labels.ts'
import type { LineLayout } from './line-layout.ts'
import { lineLayout } from './line-layout.ts'
import { shownPhase } from './phases.ts'
import type { BenchPicture } from './picture.ts'
import type { Shape, Size } from './shapes.ts'
import { rectangle, stroke, textWidth } from './shapes.ts'
import type { Extent } from './sheet-shapes.ts'
import { edgeShapes, faceShapes, printedStretches, sheetExtent } from './sheet-shapes.ts'
import { spotPlace } from './sheet-travel.ts'
import { between, hallOf } from './tone.ts'
import { unitParts, unitShapes } from './unit-shapes.ts'

/** Everything the press line shows, back to front. */
export function lineDrawing(picture: BenchPicture, size: Size): Shape[] {
  const { run, theme } = picture
  const { kind } = run.setUp.press
  const units = run.line.units.length
  const layout = lineLayout(size, picture.words.units, picture.largeType)
  const place = spotPlace(picture.unit, shownPhase(picture))
  const films = lineFilms(picture)
  const extent = sheetExtent(kind, place, layout, size.width)
  const stretches = printedStretches(kind, extent, units, layout)
  const parts = run.line.units.map((_, unit) => unitParts(picture, unit, place, layout))
  const bed = layout.track + layout.paper
  return [
    rectangle(0, 0, size.width, size.height, { fill: hallOf(theme) }),
    stroke([0, bed + 1, size.width, bed + 1], between(theme.ground, theme.graphite, 0.3), 1),
    ...faceShapes(extent, stretches, films, layout, theme),
    ...parts.flatMap((each, unit) => unitShapes(each, films.units[unit], layout, picture)),
    ...edgeShapes(extent, stretches, films, layerInks(picture), layout, theme),
    ...way(picture, extent, layout),
    ...currentMarks(picture, place, layout),
    ...sheetName(picture, extent, layout),
    ...lineLabels(picture, parts, layout, size),
  ]
}

/** Below the sheet's tail, where there is room above the units' names. */
function sheetName({ words, theme, accounts }: BenchPicture, { from }: Extent, layout: LineLayout): Shape[] {
  const { track, paper, radius, letters } = layout
  const x = Math.max(4, from)
  const end = x + textWidth(words.sheet, letters)
  const hidden = accounts.some(({ unit }) => {
    const nip = layout.first + unit * layout.spacing
    return end > nip - radius && x < nip + radius
  })
  if (hidden || radius < 1.7 * letters) return []
  return [
    {
      kind: 'lettering',
      text: words.sheet,
      x,
      y: track + paper + 3,
      size: letters - 1,
      colour: theme.graphite,
      anchor: [0, 0],
    },
  ]
}

/** Ahead of the sheet, where it goes; a web has no end to go ahead of. */
function way({ theme, run }: BenchPicture, { to }: Extent, { track, paper, radius }: LineLayout): Shape[] {
  if (run.setUp.press.kind === 'web') return []
  const y = track + paper / 2
  const start = to + 0.6 * radius
  const end = start + 0.8 * radius
  const tip = 0.22 * radius
  return [
    stroke([start, y, end, y], theme.graphite, 2),
    stroke([end - tip, y - tip, end, y, end - tip, y + tip], theme.graphite, 2),
  ]
}

/** A ring about the current nip, wide enough to look through, and a pointer below the spot that section and loupe show. */
function currentMarks({ unit, theme }: BenchPicture, place: number, layout: LineLayout): Shape[] {
  const { first, spacing, track, paper, radius } = layout
  const spot = first + place * spacing
  const y = track + paper + 3
  const half = Math.max(4, 0.2 * radius)
  return [
    {
      kind: 'disc',
      x: first + unit * spacing,
      y: track,
      radius: Math.max(8, 0.6 * radius),
      line: theme.accent,
      width: 2.5,
    },
    {
      kind: 'outline',
      points: [spot, y, spot + half, y + 1.6 * half, spot - half, y + 1.6 * half],
      closed: true,
      fill: theme.accent,
      line: theme.ground,
      width: 1,
    },
  ]
}
