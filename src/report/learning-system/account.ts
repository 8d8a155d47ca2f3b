/**
 * How far a learner has come with a parcel, in the measures every learning system knows: each lesson and each drill is a
 * task with a share done and a score, and the whole is their plain mean.
 */
import type { Lesson } from '../../lesson/lesson.ts'
import { recordOf, summaryOf } from '../../lesson/progress.ts'
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

/** Chosen: who gets there with tries or hints has learned it too, if not at once. */
const creditWithHelp = 0.5

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
  ]
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

function lessonTask(lesson: Lesson, { lessons }: Work): Task {
  const { id, title, steps } = lesson
  if (!(id in lessons)) return { id, title, begun: false, completed: false, progress: 0, score: 0 }
  const { progress } = lessons[id]
  const { done, finished } = summaryOf(lesson, progress)
  const asked = steps
    .filter(({ kind }) => kind === 'do' || kind === 'expect')
    .map((step) => recordOf(progress, step.id))
  const credits = asked.map(({ done, misses, hints }) => (!done ? 0 : misses + hints === 0 ? 1 : creditWithHelp))
  const share = done / steps.length
  return {
    id,
    title,
    begun: true,
    completed: finished,
    progress: share,
    score: asked.length > 0 ? mean(credits) : share,
  }
}

/** A drill counts once its cause is found; which ones are done is the learner's choice. */
function isDone({ first, cured }: DrillEntry): boolean {
  return first !== 'missed' || cured
}

function drillTask(number: number, title: string, entry: DrillEntry | undefined): Task {
  const id = `drill-${number}`
  if (!entry) return { id, title, begun: false, completed: false, progress: 0, score: 0 }
  return { id, title, begun: true, completed: true, progress: 1, score: entry.first === 'proven' ? 1 : creditWithHelp }
}

function mean(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length
}
