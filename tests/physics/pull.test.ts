import { describe, expect, it } from 'vitest'
import { papers } from '../../src/physics/paper.ts'
import type { FilmConditions } from '../../src/physics/pull.ts'
import { filmPull } from '../../src/physics/pull.ts'

/** A film that pulls its own tack: all factors are 1. */
const reference: FilmConditions = { tack: 12, speed: 2, temperature: 25, thickness: 2, dampening: 0 }
const factor = (change: Partial<FilmConditions>) => filmPull({ ...reference, ...change }) / filmPull(reference)

describe('the pull of a film', () => {
  it('is the tack at 2 m/s, 2 um, 25 degC and without water', () => {
    expect(filmPull(reference)).toBeCloseTo(12, 12)
    expect(factor({ tack: 18 })).toBeCloseTo(1.5, 12)
  })

  // Worked by hand: 2^0.35 = 1.27456, 5^0.35 = 1.75647, e^-0.25 = 0.77880, 2^0.15 = 1.10957, 2^-0.15 = 0.90125.
  it.each([
    { what: 'doubled speed', change: { speed: 4 }, by: 1.27456 },
    { what: 'a web press at 10 m/s', change: { speed: 10 }, by: 1.75647 },
    { what: '10 degC more', change: { temperature: 35 }, by: 0.7788 },
    { what: '10 degC less', change: { temperature: 15 }, by: 1.28403 },
    { what: 'half the film', change: { thickness: 1 }, by: 1.10957 },
    { what: 'twice the film', change: { thickness: 4 }, by: 0.90125 },
    { what: 'normal dampening', change: { dampening: 1 }, by: 0.85 },
    { what: 'twice the dampening', change: { dampening: 2 }, by: 0.7 },
  ])('is multiplied by $by at $what', ({ change, by }) => {
    expect(Math.abs(factor(change) - by)).toBeLessThan(6e-6)
  })

  it('rises with speed ever more slowly, falls with temperature and film (published directions)', () => {
    const speeds = [1, 2, 3, 4, 5].map((speed) => factor({ speed }))
    const gains = speeds.slice(1).map((value, i) => value - speeds[i])
    expect(gains.every((gain, i) => gain > 0 && (i === 0 || gain < gains[i - 1]))).toBe(true)
    expect(factor({ temperature: 26 })).toBeLessThan(1)
    expect(factor({ thickness: 2.1 })).toBeLessThan(1)
    // About 2 to 3 % a degC (from memory).
    expect(1 - factor({ temperature: 26 })).toBeGreaterThan(0.02)
    expect(1 - factor({ temperature: 26 })).toBeLessThan(0.03)
  })
})

describe('a film lying on the sheet', () => {
  const on = (seconds: number, wetBelow: number, paper = papers.coated): Partial<FilmConditions> => ({
    onSheet: { seconds, wetBelow, paper },
  })

  // Coated: gamma 0.3, tau 0.8 s. 1 - e^-1 = 0.632121, so 1 + 0.3 x 0.632121 = 1.189636; with 1 um below half the rise.
  it('sets as the paper draws it in, less so with wet ink below it', () => {
    expect(factor(on(0.8, 0))).toBeCloseTo(1.189636, 6)
    expect(factor(on(0.8, 1))).toBeCloseTo(1.094818, 6)
    expect(factor(on(0, 0))).toBeCloseTo(1, 12)
    expect(factor(on(1000, 0))).toBeCloseTo(1.3, 12)
    expect(factor(on(1000, 5))).toBeCloseTo(1.05, 12)
  })

  it('sets in half the time on paper of double absorbency, and not at all where the paper draws nothing in', () => {
    expect(factor(on(0.4, 0, { ...papers.coated, absorbency: 2 }))).toBeCloseTo(factor(on(0.8, 0)), 12)
    expect(factor(on(0.8, 0, { ...papers.coated, settingGain: 0 }))).toBe(1)
  })

  // 0.06 s: 1 - 0.15 / e = 0.944818. The loss falls to 1/e in that time (most of it is back before the next unit).
  it('regains the pull that water took', () => {
    const still = { ...papers.coated, settingGain: 0 }
    expect(factor({ dampening: 1, ...on(0.06, 0, still) })).toBeCloseTo(0.944818, 6)
    expect(factor({ dampening: 1, ...on(0.45, 0, still) })).toBeGreaterThan(0.999)
    expect(factor({ dampening: 1, ...on(0, 0, still) })).toBeCloseTo(0.85, 12)
  })
})
