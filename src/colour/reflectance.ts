import { seenReflectance, type PaperOptics } from './paper-optics.ts'
import { bandCount, type Spectrum } from './spectrum.ts'

/** All of one ink in a stack, however many layers it lies in. */
export interface InkAmount {
  /** absorbance of the ink's solid, per band */
  readonly absorbance: Spectrum
  /** film in units of the film that makes the solid; 0 or more */
  readonly amount: number
}

/**
 * Reflectance (0 to 1 per band) of a stack of inks on paper, as an instrument reads it.
 *
 * Inks are taken as clear: they take light away and scatter none, so only the amount of each counts and not the
 * order in which it lies. A real ink that hides what is below it (opaque white, metallic) breaks this.
 *
 * @throws RangeError when an amount is negative or no number
 */
export function reflectance(optics: PaperOptics, inks: readonly InkAmount[]): number[] {
  inks.forEach((ink, index) => checkAmount(ink.amount, index))
  const seen = new Array<number>(bandCount)
  for (let band = 0; band < bandCount; band++) {
    let absorbed = 0
    for (const ink of inks) absorbed += ink.amount * ink.absorbance[band]
    seen[band] = seenReflectance(optics, optics.body[band] * Math.exp(-absorbed))
  }
  return seen
}

function checkAmount(amount: number, index: number): void {
  if (Number.isFinite(amount) && amount >= 0) return
  throw new RangeError(`The amount of ink ${index + 1} in the stack is ${amount}. It must be a number, 0 or more.`)
}
