/** A class counted by the causes hidden in the drills it did. What was named at the first answer counts. */
import type { FaultKind } from '../drill/cause.ts'
import { faultKinds } from '../drill/cause.ts'
import type { LearnerDigest } from './roll.ts'
import type { Spread } from './spread.ts'
import { spreadOf } from './spread.ts'

export interface CauseCount {
  readonly kind: FaultKind
  /** drills that hid it */
  readonly hidden: number
  /** of them: named at the first answer, and the whole answer proven by its evidence */
  readonly hit: number
  readonly proven: number
  /** kinds named in those drills that were not there, the commonest first; the same kind is one at another unit */
  readonly confused: readonly { readonly kind: FaultKind; readonly drills: number }[]
  /** s a drill, of those whose time is known */
  readonly time: Spread | null
}

/** Every kind that was hidden in any of the drills, in the order of all kinds. */
export function countCauses(learners: readonly LearnerDigest[]): CauseCount[] {
  const drills = learners.flatMap((learner) => learner.drills)
  return faultKinds.flatMap((kind): CauseCount[] => {
    const own = drills.filter(({ hidden }) => hidden.includes(kind))
    if (own.length === 0) return []
    const confused = faultKinds
      .map((other) => ({ kind: other, drills: own.filter(({ wrong }) => wrong.includes(other)).length }))
      .filter((each) => each.drills > 0)
      .sort((a, b) => b.drills - a.drills)
    return [
      {
        kind,
        hidden: own.length,
        hit: own.filter(({ hit }) => hit.includes(kind)).length,
        proven: own.filter(({ first }) => first === 'proven').length,
        confused,
        time: spreadOf(own.flatMap(({ active }) => active ?? [])),
      },
    ]
  })
}
