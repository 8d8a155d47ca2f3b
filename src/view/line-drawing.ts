/** The press line from the side as shapes: a pure function of picture and size. */
import { layerInks } from './layer-inks.ts'
import { lineFilms } from './line-films.ts'
import { lineLabels } from './line-labels.ts'
import type { LineLayout } from './line-layout.ts'
import { lineLayout } from './line-layout.ts'
import { shownPhase } from './phases.ts'
import type { BenchPicture } from './picture.ts'
import type { Shape, Size } from './shapes.ts'
import { rectangle, stroke } from './shapes.ts'
import { edgeShapes, faceShapes, printedStretches, sheetExtent } from './sheet-shapes.ts'
import { spotPlace } from './sheet-travel.ts'
import { between } from './tone.ts'
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
    rectangle(0, 0, size.width, size.height, { fill: theme.ground }),
    stroke([0, bed + 1, size.width, bed + 1], between(theme.ground, theme.graphite, 0.3), 1),
    ...faceShapes(extent, stretches, films, layout, theme),
    ...parts.flatMap((each, unit) => unitShapes(each, films.units[unit], layout, picture)),
    ...edgeShapes(extent, stretches, films, layerInks(picture), layout, theme),
    ...currentMarks(picture, place, layout),
    ...lineLabels(picture, parts, layout, size),
  ]
}

/** A ring about the current nip, and a pointer below the spot that section and loupe show. */
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
      radius: Math.max(6, 0.42 * radius),
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
