import { allAtOnce } from './in-steps.ts'
import { seenReflectance, type PaperOptics } from './paper-optics.ts'
import { bandsInSteps, pictureBandCount } from './picture-bands.ts'
import type { Spectrum } from './spectrum.ts'

/** What colours a picture on one paper with one set of inks, worked out once. Plain numbers: it can go to a worker. */
export interface PictureTable {
  /** steps of absorbance that each ink's solid adds in each band: [ink][band] */
  readonly absorbance: Float64Array
  /** reflectance after so many steps of absorbance: [band][step] */
  readonly reflectance: Float64Array
  /** linear screen light per reflectance: [band][red, green, blue] */
  readonly weights: Float64Array
}

/** Steps per unit of absorbance: half a step changes the light by less than half a percent. */
const stepsPerAbsorbance = 128
/** Absorbance at which the table ends: less than a hundred thousandth of the light comes back. */
const largestAbsorbance = 12

export const tableSteps = stepsPerAbsorbance * largestAbsorbance + 1

/**
 * Prepares pictures for `paintPicture`.
 *
 * @param absorbances of each ink's solid, in the order in which `paintPicture` is told of them
 */
export function pictureTable(optics: PaperOptics, absorbances: readonly Spectrum[]): PictureTable {
  return allAtOnce(tableInSteps(optics, absorbances))
}

/** The same in steps, for a page that has to answer in between. */
export function* tableInSteps(
  optics: PaperOptics,
  absorbances: readonly Spectrum[],
): Generator<undefined, PictureTable> {
  const { bands, weights } = yield* bandsInSteps(optics, absorbances)
  const reflectance = new Float64Array(pictureBandCount * tableSteps)
  for (let place = 0; place < reflectance.length; place++) {
    const absorbed = (place % tableSteps) / stepsPerAbsorbance
    const body = optics.body[bands[Math.floor(place / tableSteps)]]
    reflectance[place] = seenReflectance(optics, body * Math.exp(-absorbed))
  }
  return {
    absorbance: Float64Array.from(absorbances.flatMap((ink) => bands.map((band) => ink[band] * stepsPerAbsorbance))),
    reflectance,
    weights: Float64Array.from(bands.flatMap((_, i) => weights.map((part) => part[i]))),
  }
}
