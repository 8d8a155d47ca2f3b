/** What a worker does for the drills, since both take a second or so: make one, and judge a learner's work on it. */
import type { Drill, DrillRequest } from './drill.ts'
import { makeDrill } from './drill.ts'
import type { Work, WorkVerdict } from './work.ts'
import { judgeWork } from './work.ts'

/** Plain data, so that it can be sent. */
export type DrillTask = { kind: 'make'; request: DrillRequest } | { kind: 'judge'; drill: Drill; work: Work }

export type DrillAnswer =
  | { kind: 'made'; drill: Drill }
  | { kind: 'judged'; verdict: WorkVerdict }
  /** no solvable drill was found */
  | { kind: 'failed'; reason: string }

export function answerDrillTask(task: DrillTask): DrillAnswer {
  try {
    return task.kind === 'make'
      ? { kind: 'made', drill: makeDrill(task.request) }
      : { kind: 'judged', verdict: judgeWork(task.drill, task.work) }
  } catch (error) {
    if (!(error instanceof Error)) throw error
    return { kind: 'failed', reason: error.message }
  }
}
