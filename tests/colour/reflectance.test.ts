import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { inkSets } from '../../src/colour/paper-optics.ts'
import { reflectance } from '../../src/colour/reflectance.ts'
import { anySet, fourAmounts, processStack } from './legal-inks.ts'

describe('the reflectance of a stack', () => {
  test('no ink shows the bare paper', () => {
    for (const set of Object.values(inkSets)) {
      reflectance(set, []).forEach((seen, band) => expect(seen).toBeCloseTo(set.paper[band], 12))
    }
  })

  test('lies between the surface and the bare paper in every band', () => {
    fc.assert(
      fc.property(anySet, fourAmounts, (set, amounts) => {
        reflectance(set, processStack(set, amounts)).forEach((seen, band) => {
          expect(seen).toBeGreaterThanOrEqual(set.surfaceReflectance)
          expect(seen).toBeLessThanOrEqual(set.paper[band] + 1e-12)
          expect(seen).toBeLessThan(1)
        })
      }),
    )
  })

  test('never rises in any band when more of any ink is added', () => {
    fc.assert(
      fc.property(
        anySet,
        fourAmounts,
        fc.nat(3),
        fc.double({ min: 1e-6, max: 1, noNaN: true }),
        (set, amounts, ink, more) => {
          const before = reflectance(set, processStack(set, amounts))
          const after = reflectance(
            set,
            processStack(
              set,
              amounts.map((value, i) => (i === ink ? value + more : value)),
            ),
          )
          after.forEach((seen, band) => expect(seen).toBeLessThanOrEqual(before[band]))
          expect(after.reduce((sum, seen) => sum + seen)).toBeLessThan(before.reduce((sum, seen) => sum + seen))
        },
      ),
    )
  })

  test('does not depend on the order of the inks, as they are taken as clear', () => {
    const { coated } = inkSets
    const stack = processStack(coated, [0.9, 0.4, 1.1, 0.2])
    reflectance(coated, [...stack].reverse()).forEach((seen, band) =>
      expect(seen).toBeCloseTo(reflectance(coated, stack)[band], 12),
    )
  })

  test.each([NaN, -0.01, Infinity, -Infinity])('refuses the amount %d', (wrong) => {
    expect(() => reflectance(inkSets.coated, processStack(inkSets.coated, [1, wrong, 0, 0]))).toThrow(
      new RangeError(`The amount of ink 2 in the stack is ${wrong}. It must be a number, 0 or more.`),
    )
  })
})
