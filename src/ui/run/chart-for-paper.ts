/** The run chart for a file and for paper: the same lines, dashes and names as on the page, as SVG. */
import type { Drawing } from '../../view/svg-file.ts'
import { tag } from '../../view/svg-shapes.ts'
import { roundTicks } from '../instruments/line-plot.ts'
import { say, sayNumber } from '../say.ts'
import { dashes, finite, room, tenfolds } from './chart-scale.ts'
import type { RunLine } from './run-lines.ts'

export interface ChartAsked {
  /** what was read of each sheet; the lines know what it is */
  rows: readonly { readonly sheet: number }[]
  lines: readonly RunLine<never>[]
  events: readonly number[]
  /** null where no sheet is looked at */
  marker: number | null
  axis: string
  early: boolean
  /** least difference, in the axis's unit, that fills the chart */
  leastSpan: number
}

/** px */
const width = 760
const height = 340
const left = 58
const right = width - 130
const top = 12
const bottom = height - 46
const letters = 13

const ink = '#1c1b1a'
const soft = '#4c4944'
const faint = '#b9b2a6'

export function chartForPaper({ rows, lines, events, marker, axis, early, leastSpan }: ChartAsked): Drawing {
  const across = (sheet: number) => (early ? Math.log10(sheet) : sheet)
  const sheets = rows.map(({ sheet }) => across(sheet))
  const values = lines.map(({ value }) => rows.map((row) => finite(value(row as never))))
  const all = values.flat().filter((value) => value !== null)
  const [least, most] = room(Math.min(...all), Math.max(...all), leastSpan)
  const [first, last] = [sheets[0], Math.max(sheets[sheets.length - 1], sheets[0] + 1)]
  const x = (at: number) => round(left + ((at - first) / (last - first)) * (right - left))
  const y = (value: number) => round(bottom - ((value - least) / (most - least)) * (bottom - top))
  const within = (ticks: readonly number[], from: number, to: number) =>
    ticks.filter((tick) => tick >= from && tick <= to)
  const along = within(early ? tenfolds : roundTicks(first, last), first, last)
  const upright = (at: number, look: Record<string, string | number>) =>
    tag('line', { x1: x(at), x2: x(at), y1: top, y2: bottom, ...look })
  return {
    width,
    height,
    markup: [
      ...along.flatMap((tick) => [
        upright(tick, { stroke: faint }),
        text(x(tick), bottom + 18, sayNumber(early ? 10 ** tick : tick, 0), 'middle'),
      ]),
      ...within(roundTicks(least, most), least, most).flatMap((tick) => [
        tag('line', { x1: left, x2: right, y1: y(tick), y2: y(tick), stroke: faint }),
        text(left - 6, y(tick) + 4, sayNumber(tick, 0, 2), 'end'),
      ]),
      text((left + right) / 2, height - 8, say('run.sheetAxis'), 'middle'),
      tag('text', { ...lettering('middle'), transform: `translate(14 ${(top + bottom) / 2}) rotate(-90)` }, axis),
      ...events.map((sheet) =>
        upright(across(sheet), { stroke: soft, 'stroke-width': 1.5, 'stroke-dasharray': '4 4' }),
      ),
      ...(marker === null ? [] : [upright(across(marker), { stroke: ink, 'stroke-width': 3 })]),
      ...values.map((each, index) =>
        tag('path', {
          d: pathThrough(each.map((value, row) => (value === null ? null : [x(sheets[row]), y(value)]))),
          fill: 'none',
          stroke: ink,
          'stroke-width': 2,
          'stroke-linejoin': 'round',
          'stroke-dasharray': dashes[index % dashes.length].join(' ') || 'none',
        }),
      ),
      ...names(lines, values, y),
    ].join('\n'),
  }
}

/** Names at the ends of the lines, none on another. */
function names(
  lines: readonly RunLine<never>[],
  values: readonly (number | null)[][],
  y: (value: number) => number,
): string[] {
  const ends = lines.flatMap(({ label, short = label }, index) => {
    const value = values[index].at(-1) ?? null
    return value === null ? [] : [{ short, at: y(value) }]
  })
  let free = 0
  return ends
    .sort((one, other) => one.at - other.at)
    .map(({ short, at }) => {
      const place = Math.max(at, free)
      free = place + letters
      return text(right + 6, place + 4, short, 'start')
    })
}

function text(x: number, y: number, words: string, anchor: 'start' | 'middle' | 'end'): string {
  return tag('text', { x, y, ...lettering(anchor) }, words)
}

function lettering(anchor: string) {
  return { fill: ink, 'font-size': letters, 'text-anchor': anchor }
}

/** A line with gaps where there is nothing to draw. */
function pathThrough(points: readonly (readonly [number, number] | number[] | null)[]): string {
  let pen = 'M'
  return points
    .map((point) => {
      const step = point === null ? '' : `${pen}${point[0]} ${point[1]}`
      pen = point === null ? 'M' : 'L'
      return step
    })
    .join('')
}

function round(value: number): number {
  return Math.round(100 * value) / 100
}
