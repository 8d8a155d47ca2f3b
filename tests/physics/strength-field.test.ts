import { describe, expect, it } from 'vitest'
import { lnExponentialField, lnExponentialOf, normalField } from '../../src/physics/strength-field.ts'

/** Cells of a side; a multiple of 5, since cells five apart share no noise. */
const side = 510
const grid = { width: side, height: side }
const seeds = [1, 2, 3, 4]

/**
 * Every smoothed value shares noise with 80 others, so that means over the field spread as if it had fewer cells: the
 * kernel's correlations add up to (1 / 0.2734)^2 = 13.4 (0.2734 is the sum of the squared weights of one axis).
 */
const independentCells = (seeds.length * side * side) / 13.4

/** Mean product of values `right` and `down` cells apart: their correlation, as the field is standard normal. */
function correlationAt(fields: readonly Float32Array[], right: number, down: number): number {
  let sum = 0
  for (const field of fields)
    for (let row = 0; row < side; row++)
      for (let column = 0; column < side; column++)
        sum += field[row * side + column] * field[((row + down) % side) * side + ((column + right) % side)]
  return sum / (fields.length * side * side)
}

/** Every fifth cell both ways: none of them shares noise with another, so they are independent draws. */
function everyFifth(field: Float32Array): number[] {
  const picked: number[] = []
  for (let row = 0; row < side; row += 5)
    for (let column = 0; column < side; column += 5) picked.push(field[row * side + column])
  return picked
}

/** Kolmogorov-Smirnov: the largest gap between the values' share below and `below`. */
function largestGap(values: number[], below: (value: number) => number): number {
  return values
    .sort((a, b) => a - b)
    .reduce((most, value, i) => Math.max(most, Math.abs(below(value) - (i + 0.5) / values.length)), 0)
}

describe('a field of local strength', () => {
  const fields = seeds.map((seed) => normalField(grid, seed, 0))

  // Binomial weights 1 4 6 4 1 against themselves, shifted: 70 56 28 8 1 0, so 0.8, 0.4, 0.114, 0.014 and nothing.
  it.each([
    [0, 0, 1],
    [1, 0, 56 / 70],
    [0, 1, 56 / 70],
    [1, 1, (56 / 70) ** 2],
    [2, 0, 28 / 70],
    [0, 3, 8 / 70],
    [4, 0, 1 / 70],
    [5, 0, 0],
    [0, 5, 0],
    [7, 3, 0],
    [0, 250, 0],
  ])('correlates over %d cells right, %d down as the kernel says: %d', (right, down, expected) => {
    // A mean product of standard normals spreads by at most sqrt(2 / independent cells); four deviations.
    expect(Math.abs(correlationAt(fields, right, down) - expected)).toBeLessThan(4 * Math.sqrt(2 / independentCells))
  })

  // The largest gap of n independent draws exceeds 1.95 / sqrt(n) once in 1000 (Kolmogorov-Smirnov).
  it('has exponential strengths: -ln(1 - P) of every cell, up to the m-th root of a Weibull strength', () => {
    const values = seeds.flatMap((seed) => everyFifth(lnExponentialField(grid, seed, 0)))
    expect(values).toHaveLength(seeds.length * 102 * 102)
    const gap = largestGap(values, (lnE) => -Math.expm1(-Math.exp(lnE)))
    expect(gap).toBeLessThan(1.95 / Math.sqrt(values.length))
  })

  it('has fields of two streams that do not follow each other', () => {
    const other = seeds.map((seed) => normalField(grid, seed, 1))
    const product = fields.reduce(
      (sum, field, i) => sum + field.reduce((inner, value, cell) => inner + value * other[i][cell], 0),
      0,
    )
    // Products of two such fields correlate less far: at most as one field does.
    expect(Math.abs(product / (seeds.length * side * side))).toBeLessThan(4 / Math.sqrt(independentCells))
  })

  it('is the same for the same seed and works on grids of any shape, odd and tiny ones too', () => {
    expect(normalField({ width: 7, height: 3 }, 9, 2)).toEqual(normalField({ width: 7, height: 3 }, 9, 2))
    expect(normalField({ width: 7, height: 3 }, 9, 2)).not.toEqual(normalField({ width: 7, height: 3 }, 10, 2))
    expect(normalField({ width: 1, height: 1 }, 9, 2).every(Number.isFinite)).toBe(true)
  })
})

describe('the way from normal to exponential', () => {
  // Tables of the standard normal: P(Z > z). ln E = ln(-ln P).
  it.each([
    [0, 0.5],
    [1, 0.158655254],
    [1.644853627, 0.05],
    [2.326347874, 0.01],
    [3.090232306, 0.001],
    [4, 3.16712418e-5],
    [5, 2.86651572e-7],
    [-1, 0.841344746],
  ])('keeps the upper tail at z = %d: P = %d', (z, tail) => {
    expect(Math.abs(lnExponentialOf(z) - Math.log(-Math.log(tail)))).toBeLessThan(1e-5)
  })

  it('keeps the lower tail, where E is the share below itself', () => {
    // P(Z < -4) = 3.16712e-5, P(Z < -5) = 2.86652e-7.
    expect(Math.exp(lnExponentialOf(-4)) / 3.16717e-5).toBeCloseTo(1, 4)
    expect(Math.exp(lnExponentialOf(-5)) / 2.86652e-7).toBeCloseTo(1, 4)
  })

  it('never falls, and stays at its ends beyond six deviations', () => {
    const values = Array.from({ length: 1500 }, (_, i) => lnExponentialOf(-7.5 + i / 100))
    expect(values.every((value, i) => i === 0 || value >= values[i - 1])).toBe(true)
    expect(lnExponentialOf(40)).toBe(lnExponentialOf(6))
    expect(lnExponentialOf(-40)).toBe(lnExponentialOf(-6))
  })
})
