/**
 * Long computations asked for beside the ranking itself, each as steps that tell how far they are: a quick search, all
 * single changes, a ladder of tacks, a long run. Plain data in and out, so that a worker can be sent one.
 */
import { longRunRows } from './long-run-rows.ts'
import type { RunRow } from './run-rows.ts'
import type { RankingTask } from './order-service.ts'
import { aimOf } from './order-service.ts'
import type { TriedChange } from '../press/changes.ts'
import { whatToChange } from '../press/changes.ts'
import type { BoundedAnswer } from '../press/order-search.ts'
import { searchOrders } from '../press/order-search.ts'
import type { RunEvent } from '../press/run-events.ts'
import type { SetUp } from '../press/setup.ts'
import type { LadderPlan, LadderWish } from '../press/tack-ladder.ts'
import { planTacks } from '../press/tack-ladder.ts'

/** What is found, by kind of study. */
export interface Findings {
  search: BoundedAnswer
  changes: TriedChange[]
  ladder: LadderPlan
  run: RunRow[]
}

export type StudyKind = keyof Findings

interface Tasks {
  search: { kind: 'search'; task: RankingTask }
  changes: { kind: 'changes'; task: RankingTask }
  ladder: { kind: 'ladder'; setUp: SetUp; wish: LadderWish }
  run: { kind: 'run'; setUp: SetUp; sheets: number; events: readonly RunEvent[] }
}

export type Study<Kind extends StudyKind = StudyKind> = Tasks[Kind]

export type FromStudyWorker = { kind: 'step'; share: number } | { kind: 'done'; found: Findings[StudyKind] }

/** Yields the share done, from 0 to 1. */
export function* study(asked: Study): Generator<number, Findings[StudyKind], undefined> {
  switch (asked.kind) {
    case 'search':
      return searchOrders(asked.task.setUp, aimOf(asked.task))
    case 'changes':
      return whatToChange(asked.task.setUp, aimOf(asked.task))
    case 'ladder':
      return planTacks(asked.setUp, asked.wish)
    case 'run':
      return yield* longRunRows(asked.setUp, asked.sheets, asked.events)
  }
}
