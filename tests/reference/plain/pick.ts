import { integrate } from './integrate.ts'
import { paperModulus } from './setup.ts'

/**
 * P(paper strength < pull), where the pull is Weibull of modulus m and scale F*, the paper Weibull of modulus 10 and scale S.
 *
 * Let e be a draw from the exponential distribution of mean 1; the pull is F* e^(1/m), and
 * P = integral over e of exp(-e) [1 - exp(-(F* e^(1/m) / S)^10)].
 * Taken over z = ln e, where both tails die out quickly and small values of P keep all their digits.
 *
 * @param ratio F* / S
 * @param evenness m
 */
export function pickProbability(ratio: number, evenness: number): number {
  if (ratio === 0) return 0
  const lowest = -45
  const highest = 4.5
  const density = (z: number) => {
    const pullOverStrength = ratio * Math.exp(z / evenness)
    const paperBreaks = -Math.expm1(-(pullOverStrength ** paperModulus))
    return Math.exp(z - Math.exp(z)) * paperBreaks
  }
  return integrate(density, lowest, highest)
}
