import { wavelengths } from './data/wavelengths.ts'

/** One value for each of the 36 bands from 380 to 730 nm, by 10 nm. */
export type Spectrum = readonly number[]

export const bandCount = wavelengths.length

/** Sum over the bands of weight times value. */
export function weightedSum(weights: Spectrum, values: Spectrum): number {
  let sum = 0
  for (let band = 0; band < bandCount; band++) sum += weights[band] * values[band]
  return sum
}
