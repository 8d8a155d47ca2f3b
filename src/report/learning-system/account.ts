/**
 * How far a learner has come with a parcel, in the measures every learning system knows: each lesson and each drill is a
 * task with a share done and a score, and the whole is their plain mean.
 */
import type { Lesson } from '../../lesson/lesson.ts'
import { summaryOf } from '../../lesson/progress.ts'
import type { DrillEntry } from '../../session/drill-record.ts'
import type { Parcel } from './launch.ts'
import type { LessonOf, Work } from './work.ts'

export interface Task {
  /** id of the lesson, or drill-1, drill-2 */
  readonly id: string
  readonly title: string
  readonly begun: boolean
  readonly completed: boolean
  /** share of 1 */
  readonly progress: number
  /** share of 1 */
  readonly score: number
  /** by the pass mark of the whole; null without one, or while it is neither met nor missed */
  readonly passed: boolean | null
}

export interface Account {
  readonly tasks: readonly Task[]
  readonly completed: boolean
  /** share of 1 */
  readonly progress: number
  /** share of 1 */
  readonly score: number
  /** null without a pass mark, or while it can still be reached */
  readonly passed: boolean | null
  /** lesson and step that are open, such as tack--guess; empty where none is */
  readonly bookmark: string
}

/** Chosen: who finds the cause without proving it, or only in the end, has learned something of it. */
const creditForFound = 0.5

/** `titleOfDrill` names the nth drill, from 1. */
export function accountOf(
  { lessons, drills, mastery }: Parcel,
  work: Work,
  lessonOf: LessonOf,
  titleOfDrill: (number: number) => string,
): Account {
  const done = work.drills.filter(isDone)
  const tasks = [
    ...lessons.map((id) => lessonTask(lessonOf(id), work)),
    ...Array.from({ length: drills }, (_, at) => drillTask(at + 1, titleOfDrill(at + 1), done.at(at))),
  ].map((task): Task => ({ ...task, passed: mastery === null ? null : judged(task, mastery) }))
  const score = mean(tasks.map((task) => task.score))
  const completed = tasks.length > 0 && tasks.every((task) => task.completed)
  const isPassed = mastery !== null && completed && score >= mastery
  const { [work.open]: open } = work.lessons
  return {
    tasks,
    completed,
    progress: mean(tasks.map((task) => task.progress)),
    score,
    passed: mastery === null || !completed ? null : isPassed,
    bookmark: work.open in work.lessons ? stepName(work.open, open.progress.step) : '',
  }
}

/** A step of a lesson as one name; ids hold single hyphens only. */
export function stepName(lesson: string, step: string): string {
  return `${lesson}--${step}`
}

type Unjudged = Omit<Task, 'passed'>

/**
 * Passed as soon as the pass mark is met, which what is still to do can no longer undo (a score is a share of all that is
 * asked); failed only when it is finished below it.
 */
function judged({ begun, completed, score }: Unjudged, mastery: number): boolean | null {
  if (begun && score >= mastery) return true
  return completed ? false : null
}

function lessonTask(lesson: Lesson, { lessons }: Work): Unjudged {
  const { id, title } = lesson
  if (!(id in lessons)) return { id, title, begun: false, completed: false, progress: 0, score: 0 }
  const { progress } = lessons[id]
  const { steps, done, asked, unaided, finished } = summaryOf(lesson, progress)
  const share = done / steps
  // As in a result file (session/make-result.ts), so that board and gradebook say the same.
  const score = asked > 0 ? unaided / asked : share
  return { id, title, begun: true, completed: finished, progress: share, score }
}

/** A drill counts once its cause is found; which ones are done is the learner's choice. */
function isDone({ first, cured }: DrillEntry): boolean {
  return first !== 'missed' || cured
}

function drillTask(number: number, title: string, entry: DrillEntry | undefined): Unjudged {
  const id = `drill-${number}`
  if (!entry) return { id, title, begun: false, completed: false, progress: 0, score: 0 }
  return { id, title, begun: true, completed: true, progress: 1, score: entry.first === 'proven' ? 1 : creditForFound }
}

function mean(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length
}
