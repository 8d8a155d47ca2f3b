/**
 * Fields of local strength over a grid of cells: every cell's strength is Weibull distributed exactly, and cells a few
 * places apart are alike, as the formation of paper makes them. White noise is smoothed, scaled back to a standard
 * normal, and carried over by its distribution function (a Gaussian copula).
 */
import { normalPairAt } from './random.ts'

/** One value a cell, row by row; the grid closes on itself at its edges. */
export interface Grid {
  width: number
  height: number
}

/** Binomial kernel, twice over each axis: neighbours correlate 0.80, cells five or more apart not at all. */
const kernel = [1, 4, 6, 4, 1]
/** Standard deviation of white noise after smoothing along both axes: the sum of the squared weights. */
const smoothedDeviation = kernel.reduce((sum, weight) => sum + weight * weight, 0)

/** A standard normal field, correlated over a few cells; `stream` tells independent fields of one seed apart. */
export function normalField(grid: Grid, seed: number, stream: number): Float32Array {
  const { width, height } = grid
  const cells = width * height
  const noise = new Float32Array(cells)
  for (let cell = 0; cell < cells; cell += 2) {
    const [first, second] = normalPairAt(seed, stream, cell)
    noise[cell] = first
    // Of an odd number of cells the last one's second draw falls outside, and is dropped.
    noise[cell + 1] = second
  }
  const field = smooth(smooth(noise, width, 1, height, width), height, width, width, 1)
  for (let cell = 0; cell < cells; cell++) field[cell] /= smoothedDeviation
  return field
}

/** Smooths along one axis of `length` cells `stride` apart, for `lines` lines `lineStride` apart. */
function smooth(source: Float32Array, length: number, stride: number, lines: number, lineStride: number): Float32Array {
  const target = new Float32Array(source.length)
  for (let line = 0; line < lines; line++) {
    for (let place = 0; place < length; place++) {
      let sum = 0
      for (let tap = 0; tap < kernel.length; tap++) {
        const other = (place + tap - 2 + length) % length
        sum += kernel[tap] * source[line * lineStride + other * stride]
      }
      target[line * lineStride + place * stride] = sum
    }
  }
  return target
}

/** Standard deviations covered by the table below; of a million cells none is expected beyond 5. */
const reach = 6
const tablePoints = 4097

/**
 * ln E by z, where E = -ln(1 - Phi(z)) is exponential when z is standard normal. A Weibull strength of scale F and
 * modulus m is then F E^(1/m), its logarithm ln F + ln E / m. Phi by Simpson's rule on its density.
 */
const lnExponential = tabulateLnExponential()

function tabulateLnExponential(): Float32Array {
  const step = (2 * reach) / (tablePoints - 1)
  const density = (z: number) => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)
  // Phi, summed from its small end so that the upper tail, which is the same by symmetry, keeps its digits.
  const lower = new Float64Array(tablePoints)
  const tail = density(reach) / (reach + 1 / reach)
  lower[0] = tail
  for (let i = 1; i < tablePoints; i++) {
    const z = -reach + i * step
    lower[i] = lower[i - 1] + (step / 6) * (density(z - step) + 4 * density(z - step / 2) + density(z))
  }
  // By symmetry 1 - Phi(z) = Phi(-z).
  return Float32Array.from(lower, (_, i) => Math.log(-Math.log(lower[tablePoints - 1 - i])))
}

/** ln E of a standard normal `z` (beyond 6 deviations it stays at the table's end). */
export function lnExponentialOf(z: number): number {
  const place = Math.min(Math.max((z + reach) / (2 * reach), 0), 1) * (tablePoints - 1)
  const i = Math.min(tablePoints - 2, Math.floor(place))
  return lnExponential[i] + (place - i) * (lnExponential[i + 1] - lnExponential[i])
}

/** A correlated field of ln E (see above): what local strengths are made of. */
export function lnExponentialField(grid: Grid, seed: number, stream: number): Float32Array {
  return normalField(grid, seed, stream).map(lnExponentialOf)
}
