/** The control strip for a file and for paper: one row for each number of inks, the letters of the inks below each patch. */
import type { Drawing } from '../../view/svg-file.ts'
import { tag } from '../../view/svg-shapes.ts'

export interface PaperPatch {
  /** how many print in it */
  inks: number
  label: string
  /** #rrggbb; null where no colour can be computed */
  colour: string | null
}

/** px */
const side = 46
const gap = 6
const row = side + 26
const mostInRow = 14

export function stripForPaper(patches: readonly PaperPatch[]): Drawing {
  const counts = [...new Set(patches.map(({ inks }) => inks))]
  const rows = counts.flatMap((inks) => inRows(patches.filter((patch) => patch.inks === inks)))
  const widest = Math.max(...rows.map(({ length }) => length))
  const width = Math.max(480, widest * (side + gap) + gap)
  return {
    width,
    height: rows.length * row + gap,
    markup: rows.flatMap((each, down) => each.map((patch, place) => patchMarkup(patch, place, down))).join('\n'),
  }
}

function inRows(patches: readonly PaperPatch[]): (readonly PaperPatch[])[] {
  return Array.from({ length: Math.ceil(patches.length / mostInRow) }, (_, at) =>
    patches.slice(at * mostInRow, (at + 1) * mostInRow),
  )
}

/** A patch whose colour is not known is crossed out. */
function patchMarkup({ label, colour }: PaperPatch, place: number, down: number): string {
  const [x, y] = [gap + place * (side + gap), gap + down * row]
  const line = { stroke: '#1c1b1a', 'stroke-width': 1 }
  return [
    tag('rect', { x, y, width: side, height: side, fill: colour ?? '#ffffff', ...line }),
    ...(colour === null ? [tag('line', { x1: x, y1: y, x2: x + side, y2: y + side, ...line })] : []),
    tag(
      'text',
      { x: x + side / 2, y: y + side + 14, 'font-size': 12, fill: '#1c1b1a', 'text-anchor': 'middle' },
      label,
    ),
  ].join('\n')
}
