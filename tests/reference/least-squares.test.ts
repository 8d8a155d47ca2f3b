/**
 * The search and the certainty behind a fit, on a problem with certified values.
 * Source: NIST Statistical Reference Datasets (StRD), nonlinear regression, Misra1a (D. Misra, dental research:
 * monomolecular adsorption): y = b1 (1 - exp(-b2 x)), with two starts, certified values, their standard deviations and
 * the residual sum of squares.
 */
import { describe, expect, it } from 'vitest'
import { certaintyOf } from '../../src/measure/fit-certainty.ts'
import { searchNearest, sumOfSquares } from '../../src/measure/fit-search.ts'

const x = [77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0]
const y = [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78]
const certified = {
  values: [2.3894212918e2, 5.5015643181e-4],
  deviations: [2.7070075241, 7.2668688436e-6],
  squares: 1.2455138894e-1,
  residual: 1.018787633e-1,
}
const model = ([b1, b2]: readonly number[]) => x.map((each) => b1 * (1 - Math.exp(-b2 * each)))
const bounds = [
  { least: 1, most: 1000 },
  { least: 1e-6, most: 1e-2 },
]

describe('Misra1a', () => {
  it.each([
    ['far', [500, 0.0001]],
    ['near', [250, 0.0005]],
  ])('is solved from the %s start to 5 digits, with the certified sum of squares', (_, start) => {
    const search = searchNearest(y, model, start, bounds)
    const differences: number[] = []
    let next = search.next()
    for (; !next.done; next = search.next()) differences.push(next.value.difference)
    const { values } = next.value
    values.forEach((value, i) => expect(Math.abs(value / certified.values[i] - 1)).toBeLessThan(1e-5))
    expect(sumOfSquares(y, model(values)) / certified.squares).toBeCloseTo(1, 8)
    expect(differences.at(-1)).toBeCloseTo(Math.sqrt(certified.squares / 14), 8)
  })

  it('has the certified standard deviations at its solution', () => {
    const [b1, b2] = certified.values
    const jacobian = x.map((each) => [1 - Math.exp(-b2 * each), b1 * each * Math.exp(-b2 * each)])
    const { standardErrors } = certaintyOf(jacobian, certified.residual)
    standardErrors.forEach((error, i) => expect(error / certified.deviations[i]).toBeCloseTo(1, 6))
  })
})
