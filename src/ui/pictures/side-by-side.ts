/** Drawings beside each other in one, or one below the other, each with its words over it. */
import type { Drawing } from '../../view/svg-file.ts'
import { wrapped } from '../../view/svg-file.ts'
import { tag } from '../../view/svg-shapes.ts'

export interface Side {
  caption: string
  drawing: Drawing
}

/** px */
const gap = 24
const lineHigh = 18
const letters = 13
/** px that one of two drawings may be wide, so that letters print as large as in a picture alone */
export const sideWide = (760 - gap) / 2

export function sideBySide(sides: readonly Side[], way: 'beside' | 'below' = 'beside'): Drawing {
  const captions = sides.map(({ caption, drawing }) => wrapped(caption, drawing.width))
  const lines = Math.max(...captions.map(({ length }) => length))
  const head = lines * lineHigh + (lines > 0 ? 8 : 0)
  let [x, y] = [0, 0]
  const markup = sides.map(({ drawing }, side) => {
    const words = captions[side].map((line, at) =>
      tag('text', { x: 0, y: (at + 0.8) * lineHigh, 'font-size': letters, 'font-weight': 600, fill: '#1c1b1a' }, line),
    )
    const moved = `<g transform="translate(${x} ${y})">\n${words.join('\n')}\n<g transform="translate(0 ${head})">\n${ownNames(drawing.markup, side)}\n</g>\n</g>`
    if (way === 'beside') x += drawing.width + gap
    else y += head + drawing.height + gap
    return moved
  })
  return {
    width: way === 'beside' ? x - gap : Math.max(...sides.map(({ drawing }) => drawing.width)),
    height: way === 'beside' ? head + Math.max(...sides.map(({ drawing }) => drawing.height)) : y - gap,
    markup: markup.join('\n'),
  }
}

/** A name stands once in a file: what a drawing calls its own parts is told apart by its side. */
function ownNames(markup: string, side: number): string {
  return markup.replaceAll(/(\bid="|url\(#)([^")]+)/g, `$1$2-${side}`)
}
