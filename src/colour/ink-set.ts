import type { Spectrum } from './spectrum.ts'

export const processInkNames = ['cyan', 'magenta', 'yellow', 'black'] as const
export type ProcessInkName = (typeof processInkNames)[number]

/** Which light the paper itself turns back, and how. */
export interface PaperLight {
  /** reflectance of the bare paper as an instrument reads it, 0 to 1 per band */
  readonly paper: Spectrum
  /** share of the light that turns back at the surface before it enters, 0 to 1 */
  readonly entryLoss: number
  /** share of the light coming out that the surface turns back into the paper, 0 to 1 */
  readonly internalReflection: number
  /** share of surface light that reaches the instrument, 0 to 1; more on rougher paper, and it limits how dark a print gets */
  readonly surfaceReflectance: number
}

/** A kind of paper with the four process inks on it. */
export interface InkSetData extends PaperLight {
  readonly name: 'coated' | 'uncoated' | 'newsprint'
  /** the published data whose paper and solids the set meets */
  readonly dataSet: string
  /** true: worked back from published colours. No set is measured */
  readonly reconstructed: true
  /** wording to show wherever numbers of the set are shown */
  readonly label: string
  /** absorbance of each solid: natural logarithm, light passing in and out again, per band */
  readonly absorbance: Readonly<Record<ProcessInkName, Spectrum>>
}
