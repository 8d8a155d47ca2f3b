import { describe, expect, it } from 'vitest'
import { certaintyOf } from '../../src/measure/fit-certainty.ts'

describe('the certainty of fitted values', () => {
  it('of a straight line y = a + b x through x = 0, 1, 2, 3 is that of the textbook: s sqrt(0.7), s sqrt(0.2), correlation -0.8018', () => {
    // By hand: J'J = [[4, 6], [6, 14]], its inverse [[0.7, -0.3], [-0.3, 0.2]]; -0.3 / sqrt(0.7 * 0.2) = -0.80178.
    const { standardErrors, correlations } = certaintyOf(
      [0, 1, 2, 3].map((x) => [1, x]),
      0.5,
    )
    expect(standardErrors[0]).toBeCloseTo(0.5 * Math.sqrt(0.7), 12)
    expect(standardErrors[1]).toBeCloseTo(0.5 * Math.sqrt(0.2), 12)
    expect(correlations[0][1]).toBeCloseTo(-0.80178, 5)
  })

  it('does not depend on the units of the values but for their errors', () => {
    const plain = certaintyOf(
      [
        [1, 2],
        [3, 1],
        [0, 1],
      ],
      1,
    )
    const scaled = certaintyOf(
      [
        [1, 2000],
        [3, 1000],
        [0, 1000],
      ],
      1,
    )
    expect(scaled.condition).toBeCloseTo(plain.condition, 9)
    expect(scaled.standardErrors[1]).toBeCloseTo(plain.standardErrors[1] / 1000, 12)
    expect(scaled.correlations[0][1]).toBeCloseTo(plain.correlations[0][1], 9)
  })

  it('has a condition of 1 for values that act on readings of their own', () => {
    expect(
      certaintyOf(
        [
          [2, 0],
          [0, 5],
        ],
        1,
      ).condition,
    ).toBeCloseTo(1, 12)
  })

  it('is none for a value without effect, or two with the same', () => {
    expect(
      certaintyOf(
        [
          [1, 0],
          [2, 0],
          [3, 0],
        ],
        0.01,
      ).standardErrors,
    ).toEqual([expect.any(Number), Infinity])
    const same = certaintyOf(
      [
        [1, 2],
        [2, 4],
        [3, 6],
      ],
      0.01,
    )
    expect(same.condition).toBe(Infinity)
    expect(Math.min(...same.standardErrors)).toBeGreaterThan(1e4)
  })

  it('has by hand a condition of the square root of 3 for two columns at 60 degrees', () => {
    // The singular values of two unit columns are sqrt(1 + cos) and sqrt(1 - cos): sqrt(1.5 / 0.5).
    expect(
      certaintyOf(
        [
          [1, 0.5],
          [0, Math.sqrt(0.75)],
        ],
        1,
      ).condition,
    ).toBeCloseTo(Math.sqrt(3), 9)
  })

  it('is undecided as a whole as soon as one value has no effect', () => {
    expect(
      certaintyOf(
        [
          [1, 0],
          [2, 0],
        ],
        1,
      ).condition,
    ).toBe(Infinity)
  })
})
