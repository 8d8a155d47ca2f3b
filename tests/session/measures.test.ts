import fc from 'fast-check'
import { beforeAll, describe, expect, test } from 'vitest'
import { fromShown, measureIn, ownMeasures, toShown } from '../../src/session/measures.ts'
import { unitNames } from '../../src/session/unit-names.ts'

// Fetching mathjs takes seconds on a busy machine.
beforeAll(() => measureIn('degF'), 60_000)

describe('a chosen unit', () => {
  // The foot is 0.3048 m and 25 degC is 77 degF by definition; 0.9 m a sheet makes 2.5 m/s 10,000 sheets an hour.
  test.each([
    ['m/s', 2.5, 2.5],
    ['m/min', 2.5, 150],
    ['ft/min', 0.3048, 60],
    ['sheets/h', 2.5, 10_000],
    ['degC', 25, 25],
    ['degF', 25, 77],
    ['degF', -40, -40],
    ['um', 1.12, 1.12],
    ['g/m2', 1.12, 1.12],
  ] as const)('%s: %d reads %d', async (unit, own, shown) => {
    expect(toShown(own, await measureIn(unit))).toBeCloseTo(shown, 9)
  })

  test('takes back what it shows', async () => {
    const measures = await Promise.all(Object.values(unitNames).flat().map(measureIn))
    fc.assert(
      fc.property(fc.constantFrom(...measures), fc.double({ min: -100, max: 100, noNaN: true }), (measure, own) => {
        expect(fromShown(toShown(own, measure), measure)).toBeCloseTo(own, 9)
      }),
    )
  })

  test("the set-up's own units are the first of each list", () => {
    expect(Object.values(ownMeasures).map(({ unit }) => unit)).toEqual(Object.values(unitNames).map(([first]) => first))
  })
})
