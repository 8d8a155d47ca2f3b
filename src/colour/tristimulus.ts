import { colourWeights } from './data/colour-weights.ts'
import { weightedSum, type Spectrum } from './spectrum.ts'

/** X, Y, Z under D50 for the 2 degree observer; a perfect white has Y = 100. */
export type XYZ = readonly [X: number, Y: number, Z: number]

/** A perfect white under D50: X 96.422, Y 100, Z 82.521. */
export const white: XYZ = [sum(colourWeights.X), sum(colourWeights.Y), sum(colourWeights.Z)]

/** X, Y, Z of a reflectance spectrum (0 to 1 per band). Source: CIE 15:2004, by summation over 10 nm. */
export function xyzOfReflectance(reflectance: Spectrum): XYZ {
  return [
    weightedSum(colourWeights.X, reflectance),
    weightedSum(colourWeights.Y, reflectance),
    weightedSum(colourWeights.Z, reflectance),
  ]
}

function sum(weights: Spectrum): number {
  return weights.reduce((total, weight) => total + weight, 0)
}
