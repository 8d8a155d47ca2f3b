import { describe, expect, test } from 'vitest'
import { densities, densitiesMinusPaper, densityFilters, strongestFilter } from '../../src/colour/density.ts'
import { inkSets } from '../../src/colour/paper-optics.ts'
import { bandCount } from '../../src/colour/spectrum.ts'

const grey = (share: number) => new Array<number>(bandCount).fill(share)

describe.each(['E', 'T'] as const)('density, status %s', (status) => {
  test.each([
    [1, 0],
    [0.1, 1],
    [0.01, 2],
  ])('a grey that turns back %d of all light reads %d through every filter', (share, density) => {
    const read = densities(grey(share), status)
    for (const filter of densityFilters) expect(read[filter]).toBeCloseTo(density, 12)
  })

  test('minus paper, the bare paper reads 0', () => {
    const { paper } = inkSets.newsprint
    const read = densitiesMinusPaper(paper, paper, status)
    for (const filter of densityFilters) expect(read[filter]).toBe(0)
  })

  test('a surface that turns back nothing has no density', () => {
    expect(() => densities(grey(0), status)).toThrow(
      new RangeError('The reflectance seen through the red filter is 0. A density needs some light, above 0.'),
    )
    expect(() => densities(grey(NaN), status)).toThrow(RangeError)
  })
})

test('an ink is judged by the filter that reads it highest', () => {
  expect(strongestFilter({ red: 1.3, green: 0.4, blue: 0.2 })).toBe('red')
  expect(strongestFilter({ red: 0.2, green: 1.4, blue: 0.6 })).toBe('green')
  expect(strongestFilter({ red: 0, green: 0.1, blue: 1 })).toBe('blue')
})
