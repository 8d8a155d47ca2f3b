/** The long run of a session: its length and events as asked for, the run last printed, and the sheet looked at. */
import type { RunRow } from '../measure/run-rows.ts'
import { checkEvents } from '../press/check-events.ts'
import type { Problem } from '../press/problem.ts'
import type { RunEvent } from '../press/run-events.ts'
import type { SetUp } from '../press/setup.ts'
import type { Session } from './session.ts'
import { startStudy } from './studying.ts'

/** An event as asked for: its ink by name, since units may be exchanged before the run is started. */
export interface AskedEvent {
  readonly kind: RunEvent['kind']
  readonly sheet: number
  readonly ink?: string
  /** tack units */
  readonly tack?: number
  /** um */
  readonly film?: number
}

/** A run that was printed, and what it was a run of. */
export interface PrintedRun {
  readonly setUp: SetUp
  readonly sheets: number
  readonly asked: readonly AskedEvent[]
  readonly events: readonly RunEvent[]
  readonly rows: readonly RunRow[]
}

export interface RunState {
  readonly sheets: number
  readonly asked: readonly AskedEvent[]
  /** share of the work done; null while none is going on */
  readonly share: number | null
  readonly printed: PrintedRun | null
  /** the sheet looked at */
  readonly marker: number
  readonly problem: Problem | null
}

/** Sheets: a usual run, long enough for everything to settle. */
const usualLength = 10_000

export class RunDesk {
  #state: RunState = { sheets: usualLength, asked: [], share: null, printed: null, marker: 1, problem: null }
  #cancel: (() => void) | undefined
  readonly #start: typeof startStudy
  readonly #listeners = new Set<() => void>()

  constructor(start = startStudy) {
    this.#start = start
  }

  get state(): RunState {
    return this.#state
  }

  ask(part: Partial<Pick<RunState, 'sheets' | 'asked' | 'marker'>>): void {
    const asked = part.asked?.toSorted((a, b) => a.sheet - b.sheet)
    this.#set({ ...part, ...(asked ? { asked } : {}) })
  }

  /** Runs the press; an earlier run that is still going is called off. */
  start(setUp: SetUp): void {
    this.cancel()
    const { sheets, asked } = this.#state
    const checked = checkEvents(asked, setUp)
    if ('problems' in checked) {
      this.#set({ problem: checked.problems[0] })
      return
    }
    const { events } = checked
    this.#set({ share: 0, problem: null })
    this.#cancel = this.#start<'run'>(
      { kind: 'run', setUp, sheets, events },
      {
        step: (share) => this.#set({ share }),
        done: (rows) => {
          const printed = { setUp, sheets, asked, events, rows }
          this.#set({ share: null, printed, marker: Math.min(this.#state.marker, sheets) })
        },
      },
    )
  }

  /** Stops the work; the last run stays. */
  cancel(): void {
    this.#cancel?.()
    this.#cancel = undefined
    this.#set({ share: null })
  }

  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  #set(part: Partial<RunState>): void {
    this.#state = { ...this.#state, ...part }
    for (const listener of this.#listeners) listener()
  }
}

const desks = new WeakMap<Session, RunDesk>()

/** The one long run of this session. */
export function runDeskOf(session: Session): RunDesk {
  let desk = desks.get(session)
  if (!desk) desks.set(session, (desk = new RunDesk()))
  return desk
}
