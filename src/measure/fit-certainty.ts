/**
 * How well data decide fitted values. Near the best fit the model is taken as straight, so with J the change of every
 * reading with every value and s the deviation of a reading, the values' covariance is s^2 (J'J)^-1.
 * Source: least squares, e.g. Bates and Watts, Nonlinear Regression Analysis, 1988 (from memory).
 */
import { Matrix, SVD } from 'ml-matrix'

export interface Certainty {
  /** standard error of each value, in its own unit; Infinity where the data say nothing */
  readonly standardErrors: number[]
  /** -1 to 1 for each two values; near 1 or -1 one can make up for the other */
  readonly correlations: number[][]
  /** largest over smallest singular value of J with its columns brought to one length; 1 is best, Infinity undecided */
  readonly condition: number
}

/** Below this share of the largest, a singular value is nothing but rounding. */
const rounding = 1e-9

/** @param jacobian one row a reading, one column a value, no fewer rows than columns @param deviation of one reading, in the readings' unit */
export function certaintyOf(jacobian: readonly (readonly number[])[], deviation: number): Certainty {
  const columns = jacobian[0].length
  const lengths = Array.from({ length: columns }, (_, column) => Math.hypot(...jacobian.map((row) => row[column])))
  // One length for all columns, so that the condition does not depend on the values' units.
  const scaled = new Matrix(jacobian.map((row) => row.map((value, column) => value / (lengths[column] || 1))))
  const { diagonal, rightSingularVectors } = new SVD(scaled)
  const largest = Math.max(...diagonal)
  const smallest = Math.min(...diagonal)
  const covariance = (i: number, j: number) =>
    diagonal.reduce(
      (sum, value, k) =>
        sum +
        (rightSingularVectors.get(i, k) * rightSingularVectors.get(j, k)) / Math.max(value, rounding * largest) ** 2,
      0,
    ) /
    (lengths[i] * lengths[j])
  const errors = lengths.map((_, i) => deviation * Math.sqrt(covariance(i, i)))
  return {
    standardErrors: errors.map((error) => (Number.isFinite(error) ? error : Infinity)),
    correlations: lengths.map((_, i) =>
      lengths.map((_, j) => (deviation ** 2 * covariance(i, j)) / (errors[i] * errors[j])),
    ),
    condition: smallest > rounding * largest ? largest / smallest : Infinity,
  }
}
