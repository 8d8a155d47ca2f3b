import { describe, expect, it } from 'vitest'
import { seededDraws } from '../../src/physics/random.ts'
import { planeWeight, pullOfWeakest, weakestShares } from '../../src/physics/weakest.ts'

const draws = 200_000

/** Breaks stacks of planes by drawing every plane's strength: how often each was the weakest, and its strength then. */
function drawStacks(pulls: readonly number[], evenness: number) {
  const draw = seededDraws(7, pulls.length)
  const counts = pulls.map(() => 0)
  const strengths: number[] = []
  for (let stack = 0; stack < draws; stack++) {
    const planes = pulls.map((pull) => pull * Math.pow(-Math.log(draw()), 1 / evenness))
    const weakest = Math.min(...planes)
    counts[planes.indexOf(weakest)]++
    strengths.push(weakest)
  }
  return { shares: counts.map((count) => count / draws), strengths }
}

describe.each([
  { pulls: [16, 14, 12, 10], evenness: 4.5 },
  { pulls: [10, 12, 14, 16], evenness: 3.5 },
  { pulls: [13, 13], evenness: 2 },
  { pulls: [8, 30, 9], evenness: 8 },
])('planes of $pulls tack units at evenness $evenness', ({ pulls, evenness }) => {
  const drawn = drawStacks(pulls, evenness)

  // A share p of n draws has deviation sqrt(p (1 - p) / n); four of them are passed once in 16,000 by chance.
  it('break as often as drawn ones do, within four standard deviations', () => {
    weakestShares(pulls, evenness).forEach((share, plane) => {
      const deviation = Math.sqrt((share * (1 - share)) / draws)
      expect(Math.abs(drawn.shares[plane] - share)).toBeLessThan(4 * deviation)
    })
  })

  // Kolmogorov-Smirnov: the largest gap of n draws exceeds 1.95 / sqrt(n) once in 1000.
  it('give way at a pull that is Weibull distributed again, of the stated scale', () => {
    const weight = pulls.reduce((sum, pull) => sum + planeWeight(Math.log(pull), evenness), 0)
    const scale = pullOfWeakest(weight, evenness)
    const sorted = drawn.strengths.sort((a, b) => a - b)
    const gaps = sorted.map((strength, i) =>
      Math.abs(1 - Math.exp(-Math.pow(strength / scale, evenness)) - (i + 0.5) / draws),
    )
    expect(gaps.reduce((most, gap) => Math.max(most, gap), 0)).toBeLessThan(1.95 / Math.sqrt(draws))
  })
})

describe('the weakest plane', () => {
  it('is never one that cannot break, and any one of equals', () => {
    expect(weakestShares([Infinity, 12], 4.5)).toEqual([0, 1])
    expect(weakestShares([12, 12, 12, 12], 4.5)).toEqual([0.25, 0.25, 0.25, 0.25])
  })

  it('breaks at half the odds^m when it is twice as strong: 1 to 16 at m = 4', () => {
    const [strong, weak] = weakestShares([20, 10], 4)
    expect(weak / strong).toBeCloseTo(16, 10)
  })

  it('bears less the more planes there are: two alike give way at 2^(-1/m) of one', () => {
    expect(pullOfWeakest(2 * planeWeight(Math.log(12), 5), 5)).toBeCloseTo(12 * Math.pow(2, -0.2), 10)
  })
})
