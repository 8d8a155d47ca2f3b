import { coatedInkSet } from './data/ink-set-coated.ts'
import { newsprintInkSet } from './data/ink-set-newsprint.ts'
import { uncoatedInkSet } from './data/ink-set-uncoated.ts'
import type { InkSetData, PaperLight } from './ink-set.ts'
import type { Spectrum } from './spectrum.ts'

/** A kind of paper, its process inks, and what the body of the paper reflects under its surface. */
export interface PaperOptics extends InkSetData {
  /** reflectance of the paper's body met from inside, 0 to 1 per band */
  readonly body: Spectrum
}

export const inkSets: Readonly<Record<InkSetData['name'], PaperOptics>> = {
  coated: withBody(coatedInkSet),
  uncoated: withBody(uncoatedInkSet),
  newsprint: withBody(newsprintInkSet),
}

/** Light-weight coated and weak uncoated paper have no set of their own: they are read like their nearest kin. */
const setForPaper: Readonly<Record<string, PaperOptics>> = {
  coated: inkSets.coated,
  'light-weight coated': inkSets.coated,
  uncoated: inkSets.uncoated,
  'weak uncoated': inkSets.uncoated,
  newsprint: inkSets.newsprint,
}

/** Papers whose colour the program knows, by name. */
export const opticalPaperNames: readonly string[] = Object.keys(setForPaper)

/**
 * The optics and process inks of a paper.
 *
 * @throws RangeError when the paper is none of `opticalPaperNames`
 */
export function opticsForPaper(name: string): PaperOptics {
  if (!Object.hasOwn(setForPaper, name)) {
    throw new RangeError(`No colour is known for the paper "${name}". Known are: ${opticalPaperNames.join(', ')}.`)
  }
  return setForPaper[name]
}

function withBody(set: InkSetData): PaperOptics {
  return { ...set, body: set.paper.map((seen) => bodyReflectance(set, seen)) }
}

/** Reflectance of the body, from the reflectance an instrument reads: the inverse of `seenReflectance`. */
function bodyReflectance(light: PaperLight, seen: number): number {
  const inside = (seen - light.surfaceReflectance) / ((1 - light.entryLoss) * (1 - light.internalReflection))
  return inside / (1 + light.internalReflection * inside)
}

/**
 * Reflectance an instrument reads when the body, seen through the ink, reflects `inside` (0 to 1): light is lost on
 * entry, and part of what comes out is turned back again and again.
 *
 * R = s + (1 - e)(1 - i) r / (1 - i r). Source: Saunderson, J. Opt. Soc. Am. 32(12), 1942 (from memory).
 */
export function seenReflectance(light: PaperLight, inside: number): number {
  const { entryLoss, internalReflection, surfaceReflectance } = light
  return surfaceReflectance + ((1 - entryLoss) * (1 - internalReflection) * inside) / (1 - internalReflection * inside)
}
