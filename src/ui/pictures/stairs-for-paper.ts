/** A list of orders for a file and for paper: each a small stair of its tacks, with its words and readings beside it. */
import type { Drawing } from '../../view/svg-file.ts'
import { wrapped } from '../../view/svg-file.ts'
import { tag } from '../../view/svg-shapes.ts'
import type { MiniTread } from '../mini-stair.ts'

export interface StairRow {
  /** its place in the list */
  place: string
  treads: readonly MiniTread[]
  title: string
  /** lines below the title */
  lines: readonly string[]
}

/** px: as wide as other drawings of a view, so that small letters print at 7 points or more at 170 mm */
const width = 640
const letters = 13
const lineHigh = 18
const margin = 8
/** px kept for the place in the list */
const placeWide = 36
const stairHigh = 52
const treadWide = 24
const letterRoom = 18
const ink = '#1c1b1a'

export function stairsForPaper(rows: readonly StairRow[]): Drawing {
  const most = Math.max(1, ...rows.map(({ treads }) => treads.length))
  const wordsAt = placeWide + most * treadWide + 16
  const markup: string[] = []
  let y = margin
  for (const row of rows) {
    const room = width - wordsAt - margin
    const title = wrapped(row.title, room)
    const lines = [...title, ...row.lines.flatMap((line) => wrapped(line, room))]
    const high = Math.max(stairHigh, lines.length * lineHigh)
    markup.push(
      lettering(row.place, margin, y + letters, true),
      ...stair(row.treads, y),
      ...lines.map((line, at) => lettering(line, wordsAt, y + letters + at * lineHigh, at < title.length)),
    )
    y += high + 2 * margin
  }
  return { width, height: y, markup: markup.join('\n') }
}

function stair(treads: readonly MiniTread[], top: number): string[] {
  const highest = Math.max(...treads.map(({ tack }) => tack))
  const floor = top + stairHigh
  return treads.flatMap(({ letter, tack, colour }, place) => {
    const high = letterRoom + (stairHigh - letterRoom) * (tack / highest)
    const x = placeWide + place * treadWide
    const line = { stroke: ink, 'stroke-width': 1 }
    return [
      tag('rect', { x, y: floor - high, width: treadWide, height: high, fill: '#ffffff', ...line }),
      tag('rect', { x, y: floor - high, width: treadWide, height: 7, fill: colour, ...line }),
      tag('text', { ...letterLook, x: x + treadWide / 2, y: floor - 4, 'text-anchor': 'middle' }, letter),
    ]
  })
}

const letterLook = { 'font-size': letters, 'font-weight': 600, fill: ink }

function lettering(text: string, x: number, y: number, bold: boolean): string {
  return tag('text', { ...letterLook, 'font-weight': bold ? 600 : 400, x, y }, text)
}
