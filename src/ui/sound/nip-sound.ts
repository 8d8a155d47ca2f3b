/**
 * What a nip sounds like: one tone, as high as the pull at the plane that gives way, and a dull knock where paper is
 * picked. One mapping and nothing else, so that what is heard can be told apart with closed eyes.
 */
import type { NipAccount } from '../../press/account.ts'
import { pullGrown } from '../../view/nip-curve.ts'

/** Hz at no pull at all: chosen so that small loudspeakers still give it. */
const lowest = 165
/** tack units to an octave: chosen so that the tacks in use, 4 to 24, lie within two octaves and are told apart. */
const octave = 10
/** Hz: no pull sounds higher, so that a made-up ink of enormous tack hurts nobody. */
const highest = 1320

/** Share of the area torn from which it is heard: chosen where a printer would call the sheet spoilt. */
const heardFrom = 0.001

/** Where the tone ends, and where in between the knock falls: the films part from phase 0.5 to 0.85 (nip-curve.ts). */
const parted = 0.85
const knocksAt = 0.62

/** Hz of a pull in tack units. */
export function pitchOf(pull: number): number {
  return Math.min(highest, lowest * 2 ** (pull / octave))
}

/** Hz now, or null where the nip is silent: it sounds from the moment the pull begins to grow until the films have parted. */
export function toneAt(account: NipAccount, phase: number): number | null {
  const grown = pullGrown(phase)
  if (grown === 0 || phase >= parted) return null
  const pull = pullThatGave(account)
  return pull === 0 ? null : pitchOf(pull * grown)
}

/** tack units: the pull reached, which the paper limits where it is the weakest. */
export function pullThatGave({ pullOnPaper, strength }: NipAccount): number {
  return Math.min(pullOnPaper, strength)
}

/** Whether paper is picked between two moments of the nip. */
export function knocksBetween({ torn }: NipAccount, before: number, after: number): boolean {
  return torn >= heardFrom && before < knocksAt && after >= knocksAt
}
