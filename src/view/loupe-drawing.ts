/** All that stands over the sheet's face in the loupe: its rim, the section's cut, the nip's edge, a scale, a legend. */
import type { BenchPicture } from './picture.ts'
import type { LoupeLayout } from './loupe-layout.ts'
import { cutEnds, leftNip, middleOfRow } from './loupe-layout.ts'
import type { Fate } from './loupe-pixels.ts'
import { fateTones } from './loupe-pixels.ts'
import { shownPhase } from './phases.ts'
import type { Shape } from './shapes.ts'
import { rectangle, stroke, textWidth } from './shapes.ts'
import { darkOf } from './tone.ts'

export function loupeDrawing(picture: BenchPicture, layout: LoupeLayout): Shape[] {
  const { theme } = picture
  const { x, y, radius } = layout
  return [
    ...(picture.face === 'ink' ? nipEdge(picture, layout) : []),
    ...(picture.cut ? cutLine(picture, layout) : []),
    ...scaleBar(picture, layout),
    { kind: 'disc', x, y, radius: radius + 1, line: theme.graphite, width: 5 },
    { kind: 'disc', x, y, radius: radius + 4, line: theme.line, width: 1.5 },
    ...(picture.face === 'marks' ? legend(picture, layout) : []),
  ]
}

/** Half of a chord of the round, `off` px from its middle. */
function halfChord(off: number, radius: number): number {
  return Math.sqrt(Math.max(0, radius * radius - off * off))
}

/** The line at which the sheet is leaving the nip: printed to its right, not yet to its left. */
function nipEdge(picture: BenchPicture, { x, y, radius, cell }: LoupeLayout): Shape[] {
  const columns = picture.cells.width
  const edge = leftNip(shownPhase(picture), columns)
  if (edge === 0 || edge === columns) return []
  const at = x - radius + edge * cell
  const half = halfChord(at - x, radius)
  return [
    stroke([at, y - half, at, y + half], picture.theme.paper, 4),
    stroke([at, y - half, at, y + half], darkOf(picture.theme), 1.5),
  ]
}

/** The row the section shows: bold where it cuts, thin beyond. */
function cutLine(picture: BenchPicture, layout: LoupeLayout): Shape[] {
  const { theme, cells, row } = picture
  const y = middleOfRow(row, layout)
  const half = halfChord(y - layout.y, layout.radius)
  if (half < 4) return []
  const [from, to] = cutEnds(cells, layout)
  const left = Math.max(from, layout.x - half)
  const right = Math.min(to, layout.x + half)
  const tick = 7
  const bold = left < right ? [left, y, right, y] : []
  const ends = bold.length > 0 ? [left, right].map((x) => [x, y - tick, x, y + tick]) : []
  return [
    stroke([layout.x - half, y, layout.x + half, y], theme.paper, 3, 0.7),
    stroke([layout.x - half, y, layout.x + half, y], theme.accent, 1, 1),
    ...[bold, ...ends]
      .filter((line) => line.length > 0)
      .flatMap((line) => [stroke(line, theme.paper, 6), stroke(line, theme.accent, 3)]),
  ]
}

/** um */
const barLengths = [50, 100, 250, 500, 1000]

function scaleBar({ theme, words, cellSide }: BenchPicture, { x, y, radius, cell, letters }: LoupeLayout): Shape[] {
  const perMicrometre = cell / cellSide
  const um = barLengths.findLast((length) => length * perMicrometre <= 0.8 * radius) ?? barLengths[0]
  const half = 0.5 * um * perMicrometre
  const text = words.length(um)
  const wide = Math.max(half, 0.5 * textWidth(text, letters - 1)) + 6
  const at = y + 0.8 * radius
  const dark = darkOf(theme)
  return [
    rectangle(x - wide, at - letters - 6, 2 * wide, letters + 13, {
      fill: theme.paper,
      line: dark,
      width: 1,
    }),
    stroke([x - half, at - 2, x - half, at + 2, x + half, at + 2, x + half, at - 2], dark, 1.75),
    { kind: 'lettering', text, x, y: at - 2, size: letters - 1, colour: dark, anchor: [0.5, 1] },
  ]
}

const fates: Fate[] = ['split', 'lifted', 'torn', 'untouched']

function legend({ theme, words }: BenchPicture, { x, y, radius, letters }: LoupeLayout): Shape[] {
  const tones = fateTones(theme)
  const side = letters
  return fates.flatMap((fate, i): Shape[] => {
    const left = x + (i % 2 === 0 ? -7.5 : 0.5) * letters
    const top = y + radius + 9 + Math.floor(i / 2) * 1.3 * letters
    const [light, dark] = tones[fate]
    const stripes = [0.25, 0.75, 1.25, 1.75].map((place): number[] => {
      const [a, b] = [Math.max(0, place - 1), Math.min(1, place)]
      return [left + a * side, top + (place - a) * side, left + b * side, top + (place - b) * side]
    })
    return [
      rectangle(left, top, side, side, { fill: light, line: theme.graphite, width: 1 }),
      ...(fate === 'lifted' ? stripes.map((line) => stroke(line, dark, 1.75)) : []),
      ...(fate === 'untouched'
        ? [0.3, 0.7].flatMap((dx) =>
            [0.3, 0.7].map((dy): Shape => ({
              kind: 'disc',
              x: left + dx * side,
              y: top + dy * side,
              radius: 1,
              fill: dark,
            })),
          )
        : []),
      {
        kind: 'lettering',
        text: words.marks[fate],
        x: left + 1.5 * side,
        y: top + side / 2,
        size: letters - 1,
        colour: theme.graphite,
        anchor: [0, 0.5],
      },
    ]
  })
}
