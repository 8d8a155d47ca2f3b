import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { TrapDensities } from '../../src/measure/trap-equations.ts'
import { apparentTrap, highestDensity, massTrap, trapEquations } from '../../src/measure/trap-equations.ts'

const fine = { D1: 0.4, D2: 1.4, D3: 1.42 }
const density = fc.double({ min: 0, max: highestDensity, noNaN: true })
const densities = fc.record({
  D1: density,
  D2: fc.double({ min: 0.01, max: highestDensity, noNaN: true }),
  D3: density,
})

function percent(equation: (typeof trapEquations)[number], read: TrapDensities): number {
  const trap = apparentTrap(equation, read)
  if ('refused' in trap) throw new Error(`refused: ${trap.refused.message}`)
  return trap.percent
}

describe.each(trapEquations)('%s', (equation) => {
  it.each(['D1', 'D2', 'D3'] as const)('refuses a %s that is no number, negative or too high to be one', (symbol) => {
    for (const [value, message] of [
      [NaN, 'trap.notANumber'],
      [Infinity, 'trap.notANumber'],
      [-Infinity, 'trap.notANumber'],
      [-0.01, 'trap.negative'],
      [14, 'trap.tooHigh'],
    ] as const) {
      expect(apparentTrap(equation, { ...fine, [symbol]: value })).toMatchObject({
        refused: { message, values: { symbol } },
      })
    }
    expect(apparentTrap(equation, { ...fine, [symbol]: undefined as unknown as number })).toHaveProperty('refused')
    expect(apparentTrap(equation, { ...fine, [symbol]: '1.4' as unknown as number })).toHaveProperty('refused')
  })

  it('refuses a second ink that reads nothing', () => {
    expect(apparentTrap(equation, { ...fine, D2: 0 })).toEqual({ refused: { message: 'trap.secondReadsNothing' } })
  })

  it('is 100 where densities add up, and rises with the overprint', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 2, noNaN: true }),
        fc.double({ min: 0.05, max: 2, noNaN: true }),
        (D1, D2) => {
          expect(percent(equation, { D1, D2, D3: D1 + D2 })).toBeCloseTo(100, 9)
          expect(percent(equation, { D1, D2, D3: D1 + 0.9 * D2 })).toBeLessThan(
            percent(equation, { D1, D2, D3: D1 + D2 }),
          )
        },
      ),
    )
  })

  it('gives a finite number for all legal densities', () => {
    fc.assert(fc.property(densities, (read) => Number.isFinite(percent(equation, read))))
  })
})

it('keeps the scales apart: with nothing trapped Preucil and Ritz read 0, Brunner above 0', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.05, max: 2, noNaN: true }),
      fc.double({ min: 0.05, max: 2, noNaN: true }),
      (D1, D2) => {
        expect(percent('preucil', { D1, D2, D3: D1 })).toBe(0)
        expect(percent('ritz', { D1, D2, D3: D1 })).toBe(0)
        expect(percent('brunner', { D1, D2, D3: D1 })).toBeGreaterThan(0)
      },
    ),
  )
})

describe('mass trap', () => {
  it('is the ratio of two films, above 1 where the wet film took more', () => {
    expect(massTrap(0.9, 1.2)).toEqual({ share: 0.75 })
    expect(massTrap(1.2, 1)).toEqual({ share: 1.2 })
  })

  it('refuses what cannot be a film, and nothing to measure against', () => {
    expect(massTrap(1, 0)).toMatchObject({ refused: { message: 'trap.nothingOnBare' } })
    expect(massTrap(-1, 1)).toMatchObject({ refused: { message: 'trap.filmNegative' } })
    expect(massTrap(1, -1)).toMatchObject({ refused: { message: 'trap.filmNegative' } })
    expect(massTrap(0, 1)).toEqual({ share: 0 })
    expect(massTrap(NaN, 1)).toMatchObject({ refused: { message: 'trap.filmNotANumber' } })
    expect(massTrap(1, Infinity)).toMatchObject({ refused: { message: 'trap.filmNotANumber' } })
  })
})
