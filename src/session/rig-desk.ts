/** What stands beside the instruments: which is in use, the readings written down, and the exercise. Nothing here prints. */
import type { TackExerciseKind } from '../drill/tack-exercise.ts'
import type { Oil } from '../physics/pick-test.ts'
import type { TackConditions, Tackmeter } from '../physics/tackmeter.ts'
import type { Session } from './session.ts'

export const rigNames = ['tackmeter', 'pick test', 'proof'] as const
export type RigName = (typeof rigNames)[number]

export type TackTask = 'free' | TackExerciseKind

/** One reading of the tackmeter as written down. */
export interface TackReading extends TackConditions {
  readonly instrument: Tackmeter['id']
  /** name of the ink or of the sample */
  readonly ink: string
  /** tack units: what tells two inks of one name apart */
  readonly tack: number
  /** s since the ink was metered on */
  readonly time: number
  /** um on the rollers */
  readonly film: number
  /** on the instrument's own scale */
  readonly reading: number
}

/** One strip of the pick test as marked. */
export interface MarkedStrip {
  readonly paper: string
  readonly oil: Oil
  readonly wet: boolean
  /** m/s */
  readonly velocity: number
  /** N/m */
  readonly resistance: number
}

export interface RigState {
  readonly rig: RigName
  readonly task: TackTask
  /** seed of the exercise */
  readonly exercise: number
  readonly readings: readonly TackReading[]
  readonly strips: readonly MarkedStrip[]
  /** readings, strips and weighings taken so far: each has its own draw of noise */
  readonly taken: number
}

const opening: RigState = { rig: 'tackmeter', task: 'free', exercise: 1, readings: [], strips: [], taken: 0 }

export class RigDesk {
  #state = opening
  readonly #listeners = new Set<() => void>()

  get state(): RigState {
    return this.#state
  }

  set(part: Partial<RigState>): void {
    this.#state = { ...this.#state, ...part }
    for (const listener of this.#listeners) listener()
  }

  /** Calls `listener` after every change; returns what ends that. */
  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }
}

const desks = new WeakMap<Session, RigDesk>()

/** The one desk of instruments of this session. */
export function rigDeskOf(session: Session): RigDesk {
  let desk = desks.get(session)
  if (!desk) desks.set(session, (desk = new RigDesk()))
  return desk
}
