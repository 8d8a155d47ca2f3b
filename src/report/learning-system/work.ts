/** What a learner has done of a parcel, as the page keeps it: the one thing everything told to a learning system comes from. */
import type { Lesson } from '../../lesson/lesson.ts'
import type { Progress } from '../../lesson/progress.ts'
import { resume } from '../../lesson/progress.ts'
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

/** One learner's work from two places, as where two pages were open: of each lesson the one that has come further. */
export function mergeWork(one: Work, other: Work, lessonOf: LessonOf): Work {
  const ids = [...new Set([...Object.keys(one.lessons), ...Object.keys(other.lessons)])]
  const further = (id: string): [string, LessonWork][] => {
    const both = [one.lessons[id], other.lessons[id]].filter((each: LessonWork | undefined) => each !== undefined)
    const [first, second = first] = both
    return [[id, effort(second, lessonOf(id)) > effort(first, lessonOf(id)) ? second : first]]
  }
  const codes = new Set(one.drills.map(({ drill }) => drill))
  return {
    open: one.open || other.open,
    lessons: Object.fromEntries(ids.flatMap(further)),
    drills: [...one.drills, ...other.drills.filter(({ drill }) => !codes.has(drill))],
  }
}

/** Grows with everything a learner does in a lesson; a step done outweighs any number of tries. */
function effort({ progress }: LessonWork, lesson: Lesson): number {
  const records = Object.values(resume(lesson, progress)?.records ?? {})
  const tries = records.reduce((sum, { misses, hints }) => sum + misses + hints, 0)
  return records.filter(({ done }) => done).length + tries / (1 + tries)
}
