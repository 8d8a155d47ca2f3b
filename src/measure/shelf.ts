/**
 * The shelf: inks, papers and presses that somebody made and named, to be used again. Plain data; every entry is a part
 * of a set-up file and is read by the same check, so nothing on the shelf can be what a set-up could not hold.
 */
import type { FitKind } from './fit-parameter.ts'
import type { WrittenInk, WrittenPaper, WrittenPress } from './written-setup.ts'

export const shelfKind = 'tackstair shelf'
export const shelfVersion = 1

/** How a press came to be fitted, kept beside it. */
interface FitNote {
  readonly status: 'E' | 'T'
  /** densities that were read */
  readonly readings: number
  /** standard deviation of a reading about the model, density */
  readonly deviation: number
  readonly values: readonly {
    readonly kind: FitKind
    /** null for the press and the paper */
    readonly ink: string | null
    readonly value: number
    readonly standardError: number
  }[]
}

/** A press, with the paper and inks that belong to it where it was fitted with them. */
export interface ShelfPress {
  readonly name: string
  readonly press: WrittenPress
  readonly paper?: WrittenPaper
  readonly inks?: readonly WrittenInk[]
  readonly fit?: FitNote
}

export interface Shelf {
  readonly kind: typeof shelfKind
  readonly version: typeof shelfVersion
  readonly inks: readonly WrittenInk[]
  readonly papers: readonly WrittenPaper[]
  readonly presses: readonly ShelfPress[]
}

export const emptyShelf: Shelf = { kind: shelfKind, version: shelfVersion, inks: [], papers: [], presses: [] }

/** The shelf as the text of a file. */
export function writeShelf(shelf: Shelf): string {
  return `${JSON.stringify(shelf, null, 1)}\n`
}
