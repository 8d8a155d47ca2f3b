/** What has newly happened between two looks at a learner's work, the first first. */
import { mostAttempts } from '../../lesson/attempt.ts'
import type { Lesson } from '../../lesson/lesson.ts'
import { recordOf } from '../../lesson/progress.ts'
import type { ResultExtensions } from '../../session/statement-extensions.ts'
import { extensionIds } from '../../session/statement-extensions.ts'
import type { Account } from './account.ts'
import { activeOf, answeredAt, answeredInDrill } from './answered.ts'
import type { Entry } from './system.ts'
import type { LessonOf, LessonWork, Work } from './work.ts'

export interface Happened {
  /** ms since 1970; null where the page kept no moment of it */
  readonly at: number | null
  readonly what: Entry['what']
}

export interface Look {
  readonly work: Work
  readonly account: Account
}

/** `asks` is the question of every drill; answers to drills count where the parcel holds any. */
export function happenedBetween(before: Look, after: Look, lessonOf: LessonOf, asks: string): Happened[] {
  const answered = [
    ...answersInLessons(before.work, after.work, lessonOf),
    ...answersInDrills(before.work, after, asks),
  ]
  const finished = after.account.tasks
    .filter(({ completed }, at) => completed && !before.account.tasks[at].completed)
    .map((task): Happened => {
      const more = task.id in after.work.lessons ? { more: moreOf(lessonOf(task.id), after.work.lessons[task.id]) } : {}
      return { at: null, what: { kind: 'finished', task, ...more } }
    })
  return [...answered.sort((one, other) => (one.at ?? Infinity) - (other.at ?? Infinity)), ...finished]
}

/** Every step of a lesson as it was finished, those that ask nothing as well. */
function moreOf({ steps }: Lesson, { progress }: LessonWork): ResultExtensions {
  const stated = steps.map(({ id, kind }) => {
    const { done, misses, hints } = recordOf(progress, id)
    return { id, kind, done, misses, hints }
  })
  return { ...activeOf(progress), [extensionIds.steps]: stated }
}

function answersInLessons(before: Work, { lessons }: Work, lessonOf: LessonOf): Happened[] {
  return Object.entries(lessons).flatMap(([id, now]) => {
    const { progress } = now
    const lesson = lessonOf(id)
    return lesson.steps.flatMap((step): Happened[] => {
      if (step.kind === 'say') return []
      const { attempts = [] } = recordOf(progress, step.id)
      const { attempts: earlier = [] } = id in before.lessons ? recordOf(before.lessons[id].progress, step.id) : {}
      return added(earlier, attempts).map((attempt) => {
        const answered = answeredAt(lesson, step, attempt, now)
        return { at: momentOf(attempt.at), what: { kind: 'answered', answered } }
      })
    })
  })
}

function answersInDrills(before: Work, { work, account }: Look, asks: string): Happened[] {
  const tasks = account.tasks.filter(({ id }) => id.startsWith('drill-'))
  if (tasks.length === 0) return []
  const open = tasks.find(({ completed }) => !completed) ?? tasks[tasks.length - 1]
  return work.drills.flatMap(({ drill, way }) => {
    if (!way) return []
    const earlier = before.drills.find((each) => each.drill === drill)?.way?.named ?? []
    const news = added(earlier, way.named)
    return news.map((named): Happened => {
      const answered = answeredInDrill(open.id, drill, asks, way, way.named.indexOf(named))
      return { at: momentOf(named.at), what: { kind: 'answered', answered } }
    })
  })
}

/** Lists grow at their end; a full one has its last place written anew. */
function added<Item extends { at?: string }>(earlier: readonly Item[], now: readonly Item[]): readonly Item[] {
  // A lesson that was begun again has a shorter list than before.
  const from = now.length < earlier.length ? 0 : earlier.length
  const isFull = now.length === mostAttempts && earlier.length === mostAttempts
  return isFull && now[now.length - 1].at !== earlier[earlier.length - 1].at ? now.slice(-1) : now.slice(from)
}

function momentOf(text: string | undefined): number | null {
  const at = Date.parse(text ?? '')
  return Number.isNaN(at) ? null : at
}
