/** The sheet, or the web, on its way through the line: its edge with the films on it, and its face behind. */
import type { LayerInk } from './layer-inks.ts'
import type { LineFilms } from './line-films.ts'
import type { LineLayout } from './line-layout.ts'
import type { PictureTheme } from './picture.ts'
import type { Shape } from './shapes.ts'
import { rectangle } from './shapes.ts'
import { between, darkOf, outlineOf } from './tone.ts'

/** px: left and right end */
export interface Extent {
  from: number
  to: number
}

/** Spacings: a sheet reaches from one gap between units nearly to the next. */
const sheetLength = 0.78
/** Share of a sheet's length left bare at each end. */
const margin = 0.06

/** Where the paper is; a web fills the whole line. */
export function sheetExtent(kind: 'sheet-fed' | 'web', place: number, layout: LineLayout, width: number): Extent {
  if (kind === 'web') return { from: 0, to: width }
  const middle = layout.first + place * layout.spacing
  const half = 0.5 * sheetLength * layout.spacing
  return { from: middle - half, to: middle + half }
}

/** The printed part of the sheet cut at the nips: whatever is right of a nip has been through it. */
export function printedStretches(kind: 'sheet-fed' | 'web', extent: Extent, units: number, layout: LineLayout) {
  const bare = kind === 'web' ? 0 : margin * (extent.to - extent.from)
  const from = extent.from + bare
  const to = extent.to - bare
  return Array.from({ length: units + 1 }, (_, passed) => ({
    passed,
    from: Math.max(from, passed === 0 ? -Infinity : layout.first + (passed - 1) * layout.spacing),
    to: Math.min(to, passed === units ? Infinity : layout.first + passed * layout.spacing),
  })).filter((stretch) => stretch.to > stretch.from)
}

type Stretch = ReturnType<typeof printedStretches>[number]

/** The face, seen at a slant behind the cylinders. */
export function faceShapes(
  extent: Extent,
  stretches: readonly Stretch[],
  { sheet }: LineFilms,
  layout: LineLayout,
  theme: PictureTheme,
): Shape[] {
  const depth = 0.55 * layout.radius
  const slant = 0.5 * depth
  const quad = (from: number, to: number, fill: number, line: number): Shape => ({
    kind: 'outline',
    points: [
      from,
      layout.track,
      to,
      layout.track,
      to + slant,
      layout.track - depth,
      from + slant,
      layout.track - depth,
    ],
    closed: true,
    fill,
    line,
    width: 1,
  })
  return [
    quad(extent.from, extent.to, theme.paper, between(theme.paper, darkOf(theme), 0.5)),
    ...stretches.map(({ passed, from, to }) =>
      passed === 0
        ? quad(from, to, theme.paper, theme.paper)
        : quad(from, to, sheet[passed].face, outlineOf(sheet[passed].face)),
    ),
  ]
}

/** The edge, nearest to us: paper, and the films on it one above the other. */
export function edgeShapes(
  extent: Extent,
  stretches: readonly Stretch[],
  films: LineFilms,
  inks: readonly LayerInk[],
  layout: LineLayout,
  theme: PictureTheme,
): Shape[] {
  const { track, paper, filmOnSheet } = layout
  return [
    rectangle(extent.from, track, extent.to - extent.from, paper, {
      fill: theme.paper,
      line: between(theme.paper, darkOf(theme), 0.6),
      width: 1,
    }),
    ...stretches.flatMap(({ passed, from, to }): Shape[] => {
      let y = track
      return films.sheet[passed].layers.flatMap((um, layer): Shape[] => {
        const height = um * filmOnSheet
        if (height < 0.3) return []
        y -= height
        return [
          rectangle(from, y, to - from, height, { fill: inks[layer].fill, line: inks[layer].outline, width: 0.75 }),
        ]
      })
    }),
  ]
}
