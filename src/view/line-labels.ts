/** What is written on the press line: the units' names, the parts of the current unit, the time between two nips. */
import type { Cylinder } from './cylinder-shapes.ts'
import type { LineLayout } from './line-layout.ts'
import { nameWidth, unitReach } from './line-layout.ts'
import type { BenchPicture } from './picture.ts'
import type { Lettering, Shape, Size } from './shapes.ts'
import { stroke, textWidth } from './shapes.ts'
import type { UnitParts } from './unit-shapes.ts'

export function lineLabels(
  picture: BenchPicture,
  parts: readonly UnitParts[],
  layout: LineLayout,
  size: Size,
): Shape[] {
  return [
    ...parts.flatMap(({ impression }, unit) => unitName(picture, unit, impression, layout, size)),
    ...partNames(picture, parts, layout, size),
    ...dampeningName(picture, parts[picture.unit].dampening, layout),
    ...interval(picture, parts[0].impression.y, layout),
  ]
}

/** The unit's ink as a dot of its colour and its name, or as much of it as fits. */
function unitName(
  picture: BenchPicture,
  unit: number,
  impression: Cylinder,
  { letters, spacing, beside }: LineLayout,
  { height }: Size,
): Shape[] {
  const { words, theme, inkLetters, inkColours } = picture
  const current = unit === picture.unit
  const dot = 0.36 * letters
  const options = [words.units[unit], `${unit + 1} ${inkLetters[unit]}`, inkLetters[unit]]
  const fits = (option: string) => beside || textWidth(option, letters) + letters <= spacing - 8
  const text = options.find(fits) ?? options[2]
  const wide = textWidth(text, letters) + letters
  const left = beside ? impression.x + impression.radius + 6 : impression.x - wide / 2
  const y = beside ? impression.y : height - 0.5 * letters - 4
  const under = y + 0.5 * letters + 3
  return [
    { kind: 'disc', x: left + dot, y, radius: dot, fill: inkColours[unit], line: theme.graphite, width: 1 },
    {
      kind: 'lettering',
      text,
      x: left + letters,
      y,
      size: letters,
      colour: theme.graphite,
      anchor: [0, 0.5],
      bold: current,
    },
    ...(current ? [stroke([left, under, left + wide + 4, under], theme.accent, 3)] : []),
  ]
}

/** Names beside the current unit's parts, or those of the last one, behind which there is more room; none where that is short too. */
function partNames(picture: BenchPicture, parts: readonly UnitParts[], layout: LineLayout, size: Size): Shape[] {
  const here = namesAt(picture, parts, picture.unit, layout, size)
  return here.length > 0 ? here : namesAt(picture, parts, parts.length - 1, layout, size)
}

function namesAt(
  { words, theme }: BenchPicture,
  all: readonly UnitParts[],
  unit: number,
  layout: LineLayout,
  size: Size,
): Shape[] {
  const { radius, spacing, first, letters, beside } = layout
  const parts = all[unit]
  const small = letters - 1
  const x = first + unit * spacing + radius + 10
  const last = unit === all.length - 1
  const end = last ? size.width : first + (unit + 1) * spacing - unitReach * radius
  const impressionEnd = last ? size.width : first + (unit + 1) * spacing - radius
  // Beside its middle stands the unit's own name in some layouts.
  const belowName = beside ? 1.6 * letters : 0
  const named = (
    [
      [words.inkRoller, parts.inkRoller, end, 0],
      [words.plate, parts.plate, end, 0],
      [words.blanket, parts.blanket, end, 0],
      [words.impression, parts.impression, impressionEnd, belowName],
    ] as const
  ).filter(([text, part, , lower]) => text !== '' && part.y + lower + small <= size.height)
  if (radius < 13 || named.some(([text, , limit]) => x + textWidth(text, small) + 4 > limit)) return []
  return named.flatMap(([text, part, , lower]): Shape[] => {
    const y = part.y + lower
    const edge = part.x + Math.sqrt(Math.max(0, part.radius ** 2 - lower ** 2))
    const label: Lettering = { kind: 'lettering', text, x, y, size: small, colour: theme.graphite, anchor: [0, 0.5] }
    return [stroke([edge + 5, y, x - 3, y], theme.graphite, 1, 0.5), label]
  })
}

/** The dampening roller's name to its left, where it fits after the unit before. */
function dampeningName({ words, theme, unit }: BenchPicture, roller: Cylinder | null, layout: LineLayout): Shape[] {
  const { radius, spacing, first, letters } = layout
  const size = letters - 1
  if (!roller || radius < 13 || words.dampening === '') return []
  const x = roller.x - roller.radius - 6
  const free = unit === 0 ? 0 : first + (unit - 1) * spacing + radius
  if (x - textWidth(words.dampening, size) < free + 6) return []
  return [
    {
      kind: 'lettering',
      text: words.dampening,
      x,
      y: roller.y,
      size,
      colour: theme.graphite,
      anchor: [1, 0.5],
    },
  ]
}

/** An arrow from the unit before to this one, or from the first to the second, with the time between their nips. */
function interval({ words, theme, unit }: BenchPicture, middle: number, layout: LineLayout): Shape[] {
  const { radius, spacing, first, letters, beside } = layout
  if (words.interval === '') return []
  const from = Math.max(0, unit - 1)
  const named = beside ? nameWidth([words.units[from]], letters) + 14 : 0
  const start = first + from * spacing + radius + 8 + named
  const end = first + (from + 1) * spacing - radius - 8
  if (end - start < textWidth(words.interval, letters) + 12) return []
  const y = beside ? middle + 0.5 * letters : middle + 0.75 * radius
  const tip = 4
  return [
    stroke([start, y, end, y], theme.graphite, 1, 0.7),
    stroke([start + tip, y - tip, start, y, start + tip, y + tip], theme.graphite, 1, 0.7),
    stroke([end - tip, y - tip, end, y, end - tip, y + tip], theme.graphite, 1, 0.7),
    {
      kind: 'lettering',
      text: words.interval,
      // Beside the first unit's own names, which end left of there.
      x: from === unit && !beside ? start + 0.75 * (end - start) : (start + end) / 2,
      y: y - 3,
      size: letters - 1,
      colour: theme.graphite,
      anchor: [0.5, 1],
    },
  ]
}
