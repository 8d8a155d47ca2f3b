/** What every kind of package says of itself. */
import type { Launch } from '../learning-system/launch.ts'

/** A lesson or a drill, which is an objective of its own in a learning system. */
interface PackagedTask {
  /** as accountOf names it (learning-system/account.ts) */
  readonly id: string
  readonly title: string
}

export interface Contents {
  readonly launch: Launch
  readonly title: string
  readonly description: string
  /** a language tag */
  readonly language: string
  readonly tasks: readonly PackagedTask[]
  /** what stands in the zip for whoever opens it */
  readonly readme: string
}

/** The page within the package. */
export const pageFile = 'tackstair.html'
export const readmeFile = 'README.txt'

/**
 * A UUID (RFC 9562, version 8) that belongs to what the package holds and not to the program that made it, so that a newer
 * package takes the place of an older one. `part` names one thing within it.
 */
export function idOf({ launch }: Contents, part: string): string {
  const text = JSON.stringify([part, launch.parcel.lessons, launch.parcel.drills])
  const hex = [0x811c9dc5, 0x9747b28c, 0x3c6ef372, 0xa54ff53a].map((start) => {
    // FNV-1a (Fowler, Noll and Vo), then the finaliser of MurmurHash3 (Appleby) so that all bits take part.
    let hash = start
    for (const sign of text) hash = Math.imul(hash ^ (sign.codePointAt(0) ?? 0), 0x01000193)
    hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b)
    hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35)
    return ((hash ^ (hash >>> 16)) >>> 0).toString(16).padStart(8, '0')
  })
  const all = hex.join('')
  return `${all.slice(0, 8)}-${all.slice(8, 12)}-8${all.slice(13, 16)}-a${all.slice(17, 20)}-${all.slice(20, 32)}`
}
