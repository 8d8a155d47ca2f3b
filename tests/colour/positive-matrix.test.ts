import fc from 'fast-check'
import { expect, test } from 'vitest'
import { matrixOf, solvePositive } from '../../src/colour/positive-matrix.ts'

test('solves two equations worked out by hand', () => {
  // 4x + y = 6 and x + 3y = 7 are met by x = 1, y = 2.
  const [x, y] = solvePositive(
    [
      [4, 1],
      [1, 3],
    ],
    [6, 7],
  )
  expect(x).toBeCloseTo(1, 12)
  expect(y).toBeCloseTo(2, 12)
})

test('finds the unknowns from which any positive equations were made', () => {
  const number = fc.double({ min: -2, max: 2, noNaN: true })
  fc.assert(
    fc.property(fc.array(fc.tuple(number, number, number, number, number), { minLength: 5, maxLength: 5 }), (rows) => {
      const unknowns = rows.map((row) => row[4])
      const matrix = matrixOf(5, 5, (i, j) =>
        rows[i].reduce((sum, value, k) => sum + value * rows[j][k], i === j ? 0.5 : 0),
      )
      const right = matrix.map((row) => row.reduce((sum, value, j) => sum + value * unknowns[j], 0))
      solvePositive(matrix, right).forEach((value, i) => expect(value).toBeCloseTo(unknowns[i], 6))
    }),
  )
})

test('stays finite when two equations say the same', () => {
  for (const value of solvePositive(
    [
      [1, 1],
      [1, 1],
    ],
    [2, 2],
  ))
    expect(Number.isFinite(value)).toBe(true)
})
