/** What is written on the section: the ruler in um, the scale along the paper, names, and a letter in every film. */
import type { Band } from './film-bands.ts'
import { timePassed } from './nip-curve.ts'
import { shownPhase } from './phases.ts'
import type { BenchPicture, PictureTheme } from './picture.ts'
import type { SectionLayout } from './section-layout.ts'
import type { Shape, Size } from './shapes.ts'
import { rectangle, stroke, textWidth } from './shapes.ts'
import { darkOf } from './tone.ts'

export function sectionLabels(
  picture: BenchPicture,
  layout: SectionLayout,
  bands: { sheet: Band[]; blanket: Band[] },
  size: Size,
): Shape[] {
  const { theme, words } = picture
  const { left, letters } = layout
  return [
    ...ruler(picture, layout),
    ...lengthBar(picture, layout, size),
    ...letterChips(bands.sheet, layout, picture),
    ...letterChips(bands.blanket, layout, picture),
    ...sinceLastUnit(picture, layout, size),
    {
      kind: 'lettering',
      text: words.blanket,
      x: left + 8,
      y: 5,
      size: letters,
      colour: theme.graphite,
      anchor: [0, 0],
    },
    ...onPaper(paperName(picture), left + 8, size.height - 5, letters, theme),
  ]
}

/** A line of text in the paper, on ground of its own: a fibre behind it would strike it through. */
function onPaper(text: string, x: number, y: number, size: number, theme: PictureTheme): Shape[] {
  return [
    rectangle(x - 3, y - 1.15 * size, textWidth(text, size) + 3, 1.15 * size, { fill: theme.paper }),
    { kind: 'lettering', text, x, y, size, colour: darkOf(theme), anchor: [0, 1] },
  ]
}

/**
 * While the sheet is on its way: how long the films on it have been setting since the unit before. It stands in the paper,
 * as it is told of the sheet, between the paper's name and the scale; where there is no room for it, it is left out.
 */
function sinceLastUnit(picture: BenchPicture, layout: SectionLayout, { height }: Size): Shape[] {
  const { unit, run, words, theme } = picture
  const { left, letters } = layout
  const passed = timePassed(shownPhase(picture))
  if (unit === 0 || passed >= 1) return []
  const text = words.since(passed * run.setUp.press.interval, unit - 1)
  const x = left + 8 + textWidth(paperName(picture), letters) + 1.5 * letters
  const end = lengthBarOf(picture, layout).start - letters
  if (x + textWidth(text, letters) > end) return []
  return onPaper(text, x, height - 5, letters, theme)
}

function paperName({ words }: BenchPicture): string {
  return `${words.paper} ${words.notToScale}`
}

/** Heights above the paper in um, beside the cut. */
function ruler(
  { theme, words }: BenchPicture,
  { left, floor, perMicrometre, widestGap, letters }: SectionLayout,
): Shape[] {
  const x = left - 6
  const most = Math.floor((floor - widestGap * 0.4) / perMicrometre)
  const step = perMicrometre * 1 >= letters * 1.25 ? 1 : perMicrometre * 2 >= letters * 1.25 ? 2 : 5
  const shapes: Shape[] = [stroke([x, floor, x, floor - most * perMicrometre], theme.graphite, 1.25)]
  for (let um = 0; um <= most; um++) {
    const y = floor - um * perMicrometre
    const named = um % step === 0
    shapes.push(stroke([x - (named ? 6 : 3), y, x, y], theme.graphite, 1.25))
    if (named) {
      shapes.push({
        kind: 'lettering',
        text: um === step ? words.length(um) : String(um),
        x: x - 8,
        y,
        size: letters - 2,
        colour: theme.graphite,
        anchor: [1, 0.5],
      })
    }
  }
  return shapes
}

/** um a scale bar may stand for. */
const barLengths = [10, 20, 50, 100, 200, 500]

/** um it stands for, and px between which it runs. */
function lengthBarOf({ cellSide }: BenchPicture, { left, right, column }: SectionLayout) {
  const perMicrometre = column / cellSide
  const um = barLengths.findLast((length) => length * perMicrometre <= 0.25 * (right - left)) ?? barLengths[0]
  const end = right - 10
  return { um, start: end - um * perMicrometre, end }
}

function lengthBar(picture: BenchPicture, layout: SectionLayout, { height }: Size): Shape[] {
  const { um, start, end } = lengthBarOf(picture, layout)
  const { letters } = layout
  const dark = darkOf(picture.theme)
  const y = height - 9
  const text = picture.words.length(um)
  const size = letters - 1
  const middle = (start + end) / 2
  const half = textWidth(text, size) / 2 + 3
  return [
    // On ground of its own, as ink that the paper has taken in may lie behind it.
    rectangle(middle - half, y - 4 - size, 2 * half, size, { fill: picture.theme.paper }),
    stroke([start, y - 4, start, y, end, y, end, y - 4], dark, 1.5),
    { kind: 'lettering', text, x: middle, y: y - 4, size, colour: dark, anchor: [0.5, 1] },
  ]
}

/** px: a film thinner than this carries no letter. */
const thinnestLettered = 5

/** Every ink's letter on a small round chip in its film, each a step further in than the one before: a stair. */
function letterChips(bands: readonly Band[], layout: SectionLayout, { theme }: BenchPicture): Shape[] {
  const { left, right, column, letters } = layout
  const radius = 0.62 * letters
  const dark = darkOf(theme)
  let next = radius + 6
  return bands.flatMap(({ ink, top, bottom }): Shape[] => {
    const wanted = Math.floor(next / column)
    const i = top.findIndex((y, place) => place >= wanted && bottom[place] - y >= thinnestLettered)
    if (i < 0) return []
    const x = Math.min(left + (i + 0.5) * column, right - radius)
    const y = (top[i] + bottom[i]) / 2
    next = x - left + 2.1 * radius
    return [
      { kind: 'disc', x, y, radius, fill: theme.paper, line: dark, width: 1 },
      { kind: 'lettering', text: ink.letter, x, y, size: letters - 1, colour: dark, anchor: [0.5, 0.5], bold: true },
    ]
  })
}
