/** Makes a learner's result (result-format.ts) of what this browser has kept. */
import type { Lesson } from '../lesson/lesson.ts'
import type { Progress } from '../lesson/progress.ts'
import { recordOf, summaryOf } from '../lesson/progress.ts'
import type { DrillEntry } from './drill-record.ts'
import type { DrillResult, Learner, LessonResult, Result } from './result-format.ts'
import { longestName, resultFormat, resultVersion } from './result-format.ts'

export interface LessonDone {
  readonly lesson: Lesson
  readonly own: boolean
  readonly progress: Progress
}

export interface Done {
  readonly learner: Learner
  readonly course: Result['course']
  readonly lessons: readonly LessonDone[]
  readonly drills: readonly DrillEntry[]
}

/** `now` in ms since 1970. */
export function makeResult({ learner, course, lessons, drills }: Done, now: number): Result {
  return {
    made: new Date(now).toISOString(),
    learner: { id: learner.id, ...typed('name', learner.name), ...typed('group', learner.group) },
    course,
    lessons: lessons.map(lessonResult),
    drills: drills.map(drillResult),
  }
}

export function writeResult(result: Result): string {
  return `${JSON.stringify({ format: resultFormat, version: resultVersion, ...result }, null, 1)}\n`
}

function lessonResult({ lesson, own, progress }: LessonDone): LessonResult {
  const { id, title, language, steps } = lesson
  const { started, finished, active = 0 } = progress
  const { asked, unaided, finished: done } = summaryOf(lesson, progress)
  return {
    id,
    own,
    title,
    language,
    ...(started === undefined ? {} : { started }),
    ...(finished === undefined ? {} : { finished }),
    done: done || finished !== undefined,
    active: Math.round(active),
    score: asked === 0 ? null : unaided / asked,
    steps: steps.map((step) => {
      const { done: stepDone, misses, hints, attempts = [] } = recordOf(progress, step.id)
      return { id: step.id, kind: step.kind, done: stepDone, misses, hints, attempts }
    }),
  }
}

function drillResult({ drill, job, first, tries, cured, way }: DrillEntry): DrillResult {
  return {
    drill,
    job,
    first,
    tries,
    cured,
    ...(way === undefined ? {} : { way: { ...way, active: Math.round(way.active) } }),
  }
}

function typed<Field extends string>(field: Field, text = ''): Partial<Record<Field, string>> {
  const plain = text.trim().slice(0, longestName)
  return plain === '' ? {} : ({ [field]: plain } as Record<Field, string>)
}
