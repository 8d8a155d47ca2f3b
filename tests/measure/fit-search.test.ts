import { expect, test } from 'vitest'
import type { Bounds, Compute, FitProgress } from '../../src/measure/fit-search.ts'
import { searchNearest } from '../../src/measure/fit-search.ts'

const wide: Bounds = { least: -100, most: 100 }

function searched(read: number[], compute: Compute, start: number[], bounds: Bounds[]) {
  const search = searchNearest(read, compute, start, bounds)
  const progress: FitProgress[] = []
  let next = search.next()
  for (; !next.done; next = search.next()) progress.push(next.value)
  return { ...next.value, progress }
}

test('what is computed exactly already is left as it is, in no step', () => {
  const { values, steps, progress } = searched([3, 4], ([a, b]) => [a, b], [3, 4], [wide, wide])
  expect(values).toEqual([3, 4])
  expect(steps).toBe(0)
  expect(progress).toEqual([])
})

test('every step is told, counted from 1, and none leads away', () => {
  const valley: Compute = ([a, b]) => [10 * (b - a * a), 1 - a]
  const { values, steps, progress } = searched([0, 0], valley, [-1.2, 1], [wide, wide])
  expect(values[0]).toBeCloseTo(1, 6)
  expect(values[1]).toBeCloseTo(1, 6)
  expect(progress.map(({ step }) => step)).toEqual(Array.from({ length: steps }, (_, at) => at + 1))
  expect(new Set(progress.map(({ most }) => most)).size).toBe(1)
  expect(steps).toBeLessThanOrEqual(progress[0].most)
  // The start's own difference, by hand: residuals 10 (1 - 1.44) = -4.4 and 2.2; sqrt((19.36 + 4.84) / 2).
  const differences = [Math.sqrt(12.1), ...progress.map(({ difference }) => difference)]
  differences.slice(1).forEach((difference, at) => expect(difference).toBeLessThanOrEqual(differences[at]))
})

test('a value stops at its bound, and the search with it', () => {
  const { values, steps } = searched([5, 5], ([a]) => [a, a], [1], [{ least: 0, most: 2 }])
  expect(values).toEqual([2])
  expect(steps).toBeLessThan(20)
})

test('where no value moves what is computed, the start stays, after more and more careful steps', () => {
  const { values, steps, progress } = searched([5, 5], () => [3, 3], [1], [wide])
  expect(values).toEqual([1])
  // From 1e-3 to 1e6 by tens.
  expect(steps).toBe(10)
  expect(progress.at(-1)?.difference).toBe(2)
})

test('a search that never arrives ends at the most steps it told', () => {
  // The nearest lies at infinity: each step halves what is left, for ever.
  const { steps, progress } = searched([0, 0], ([a]) => [Math.exp(-a), Math.exp(-a)], [0], [{ least: 0, most: 1000 }])
  expect(steps).toBe(progress[0].most)
})
