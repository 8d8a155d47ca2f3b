/** Drawings beside each other in one, each with its words over it. */
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

export function sideBySide(sides: readonly Side[]): Drawing {
  const captions = sides.map(({ caption, drawing }) => wrapped(caption, drawing.width))
  const head =
    Math.max(...captions.map(({ length }) => length)) * lineHigh + (captions.some((each) => each.length) ? 8 : 0)
  let x = 0
  const markup = sides.map(({ drawing }, side) => {
    const words = captions[side].map((line, at) =>
      tag('text', { x: 0, y: (at + 0.8) * lineHigh, 'font-size': letters, 'font-weight': 600, fill: '#1c1b1a' }, line),
    )
    const moved = `<g transform="translate(${x} 0)">\n${words.join('\n')}\n<g transform="translate(0 ${head})">\n${ownNames(drawing.markup, side)}\n</g>\n</g>`
    x += drawing.width + gap
    return moved
  })
  return {
    width: x - gap,
    height: head + Math.max(...sides.map(({ drawing }) => drawing.height)),
    markup: markup.join('\n'),
  }
}

/** A name stands once in a file: what a drawing calls its own parts is told apart by its side. */
function ownNames(markup: string, side: number): string {
  return markup.replaceAll(/(\bid="|url\(#)([^")]+)/g, `$1$2-${side}`)
}
