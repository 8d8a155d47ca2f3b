/** What a learner has done of a parcel, as the page keeps it: the one thing everything told to a learning system comes from. */
import type { Lesson } from '../../lesson/lesson.ts'
import { mergeProgress, stepsDone } from '../../lesson/merge-progress.ts'
import type { Progress } from '../../lesson/progress.ts'
import type { DrillEntry } from '../../session/drill-record.ts'
import type { WrittenSetUp } from '../../session/write-setup.ts'

/** The bench as a lesson left it. */
export interface KeptBench {
  readonly setUp: WrittenSetUp
  readonly patch: readonly string[]
}

export interface LessonWork {
  readonly progress: Progress
  /** null where it was not kept: the lesson then opens on its author's bench */
  readonly bench: KeptBench | null
}

export interface Work {
  /** id of the lesson that is open; empty where none is */
  readonly open: string
  /** by id of the lesson */
  readonly lessons: Readonly<Record<string, LessonWork>>
  readonly drills: readonly DrillEntry[]
}

export const noWork: Work = { open: '', lessons: {}, drills: [] }

/** A lesson of the course by its id. */
export type LessonOf = (id: string) => Lesson

/**
 * One learner's work from two places, as where two pages were open: put together lesson by lesson. The bench belongs to the
 * open step, so it is that of whoever has come further.
 */
export function mergeWork(one: Work, other: Work): Work {
  const ids = [...new Set([...Object.keys(one.lessons), ...Object.keys(other.lessons)])]
  const codes = new Set(one.drills.map(({ drill }) => drill))
  return {
    open: one.open || other.open,
    lessons: Object.fromEntries(ids.map((id) => [id, together(one.lessons[id], other.lessons[id])])),
    drills: [...one.drills, ...other.drills.filter(({ drill }) => !codes.has(drill))],
  }
}

function together(one: LessonWork | undefined, other: LessonWork | undefined): LessonWork {
  if (!one || !other) return (one ?? other) as LessonWork
  const isBehind = stepsDone(other.progress) > stepsDone(one.progress)
  return { progress: mergeProgress(one.progress, other.progress), bench: (isBehind ? other : one).bench }
}
