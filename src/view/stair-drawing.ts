/** The stair of tacks as shapes: every ink a tread at the height of its tack, a step up hatched and told. */
import type { PictureTheme } from './picture.ts'
import type { Shape, Size } from './shapes.ts'
import { rectangle, stroke } from './shapes.ts'

export interface StairTread {
  name: string
  letter: string
  /** tack units */
  tack: number
  /** 0xRRGGBB */
  colour: number
}

export interface StairWords {
  tack: (tack: number) => string
  /** such as "2 up" */
  stepUp: (by: number) => string
}

/** px */
const letters = 13
const inkHigh = 12
const head = 30
const foot = 24

export function stairDrawing(
  treads: readonly StairTread[],
  { width, height }: Size,
  theme: PictureTheme,
  words: StairWords,
): Shape[] {
  const highest = Math.max(...treads.map(({ tack }) => tack))
  const floor = height - foot
  const wide = (width - 2) / treads.length
  const topOf = (tack: number) => floor - ((floor - head) * tack) / highest
  return [
    ...treads.flatMap(({ name, letter, tack, colour }, place): Shape[] => {
      const [x, y] = [1 + place * wide, topOf(tack)]
      const middle = x + wide / 2
      const rise = place === 0 ? 0 : tack - treads[place - 1].tack
      const say = (text: string, at: number, bold: boolean): Shape => ({
        kind: 'lettering',
        text,
        x: middle,
        y: at,
        size: letters,
        colour: theme.graphite,
        anchor: [0.5, 0],
        bold,
      })
      return [
        rectangle(x, y, wide, floor - y, { fill: theme.ground, line: theme.graphite, width: 1.25 }),
        rectangle(x, y, wide, Math.min(inkHigh, floor - y), { fill: colour, line: theme.graphite, width: 1.25 }),
        ...(rise > 0 ? hatching(x, y, topOf(treads[place - 1].tack), theme) : []),
        say(words.tack(tack), y - 18, true),
        say(letter, y + inkHigh + 4, true),
        ...(rise > 0 ? [say(words.stepUp(rise), y + inkHigh + 22, false)] : []),
        say(name, floor + 4, false),
      ]
    }),
    stroke([0, floor, width, floor], theme.graphite, 2),
  ]
}

/** The face of a step up, from its top to the tread before it. */
function hatching(x: number, top: number, bottom: number, { graphite, ground }: PictureTheme): Shape[] {
  const wide = 10
  const lines: Shape[] = []
  for (let y = top + 4; y < bottom; y += 5) lines.push(stroke([x, y, x + wide, Math.max(top, y - wide)], graphite, 1.5))
  return [rectangle(x, top, wide, bottom - top, { fill: ground, line: graphite, width: 1 }), ...lines]
}
