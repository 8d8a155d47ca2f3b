import { describe, expect, it } from 'vitest'
import { repeatability } from '../../src/physics/repeatability.ts'
import { laboratoryTackmeter, tackmeters, workshopTackmeter, readingOfTack } from '../../src/physics/tackmeter.ts'
import type { Tackmeter } from '../../src/physics/tackmeter.ts'
import type { TestInk } from '../../src/physics/tackmeter-run.ts'
import {
  filmNow,
  tackmeterRanges,
  torqueOf,
  meterInk,
  pullNow,
  readingDeviation,
  readNeedle,
  stepTackmeter,
} from '../../src/physics/tackmeter-run.ts'

const ink: TestInk = { tack: 16, volatility: 1 }

/** The needle after the standard procedure, or parts of it. */
function run(instrument: Tackmeter, tested: TestInk, seconds: number, step = seconds, temperature?: number) {
  const { standard } = instrument
  const set = { speed: standard.speed, temperature: temperature ?? standard.temperature }
  let state = meterInk(instrument, standard.volume, standard.temperature)
  for (let passed = 0; passed < seconds - 1e-9; passed += step) {
    state = stepTackmeter(instrument, tested, state, set, step)
  }
  return state
}

describe('the rig, run as the standard says', () => {
  it.each([6, 10, 16, 25])('shows the tack of the press model within its repeatability: %d', (tack) => {
    const { needle } = run(laboratoryTackmeter, { tack, volatility: 1 }, 60)
    expect(Math.abs(needle - tack)).toBeLessThan(repeatability.tackmeter)
  })

  it.each([0, 0.5, 3])('and so it does for an ink whose solvent leaves at %d times the usual rate', (volatility) => {
    const { needle } = run(laboratoryTackmeter, { tack: 12, volatility }, 60)
    expect(Math.abs(needle - 12)).toBeLessThan(repeatability.tackmeter)
  })

  it('builds its torque up and stands nearly still at the minute', () => {
    const needles = [1, 3, 10, 30, 60].map((seconds) => run(laboratoryTackmeter, ink, seconds).needle)
    needles.slice(1).forEach((needle, i) => expect(needle).toBeGreaterThan(needles[i]))
    expect(needles[4] - needles[3]).toBeLessThan(1)
    expect(needles[1]).toBeLessThan(0.8 * needles[4])
  })

  it('shows the same whatever the length of the steps', () => {
    for (const instrument of tackmeters) {
      const once = run(instrument, ink, 60)
      const often = run(instrument, ink, 60, 1 / 60)
      expect(Math.abs(often.needle / once.needle - 1)).toBeLessThan(0.002)
      expect(often.time).toBeCloseTo(60, 6)
    }
  })

  it('shows another number on the other instrument, near that of its scale', () => {
    const { needle } = run(workshopTackmeter, ink, 60)
    const expected = readingOfTack(workshopTackmeter, 16)
    expect(Math.abs(needle / expected - 1)).toBeLessThan(0.03)
    expect(needle).toBeGreaterThan(100)
  })
})

describe('ink left on the rollers', () => {
  it('loses solvent, gets thinner and reads higher, the faster the warmer', () => {
    const soon = run(laboratoryTackmeter, ink, 60)
    const late = run(laboratoryTackmeter, ink, 300)
    expect(late.needle).toBeGreaterThan(soon.needle + 1)
    expect(filmNow(laboratoryTackmeter, late)).toBeLessThan(filmNow(laboratoryTackmeter, soon))
    expect(run(laboratoryTackmeter, ink, 300, 300, 42).evaporated).toBeGreaterThan(late.evaporated)
  })

  it('neither dries nor climbs when it has no solvent', () => {
    const still: TestInk = { tack: 16, volatility: 0 }
    expect(run(laboratoryTackmeter, still, 300).evaporated).toBe(0)
    expect(Math.abs(run(laboratoryTackmeter, still, 300).needle - 16)).toBeLessThan(0.001)
  })
})

describe('the dials', () => {
  it('reach every instrument’s standard condition', () => {
    for (const { standard } of tackmeters) {
      for (const dial of ['volume', 'temperature', 'speed'] as const) {
        expect(standard[dial]).toBeGreaterThanOrEqual(tackmeterRanges[dial].least)
        expect(standard[dial]).toBeLessThanOrEqual(tackmeterRanges[dial].most)
      }
    }
  })

  it('are answered by a torque in step with the pull', () => {
    expect(torqueOf(0)).toBe(0)
    expect(torqueOf(20)).toBeCloseTo(2 * torqueOf(10), 12)
  })

  it('cool and slow the rollers by degrees', () => {
    const warm = run(laboratoryTackmeter, ink, 60)
    const cooled = stepTackmeter(laboratoryTackmeter, ink, warm, { speed: 1200, temperature: 22.2 }, 40)
    expect(cooled.temperature).toBeCloseTo(22.2 + 10 / Math.E, 6)
    expect(cooled.needle).toBeGreaterThan(warm.needle)
    const slowed = stepTackmeter(laboratoryTackmeter, ink, warm, { speed: 600, temperature: 32.2 }, 30)
    expect(slowed.needle).toBeLessThan(warm.needle)
  })

  it('read nothing while the rollers stand', () => {
    const state = meterInk(laboratoryTackmeter, 1.32, 32.2)
    expect(pullNow(laboratoryTackmeter, ink, state)).toBe(0)
    expect(stepTackmeter(laboratoryTackmeter, ink, state, { speed: 0, temperature: 32.2 }, 60).needle).toBe(0)
    expect(stepTackmeter(laboratoryTackmeter, ink, state, { speed: 1200, temperature: 32.2 }, 0)).toEqual(state)
  })
})

describe('readings off the needle', () => {
  it('repeat within the stated deviation, and their mean closes in on the tack', () => {
    const state = run(laboratoryTackmeter, ink, 60)
    const readings = Array.from({ length: 2000 }, (_, i) => readNeedle(laboratoryTackmeter, state, 5, i))
    const mean = readings.reduce((sum, reading) => sum + reading, 0) / readings.length
    const deviation = Math.sqrt(readings.reduce((sum, reading) => sum + (reading - mean) ** 2, 0) / 1999)
    // Four standard errors: 0.2 x 4 / root 2000 for the mean, 0.2 x 4 / root 4000 for the deviation.
    expect(Math.abs(mean - state.needle)).toBeLessThan(0.018)
    expect(Math.abs(deviation - repeatability.tackmeter)).toBeLessThan(0.013)
    expect(readNeedle(laboratoryTackmeter, state, 5, 7)).toBe(readings[7])
  })

  it('scatter by as many units as the scale is wider', () => {
    expect(readingDeviation(laboratoryTackmeter)).toBeCloseTo(repeatability.tackmeter, 12)
    const ratio = workshopTackmeter.perPull / laboratoryTackmeter.perPull
    expect(readingDeviation(workshopTackmeter)).toBeCloseTo(repeatability.tackmeter * ratio, 12)
  })
})

// Worked out by hand from what stands at the constants of tackmeter-run.ts.
const spreadingTurns = 60
const doublingTemperature = 10
const solventShare = 0.25

describe('one second on the rollers', () => {
  const begun = { ...meterInk(laboratoryTackmeter, 1.32, 32.2), speed: 1200 }
  const set = { speed: 1200, temperature: 32.2 }

  it('spreads the ink by the turns made, so that twice the speed spreads it twice as far on the way', () => {
    const left = (speed: number) =>
      1 - stepTackmeter(laboratoryTackmeter, ink, { ...begun, speed }, { ...set, speed }, 1).spread
    expect(Math.log(left(1200)) / Math.log(left(600))).toBeCloseTo(2, 6)
    // 20 turns in this second
    expect(left(1200)).toBeCloseTo(Math.exp(-20 / spreadingTurns), 6)
  })

  it('evaporates with the root of the speed, and twice as fast for every doubling temperature', () => {
    const kept = (speed: number, temperature: number) =>
      1 -
      stepTackmeter(laboratoryTackmeter, ink, { ...begun, speed, temperature }, { speed, temperature }, 1).evaporated
    const usual = Math.log(kept(1200, 32.2))
    expect(Math.log(kept(300, 32.2)) / usual).toBeCloseTo(0.5, 6)
    expect(Math.log(kept(1200, 32.2 + doublingTemperature)) / usual).toBeCloseTo(2, 6)
  })

  it('comes up to speed and shows its torque with their lags: in 1 s 1 - 1/e^(1/2) and 1 - 1/e^(1/1.5) of the way', () => {
    expect(stepTackmeter(laboratoryTackmeter, ink, { ...begun, speed: 0 }, set, 1).speed).toBeCloseTo(472.163, 3)
    const still: TestInk = { tack: 16, volatility: 0 }
    expect(stepTackmeter(laboratoryTackmeter, still, { ...begun, spread: 1 }, set, 1).needle).toBeCloseTo(
      16 * (1 - Math.exp(-1 / 1.5)),
      9,
    )
  })

  it('stiffens by e^(1.3 x 0.8) and pulls as the thinner film does when 0.8 more of its solvent has gone', () => {
    const pullAt = (evaporated: number) =>
      pullNow(laboratoryTackmeter, { tack: 16, volatility: 0 }, { ...begun, spread: 1, evaporated })
    // A quarter of the volume is solvent; pull goes with film^-0.15.
    const thinner = ((1 - 0.25 * 0.9) / (1 - 0.25 * 0.1)) ** -0.15
    expect(pullAt(0.9) / pullAt(0.1)).toBeCloseTo(Math.exp(1.3 * 0.8) * thinner, 9)
  })

  it('loses of its film what has evaporated of its solvent, and pulls nothing below one metre a minute', () => {
    const dry = { ...begun, evaporated: 1, spread: 1 }
    expect(filmNow(laboratoryTackmeter, dry) / filmNow(laboratoryTackmeter, { ...dry, evaporated: 0 })).toBeCloseTo(
      1 - solventShare,
      9,
    )
    expect(pullNow(laboratoryTackmeter, ink, { ...dry, speed: 0.5 })).toBe(0)
    expect(pullNow(laboratoryTackmeter, ink, { ...dry, speed: 1 })).toBeGreaterThan(0)
    // Ink that has lost more than at the standard minute is thinner on the rollers, and pulls as a thinner film does.
    const [more, less] = [
      { ...dry, evaporated: 0.9 },
      { ...dry, evaporated: 0.1 },
    ].map((state) => pullNow(laboratoryTackmeter, { tack: 16, volatility: 0 }, state))
    expect(more).toBeGreaterThan(less)
  })
})
