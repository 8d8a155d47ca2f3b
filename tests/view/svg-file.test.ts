// @vitest-environment jsdom
import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { lineDrawing } from '../../src/view/line-drawing.ts'
import { pullBars } from '../../src/view/pull-bars.ts'
import { sectionDrawing } from '../../src/view/section-drawing.ts'
import type { Shape } from '../../src/view/shapes.ts'
import { stairDrawing } from '../../src/view/stair-drawing.ts'
import { svgFile } from '../../src/view/svg-file.ts'
import { svgOfShapes } from '../../src/view/svg-shapes.ts'
import { pictureOf, setUpOf, tearing } from './a-picture.ts'

const size = { width: 760, height: 430 }
const caption = { title: 'Section <1>', description: 'A & B', lines: ['black "16", cyan 14', 'Tackstair'] }

/** Throws where the text is no XML. */
function parsed(text: string): Element {
  const { documentElement } = new DOMParser().parseFromString(text, 'image/svg+xml')
  expect(documentElement.querySelector('parsererror')?.textContent).toBeUndefined()
  return documentElement
}

function fileOf(shapes: readonly Shape[], width = 170): Element {
  return parsed(svgFile({ ...size, markup: svgOfShapes(shapes) }, caption, width))
}

const picture = pictureOf(tearing())
const words = { tack: String, stepUp: (by: number) => `${by} up` }
const treads = [14, 12, 16].map((tack, unit) => ({
  name: `ink ${unit + 1}`,
  letter: 'ABC'[unit],
  tack,
  colour: 0x336699,
}))
const drawings: Record<string, readonly Shape[]> = {
  section: sectionDrawing(picture, size),
  line: lineDrawing(picture, size),
  pulls: pullBars(pictureOf(setUpOf([16, 14, 12, 10])), { bars: 8, barRoom: 700, floor: 400, letters: 13 }, 1),
  stair: stairDrawing(treads, size, picture.theme, words),
}

test.each(Object.entries(drawings))(
  'the %s is a whole SVG with title and description, and nothing that runs',
  (_, shapes) => {
    const svg = fileOf(shapes)
    expect(svg.getAttribute('width')).toBe('170mm')
    expect(svg.querySelector('title')?.textContent).toBe(caption.title)
    expect(svg.querySelector('desc')?.textContent).toBe(caption.description)
    expect(svg.querySelectorAll('script, foreignObject, [onload], [href], style').length).toBe(0)
    expect(svg.querySelectorAll('path, circle').length).toBeGreaterThan(3)
    const lettered = shapes.flatMap((shape) => (shape.kind === 'lettering' ? [shape.text] : []))
    const texts = [...svg.querySelectorAll('text')].map(({ textContent }) => textContent)
    expect(texts).toEqual([...lettered, ...caption.lines])
  },
)

test.each(Object.entries(drawings))('no number of the %s is undefined or endless', (_, shapes) => {
  for (const element of fileOf(shapes).querySelectorAll('*'))
    for (const { value } of element.attributes) expect(value).not.toMatch(/NaN|Infinity|undefined/)
})

test('the stair stands within its picture, higher tacks higher, and a step up is told', () => {
  const numbers = drawings['stair'].flatMap((shape) => (shape.kind === 'lettering' ? [shape] : []))
  for (const { x, y } of numbers) {
    expect(x).toBeGreaterThan(0)
    expect(x).toBeLessThan(size.width)
    expect(y).toBeGreaterThanOrEqual(0)
    expect(y).toBeLessThan(size.height)
  }
  const heightOf = (text: string) => numbers.find((shape) => shape.text === text)?.y ?? NaN
  expect(heightOf('16')).toBeLessThan(heightOf('14'))
  expect(heightOf('14')).toBeLessThan(heightOf('12'))
  expect(numbers.map(({ text }) => text)).toContain('4 up')
})

test('a file keeps its shape at every width, and a long caption goes over several lines', () => {
  const lines = ['tack '.repeat(80), 'Tackstair']
  const svg = parsed(svgFile({ ...size, markup: '' }, { ...caption, lines }, 85))
  const [, , wide, high] = (svg.getAttribute('viewBox') ?? '').split(' ').map(Number)
  expect(parseFloat(svg.getAttribute('height') ?? '')).toBeCloseTo((85 * high) / wide, 1)
  expect(high).toBeGreaterThan(size.height + 3 * 18)
  expect(svg.querySelectorAll('text').length).toBeGreaterThan(3)
})

test('any text at all leaves the file whole', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      const lettering: Shape = { kind: 'lettering', text, x: 0, y: 0, size: 13, colour: 0, anchor: [0, 0] }
      const markup = svgOfShapes([lettering])
      parsed(svgFile({ ...size, markup }, { title: text, description: text, lines: [] }, 100))
    }),
    { seed: 6, numRuns: 200 },
  )
})
