import { converter, modeLrgb, modeOklab, modeOklch, modeRgb, modeXyz50, toGamut, useMode } from 'culori/fn'
import { inkSets } from './paper-optics.ts'
import { white, xyzOfReflectance, type XYZ } from './tristimulus.ts'

for (const mode of [modeRgb, modeLrgb, modeXyz50, modeOklab, modeOklch]) useMode(mode)
const toCoded = converter('rgb')
const toLinear = converter('lrgb')
const toXYZ = converter('xyz50')
const intoScreen = toGamut('rgb', 'oklch')

/** Red, green and blue of an sRGB screen. Inside the screen's range all lie from 0 to 1; colours beyond it do not. */
export type ScreenLight = readonly [red: number, green: number, blue: number]

/**
 * The coated paper is shown as the screen's white: an eye takes the lightest paper in view for white, and shown as
 * measured it looks blue-grey. Other papers are shown against it, so newsprint stays greyer and yellower.
 * X, Y, Z are scaled from that paper to white, as the media-relative colours of ICC.1 are.
 */
const screenPaper = xyzOfReflectance(inkSets.coated.paper)

/** Coded sRGB light of a colour, not brought into the screen's range. */
export function codedLight(xyz: XYZ): ScreenLight {
  const { r, g, b } = toCoded(relative(xyz))
  return [r, g, b]
}

/** Linear sRGB light of a colour, not brought into the screen's range. Linear in X, Y and Z. */
export function linearLight(xyz: XYZ): ScreenLight {
  const { r, g, b } = toLinear(relative(xyz))
  return [r, g, b]
}

/** The colour that coded sRGB light shows: the inverse of `codedLight`. */
export function xyzOfCodedLight([r, g, b]: ScreenLight): XYZ {
  const { x, y, z } = toXYZ({ mode: 'rgb', r, g, b })
  return [x * screenPaper[0] * (100 / white[0]), y * screenPaper[1], z * screenPaper[2] * (100 / white[2])]
}

/**
 * Coded light brought into the screen's range: chroma is taken back at the same lightness and hue (Oklch) until
 * clipping would no longer be seen. Source: CSS Color Module Level 4, gamut mapping.
 */
export function insideScreen([r, g, b]: ScreenLight): ScreenLight {
  const mapped = intoScreen({ mode: 'rgb', r, g, b })
  return [mapped.r, mapped.g, mapped.b]
}

function relative(xyz: XYZ) {
  const [x, y, z] = xyz.map((value, axis) => (value / screenPaper[axis]) * (white[axis] / 100))
  return { mode: 'xyz50', x, y, z } as const
}

/** Coded sRGB light of linear light, 0 or more. Source: IEC 61966-2-1. */
export function codedOfLinear(linear: number): number {
  return toCoded({ mode: 'lrgb', r: linear, g: linear, b: linear }).r
}
