/** Results of learners, made up for tests: only what a test says differs from an empty one. */
import type { DrillResult, LessonResult, Result, StepResult } from '../../src/session/result-format.ts'

export function madeResult(id: string, more: Partial<Result> & { name?: string; group?: string } = {}): Result {
  const { name, group, ...rest } = more
  return {
    made: '2026-03-02T09:00:00.000Z',
    learner: { id, ...(name === undefined ? {} : { name }), ...(group === undefined ? {} : { group }) },
    course: { title: 'Order', version: 'a' },
    lessons: [],
    drills: [],
    ...rest,
  }
}

export function madeLesson(id: string, more: Partial<LessonResult> = {}): LessonResult {
  return { id, own: false, title: id, language: 'en', done: true, active: 0, score: null, steps: [], ...more }
}

export function madeStep(id: string, more: Partial<StepResult> = {}): StepResult {
  return { id, kind: 'expect', done: true, misses: 0, hints: 0, attempts: [], ...more }
}

export function madeDrill(hidden: string[], named: string[], more: Partial<DrillResult> = {}, active = 0): DrillResult {
  return {
    drill: 'easy-3',
    job: 'seed leaflet',
    first: 'missed',
    tries: 1,
    cured: false,
    way: {
      active,
      hidden,
      offered: hidden,
      named: [{ causes: named, evidence: [], worth: 'missed' }],
      measured: [],
      cures: [],
    },
    ...more,
  }
}
