/** The bench at each step of a lesson, going the author's own way: for starting anywhere, for handouts and previews. */
import { act } from './action.ts'
import type { Action } from './action.ts'
import type { Bench } from './bench.ts'
import type { Lesson } from './lesson.ts'
import { startOf } from './replay.ts'

export interface Station {
  step: string
  /** as the step opens, its own changes made */
  opens: Bench
  /** as it stands once the author has done it */
  done: Bench
}

/** Every step in order; a change that cannot be made is left out (the checker has named it). */
export function walk(lesson: Lesson): Station[] {
  let bench = startOf(lesson)
  return lesson.steps.map(({ id, changes }) => {
    const opens = afterAll(bench, changes ?? [])
    const way = lesson.solution.find(({ step }) => step === id)
    bench = afterAll(opens, way?.changes ?? [])
    return { step: id, opens, done: bench }
  })
}

/** The bench after a step's own changes, from wherever the learner has left it. */
export function openStep(bench: Bench, changes: readonly Action[] = []): Bench {
  return afterAll(bench, changes)
}

function afterAll(bench: Bench, actions: readonly Action[]): Bench {
  return actions.reduce((now, action) => {
    const next = act(now, action)
    return 'problem' in next ? now : next
  }, bench)
}
