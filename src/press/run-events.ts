/** What may happen in the middle of a run, before a given sheet. */
import type { Line } from './line.ts'
import { lineOf } from './line.ts'
import type { Ink, SetUp } from './setup.ts'
import type { Train } from './train.ts'

export type RunEvent =
  /**
   * The press stands: plates and blankets of every unit are wiped, stores stay as they are. Make-ready at the start of a
   * run is the same. Ink that sets or dries on the rollers, and rollers that cool, are not modelled.
   */
  | { kind: 'stop'; sheet: number }
  /** One unit is washed up: its store holds its own ink alone, its plate and blanket nothing. */
  | { kind: 'wash-up'; sheet: number; unit: number }
  /** The ink of one unit is altered in the duct, by an additive say: tack, film or temperature, for all of it at once. */
  | {
      kind: 'ink change'
      sheet: number
      unit: number
      ink: Partial<Pick<Ink, 'tack' | 'film' | 'temperature' | 'dampening'>>
    }

export interface PressNow {
  setUp: SetUp
  line: Line
  trains: Train[]
}

/** The press after an event; its trains are the ones handed in, changed. */
export function afterEvent({ setUp, line, trains }: PressNow, event: RunEvent): PressNow {
  if (event.kind === 'stop') {
    trains.forEach(wipe)
    return { setUp, line, trains }
  }
  if (event.kind === 'wash-up') {
    const train = trains[event.unit]
    wipe(train)
    train.store.fill(0)
    train.store[event.unit] = 1
    return { setUp, line, trains }
  }
  const inks = setUp.inks.map((ink, unit) => (unit === event.unit ? { ...ink, ...event.ink } : ink))
  const changed = { ...setUp, inks }
  return { setUp: changed, line: lineOf(changed), trains }
}

function wipe(train: Train): void {
  train.plate.fill(0)
  train.blanket.fill(0)
}
