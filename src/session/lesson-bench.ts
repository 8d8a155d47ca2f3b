/** The session's bench as a lesson sees it, and the way back. */
import type { Bench } from '../lesson/bench.ts'
import type { Stand } from '../lesson/stand.ts'
import { openingPhase } from './playback.ts'
import { Session } from './session.ts'
import { writeSetUp } from './write-setup.ts'

export function benchNow({ setUp, look }: Session): Bench {
  return { setUp, patch: setUp.inks.map(({ name }) => name).filter((name) => !look.leftOut.includes(name)) }
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

/** How far the nip of a figure is: chosen so that a third of it is still closed, a third stretched and a third parted. */
const figurePhase = 0.68

/** A bench of its own with the sheet where a step has it; one that names no place is drawn in its nip, where more is to be seen. */
export function benchForFigure(bench: Bench, stand: Stand): Session {
  const session = new Session()
  putOnBench(session, bench)
  stopSheet(session, stand)
  if (stand.sheetAfter === undefined) session.play({ kind: 'scrub', phase: figurePhase })
  return session
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
