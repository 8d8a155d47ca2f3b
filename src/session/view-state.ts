/**
 * What a person is looking at, as far as a link, a scene of a lecture or a draft carries it; every field may be missing.
 * A new field is added here and in view-words.ts, and nowhere else.
 */
import type { DrillRequest } from '../drill/drill.ts'
import { controls } from '../lesson/control.ts'
import type { UnitName } from './unit-names.ts'

export const viewNames = [
  'bench',
  'strip',
  'orders',
  'trials',
  'instruments',
  'run chart',
  'lessons',
  'drills',
  'glossary',
  'lecture',
  'board',
] as const
export type ViewName = (typeof viewNames)[number]

/** What a page that is shown inside another one may leave out: any control, and whole parts of the page. */
export const hideable = [
  ...controls,
  'header',
  'scenarios',
  'ladder',
  'transport',
  'line picture',
  'section',
  'loupe',
  'telling',
  'readings',
  'workings',
] as const
export type Hideable = (typeof hideable)[number]

export interface ViewState {
  readonly view?: ViewName
  /** units (from 0, ascending) that print in the patch looked at: none on the bare paper, all where it is missing */
  readonly patch?: readonly number[]
  /** unit (from 0) whose nip is looked at */
  readonly unit?: number
  /** what the loupe shows: the ink as seen, or what broke in each cell */
  readonly face?: 'ink' | 'marks'
  /** the units numbers are shown in, where they are not the set-up's own */
  readonly measures?: readonly UnitName[]
  /** id of the lesson that is open */
  readonly lesson?: string
  readonly drill?: DrillRequest
  /** the scene (from 0) of the lecture that is shown to the class; the lecture is being prepared where it is missing */
  readonly scene?: number
  readonly hide?: readonly Hideable[]
}
