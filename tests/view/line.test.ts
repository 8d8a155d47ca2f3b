import { expect, test } from 'vitest'
import { usualPress } from '../../src/press/presets.ts'
import type { Cylinder } from '../../src/view/cylinder-shapes.ts'
import { lineDrawing } from '../../src/view/line-drawing.ts'
import { lineFilms } from '../../src/view/line-films.ts'
import { lineLayout } from '../../src/view/line-layout.ts'
import { printedStretches, sheetExtent } from '../../src/view/sheet-shapes.ts'
import { spotPlace } from '../../src/view/sheet-travel.ts'
import { unitParts } from '../../src/view/unit-shapes.ts'
import { pictureOf, setUpOf } from './a-picture.ts'

const picture = pictureOf(setUpOf([16, 14, 12, 10]))
const layout = lineLayout({ width: 1086, height: 190 }, picture.words.units, false)

test('the sheet only ever moves on, and each nip ends where the next begins', () => {
  for (let unit = 0; unit < 8; unit++) {
    expect(spotPlace(unit, 1)).toBeCloseTo(spotPlace(unit + 1, 0), 12)
    const places = Array.from({ length: 101 }, (_, i) => spotPlace(unit, i / 100))
    expect(places).toEqual([...places].sort((a, b) => a - b))
  }
})

test('the spot is at the nip when its films begin to part', () => {
  expect(spotPlace(2, 0.5)).toBe(2)
})

test('cylinders roll on sheet and on each other without slipping, neighbours turning against each other', () => {
  const before = unitParts(picture, 1, 1, layout)
  const after = unitParts(picture, 1, 1.3, layout)
  const rolled = (part: 'inkRoller' | 'plate' | 'blanket' | 'impression') =>
    (after[part].turned - before[part].turned) * after[part].radius
  const moved = 0.3 * layout.spacing
  expect(rolled('impression')).toBeCloseTo(moved, 9)
  expect(rolled('blanket')).toBeCloseTo(-moved, 9)
  expect(rolled('plate')).toBeCloseTo(moved, 9)
  expect(rolled('inkRoller')).toBeCloseTo(-moved, 9)
})

test('a waterless press has no dampening roller', () => {
  const waterless = pictureOf(setUpOf([16, 14], { press: { ...usualPress('sheet-fed'), waterless: true } }))
  expect(unitParts(picture, 0, 0, layout).dampening).not.toBeNull()
  expect(unitParts(waterless, 0, 0, layout).dampening).toBeNull()
})

test('every stretch of the sheet has passed just the nips to its left', () => {
  const extent = sheetExtent('sheet-fed', 2, layout, 1086)
  const stretches = printedStretches('sheet-fed', extent, 4, layout)
  expect(stretches.map(({ passed }) => passed)).toEqual([2, 3])
  const nip = layout.first + 2 * layout.spacing
  expect(stretches[0].to).toBe(nip)
  expect(stretches[1].from).toBe(nip)
})

test('a web runs through the whole line', () => {
  expect(sheetExtent('web', 0.3, layout, 1086)).toEqual({ from: 0, to: 1086 })
})

test('rollers carry the run: half of what meets stays on each side, and the blanket loses what the sheet takes', () => {
  const settled = pictureOf(setUpOf([16, 14, 12, 10], { reading: 'settled' }))
  const { units, sheet } = lineFilms(settled)
  units.forEach(({ rollerBefore, rollerAfter, plateBefore, plateAfter, blanketBefore, blanketAfter }, unit) => {
    expect(rollerBefore.thickness).toBeCloseTo(4, 6)
    expect(rollerAfter.thickness).toBeCloseTo(plateBefore.thickness, 12)
    expect(rollerBefore.thickness + plateAfter.thickness).toBeCloseTo(rollerAfter.thickness + plateBefore.thickness, 6)
    expect(plateAfter.thickness).toBeCloseTo(blanketBefore.thickness, 12)
    const on = (passed: number) => sheet[passed].layers.reduce((sum, um) => sum + um, 0)
    expect(blanketBefore.thickness - blanketAfter.thickness).toBeCloseTo(on(unit + 1) - on(unit), 6)
  })
})

test.each([2, 3, 4, 6, 8])('%i units fit between 320 and 3840 px', (units) => {
  const many = pictureOf(setUpOf(Array.from({ length: units }, (_, i) => 16 - i)))
  for (const width of [320, 390, 700, 1086, 3840]) {
    const size = { width, height: 190 }
    const fitted = lineLayout(size, many.words.units, false)
    for (let unit = 0; unit < units; unit++) {
      const { dampening, ...others } = unitParts(many, unit, 0.3, fitted)
      const parts: (Cylinder | null)[] = [dampening, ...Object.values(others)]
      for (const part of parts) {
        if (!part) throw new Error('A dampened press has a dampening roller.')
        expect(part.x - part.radius).toBeGreaterThanOrEqual(0)
        expect(part.x + part.radius).toBeLessThanOrEqual(width)
        expect(part.y - part.radius).toBeGreaterThanOrEqual(0)
        expect(part.y + part.radius).toBeLessThanOrEqual(size.height)
      }
    }
  }
})

test('the same picture always looks the same, and the current unit is marked', () => {
  const size = { width: 1086, height: 190 }
  const first = lineDrawing(picture, size)
  lineDrawing({ ...picture, phase: 0.2, unit: 1 }, size)
  expect(lineDrawing({ ...picture }, size)).toEqual(first)
  const marks = (unit: number) =>
    lineDrawing({ ...picture, unit }, size).filter(
      (shape) => shape.kind === 'disc' && shape.line === picture.theme.accent,
    )
  expect(marks(0)).toMatchObject([{ x: layout.first }])
  expect(marks(3)).toMatchObject([{ x: layout.first + 3 * layout.spacing }])
})

test('a sheet that has left the last unit is still in the picture, at any width', () => {
  for (const units of [2, 4, 8]) {
    const many = pictureOf(setUpOf(Array.from({ length: units }, (_, i) => 16 - i)))
    for (const width of [390, 518, 1086]) {
      const fitted = lineLayout({ width, height: 256 }, many.words.units, false)
      const { to } = sheetExtent('sheet-fed', spotPlace(units - 1, 1), fitted, width)
      expect(to).toBeLessThanOrEqual(width + 1e-9)
    }
  }
})

test('parts are named beside the unit looked at, or beside the last one where there is no room, the lower cylinder with them', () => {
  const two = pictureOf(setUpOf([16, 14]), { unit: 0 })
  const named = (width: number, height: number) =>
    lineDrawing(two, { width, height }).flatMap((shape) =>
      shape.kind === 'lettering' && ['plate', 'impression'].includes(shape.text)
        ? [[shape.text, shape.x] as const]
        : [],
    )
  const wide = lineLayout({ width: 1086, height: 190 }, two.words.units, false)
  for (const [, x] of named(1086, 190)) expect(x).toBeLessThan(wide.first + wide.spacing)
  const narrow = lineLayout({ width: 518, height: 288 }, two.words.units, false)
  expect(named(518, 288).map(([text]) => text)).toEqual(['plate', 'impression'])
  for (const [, x] of named(518, 288)) expect(x).toBeGreaterThan(narrow.first + narrow.spacing)
})
