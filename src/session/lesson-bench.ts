/** The session's bench as a lesson sees it, and the way back. */
import type { Bench } from '../lesson/bench.ts'
import { openingPhase } from './playback.ts'
import type { Session } from './session.ts'
import { writeSetUp } from './write-setup.ts'

export function benchNow({ setUp, look }: Session): Bench {
  return { setUp, patch: setUp.inks.map(({ name }) => name).filter((name) => !look.leftOut.includes(name)) }
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
