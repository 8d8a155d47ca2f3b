/** The plain shapes of a picture as SVG, letters as letters: what brush.ts does on the page, for files and paper. */
import type { Shape } from './shapes.ts'

/** Parts of an em from a line's top to where its letters stand, and the line's height: as pixi measures Source Sans 3. */
const ascent = 0.98
const lineHeight = 1.25

export function svgOfShapes(shapes: readonly Shape[]): string {
  // Letters stand above all else, as on the page.
  const letters = shapes.filter(({ kind }) => kind === 'lettering')
  const others = shapes.filter(({ kind }) => kind !== 'lettering')
  return [...others, ...letters].map(svgOf).join('\n')
}

function svgOf(shape: Shape): string {
  switch (shape.kind) {
    case 'outline':
      return tag('path', { d: pathOf(shape.points, shape.closed), ...lookOf(shape, shape.closed) })
    case 'disc':
      return tag('circle', { cx: round(shape.x), cy: round(shape.y), r: round(shape.radius), ...lookOf(shape, true) })
    case 'arc':
      return tag('path', { d: arcOf(shape), ...lookOf(shape, false), 'stroke-linecap': 'butt' })
    case 'lettering': {
      const { text, x, y, size, colour, anchor, bold = false, turn = 0 } = shape
      const baseline = y + size * (ascent - lineHeight * anchor[1])
      const degrees = round((turn * 180) / Math.PI)
      const turned = degrees === 0 ? {} : { transform: `rotate(${degrees} ${round(x)} ${round(y)})` }
      const look = { fill: hex(colour), 'font-size': size, 'font-weight': bold ? 600 : 400 }
      return tag(
        'text',
        { x: round(x), y: round(baseline), ...look, 'text-anchor': anchorOf(anchor[0]), ...turned },
        text,
      )
    }
  }
}

interface Look {
  fill?: number
  line?: number
  width?: number
  opacity?: number
}

function lookOf({ fill, line, width = 1, opacity = 1 }: Look, filled: boolean) {
  return {
    fill: filled && fill !== undefined ? hex(fill) : 'none',
    ...(line === undefined
      ? {}
      : { stroke: hex(line), 'stroke-width': width, 'stroke-linecap': 'round', 'stroke-linejoin': 'round' }),
    ...(opacity === 1 ? {} : { opacity }),
  }
}

export function tag(name: string, attributes: Readonly<Record<string, string | number>>, text?: string): string {
  const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(String(value))}"`)
  const start = `<${name}${written.join('')}`
  return text === undefined ? `${start}/>` : `${start}>${escaped(text)}</${name}>`
}

/** Text as it may stand in XML, without the characters that may not stand there at all. */
export function escaped(text: string): string {
  return text
    .replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
}

export function pathOf(points: readonly number[], closed: boolean): string {
  const places = points.flatMap((x, at) => (at % 2 === 0 ? [`${round(x)} ${round(points[at + 1])}`] : []))
  return `M${places.join('L')}${closed ? 'Z' : ''}`
}

export function arcOf({ x, y, radius, from, to }: Extract<Shape, { kind: 'arc' }>): string {
  const at = (angle: number) => `${round(x + radius * Math.cos(angle))} ${round(y + radius * Math.sin(angle))}`
  return `M${at(from)}A${radius} ${radius} 0 ${to - from > Math.PI ? 1 : 0} 1 ${at(to)}`
}

export function anchorOf(share: number): string {
  return share === 0 ? 'start' : share === 1 ? 'end' : 'middle'
}

export function hex(colour: number): string {
  return `#${colour.toString(16).padStart(6, '0')}`
}

function round(value: number): number {
  return Math.round(100 * value) / 100
}
