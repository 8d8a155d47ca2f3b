import { erf, gamma } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { paperModulus, papers } from '../../src/physics/paper.ts'
import { integratePick, pickChance } from '../../src/physics/pick.ts'
import { ranges } from '../../src/press/ranges.ts'

/** The same integral by Simpson's rule over u = ln e, 200 times finer than the program's, and over a wider span. */
function fineChance(lnRatio: number, evenness: number): number {
  const [from, to, steps] = [-60, 6, 105_600]
  const step = (to - from) / steps
  let sum = 0
  for (let i = 0; i <= steps; i++) {
    const u = from + i * step
    const torn = -Math.expm1(-Math.exp(paperModulus * (lnRatio + u / evenness)))
    sum += Math.exp(u - Math.exp(u)) * torn * (i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2)
  }
  return (sum * step) / 3
}

const moduli = [
  ranges.evenness.least,
  ...new Set(Object.values(papers).map((paper) => paper.evenness)),
  ranges.evenness.most,
]

describe('the chance of picking', () => {
  it.each(moduli)('agrees with fine integration to 1e-6 of itself, between the table points too, at m = %d', (m) => {
    const chance = pickChance(m)
    for (const lnRatio of [
      -4, -2.9871, -1.4444, -0.7, -0.3131, -0.0123, 0, 0.2177, 0.5051, 1.0111, 2.3456, 6.2178, 7.5,
    ]) {
      expect(Math.abs(chance(lnRatio) / fineChance(lnRatio, m) - 1)).toBeLessThan(1e-6)
    }
  })

  it('is r^10 / (1 + r^10) where pull and strength share the modulus 10', () => {
    for (const ratio of [0.05, 0.3, 0.8, 1, 1.3, 4]) {
      const exact = ratio ** 10 / (1 + ratio ** 10)
      expect(Math.abs(pickChance(10)(Math.log(ratio)) / exact - 1)).toBeLessThan(1e-6)
    }
  })

  it('follows the error function at m = 5, where the integrand is exp(-e - r^10 e^2)', () => {
    for (const ratio of [1, 1.1, 1.4]) {
      const root = ratio ** 5
      const whole = (Math.sqrt(Math.PI) / (2 * root)) * Math.exp(1 / (4 * root ** 2)) * (1 - erf(1 / (2 * root)))
      expect(Math.abs(pickChance(5)(Math.log(ratio)) / (1 - whole) - 1)).toBeLessThan(1e-6)
    }
  })

  it.each(moduli)('falls as gamma(1 + 10/m) (F/S)^10 where picking is rare, below the table too, at m = %d', (m) => {
    for (const lnRatio of [-2.95, -3.5, -8]) {
      const limit = gamma(1 + paperModulus / m) * Math.exp(paperModulus * lnRatio)
      expect(Math.abs(pickChance(m)(lnRatio) / limit - 1)).toBeLessThan(1e-4)
    }
  })

  it('is 0 for no pull at all and all but 1 for a huge one, rising all the way', () => {
    for (const m of moduli) {
      const chance = pickChance(m)
      expect(chance(-Infinity)).toBe(0)
      expect(chance(50)).toBeLessThan(1)
      expect(chance(50)).toBeGreaterThan(1 - 2e-12)
      expect(chance(Infinity)).toBe(chance(50))
      const places = Array.from({ length: 760 }, (_, i) => -5 + i / 60)
      const steps = places.map(chance)
      expect(steps.every((value, i) => i === 0 || value >= steps[i - 1])).toBe(true)
      expect(steps.every((value) => value > 0 && value <= 1)).toBe(true)
      // The last number before each step gives what the step gives, to 1e-6: also at the ends of the table.
      places.forEach((place, i) => {
        expect(Math.abs(chance(place - Number.EPSILON * Math.abs(place)) / steps[i] - 1)).toBeLessThan(1e-6)
      })
    }
  })

  it('keeps its slope: the integral and its derivative belong together', () => {
    for (const m of moduli) {
      const nearby = integratePick(-0.4 + 1e-5, m).chance - integratePick(-0.4 - 1e-5, m).chance
      expect(Math.abs(nearby / 2e-5 / integratePick(-0.4, m).slope - 1)).toBeLessThan(1e-6)
    }
  })

  it('stays the same when more kinds of evenness have been asked for than are kept', () => {
    const before = pickChance(4.5)(-0.31)
    for (let m = 2; m < 5.6; m += 0.1) pickChance(m)
    expect(pickChance(4.5)(-0.31)).toBe(before)
  })
})
