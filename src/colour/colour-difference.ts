import { differenceCiede2000 } from 'culori/fn'
import { useLab65 } from './culori-modes.ts'
import type { Lab } from './lab.ts'

useLab65()
const difference = differenceCiede2000()

/**
 * Colour difference dE00 between two colours: 1 is about what an eye can just see side by side.
 *
 * The library reckons in Lab under D65 and would convert a colour marked D50 first. The formula knows no light, so
 * the D50 numbers are handed over marked as D65 and stay as they are.
 * Source: CIE 142:2001, as in Sharma, Wu, Dalal, Color Research and Application 30(1), 2005.
 */
export function colourDifference(first: Lab, second: Lab): number {
  return difference(asLab65(first), asLab65(second))
}

function asLab65([l, a, b]: Lab) {
  return { mode: 'lab65', l, a, b } as const
}
