/**
 * The few wavelength bands a picture is coloured from.
 *
 * Reflectances of printed stacks are smooth, so the light of neighbouring bands rises and falls together and ten
 * well-chosen bands, each with its own weights, give almost the colour all 36 give. Bands and weights are chosen for
 * the very inks and paper of the picture, by least squares over a spread of overprints.
 */
import { allAtOnce } from './in-steps.ts'
import type { PaperOptics } from './paper-optics.ts'
import { matrixOf, solvePositive } from './positive-matrix.ts'
import { reflectance } from './reflectance.ts'
import { linearLight } from './screen-light.ts'
import { bandCount, type Spectrum } from './spectrum.ts'
import { spreadOfAmounts } from './spread-of-amounts.ts'
import { xyzOfReflectance } from './tristimulus.ts'

export interface PictureBands {
  /** which of the 36 bands */
  readonly bands: readonly number[]
  /** for red, green and blue: linear screen light is the sum of weight times reflectance over the bands */
  readonly weights: readonly [red: Spectrum, green: Spectrum, blue: Spectrum]
}

/** Chosen so that process inks come out to dE00 0.6 or better; eight bands miss 1 on newsprint. `paintPicture` writes them out. */
export const pictureBandCount = 10

/** Overprints the choice is made on: enough that more change nothing visible. */
const overprints = 600

/** Largest amount of each ink in them: half as much again as the picture is expected to hold. */
const largestAmount = 3

/** How much more the bare paper counts than an overprint, as it fills most pictures. */
const paperCounts = 300

/** Rounds of trying a better band in the place of each; later rounds change little. */
const mostRounds = 2

/** One screen colour's least squares: the products of every pair of bands, and of every band with the light. */
interface Fit {
  /** [band][no later band] */
  readonly pairs: number[][]
  readonly withLight: number[]
  readonly lightSquared: number
}

/** Chooses the bands for pictures of these inks (absorbance of each solid) on this paper. */
export function choosePictureBands(optics: PaperOptics, absorbances: readonly Spectrum[]): PictureBands {
  return allAtOnce(bandsInSteps(optics, absorbances))
}

/** The same in steps: the overprints, and then a band in each. */
export function* bandsInSteps(
  optics: PaperOptics,
  absorbances: readonly Spectrum[],
): Generator<undefined, PictureBands> {
  const fits = fitsOver(optics, absorbances)
  const chosen: number[] = []
  while (chosen.length < pictureBandCount) {
    yield
    chosen.push(bestBand(fits, chosen))
  }
  let rounds = 0
  while (rounds < mostRounds && (yield* improveEach(fits, chosen))) rounds++
  const bands = [...chosen].sort((a, b) => a - b)
  return { bands, weights: [weightsFor(fits[0], bands), weightsFor(fits[1], bands), weightsFor(fits[2], bands)] }
}

function fitsOver(optics: PaperOptics, absorbances: readonly Spectrum[]): Fit[] {
  const spectra = spreadOfAmounts(absorbances.length, overprints, largestAmount).map((amounts) =>
    reflectance(
      optics,
      absorbances.map((absorbance, ink) => ({ absorbance, amount: amounts[ink] })),
    ),
  )
  const samples = [
    { spectrum: optics.paper, counts: paperCounts },
    ...spectra.map((spectrum) => ({ spectrum, counts: 1 })),
  ].map((sample) => ({ ...sample, light: linearLight(xyzOfReflectance(sample.spectrum)) }))

  return [0, 1, 2].map((part) => {
    const pairs = matrixOf(bandCount, bandCount, () => 0)
    const withLight = new Array<number>(bandCount).fill(0)
    let lightSquared = 0
    for (const { spectrum, light, counts } of samples) {
      const weight = (counts * visibility(light[part])) ** 2
      for (let i = 0; i < bandCount; i++) {
        const weighted = weight * spectrum[i]
        const row = pairs[i]
        withLight[i] += weighted * light[part]
        for (let j = 0; j <= i; j++) row[j] += weighted * spectrum[j]
      }
      lightSquared += weight * light[part] ** 2
    }
    return { pairs, withLight, lightSquared }
  })
}

/** How much an error in this linear light shows: more in the dark, about as lightness grows with the cube root. */
function visibility(light: number): number {
  return (Math.abs(light) + 0.02) ** (-2 / 3)
}

function bestBand(fits: readonly Fit[], others: readonly number[]): number {
  const free = Array.from({ length: bandCount }, (_, band) => band).filter((band) => !others.includes(band))
  const errors = free.map((band) => errorWith(fits, [...others, band]))
  return free[errors.indexOf(Math.min(...errors))]
}

/** Tries a better band in the place of each; whether any was found. */
function* improveEach(fits: readonly Fit[], chosen: number[]): Generator<undefined, boolean> {
  let improved = false
  for (let place = 0; place < chosen.length; place++) {
    yield
    const best = bestBand(
      fits,
      chosen.filter((_, other) => other !== place),
    )
    improved ||= best !== chosen[place]
    chosen[place] = best
  }
  return improved
}

function errorWith(fits: readonly Fit[], bands: readonly number[]): number {
  return fits.reduce((sum, fit) => {
    const weights = weightsFor(fit, bands)
    return sum + fit.lightSquared - bands.reduce((met, band, i) => met + weights[i] * fit.withLight[band], 0)
  }, 0)
}

function weightsFor(fit: Fit, bands: readonly number[]): number[] {
  return solvePositive(
    lowerPairs(fit, bands),
    bands.map((band) => fit.withLight[band]),
  )
}

/** The lower triangle of the pairs of these bands. Asked for some thousand times, and so without a call for each. */
function lowerPairs({ pairs }: Fit, bands: readonly number[]): number[][] {
  const rows: number[][] = []
  for (let i = 0; i < bands.length; i++) {
    const row: number[] = []
    const one = bands[i]
    for (let j = 0; j <= i; j++) {
      const other = bands[j]
      row.push(one > other ? pairs[one][other] : pairs[other][one])
    }
    rows.push(row)
  }
  return rows
}
