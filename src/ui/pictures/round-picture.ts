/** A face of the sheet for a file and for paper: round, as a loupe shows it, with its words below. */
import type { Drawing } from '../../view/svg-file.ts'
import { tag } from '../../view/svg-shapes.ts'

/** px: as the bench's loupe */
const across = 480
const margin = 8
const foot = 26

/** `address` is that of a square picture. */
export function roundPicture(address: string, caption: string): Drawing {
  const middle = across / 2
  const radius = middle - margin
  const box = { x: margin, y: margin, width: 2 * radius, height: 2 * radius }
  const ring = { cx: middle, cy: middle, r: radius }
  return {
    width: across,
    height: across + (caption === '' ? 0 : foot),
    markup: [
      `<clipPath id="round">${tag('circle', ring)}</clipPath>`,
      tag('image', { ...box, 'image-rendering': 'pixelated', 'clip-path': 'url(#round)', href: address }),
      tag('circle', { ...ring, fill: 'none', stroke: '#1c1b1a', 'stroke-width': 2 }),
      ...(caption === ''
        ? []
        : [
            tag(
              'text',
              { x: middle, y: across + 14, 'font-size': 13, fill: '#1c1b1a', 'text-anchor': 'middle' },
              caption,
            ),
          ]),
    ].join('\n'),
  }
}
