/** The search behind a fit: values moved step by step until what is computed from them comes nearest to what was read. */
import { levenbergMarquardt } from 'ml-levenberg-marquardt'

/** Values as they are put in, results as they come out; one result for each reading. */
export type Compute = (values: readonly number[]) => readonly number[]

export interface Bounds {
  readonly least: number
  readonly most: number
}

export interface FitProgress {
  /** steps done, and the most there will be */
  readonly step: number
  readonly most: number
  /** root mean square of the differences so far, in the readings' unit */
  readonly difference: number
}

export interface Found {
  readonly values: readonly number[]
  readonly steps: number
}

const mostSteps = 60
/** Relative gain of a step in the sum of squares below which the search has arrived. */
const arrived = 1e-9
/** Share of a value's range by which slopes are taken. */
export const slopeStep = 1e-5
/** How carefully the search sets out, and when even the smallest step leads no nearer (Marquardt's lambda). */
const firstDamping = 1e-3
const mostDamping = 1e6

/**
 * Searches from `start` inside the bounds, by Levenberg and Marquardt's method: one step of the library at a time, so
 * that a page can show it and stop. A step that leads no nearer is not taken, and the next is more careful. The library
 * wants at least two readings.
 */
export function* searchNearest(
  read: readonly number[],
  compute: Compute,
  start: readonly number[],
  bounds: readonly Bounds[],
): Generator<FitProgress, Found> {
  let values = [...start]
  let squares = sumOfSquares(read, compute(values))
  let damping = firstDamping
  let step = 0
  for (let searching = squares > 0; searching && step < mostSteps; step++) {
    const next = oneStep(read, compute, values, bounds, damping)
    const after = sumOfSquares(read, compute(next))
    if (after < squares) {
      searching = (squares - after) / squares > arrived
      values = next
      squares = after
      damping /= 10
    } else {
      damping *= 10
      searching = damping <= mostDamping
    }
    yield { step: step + 1, most: mostSteps, difference: Math.sqrt(squares / read.length) }
  }
  return { values, steps: step }
}

function oneStep(
  read: readonly number[],
  compute: Compute,
  values: readonly number[],
  bounds: readonly Bounds[],
  damping: number,
): number[] {
  return levenbergMarquardt(
    { x: read.map((_, index) => index), y: [...read] },
    (trial) => {
      const computed = compute(trial)
      return (index) => computed[index]
    },
    {
      initialValues: [...values],
      minValues: bounds.map(({ least }) => least),
      maxValues: bounds.map(({ most }) => most),
      gradientDifference: bounds.map(({ least, most }) => slopeStep * (most - least)),
      centralDifference: true,
      damping,
      maxIterations: 1,
      errorTolerance: 0,
    },
  ).parameterValues
}

export function sumOfSquares(read: readonly number[], computed: readonly number[]): number {
  return read.reduce((sum, value, i) => sum + (value - computed[i]) ** 2, 0)
}
