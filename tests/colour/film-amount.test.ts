import { expect, test } from 'vitest'
import { amountOfFilm } from '../../src/colour/film-amount.ts'

test('the film of the solid is the amount 1, half of it 0.5', () => {
  expect(amountOfFilm(1.1, 1.1)).toBe(1)
  expect(amountOfFilm(0.55, 1.1)).toBeCloseTo(0.5, 12)
  expect(amountOfFilm(0, 1.1)).toBe(0)
})

test.each([-0.1, NaN, Infinity])('refuses a film of %d um', (film) => {
  expect(() => amountOfFilm(film, 1)).toThrow(
    new RangeError(`The ink film is ${film} um. It must be a number, 0 or more.`),
  )
})

test.each([0, -1, NaN])('refuses a solid of %d um', (solid) => {
  expect(() => amountOfFilm(1, solid)).toThrow(RangeError)
})
