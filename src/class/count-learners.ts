/** One row for each learner: what is done and what is left. */
import type { LearnerDigest } from './roll.ts'

export interface LearnerCount {
  readonly learner: LearnerDigest
  /** another learner bears the same name, so that the id has to be told */
  readonly nameShared: boolean
  /** keys of the lessons asked about */
  readonly finished: readonly string[]
  readonly underway: readonly string[]
  readonly left: readonly string[]
  /** mean of the lessons that were finished and have a score; null where there is none */
  readonly score: number | null
  /** s, lessons and drills */
  readonly time: number
  readonly drills: number
  /** proven at the first answer */
  readonly proven: number
}

/** `lessons`: keys of the lessons that are to be done, in their order. */
export function countLearners(learners: readonly LearnerDigest[], lessons: readonly string[]): LearnerCount[] {
  const names = new Map<string, number>()
  for (const { name } of learners) names.set(name, (names.get(name) ?? 0) + 1)
  return learners.map((learner) => {
    const finished = lessons.filter((key) => learner.lessons.get(key)?.done === true)
    const scores = finished.flatMap((key) => learner.lessons.get(key)?.score ?? [])
    const inLessons = lessons.reduce((sum, key) => sum + (learner.lessons.get(key)?.active ?? 0), 0)
    return {
      learner,
      nameShared: (names.get(learner.name) ?? 0) > 1,
      finished,
      underway: lessons.filter((key) => learner.lessons.get(key)?.done === false),
      left: lessons.filter((key) => learner.lessons.get(key)?.done !== true),
      score: scores.length === 0 ? null : scores.reduce((sum, score) => sum + score, 0) / scores.length,
      time: inLessons + learner.drills.reduce((sum, { active }) => sum + (active ?? 0), 0),
      drills: learner.drills.length,
      proven: learner.drills.filter(({ first }) => first === 'proven').length,
    }
  })
}

/** Whoever may need help first: those who have finished least, and among them those with the lowest score, or none yet. */
export function leastFirst(counts: readonly LearnerCount[]): LearnerCount[] {
  return counts.toSorted(
    (one, other) => one.finished.length - other.finished.length || (one.score ?? -1) - (other.score ?? -1),
  )
}
