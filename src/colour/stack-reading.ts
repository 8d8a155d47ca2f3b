import type { DensityStatus } from './data/density-weights.ts'
import { densities, densitiesMinusPaper, type Densities } from './density.ts'
import type { InkColour } from './ink-colour.ts'
import { labOfReflectance, type Lab } from './lab.ts'
import type { PaperOptics } from './paper-optics.ts'
import { reflectance, type InkAmount } from './reflectance.ts'
import { screenColour, type ScreenColour } from './screen-colour.ts'
import type { Spectrum } from './spectrum.ts'

/** Everything an instrument and a screen can say about a printed patch, or why it has no colour. */
export type StackReading =
  | {
      readonly reflectance: Spectrum
      readonly Lab: Lab
      readonly absoluteDensities: Readonly<Record<DensityStatus, Densities>>
      readonly densitiesMinusPaper: Readonly<Record<DensityStatus, Densities>>
      readonly screen: ScreenColour
    }
  | { readonly Lab: null; readonly reason: string }

/**
 * Reads a stack of inks from its full spectrum.
 *
 * @param inks each with its amount in units of the film that makes its solid; an ink of amount 0 needs no colour
 * @throws RangeError when an amount is negative or no number
 */
export function readStack(
  optics: PaperOptics,
  inks: readonly { readonly ink: InkColour; readonly amount: number }[],
): StackReading {
  const known: InkAmount[] = []
  for (const { ink, amount } of inks) {
    if (ink.kind !== 'none') known.push({ absorbance: ink.absorbance, amount })
    else if (amount !== 0) return { Lab: null, reason: ink.reason }
  }
  const seen = reflectance(optics, known)
  const Lab = labOfReflectance(seen)
  return {
    reflectance: seen,
    Lab,
    absoluteDensities: { E: densities(seen, 'E'), T: densities(seen, 'T') },
    densitiesMinusPaper: {
      E: densitiesMinusPaper(seen, optics.paper, 'E'),
      T: densitiesMinusPaper(seen, optics.paper, 'T'),
    },
    screen: screenColour(Lab),
  }
}
