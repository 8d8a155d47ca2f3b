/** The session's bench as a lesson sees it, and the way back. */
import type { Bench } from '../lesson/bench.ts'
import { openingPhase } from './playback.ts'
import type { Session } from './session.ts'
import { writeSetUp } from './write-setup.ts'

export function benchNow({ setUp, look }: Session): Bench {
  return { setUp, patch: setUp.inks.map(({ name }) => name).filter((name) => !look.leftOut.includes(name)) }
}

/** Where a step wants the sheet: having run through a unit, or in its nip. Units from 1. */
export interface Stand {
  readonly sheetAfter?: number
  readonly sheetIn?: number
}

/**
 * Stops the sheet where a step names it. A unit that does not print in the patch looked at gives way to the last one that
 * does, and so does a unit that is not named.
 */
export function stopSheet(session: Session, { sheetAfter, sheetIn }: Stand): void {
  const named = sheetAfter ?? sheetIn
  const { patch } = session
  const prints = named !== undefined && ((patch >> (named - 1)) & 1) === 1
  session.play({ kind: 'look at unit', unit: prints ? named - 1 : lastUnitIn(patch) })
  session.play({ kind: 'scrub', phase: sheetIn === undefined ? 1 : openingPhase })
}

/** The last unit (from 0) that prints in a patch; the first one on bare paper. */
export function lastUnitIn(patch: number): number {
  return Math.max(0, 31 - Math.clz32(patch))
}

/** Puts `bench` on the session's bench; what is there already stays. */
export function putOnBench(session: Session, { setUp, patch }: Bench): void {
  if (setUp !== session.setUp) {
    session.change({ kind: 'load', given: writeSetUp(setUp) })
    const unit = setUp.inks.findLastIndex(({ name }) => patch.includes(name))
    session.play({ kind: 'look at unit', unit: Math.max(0, unit) })
    session.play({ kind: 'scrub', phase: openingPhase })
  }
  session.lookWith({ leftOut: setUp.inks.map(({ name }) => name).filter((name) => !patch.includes(name)) })
}
