/** A set-up: everything that decides what the press prints. Plain data, checked before it gets here. */
import type { Paper } from '../physics/paper.ts'

export interface Ink {
  name: string
  /** tack units, at 2 m/s, 2 um and 25 degC */
  tack: number
  /** um on the form roller */
  film: number
  /** share of the area in which it prints, 0 to 1; the patches' areas follow as if inks were laid independently */
  coverage: number
  /** degC of its unit, where it differs from the press's */
  temperature?: number
  /** dampening of its unit, where it differs from the press's; 1 is normal */
  dampening?: number
  /** sRGB hex or CIELAB of a spot ink's solid; process inks need none */
  colour?: string | Lab
  /** share of foreign ink in its store at the start, 0 to 0.5 */
  soiled?: number
  /** the sheet is dry when it reaches this unit */
  dryBefore?: boolean
}

/** CIELAB, D50, 2 degree observer */
export type Lab = readonly [number, number, number]

export type PressKind = 'sheet-fed' | 'web'

export interface Press {
  kind: PressKind
  /** m/s, surface speed */
  speed: number
  /** s from one unit's nip to the next */
  interval: number
  /** whether the interval was stated, and so does not follow from unit spacing and speed */
  intervalPinned: boolean
  /** degC of every unit that states none of its own */
  temperature: number
  /** 0 none, 1 normal, at most 2, of every unit that states none of its own */
  dampening: number
  waterless: boolean
}

/** Which sheet is read: the first, the N-th, or one after everything has settled. */
export type Reading = 'first' | 'settled' | { sheet: number }

export interface SetUp {
  /** in the order of the units, the first to print first */
  inks: Ink[]
  paper: Paper
  press: Press
  reading: Reading
  /** decides every draw of local strength */
  seed: number
}

/** Dampening at one ink's unit: nothing on a waterless press. */
export function dampeningAt(press: Press, ink: Ink): number {
  return press.waterless ? 0 : (ink.dampening ?? press.dampening)
}

/** Temperature (degC) of one ink's film. */
export function temperatureAt(press: Press, ink: Ink): number {
  return ink.temperature ?? press.temperature
}
