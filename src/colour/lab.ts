import type { Spectrum } from './spectrum.ts'
import { white, xyzOfReflectance, type XYZ } from './tristimulus.ts'

/** CIE L*, a*, b* under D50 for the 2 degree observer. */
export type Lab = readonly [L: number, a: number, b: number]

// CIE 15:2004, 8.2.1: below this share of white the cube root gives way to a straight line.
const threshold = (6 / 29) ** 3
const slope = (29 / 6) ** 2 / 3

/** L*, a*, b* of X, Y, Z. Source: CIE 15:2004 (ISO/CIE 11664-4). */
export function labOfXYZ(xyz: XYZ): Lab {
  const [x, y, z] = xyz.map((value, axis) => compress(value / white[axis]))
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)]
}

/** X, Y, Z of L*, a*, b*: the inverse of `labOfXYZ`. */
export function xyzOfLab([L, a, b]: Lab): XYZ {
  const y = (L + 16) / 116
  return [white[0] * expand(y + a / 500), white[1] * expand(y), white[2] * expand(y - b / 200)]
}

/** L*, a*, b* of a reflectance spectrum (0 to 1 per band). */
export function labOfReflectance(reflectance: Spectrum): Lab {
  return labOfXYZ(xyzOfReflectance(reflectance))
}

/** Chroma C*: how far the colour is from grey. */
export function chroma([, a, b]: Lab): number {
  return Math.hypot(a, b)
}

/** Hue angle h, 0 to 360 degrees: 0 towards red-purple, 90 yellow, 180 green, 270 blue. 0 for an exact grey. */
export function hueAngle([, a, b]: Lab): number {
  return ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360
}

/** The turn in degrees from the hue of one colour to that of another, the short way round: above -180, at most 180. */
export function hueTurn(from: Lab, to: Lab): number {
  const turn = (hueAngle(to) - hueAngle(from) + 360) % 360
  return turn > 180 ? turn - 360 : turn
}

function compress(share: number): number {
  return share > threshold ? Math.cbrt(share) : slope * share + 4 / 29
}

function expand(root: number): number {
  return root > 6 / 29 ? root ** 3 : (root - 4 / 29) / slope
}
