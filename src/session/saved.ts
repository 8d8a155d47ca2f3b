/** Everything a person can save: what a file holds and what is kept as a draft. */
import type { Shelf } from '../measure/shelf.ts'
import { emptyShelf } from '../measure/shelf.ts'
import type { SheetColumn } from '../measure/sheet-row.ts'
import type { SetUp } from '../press/setup.ts'
import type { Scene } from './scene.ts'
import type { Settings } from './settings.ts'
import type { ViewState } from './view-state.ts'

/** A set-up that was tried, with what was noted and, where a sheet of a real press was read, its readings as typed. */
export interface Trial {
  readonly name: string
  readonly note: string
  /** what the learner expected before it was printed */
  readonly prediction?: string
  readonly setUp: SetUp
  readonly readings: readonly Partial<Record<SheetColumn, string>>[]
}

/** What was kept of one lesson; whether it makes sense is for the lesson to say (resume in src/lesson/progress.ts). */
export type KeptProgress = Readonly<Record<string, unknown>> & { readonly lesson: string }

export interface Saved {
  /** null where only other things were saved */
  readonly setUp: SetUp | null
  readonly view: ViewState
  readonly scenes: readonly Scene[]
  readonly trials: readonly Trial[]
  /** the press sheet on the measuring desk: its readings as typed, and the file they were read from instead */
  readonly readings: readonly Partial<Record<SheetColumn, string>>[]
  readonly readingsFile: { readonly name: string; readonly text: string } | null
  readonly shelf: Shelf
  readonly progress: readonly KeptProgress[]
  readonly settings: Settings
}

export const nothingSaved: Saved = {
  setUp: null,
  view: {},
  scenes: [],
  trials: [],
  readings: [],
  readingsFile: null,
  shelf: emptyShelf,
  progress: [],
  settings: {},
}
