import type { Said } from './said.ts'

/** All in percent. */
interface Compared {
  readonly massTrap: number
  /** by Preucil */
  readonly apparent: number
  /** by Preucil, had the second ink transferred in full; null where that cannot be read */
  readonly full: number | null
  /** of the ink below, missing in the overprint */
  readonly lost: number
}

/** Points that need no explanation: as much as the last digit of two densities moves a trap. */
const alike = 2
/** Percent of the ink below from which its loss is worth naming. */
const worthNaming = 3

/**
 * Why the densitometer's trap differs from the ink that transferred. Three things act: inks printed over one another
 * do not add their densities up, even in full; the second unit lifts part of the ink below, which the density counts
 * against the second ink; and a thin film darkens more for its thickness than a full one, which lets a poor transfer
 * read better.
 */
export function whyTrapsDiffer({ massTrap, apparent, full, lost }: Compared): Said {
  const values = { massTrap, apparent, full: full ?? apparent, lost }
  if (Math.abs(apparent - massTrap) < alike) return { message: 'why.alike', values }
  if (apparent > massTrap) return { message: 'why.thinFilmsReadDark', values }
  if (lost >= worthNaming) return { message: 'why.lifted', values }
  return { message: 'why.densitiesDoNotAddUp', values }
}
