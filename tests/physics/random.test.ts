import { describe, expect, it } from 'vitest'
import { normalPairAt, seededDraws, uniformAt } from '../../src/physics/random.ts'

const draws = 100_000
const series = (seed: number, stream: number) =>
  Array.from({ length: draws }, (_, index) => uniformAt(seed, stream, index))

/** Correlation of two series of uniform draws; each has mean 1/2 and variance 1/12. */
function correlation(a: readonly number[], b: readonly number[]): number {
  return (12 / a.length) * a.reduce((sum, value, i) => sum + (value - 0.5) * (b[i] - 0.5), 0)
}

/** Independent series of n draws correlate by chance with deviation 1/sqrt(n); five deviations are passed once in two million. */
const chanceCorrelation = 5 / Math.sqrt(draws)

describe('the source of chance', () => {
  // 100 boxes: chi squared has mean 99 and deviation sqrt(2 x 99) = 14.1; five deviations either way.
  it.each([
    [1, 0],
    [2, 0],
    [1, 77],
    [0xffffffff, 3],
    [0, 0],
  ])('is uniform for seed %d, stream %d', (seed, stream) => {
    const boxes = new Array<number>(100).fill(0)
    for (const value of series(seed, stream)) boxes[Math.floor(100 * value)]++
    const chiSquared = boxes.reduce((sum, count) => sum + (count - draws / 100) ** 2 / (draws / 100), 0)
    expect(Math.abs(chiSquared - 99)).toBeLessThan(5 * Math.sqrt(2 * 99))
  })

  it('never gives 0 or 1, of which no logarithm could be taken', () => {
    const values = series(1, 0)
    expect(values.every((value) => value > 0 && value < 1)).toBe(true)
  })

  it('draws streams and seeds that have nothing to do with each other, neighbours included', () => {
    const first = series(1, 0)
    for (const [seed, stream] of [
      [1, 1],
      [1, 2],
      [2, 0],
      [3, 0],
      [1, 16],
    ]) {
      expect(Math.abs(correlation(first, series(seed, stream)))).toBeLessThan(chanceCorrelation)
    }
  })

  it('draws values that do not follow from the ones before', () => {
    const values = series(5, 9)
    for (const lag of [1, 2, 3, 64, 512]) {
      expect(Math.abs(correlation(values.slice(0, -lag), values.slice(lag)))).toBeLessThan(chanceCorrelation * 1.01)
    }
  })

  it('gives the same draw for the same place, whatever was drawn before', () => {
    const alone = uniformAt(3, 4, 5)
    series(3, 4)
    expect(uniformAt(3, 4, 5)).toBe(alone)
    const draw = seededDraws(3, 4)
    expect(Array.from({ length: 6 }, draw)[5]).toBe(alone)
  })

  // Mean of n normal draws: deviation 1/sqrt(n); of their squares sqrt(2/n); of the products of a pair 1/sqrt(n).
  it('draws standard normal pairs, the two independent', () => {
    let [sum, squares, products, beyond] = [0, 0, 0, 0]
    for (let index = 0; index < draws; index++) {
      const [a, b] = normalPairAt(1, 2, index)
      sum += a + b
      squares += a * a + b * b
      products += a * b
      beyond += Number(Math.abs(a) > 1.959964) + Number(Math.abs(b) > 1.959964)
    }
    const all = 2 * draws
    expect(Math.abs(sum / all)).toBeLessThan(5 / Math.sqrt(all))
    expect(Math.abs(squares / all - 1)).toBeLessThan(5 * Math.sqrt(2 / all))
    expect(Math.abs(products / draws)).toBeLessThan(5 / Math.sqrt(draws))
    // One in twenty lies beyond 1.96 deviations.
    expect(Math.abs(beyond / all - 0.05)).toBeLessThan(5 * Math.sqrt((0.05 * 0.95) / all))
  })
})
