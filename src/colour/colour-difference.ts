import { differenceCiede2000, modeLab65, useMode } from 'culori/fn'
import type { Lab } from './lab.ts'

useMode(modeLab65)
const difference = differenceCiede2000()

/**
 * Colour difference dE00 between two colours; about 1 is what an eye can just see side by side.
 *
 * The library reckons in Lab under D65 and would convert a colour marked D50 first. The formula knows no light, so
 * the D50 numbers are handed over marked as D65 and stay as they are.
 * Source: Sharma, Wu, Dalal, Color Research and Application 30(1), 2005 (ISO/CIE 11664-6).
 */
export function colourDifference(first: Lab, second: Lab): number {
  return difference(asLab65(first), asLab65(second))
}

function asLab65([l, a, b]: Lab) {
  return { mode: 'lab65', l, a, b } as const
}
