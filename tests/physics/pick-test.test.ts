import { describe, expect, it } from 'vitest'
import { paperNames, papers } from '../../src/physics/paper.ts'
import type { PickTest } from '../../src/physics/pick-test.ts'
import {
  beginningShare,
  endVelocities,
  judgeMark,
  oilPull,
  oils,
  oilViscosity,
  pickResistance,
  pickShareAt,
  pickVelocity,
  placeOf,
  printStrip,
  resistanceOfMark,
  strengthOfResistance,
  strip,
  stripStrength,
  velocityAt,
} from '../../src/physics/pick-test.ts'
import { wetSurfaceStrength } from '../../src/physics/paper.ts'

const usual: PickTest = { paper: papers.coated, oil: 'medium', endVelocity: 5, wet: false, seed: 1 }

describe('where picking begins', () => {
  it('has one spot in twenty torn, on every paper with every oil', () => {
    for (const name of paperNames) {
      for (const oil of oils) {
        const test = { ...usual, paper: papers[name], oil }
        expect(pickShareAt(test, pickVelocity(test))).toBeCloseTo(beginningShare, 10)
      }
    }
  })

  it('gives the same pick resistance whatever the oil: velocity times viscosity', () => {
    const resistances = oils.map((oil) => pickVelocity({ ...usual, oil }) * oilViscosity[oil])
    resistances.forEach((resistance) => expect(resistance).toBeCloseTo(pickResistance(60), 9))
    expect(strengthOfResistance(resistances[0])).toBeCloseTo(60, 9)
  })

  it('is reached by every paper with one oil or another, within the end velocities', () => {
    for (const name of paperNames) {
      const velocities = oils.map((oil) => pickVelocity({ ...usual, paper: papers[name], oil }))
      const reached = velocities.filter((velocity) => velocity > endVelocities.least && velocity < endVelocities.most)
      expect(reached.length, name).toBeGreaterThan(0)
    }
  })

  it('comes later on stronger paper and earlier on a wet strip', () => {
    expect(pickResistance(61)).toBeGreaterThan(pickResistance(60))
    for (const name of paperNames) {
      const test = { ...usual, paper: papers[name] }
      expect(pickVelocity({ ...test, wet: true })).toBeLessThan(pickVelocity(test))
      expect(stripStrength({ ...test, wet: true })).toBe(wetSurfaceStrength(papers[name], 4))
    }
  })

  it('comes with a pull that rises with speed and viscosity, ever more slowly', () => {
    expect(oilPull('medium', 2)).toBeGreaterThan(oilPull('medium', 1))
    expect(oilPull('high', 1)).toBeGreaterThan(oilPull('medium', 1))
    expect(oilPull('medium', 3) - oilPull('medium', 2)).toBeLessThan(oilPull('medium', 2) - oilPull('medium', 1))
  })
})

describe('a strip', () => {
  it('runs faster and faster, from rest to its end velocity', () => {
    expect(velocityAt(usual, 0)).toBe(0)
    expect(velocityAt(usual, strip.length)).toBe(5)
    expect(placeOf(usual, velocityAt(usual, 80))).toBeCloseTo(80, 9)
  })

  it('is torn where its own strength gave way: the same each time, another way for another seed', () => {
    const torn = printStrip(usual)
    expect(torn).toEqual(printStrip(usual))
    expect(torn).not.toEqual(printStrip({ ...usual, seed: 2 }))
    torn.slice(1).forEach((spot, i) => expect(spot.place).toBeGreaterThanOrEqual(torn[i].place))
  })

  // With P = 1 - exp(-(pull/S)^10), the sum of (pull/S)^10 over all spots up to where each gave way or survived is, on
  // average, the number torn; hence S from the counts (a maximum likelihood estimate of a Weibull scale).
  it('gives back the surface strength of the press model within 3 %, from its torn spots alone', () => {
    for (const name of paperNames) {
      const test: PickTest = {
        ...usual,
        paper: papers[name],
        oil: name === 'newsprint' ? 'low' : 'medium',
        endVelocity: 7,
      }
      let best = 0
      let most = -Infinity
      const tornBySpeed = new Map<number, number>()
      for (const { velocity } of printStrip(test)) tornBySpeed.set(velocity, (tornBySpeed.get(velocity) ?? 0) + 1)
      for (let strength = 10; strength < 100; strength *= 1.002) {
        let log = 0
        for (let row = 0; row < strip.along; row++) {
          const velocity = velocityAt(test, ((row + 0.5) * strip.length) / strip.along)
          const load = (oilPull(test.oil, velocity) / strength) ** 10
          const torn = tornBySpeed.get(velocity) ?? 0
          log += torn * Math.log(-Math.expm1(-load)) - (strip.across - torn) * load
        }
        if (log > most) [most, best] = [log, strength]
      }
      expect(Math.abs(best / papers[name].surfaceStrength - 1), name).toBeLessThan(0.03)
    }
  })
})

describe('a mark', () => {
  const begins = placeOf(usual, pickVelocity(usual))

  it('is right near where picking begins, and else too early or too late', () => {
    expect(judgeMark(usual, begins)).toBe('right')
    expect(judgeMark(usual, 0.6 * begins)).toBe('too early')
    expect(judgeMark(usual, 1.5 * begins)).toBe('too late')
    expect(judgeMark(usual, null)).toBe('too late')
  })

  it('gives the resistance of its place', () => {
    expect(resistanceOfMark(usual, begins)).toBeCloseTo(pickResistance(60), 9)
  })

  it('belongs nowhere on a strip too slow to pick', () => {
    const slow = { ...usual, endVelocity: 1 }
    expect(judgeMark(slow, null)).toBe('rightly none')
    expect(judgeMark(slow, 100)).toBe('nothing picks')
  })
})

describe('the spots of a strip', () => {
  it('lie in the middles of equal fields, and tear independently from row to row', () => {
    const torn = printStrip({ ...usual, endVelocity: 7 })
    const columns = torn.map(({ across }) => across * strip.across - 0.5)
    columns.forEach((column) => expect(column).toBeCloseTo(Math.round(column), 9))
    expect(Math.min(...columns)).toBeCloseTo(0, 9)
    expect(Math.max(...columns)).toBeCloseTo(strip.across - 1, 9)
    expect(torn.every(({ place }) => place > 0 && place < strip.length)).toBe(true)
    const rows = [...new Set(torn.map(({ place }) => place))].map((row) => torn.filter(({ place }) => place === row))
    // Near the end some spots of each row tear: which ones, no other row repeats.
    const patterns = rows.filter(({ length }) => length > 5 && length < strip.across - 5)
    expect(patterns.length).toBeGreaterThan(10)
    const told = new Set(patterns.map((row) => row.map(({ across }) => across).join(' ')))
    expect(told.size).toBe(patterns.length)
  })
})

describe('the tolerance of a mark, one fifth of the velocity', () => {
  const begins = pickVelocity(usual)
  const at = (share: number) => placeOf(usual, share * begins)

  it.each([
    [0.79, 'too early'],
    [0.81, 'right'],
    [1.19, 'right'],
    [1.21, 'too late'],
  ])('at %d times the velocity where picking begins, a mark is %s', (share, verdict) => {
    expect(judgeMark(usual, at(share))).toBe(verdict)
  })

  it.each([
    [1.21, 'rightly none', 'nothing picks'],
    [1.19, 'rightly none', 'right'],
    [0.84, 'rightly none', 'right'],
    [0.82, 'too late', 'too late'],
  ])(
    'where picking begins at %d times the end velocity, no mark is %s and one at the end is %s',
    (share, none, marked) => {
      const test = { ...usual, endVelocity: begins / share }
      expect(judgeMark(test, null)).toBe(none)
      expect(judgeMark(test, strip.length)).toBe(marked)
    },
  )
})
