/**
 * The measuring desk of a session: how the densitometer reads the strip, the readings of a real
 * press sheet, and the shelf of own inks, papers and presses. None of it changes what the press prints.
 */
import type { DensityFilter, DensityStatus } from '../colour/data/density-weights.ts'
import type { Fit } from '../measure/fit.ts'
import type { PressSheet } from '../measure/press-sheet.ts'
import type { Refused } from '../measure/said.ts'
import type { SheetColumn } from '../measure/sheet-row.ts'
import type { Shelf } from '../measure/shelf.ts'
import { emptyShelf } from '../measure/shelf.ts'
import type { Session } from './session.ts'

/** A row of a press sheet as typed. */
export type SheetReading = Partial<Readonly<Record<SheetColumn, string>>>

export interface DeskState {
  /** whether a patch has been chosen for the head; it is the session's patch then */
  readonly patchChosen: boolean
  readonly status: DensityStatus
  /** densities above the paper's own, or the paper with them */
  readonly base: 'minus paper' | 'absolute'
  /** the filter traps are read through; null for the right one of each */
  readonly filter: DensityFilter | null
  /** name of a published set; null for the usual one of the paper */
  readonly aim: string | null
  readonly readings: readonly SheetReading[]
  /** a file of readings, which goes before those typed */
  readonly file: { readonly name: string; readonly text: string } | null
  /** names of the values a fit may move, as the fit panel keys them; null for the usual choice */
  readonly free: readonly string[] | null
  /** what the last fit found, of which sheet and status */
  readonly fit: { readonly sheet: PressSheet; readonly status: DensityStatus; readonly result: Fit | Refused } | null
  readonly shelf: Shelf
}

const opening: DeskState = {
  patchChosen: false,
  status: 'E',
  base: 'minus paper',
  filter: null,
  aim: null,
  readings: [],
  file: null,
  free: null,
  fit: null,
  shelf: emptyShelf,
}

export class Desk {
  #state = opening
  readonly #listeners = new Set<() => void>()

  get state(): DeskState {
    return this.#state
  }

  set(part: Partial<DeskState>): void {
    this.#state = { ...this.#state, ...part }
    for (const listener of this.#listeners) listener()
  }

  /** Calls `listener` after every change; returns what ends that. */
  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }
}

const desks = new WeakMap<Session, Desk>()

/** The one desk of this session. */
export function deskOf(session: Session): Desk {
  let desk = desks.get(session)
  if (!desk) desks.set(session, (desk = new Desk()))
  return desk
}
