import fc from 'fast-check'
import { expect, test } from 'vitest'
import { paperNames, papers } from '../../src/physics/paper.ts'
import { usualPress } from '../../src/press/presets.ts'
import { sectionDrawing } from '../../src/view/section-drawing.ts'
import type { Shape } from '../../src/view/shapes.ts'
import { pictureOf, setUpOf, tearing } from './a-picture.ts'

const desk = { width: 860, height: 330 }
const smallest = { width: 300, height: 220 }

function letterings(shapes: readonly Shape[]): string[] {
  return shapes.flatMap((shape) => (shape.kind === 'lettering' ? [shape.text] : []))
}

function numbers(shape: Shape): number[] {
  return shape.kind === 'outline' ? shape.points : [shape.x, shape.y]
}

test('the same picture and moment always look the same, however one got there', () => {
  const picture = pictureOf(setUpOf([16, 14, 12, 10]))
  const first = sectionDrawing(picture, desk)
  sectionDrawing({ ...picture, phase: 0.1, unit: 0 }, smallest)
  expect(sectionDrawing({ ...picture }, desk)).toEqual(first)
  expect(sectionDrawing({ ...picture, phase: 0.71 }, desk)).not.toEqual(first)
  expect(sectionDrawing({ ...picture, row: 33 }, desk)).not.toEqual(first)
})

test('every film is told by its letter, and the stack by its pulls where there is room', () => {
  const picture = pictureOf(setUpOf([16, 14, 12, 10]), { phase: 0 })
  expect(letterings(sectionDrawing(picture, smallest))).toEqual(expect.arrayContaining(['B', 'C', 'D', 'blanket']))
  const { films, blanket, strength } = picture.accounts[3]
  const pulls = [blanket, ...films].map(({ pull }) => pull?.toFixed(1))
  const written = letterings(sectionDrawing(picture, desk))
  expect(written).toEqual(expect.arrayContaining([...pulls, `paper ${strength.toFixed(1)}`]))
  expect(letterings(sectionDrawing(picture, smallest))).not.toEqual(expect.arrayContaining(pulls))
})

test('heights are to scale: the ruler and the films agree', () => {
  const picture = pictureOf(setUpOf([16, 14]), { unit: 1, phase: 1, patch: 2 })
  const written = sectionDrawing(picture, desk).filter((shape) => shape.kind === 'lettering')
  const mark = (text: string) => written.find((shape) => shape.text === text)?.y ?? NaN
  const perMicrometre = mark('1 um') - mark('2')
  expect(perMicrometre).toBeGreaterThan(15)
  expect(mark('2') - mark('3')).toBeCloseTo(perMicrometre, 9)
})

test('without motion, five still pictures stand for the nip', () => {
  const picture = pictureOf(setUpOf([16, 14]), { motion: false })
  const looks = Array.from({ length: 51 }, (_, i) =>
    JSON.stringify(sectionDrawing({ ...picture, phase: i / 50 }, desk)),
  )
  expect(new Set(looks).size).toBe(5)
})

test('any legal set-up, place and moment gives shapes of finite numbers within a sensible time', () => {
  const inks = fc.array(fc.integer({ min: 4, max: 30 }), { minLength: 2, maxLength: 8 })
  const share = fc.double({ min: 0, max: 1, noNaN: true })
  fc.assert(
    fc.property(
      inks,
      fc.constantFrom(...paperNames),
      share,
      share,
      fc.nat(255),
      fc.boolean(),
      (tacks, paper, phase, which, bits, web) => {
        const setUp = setUpOf(tacks, { paper: papers[paper], press: usualPress(web ? 'web' : 'sheet-fed') })
        const patch = bits % (1 << tacks.length)
        const unit = Math.min(tacks.length - 1, Math.floor(which * tacks.length))
        const shapes = sectionDrawing(pictureOf(setUp, { patch, unit, phase }), { width: 390, height: 260 })
        expect(shapes.flatMap(numbers).every(Number.isFinite)).toBe(true)
        expect(shapes.length).toBeLessThan(3000)
      },
    ),
    { numRuns: 40 },
  )
})

test('torn paper is drawn with its tufts', () => {
  const setUp = tearing()
  const picture = pictureOf(setUp, { unit: 0 })
  const tornRow = Array.from({ length: 64 }, (_, row) => row).find((row) => {
    const start = row * picture.cells.width + 24
    return picture.cells.stages[0].broke.subarray(start, start + 48).includes(254)
  })
  expect(tornRow).toBeDefined()
  const shapes = sectionDrawing({ ...picture, row: tornRow ?? 0, phase: 1 }, desk)
  const paper = shapes.filter((shape) => shape.kind === 'outline' && shape.fill === picture.theme.paper)
  // The sheet itself, and at least one tuft below the blanket.
  expect(paper.length).toBeGreaterThanOrEqual(2)
})

test('on its way to a unit the sheet shows the time since the last one, and its films darken as they set', () => {
  const setUp = setUpOf([16, 14, 12, 10])
  const { interval } = setUp.press
  const at = (phase: number, unit = 3) => sectionDrawing(pictureOf(setUp, { phase, unit }), desk)
  const half = `${(interval / 2).toFixed(2)} s since unit 3`
  expect(letterings(at(0.1))).toContain(half)
  for (const shapes of [at(0.2), at(0.1, 0)])
    expect(letterings(shapes).filter((text) => /since/.test(text))).toEqual([])

  const brightness = (colour: number) => (colour >> 16) + ((colour >> 8) & 255) + (colour & 255)
  const outlines = (phase: number) =>
    at(phase).flatMap((shape) => (shape.kind === 'outline' && shape.line !== undefined ? [brightness(shape.line)] : []))
  const total = (phase: number) => outlines(phase).reduce((sum, each) => sum + each, 0)
  expect(outlines(0.05).length).toBe(outlines(0).length)
  expect(total(0.05)).toBeLessThan(total(0))
})
