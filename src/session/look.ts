/** How the result is looked at: nothing in here changes what the press prints, and nothing of it is undone. */
import type { Control } from '../lesson/control.ts'
import type { Measures } from './measures.ts'
import { ownMeasures } from './measures.ts'
import type { Hideable, ViewName, ViewState } from './view-state.ts'

export interface Look {
  /** the part of the page that is open */
  view: ViewName
  /** names of inks that do not print in the patch looked at */
  leftOut: readonly string[]
  /** what the loupe shows: the ink as seen, or what broke in each cell */
  face: 'ink' | 'marks'
  /** row of cells through which the section cuts, from 0 at the top of the loupe */
  row: number
  /** the units numbers are shown and typed in */
  measures: Measures
  /** controls that the open lesson keeps as they are */
  closed: readonly Control[]
  /** terms of the glossary that the open lesson has come to; what goes by others is not shown; null outside a course */
  known: ReadonlySet<string> | null
  /** parts and controls that a link leaves out, as where the page stands inside another one */
  hide: readonly Hideable[]
  /** the drill a link asks for */
  drill: ViewState['drill'] | null
  /** the scene (from 0) at which the lecture is shown to the class; null while none is */
  scene: number | null
}

export const openingLook: Look = {
  view: 'bench',
  leftOut: [],
  face: 'ink',
  row: 96,
  measures: ownMeasures,
  closed: [],
  known: null,
  hide: [],
  drill: null,
  scene: null,
}
