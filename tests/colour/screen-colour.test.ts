import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { colourDifference } from '../../src/colour/colour-difference.ts'
import { hueTurn, labOfReflectance, type Lab } from '../../src/colour/lab.ts'
import { inkSets } from '../../src/colour/paper-optics.ts'
import { reflectance } from '../../src/colour/reflectance.ts'
import { labOfScreenColour, screenColour } from '../../src/colour/screen-colour.ts'
import { anySet, fourAmounts, processStack } from './legal-inks.ts'

const solid = (name: 'cyan' | 'magenta' | 'yellow' | 'black'): Lab =>
  labOfReflectance(reflectance(inkSets.coated, [{ absorbance: inkSets.coated.absorbance[name], amount: 1 }]))

function picked(hex: string): Lab {
  const lab = labOfScreenColour(hex)
  if (lab === null) throw new Error(`${hex} is a colour`)
  return lab
}

describe('a colour on the screen', () => {
  test('the coated paper is white, newsprint is greyer and yellower', () => {
    expect(screenColour(labOfReflectance(inkSets.coated.paper)).hex).toBe('#ffffff')
    const [red, green, blue] = screenColour(labOfReflectance(inkSets.newsprint.paper)).bytes
    expect(red).toBeLessThan(245)
    expect(red).toBeGreaterThan(green)
    expect(green).toBeGreaterThan(blue)
  })

  test('what the screen can show comes within the rounding of its bytes, and is not marked', () => {
    for (const name of ['magenta', 'black'] as const) {
      const shown = screenColour(solid(name))
      expect(shown.outsideScreen).toBe(false)
      expect(shown.difference).toBeLessThan(0.5)
    }
  })

  test('coated cyan is beyond the screen: it is marked, and shown without a turn of hue towards another ink', () => {
    const cyan = solid('cyan')
    const shown = screenColour(cyan)
    expect(shown.outsideScreen).toBe(true)
    expect(shown.difference).toBeGreaterThan(1)
    const seen = picked(shown.hex)
    expect(Math.abs(hueTurn(cyan, seen))).toBeLessThan(10)
    expect(shown.difference).toBeCloseTo(colourDifference(cyan, seen), 6)
  })

  test('is nearer to the true colour than mere clipping of cyan would be', () => {
    // sRGB of FOGRA39L cyan clipped without mapping, red -115 taken as 0: 0, 160, 228 (worked out apart from the program).
    const clipped = picked('#00a0e4')
    expect(screenColour(solid('cyan')).difference).toBeLessThan(colourDifference(solid('cyan'), clipped))
  })

  test('every printed colour becomes three bytes and the same hex text', () => {
    fc.assert(
      fc.property(anySet, fourAmounts, (set, amounts) => {
        const { bytes, hex } = screenColour(labOfReflectance(reflectance(set, processStack(set, amounts))))
        expect(hex).toBe(`#${bytes.map((byte) => byte.toString(16).padStart(2, '0')).join('')}`)
        for (const byte of bytes) expect(Number.isInteger(byte) && byte >= 0 && byte <= 255).toBe(true)
      }),
    )
  })

  test('a colour picked on the screen comes back as the same colour', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 0xffffff }), (number) => {
        const hex = `#${number.toString(16).padStart(6, '0')}`
        const shown = screenColour(picked(hex))
        expect(shown.hex).toBe(hex)
        expect(shown.outsideScreen).toBe(false)
      }),
      // Once came back a step too red.
      { examples: [[0x008979]] },
    )
  })

  test('short and capital hex is read; anything else is not a colour', () => {
    expect(labOfScreenColour('#F80')).toEqual(labOfScreenColour('#ff8800'))
    for (const text of ['', 'red', '#12', '#12345', '#1234567', '#ggg', 'ff8800', '#ff880080', 'javascript:1']) {
      expect(labOfScreenColour(text)).toBeNull()
    }
  })
})
