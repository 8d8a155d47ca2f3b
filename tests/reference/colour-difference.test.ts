import { expect, test } from 'vitest'
import { colourDifference } from '../../src/colour/colour-difference.ts'
import { ciede2000Pairs } from './ciede2000-pairs.ts'

test('all 34 published pairs are there', () => {
  expect(ciede2000Pairs).toHaveLength(34)
})

test.each(ciede2000Pairs)('dE00 between %j and %j is %d, either way round', (first, second, published) => {
  expect(Math.abs(colourDifference(first, second) - published)).toBeLessThan(1e-4)
  expect(Math.abs(colourDifference(second, first) - published)).toBeLessThan(1e-4)
})
