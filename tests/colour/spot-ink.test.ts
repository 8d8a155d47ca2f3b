import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { colourDifference } from '../../src/colour/colour-difference.ts'
import { labOfReflectance, type Lab } from '../../src/colour/lab.ts'
import { inkSets } from '../../src/colour/paper-optics.ts'
import { reflectance } from '../../src/colour/reflectance.ts'
import { mostAbsorbed } from '../../src/colour/smooth-absorbance.ts'
import { spotInk } from '../../src/colour/spot-ink.ts'
import { anySet, fourAmounts, processStack } from './legal-inks.ts'

const anyLab: fc.Arbitrary<Lab> = fc.tuple(
  fc.double({ min: 0, max: 100, noNaN: true }),
  fc.double({ min: -100, max: 100, noNaN: true }),
  fc.double({ min: -100, max: 100, noNaN: true }),
)

describe('an ink made from a wanted colour', () => {
  test('has any colour that some clear ink can have: every overprint no darker than an ink may be', () => {
    fc.assert(
      fc.property(anySet, fourAmounts, (set, amounts) => {
        const stack = processStack(set, amounts)
        const darkest = Math.max(
          ...set.paper.map((_, band) => stack.reduce((sum, ink) => sum + ink.amount * ink.absorbance[band], 0)),
        )
        // Brought down to nine tenths of the most an ink may absorb: the colour is then proved to be within reach.
        const share = Math.min(1, (0.9 * mostAbsorbed) / darkest)
        const wanted = labOfReflectance(
          reflectance(
            set,
            stack.map((ink) => ({ ...ink, amount: ink.amount * share })),
          ),
        )
        const ink = spotInk(set, wanted)
        expect(ink.outOfReach).toBeNull()
        const solid = labOfReflectance(reflectance(set, [{ absorbance: ink.absorbance, amount: 1 }]))
        expect(colourDifference(wanted, solid)).toBeLessThan(0.1)
      }),
      { numRuns: 150 },
    )
  })

  test('whatever is wanted, its absorbance is a real one and its solid is stated truly', () => {
    fc.assert(
      fc.property(anySet, anyLab, (set, wanted) => {
        const ink = spotInk(set, wanted)
        for (const absorbed of ink.absorbance) {
          expect(absorbed).toBeGreaterThanOrEqual(0)
          expect(absorbed).toBeLessThanOrEqual(mostAbsorbed)
        }
        const solid = labOfReflectance(reflectance(set, [{ absorbance: ink.absorbance, amount: 1 }]))
        expect(colourDifference(solid, ink.solid)).toBeLessThan(1e-9)
        expect(ink.difference).toBeCloseTo(colourDifference(wanted, solid), 9)
        expect(ink.outOfReach === null).toBe(ink.difference < 0.1)
      }),
      { numRuns: 60 },
    )
  })

  test.each<[keyof typeof inkSets, Lab, string]>([
    ['newsprint', [97, 0, 0], 'lighter than the paper'],
    ['newsprint', [5, 0, 0], 'darker than the paper allows'],
    ['coated', [50, 0, -140], 'more vivid than an ink can be'],
  ])('on %s paper %j is %s, and that is said', (set, wanted, why) => {
    const { outOfReach, difference } = spotInk(inkSets[set], wanted)
    expect(outOfReach?.why).toBe(why)
    expect(outOfReach?.sentence).toBe(
      `No clear ink gives this colour on ${set} paper: it is ${why}. The nearest colour found is used, dE00 ${difference.toFixed(1)} away.`,
    )
  })

  test('a yellow too light for newsprint stays a yellow', () => {
    const { solid } = spotInk(inkSets.newsprint, [97, -16, 94])
    expect(solid[2]).toBeGreaterThan(50)
  })

  test('a grey is even: no band absorbs much more than another', () => {
    const { absorbance } = spotInk(inkSets.coated, [60, 0, -1])
    expect(Math.max(...absorbance) - Math.min(...absorbance)).toBeLessThan(0.2)
  })

  test('rebuilt from their Lab alone, the process inks read nearly the densities of the sets', () => {
    for (const set of Object.values(inkSets)) {
      for (const [name, absorbance] of Object.entries(set.absorbance)) {
        const rebuilt = spotInk(set, labOfReflectance(reflectance(set, [{ absorbance, amount: 1 }])))
        // Smoother than any pigment, as it knows of none: the mean absorbance agrees, the steps do not.
        const mean = (values: readonly number[]) => values.slice(4, 32).reduce((sum, value) => sum + value) / 28
        expect(Math.abs(mean(rebuilt.absorbance) / mean(absorbance) - 1), `${set.name} ${name}`).toBeLessThan(0.25)
      }
    }
  })
})
