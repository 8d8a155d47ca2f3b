import fc from 'fast-check'
import { inkSets, type PaperOptics } from '../../src/colour/paper-optics.ts'
import { processInkNames } from '../../src/colour/ink-set.ts'
import type { InkAmount } from '../../src/colour/reflectance.ts'

export const anySet = fc.constantFrom(...Object.values(inkSets))

/** Amounts of cyan, magenta, yellow and black, each up to twice its solid. */
export const fourAmounts = fc.tuple(amount(), amount(), amount(), amount())

function amount(most = 2) {
  return fc.double({ min: 0, max: most, noNaN: true })
}

/** A stack of the four process inks of a set, in the order cyan, magenta, yellow, black. */
export function processStack(set: PaperOptics, amounts: readonly number[]): InkAmount[] {
  return processInkNames.map((name, ink) => ({ absorbance: set.absorbance[name], amount: amounts[ink] }))
}
