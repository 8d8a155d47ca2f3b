/** A square matrix by rows. */
export type Matrix = readonly (readonly number[])[]

/**
 * Solves matrix * unknowns = right for a symmetric positive definite matrix, of which the lower triangle is read, by
 * Cholesky's square root.
 * A pivot that rounding has brought to 0 or below counts as a very small one, so the answer stays finite: colours at
 * the edge of what an ink can give, and bands that say the same, bring it that close to 0.
 *
 * Source: Golub and Van Loan, Matrix Computations, 4.2.
 */
export function solvePositive(matrix: Matrix, right: readonly number[]): number[] {
  const size = right.length
  const smallest = 1e-13 * Math.max(...matrix.map((row, i) => row[i]), Number.MIN_VALUE)
  const root: number[][] = []
  const unknowns = [...right]
  for (let i = 0; i < size; i++) {
    const row = (root[i] = new Array<number>(i + 1))
    for (let j = 0; j <= i; j++) {
      let rest = matrix[i][j]
      for (let k = 0; k < j; k++) rest -= row[k] * root[j][k]
      row[j] = i === j ? Math.sqrt(Math.max(rest, smallest)) : rest / root[j][j]
    }
    for (let k = 0; k < i; k++) unknowns[i] -= row[k] * unknowns[k]
    unknowns[i] /= row[i]
  }
  for (let i = size - 1; i >= 0; i--) {
    for (let k = i + 1; k < size; k++) unknowns[i] -= root[k][i] * unknowns[k]
    unknowns[i] /= root[i][i]
  }
  return unknowns
}

/** The matrix whose element (i, j) is `element(i, j)`. */
export function matrixOf(rows: number, columns: number, element: (row: number, column: number) => number): number[][] {
  return Array.from({ length: rows }, (_, i) => Array.from({ length: columns }, (_, j) => element(i, j)))
}
