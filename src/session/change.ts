/** Everything a person can do to a set-up, one kind of change at a time. */
import type { PaperName } from '../physics/paper.ts'
import type { Ink, PressKind, Reading } from '../press/setup.ts'
import type { ScenarioName } from './scenarios.ts'

/** The numbers of a paper that can be edited on the page. */
export type PaperField = 'surfaceStrength' | 'absorbency' | 'evenness'
/** What can be edited of a press, beside its kind. */
export type PressField = 'speed' | 'interval' | 'temperature' | 'dampening' | 'waterless'

export type Change =
  /** takes the ink out of unit `from` (from 0) and puts it in at unit `to`; those between move up or down */
  | { kind: 'move ink'; from: number; to: number }
  /** `undefined` takes the field back to what the press or the usual ink has */
  | { kind: 'edit ink'; unit: number; field: keyof Ink; value: Ink[keyof Ink] | undefined }
  /** as the last unit */
  | { kind: 'add ink'; ink: Ink }
  | { kind: 'remove ink'; unit: number }
  | { kind: 'take paper'; paper: PaperName }
  /** `undefined` takes the field back to the paper as supplied */
  | { kind: 'edit paper'; field: PaperField; value: number | undefined }
  /** another kind of press, at its usual speed */
  | { kind: 'take press'; press: PressKind }
  /** `undefined`: back to the usual value; the interval follows spacing and speed again */
  | { kind: 'edit press'; field: PressField; value: number | boolean | undefined }
  | { kind: 'read'; reading: Reading }
  /** one sheet further; several in a row are undone as one */
  | { kind: 'run on' }
  | { kind: 'seed'; seed: number }
  | { kind: 'take scenario'; scenario: ScenarioName }
  /** a whole set-up from outside, of unknown content */
  | { kind: 'load'; given: unknown }
