import type { ColouredInk, InkColour } from '../colour/ink-colour.ts'
import { inkColour } from '../colour/ink-colour.ts'
import type { PaperOptics } from '../colour/paper-optics.ts'

/** Colours kept: all inks of a few set-ups on a few papers; the oldest go first, so that memory stays bounded. */
const mostKept = 100
const known = new Map<string, InkColour>()

/** The colour of an ink on a paper, worked out once: a colour out of reach takes tens of milliseconds to come near to. */
export function knownColour({ name, colour }: ColouredInk, optics: PaperOptics): InkColour {
  const key = JSON.stringify([optics.name, name, colour])
  let found = known.get(key)
  if (!found) {
    found = inkColour(colour === undefined ? { name } : { name, colour }, optics)
    known.set(key, found)
    for (const oldest of known.keys()) {
      if (known.size <= mostKept) break
      known.delete(oldest)
    }
  }
  return found
}
