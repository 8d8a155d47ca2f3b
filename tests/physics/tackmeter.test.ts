import { describe, expect, it } from 'vitest'
import { filmPull } from '../../src/physics/pull.ts'
import type { TackConditions } from '../../src/physics/tackmeter.ts'
import {
  filmOnRollers,
  laboratoryTackmeter,
  pullPerTack,
  readingOfPull,
  readingOfTack,
  rollerArea,
  speedFor,
  surfaceSpeed,
  tackmeters,
  tackOfReading,
  workshopTackmeter,
} from '../../src/physics/tackmeter.ts'

const usual: TackConditions = laboratoryTackmeter.standard
const at = (change: Partial<TackConditions>) => readingOfTack(laboratoryTackmeter, 12, { ...usual, ...change })

describe('the laboratory tackmeter', () => {
  // From memory: 1.32 ml, 32.2 degC, 1 min, 1200 rpm, which is 4.8 m/s on a 76.2 mm roller.
  it('has the usual standard condition', () => {
    expect(usual).toMatchObject({ volume: 1.32, temperature: 32.2, speed: 1200, seconds: 60 })
    expect(surfaceSpeed(laboratoryTackmeter, 1200)).toBeCloseTo(4.8, 1)
    expect(speedFor(laboratoryTackmeter, surfaceSpeed(laboratoryTackmeter, 1234))).toBeCloseTo(1234, 9)
  })

  // Three rollers of 76.2 x 150 mm: 3 pi 7.62 15 = 1077.25 cm2; 1.32 cm3 on it is 12.253 um.
  it('spreads its ink over all three rollers', () => {
    expect(rollerArea(laboratoryTackmeter)).toBeCloseTo(1077.25, 2)
    expect(filmOnRollers(laboratoryTackmeter, 1.32)).toBeCloseTo(12.253, 3)
    expect(filmOnRollers(laboratoryTackmeter, 0.66)).toBeCloseTo(12.253 / 2, 3)
  })

  it.each([4, 10, 12, 16, 25])('reads the tack of the press model at its standard condition: %d', (tack) => {
    expect(readingOfTack(laboratoryTackmeter, tack)).toBeCloseTo(tack, 10)
  })

  // By hand: (4.78779/2)^0.35 = 1.35742, e^(-0.025 x 7.2) = 0.83527, (2/12.2534)^0.15 = 0.76191; product 0.86386.
  it('states how its condition converts to 2 m/s, 2 um and 25 degC', () => {
    expect(pullPerTack(laboratoryTackmeter, usual)).toBeCloseTo(0.86386, 4)
    const volume = 2e-4 * rollerArea(laboratoryTackmeter)
    const speed = speedFor(laboratoryTackmeter, 2)
    expect(pullPerTack(laboratoryTackmeter, { volume, temperature: 25, speed })).toBeCloseTo(1, 10)
  })

  it('pulls on its rollers as a film of the press model pulls', () => {
    const film = {
      tack: 14,
      speed: 10,
      temperature: 28,
      thickness: filmOnRollers(laboratoryTackmeter, 0.8),
      dampening: 0,
    }
    const reading = readingOfTack(laboratoryTackmeter, 14, {
      volume: 0.8,
      temperature: 28,
      speed: speedFor(laboratoryTackmeter, 10),
    })
    expect(reading).toBeCloseTo(readingOfPull(laboratoryTackmeter, filmPull(film)), 10)
  })

  it('reads more at higher speed, ever more slowly (Yang, 2015: rises, then levels off)', () => {
    const readings = [600, 1200, 1800, 2400, 3000].map((speed) => at({ speed }))
    const gains = readings.slice(1).map((reading, i) => reading - readings[i])
    gains.forEach((gain, i) => {
      expect(gain).toBeGreaterThan(0)
      if (i > 0) expect(gain).toBeLessThan(gains[i - 1])
    })
  })

  it('reads 2 to 3 % less for every degC more (number from memory)', () => {
    const loss = 1 - at({ temperature: 33.2 }) / at({})
    expect(loss).toBeGreaterThan(0.02)
    expect(loss).toBeLessThan(0.03)
  })

  it('reads more on a thinner film (handbook)', () => {
    expect(at({ volume: 0.66 })).toBeGreaterThan(at({}))
    expect(at({ volume: 2.64 })).toBeLessThan(at({}))
  })
})

describe('every tackmeter', () => {
  it('takes its reading back to the tack, whatever it is set to', () => {
    for (const instrument of tackmeters) {
      for (const tack of [6, 11, 19]) {
        for (const conditions of [instrument.standard, { volume: 0.5, temperature: 20, speed: 2500 }]) {
          const reading = readingOfTack(instrument, tack, conditions)
          expect(tackOfReading(instrument, reading, conditions)).toBeCloseTo(tack, 10)
        }
      }
    }
  })
})

describe('two tackmeters', () => {
  const pairs = [16, 14, 12, 10].map((tack) => tackmeters.map((instrument) => readingOfTack(instrument, tack)))

  it('put inks in the same order', () => {
    pairs.slice(1).forEach(([one, other], i) => {
      expect(one).toBeLessThan(pairs[i][0])
      expect(other).toBeLessThan(pairs[i][1])
    })
  })

  it('give numbers that do not compare: neither the readings, nor their ratios, nor one factor for all', () => {
    const factors = pairs.map(([one, other]) => other / one)
    expect(Math.min(...factors)).toBeGreaterThan(2)
    expect(Math.max(...factors) - Math.min(...factors)).toBeGreaterThan(0.5)
    expect(readingOfPull(workshopTackmeter, 0)).not.toBe(0)
  })
})
