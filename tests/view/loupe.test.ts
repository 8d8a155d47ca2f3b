import { expect, test } from 'vitest'
import { nothingMet, paperTorn } from '../../src/press/cell-stage.ts'
import { meanFilmByInk } from '../../src/press/cells.ts'
import { loupeDrawing } from '../../src/view/loupe-drawing.ts'
import { cutEnds, leftNip, loupeLayout, middleOfRow, rowAt } from '../../src/view/loupe-layout.ts'
import { cutRound, fateOf, fateTones, inkInCells, isDark, paintMarks } from '../../src/view/loupe-pixels.ts'
import { pictureOf, setUpOf, tearing } from './a-picture.ts'

const picture = pictureOf(setUpOf([10, 12, 14, 16]))
const layout = loupeLayout({ width: 300, height: 300 }, picture.cells, picture)

test('a row is found again where it is drawn', () => {
  for (let row = 0; row < 64; row++) expect(rowAt(middleOfRow(row, layout), layout, 64)).toBe(row)
  expect(rowAt(-50, layout, 64)).toBe(0)
  expect(rowAt(1000, layout, 64)).toBe(63)
})

test('the face holds the ink of the cells, unit by unit', () => {
  const { cells } = picture
  const films = inkInCells(cells, 3)
  meanFilmByInk(cells).forEach((mean, ink) => {
    const sum = films[ink].reduce((total, um) => total + um, 0)
    expect(sum / films[ink].length).toBeCloseTo(mean, 4)
  })
  expect(inkInCells(cells, -1).every((film) => film.every((um) => um === 0))).toBe(true)
  expect(inkInCells(cells, 0)[1].every((um) => um === 0)).toBe(true)
})

test('the sheet leaves the nip by its right edge first, and wholly by the end', () => {
  const edges = Array.from({ length: 21 }, (_, i) => leftNip(i / 20, 192))
  expect(edges[0]).toBe(192)
  expect(edges.at(-1)).toBe(0)
  expect(edges).toEqual([...edges].sort((a, b) => b - a))
})

test('marks tell what broke: own film, an earlier one, paper, nothing', () => {
  expect([3, 1, paperTorn, nothingMet].map((code) => fateOf(code, 3))).toEqual(['split', 'lifted', 'torn', 'untouched'])
})

test('every cell is marked with the tone of its fate', () => {
  const { cells, theme } = pictureOf(tearing())
  const { width } = cells
  const pixels = new Uint8ClampedArray(4 * width * cells.height)
  paintMarks(cells.stages[1], { unit: 1, width }, theme, pixels)
  const tones = fateTones(theme)
  const seen = new Set<string>()
  cells.stages[1].broke.forEach((code, cell) => {
    const fate = fateOf(code, 1)
    const tone = tones[fate][isDark(fate, cell % width, Math.floor(cell / width)) ? 1 : 0]
    const [red, green, blue] = pixels.subarray(4 * cell, 4 * cell + 3)
    expect((red << 16) | (green << 8) | blue).toBe(tone)
    seen.add(fate)
  })
  expect(seen).toEqual(new Set(['split', 'lifted', 'torn']))
})

test('outside its round the loupe is clear', () => {
  const pixels = new Uint8ClampedArray(4 * 100 * 100).fill(255)
  cutRound(pixels, 100, 100)
  expect(pixels[3]).toBe(0)
  expect(pixels[4 * (50 * 100 + 50) + 3]).toBe(255)
  const clear = pixels.filter((value, i) => i % 4 === 3 && value === 0).length
  expect(clear / 10_000).toBeCloseTo(1 - Math.PI / 4, 2)
})

test('the scale bar is as long as it says', () => {
  const shapes = loupeDrawing(picture, layout)
  const label = shapes.find((shape) => shape.kind === 'lettering')
  const bar = shapes.filter((shape) => shape.kind === 'outline' && shape.width === 1.75)
  expect(bar).toHaveLength(1)
  const points = bar[0].kind === 'outline' ? bar[0].points : []
  const um = parseFloat(label?.kind === 'lettering' ? label.text : '')
  expect((points[4] - points[2]) / layout.cell).toBeCloseTo(um / picture.cellSide, 6)
})

test('the cut is drawn over the columns that the section shows', () => {
  const [from, to] = cutEnds(picture.cells, layout)
  expect((to - from) / layout.cell).toBeCloseTo(48, 9)
  expect((from + to) / 2).toBeCloseTo(layout.x, 9)
})
