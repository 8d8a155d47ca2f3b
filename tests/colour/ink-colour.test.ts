import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { colourDifference } from '../../src/colour/colour-difference.ts'
import { inkColour, type ColouredInk } from '../../src/colour/ink-colour.ts'
import type { Lab } from '../../src/colour/lab.ts'
import { opticsForPaper } from '../../src/colour/paper-optics.ts'

const coated = opticsForPaper('coated')

describe('the colour of an ink', () => {
  test('a process ink has the colour of its set', () => {
    expect(inkColour({ name: 'cyan' }, coated)).toMatchObject({ kind: 'process', absorbance: coated.absorbance.cyan })
  })

  // Aims of ISO 12647-2:2004 for coated paper (from memory), there with a tolerance of 5.
  test.each([
    ['black', [16, 0, 0]],
    ['cyan', [54, -36, -49]],
    ['magenta', [46, 72, -5]],
    ['yellow', [88, -6, 90]],
  ] as const)('the solid of %s lies within 5 of the aim in the standard', (name, [L, a, b]) => {
    const { solid } = inkColour({ name }, coated)
    expect(solid && colourDifference(solid, [L, a, b])).toBeLessThan(5)
  })

  test.each<[Lab]>([[[0, 200, -200]], [[100, -200, 200]]])(
    'may be stated as %j, the ends of what Lab can be',
    (colour) => {
      expect(inkColour({ name: 'house', colour }, coated).kind).toBe('spot')
    },
  )

  test.each<[Lab]>([[[-1, 0, 0]], [[101, 0, 0]], [[50, 201, 0]], [[50, 0, -201]]])('but not as %j', (colour) => {
    expect(inkColour({ name: 'house', colour }, coated).kind).toBe('none')
  })

  test('an ink with a colour has that colour, whatever its name', () => {
    const ink = inkColour({ name: 'cyan', colour: [60, 40, 50] }, coated)
    expect(ink.kind).toBe('spot')
    expect(ink.solid && colourDifference(ink.solid, [60, 40, 50])).toBeLessThan(0.1)
  })

  test('an ink without a colour has none, and the reason says what to do', () => {
    expect(inkColour({ name: 'varnish' }, coated)).toEqual({
      kind: 'none',
      absorbance: null,
      solid: null,
      reason: 'The ink "varnish" has no colour. Give it one, such as #d4006a, or L*, a*, b*.',
    })
  })

  test.each<[ColouredInk, string]>([
    [
      { name: 'house', colour: 'reddish' },
      'The ink "house" has the colour "reddish", which cannot be read. Write it as #rrggbb.',
    ],
    [
      { name: 'house', colour: [120, 0, 0] },
      'The ink "house" has the Lab colour 120, 0, 0. L* must lie between 0 and 100, a* and b* between -200 and 200.',
    ],
    [
      { name: 'house', colour: [50, NaN, 0] },
      'The ink "house" has the Lab colour 50, NaN, 0. L* must lie between 0 and 100, a* and b* between -200 and 200.',
    ],
  ])('%j is refused with a sentence, not an exception', (ink, reason) => {
    expect(inkColour(ink, coated)).toMatchObject({ kind: 'none', reason })
  })

  test('never throws on any name and text', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), (name, colour) => {
        expect(['spot', 'none']).toContain(inkColour({ name, colour }, coated).kind)
        expect(['process', 'none']).toContain(inkColour({ name }, coated).kind)
      }),
    )
  })
})
