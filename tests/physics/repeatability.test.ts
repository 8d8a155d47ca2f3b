import { describe, expect, it } from 'vitest'
import { average, readingNoise } from '../../src/physics/repeatability.ts'

describe('the noise of readings', () => {
  const noise = Array.from({ length: 4000 }, (_, i) => readingNoise(3, 9, i))

  it('is standard normal', () => {
    const mean = noise.reduce((sum, each) => sum + each, 0) / noise.length
    const variance = noise.reduce((sum, each) => sum + each * each, 0) / noise.length
    // Four standard errors of each.
    expect(Math.abs(mean)).toBeLessThan(4 / Math.sqrt(4000))
    expect(Math.abs(variance - 1)).toBeLessThan(4 * Math.sqrt(2 / 4000))
  })

  it('is the same for the same reading and another for the next', () => {
    expect(readingNoise(3, 9, 17)).toBe(noise[17])
    expect(new Set(noise).size).toBe(noise.length)
    expect(readingNoise(4, 9, 17)).not.toBe(noise[17])
    expect(readingNoise(3, 10, 17)).not.toBe(noise[17])
  })
})

describe('an average', () => {
  it('has a standard error that falls with the root of the count', () => {
    expect(average([1, 2, 3, 6], 0.2)).toEqual({ mean: 3, count: 4, error: 0.1 })
    expect(average([5], 0.2)).toEqual({ mean: 5, count: 1, error: 0.2 })
  })

  it('needs a reading', () => {
    expect(() => average([], 0.2)).toThrow('at least one')
  })
})
