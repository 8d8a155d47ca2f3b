import fc from 'fast-check'
import { expect, test } from 'vitest'
import { bandOutlines } from '../../src/view/film-bands.ts'
import { areaOf } from './a-picture.ts'

test('the area of the outlines is the film, step by step', () => {
  const height = fc.oneof(fc.constant(0), fc.double({ min: 0.5, max: 80, noNaN: true }))
  fc.assert(
    fc.property(
      fc.array(height, { minLength: 1, maxLength: 48 }),
      fc.double({ min: 4, max: 30, noNaN: true }),
      (film, column) => {
        const bottom = new Float64Array(film.length).fill(200)
        const top = Float64Array.from(film, (px) => 200 - px)
        const drawn = bandOutlines({ top, bottom }, { left: 10, column }).reduce(
          (sum, points) => sum + areaOf(points),
          0,
        )
        // Where two stretches stand a single empty column apart, both run out into it.
        expect(drawn).toBeCloseTo(
          film.reduce((sum, px) => sum + px * column, 0),
          5,
        )
      },
    ),
  )
})

test('a film too thin to be seen is not outlined, and breaks part the outline', () => {
  const bottom = new Float64Array(7).fill(50)
  const top = Float64Array.from([0, 5, 5, 0.1, 5, 0, 0], (px) => 50 - px)
  expect(bandOutlines({ top, bottom }, { left: 0, column: 10 })).toHaveLength(2)
})
