/** A class counted lesson by lesson and step by step. */
import type { LessonEntry, WrongAnswer } from './lesson-entry.ts'
import { bits } from './lesson-entry.ts'
import type { LearnerDigest } from './roll.ts'
import type { Spread } from './spread.ts'
import { spreadOf } from './spread.ts'

export interface LessonCount {
  readonly key: string
  readonly entry: LessonEntry
  readonly began: number
  readonly finished: number
  /** shares of 1, of those who finished it */
  readonly score: Spread | null
  /** s, of those who finished it */
  readonly time: Spread | null
}

export function countLesson(key: string, entry: LessonEntry, learners: readonly LearnerDigest[]): LessonCount {
  const digests = learners.flatMap(({ lessons }) => lessons.get(key) ?? [])
  const finished = digests.filter(({ done }) => done)
  return {
    key,
    entry,
    began: digests.length,
    finished: finished.length,
    score: spreadOf(finished.flatMap(({ score }) => score ?? [])),
    // An older program kept no time.
    time: spreadOf(finished.flatMap(({ active }) => (active > 0 ? active : []))),
  }
}

export interface WrongCount extends WrongAnswer {
  /** learners who gave it, each counted once */
  readonly learners: number
}

export interface StepCount {
  readonly id: string
  readonly kind: LessonEntry['steps'][number]['kind']
  readonly reached: number
  readonly done: number
  /** met at the first go without a hint; of a prediction: come true */
  readonly firstGo: number
  /** the commonest first */
  readonly wrong: readonly WrongCount[]
}

export function countSteps(key: string, entry: LessonEntry, learners: readonly LearnerDigest[]): StepCount[] {
  const wrong = new Uint32Array(entry.wrong.length)
  const counts = entry.steps.map(() => ({ reached: 0, done: 0, firstGo: 0 }))
  for (const { lessons } of learners) {
    const digest = lessons.get(key)
    if (!digest) continue
    for (const place of digest.wrong) wrong[place]++
    digest.steps.forEach((marks, step) => {
      const count = counts[step]
      if (marks & bits.reached) count.reached++
      if (marks & bits.done) count.done++
      if (marks & bits.firstGo) count.firstGo++
    })
  }
  const given = entry.wrong
    .map((answer, place) => ({ ...answer, learners: wrong[place] }))
    .filter(({ learners: count }) => count > 0)
    .sort((a, b) => b.learners - a.learners)
  return entry.steps.map(({ id, kind }, step) => ({
    id,
    kind,
    ...counts[step],
    wrong: given.filter((each) => each.step === step),
  }))
}
