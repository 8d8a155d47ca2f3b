import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { chroma, hueAngle, hueTurn, labOfReflectance, labOfXYZ, xyzOfLab, type Lab } from '../../src/colour/lab.ts'
import { bandCount } from '../../src/colour/spectrum.ts'
import { white, type XYZ } from '../../src/colour/tristimulus.ts'

const anyLab = fc.tuple(
  fc.double({ min: 0, max: 100, noNaN: true }),
  fc.double({ min: -120, max: 120, noNaN: true }),
  fc.double({ min: -120, max: 120, noNaN: true }),
)

describe('Lab under D50', () => {
  test('white is that of ISO/CIE 11664-2 to three decimals', () => {
    // D50, 2 degree observer: 96.422, 100, 82.521 (CIE 15:2004).
    ;[96.422, 100, 82.521].forEach((value, axis) => expect(white[axis]).toBeCloseTo(value, 3))
  })

  test('a perfect white is 100, 0, 0', () => {
    const lab = labOfReflectance(new Array<number>(bandCount).fill(1))
    ;[100, 0, 0].forEach((value, axis) => expect(lab[axis]).toBeCloseTo(value, 10))
  })

  test('an even grey of 18.42 % has the lightness 50', () => {
    // ((50 + 16) / 116) cubed is 0.18419 (worked out by hand).
    const [L, a, b] = labOfReflectance(new Array<number>(bandCount).fill((66 / 116) ** 3))
    expect(L).toBeCloseTo(50, 10)
    expect(a).toBeCloseTo(0, 10)
    expect(b).toBeCloseTo(0, 10)
  })

  // Both columns as published in FOGRA39L and IFRA26S, which round X, Y, Z to two decimals and take 82.49 for the Z of
  // white, as their own papers show.
  test.each<[string, XYZ, Lab]>([
    ['FOGRA39L cyan', [15.02, 22.93, 52.85], [55, -37, -50]],
    ['FOGRA39L yellow', [69.17, 74.16, 7.04], [89, -5, 93]],
    ['FOGRA39L black', [2.02, 2.1, 1.73], [16, 0, 0]],
    ['FOGRA39L four inks', [0.93, 0.97, 0.69], [8.71, -0.07, 2.06]],
    ['IFRA26S paper', [64.42, 66.4, 50.04], [85.2, 0.9, 5.18]],
  ])('%s agrees with its published X, Y, Z', (_, xyz, published) => {
    const [x, y, z] = xyzOfLab(published)
    ;[x, y, (z / white[2]) * 82.49].forEach((value, axis) => expect(Math.abs(value - xyz[axis])).toBeLessThan(0.0061))
  })

  test('to X, Y, Z and back changes nothing', () => {
    fc.assert(
      fc.property(anyLab, (lab) => {
        labOfXYZ(xyzOfLab(lab)).forEach((value, axis) => expect(value).toBeCloseTo(lab[axis], 8))
      }),
    )
  })
})

describe('hue and chroma', () => {
  test.each<[Lab, number, number]>([
    [[50, 3, 0], 3, 0],
    [[50, 0, 4], 4, 90],
    [[50, -3, 0], 3, 180],
    [[50, 3, -3], Math.sqrt(18), 315],
    [[50, 0, 0], 0, 0],
  ])('of %j are %d and %d degrees', (lab, expectedChroma, expectedHue) => {
    expect(chroma(lab)).toBeCloseTo(expectedChroma, 12)
    expect(hueAngle(lab)).toBeCloseTo(expectedHue, 12)
  })

  test('the turn between hues goes the short way round', () => {
    expect(hueTurn([50, 3, 3], [50, 3, -3])).toBeCloseTo(-90, 12)
    expect(hueTurn([50, 3, -3], [50, 3, 3])).toBeCloseTo(90, 12)
    expect(hueTurn([50, 3, 0], [50, -3, 0])).toBeCloseTo(180, 12)
    expect(hueTurn([50, -3, 0], [50, 3, 0])).toBeCloseTo(180, 12)
  })
})
