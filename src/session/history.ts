/** What was done, step by step, so that every change can be taken back and made again. */

/** Steps that can be taken back; older ones are forgotten. */
export const stepsKept = 200

export interface History<State> {
  past: readonly State[]
  present: State
  future: readonly State[]
}

export function startHistory<State>(present: State): History<State> {
  return { past: [], present, future: [] }
}

/** A new step; what had been taken back can no longer be made again. */
export function advance<State>({ past, present }: History<State>, next: State): History<State> {
  return { past: [...past, present].slice(-stepsKept), present: next, future: [] }
}

/** The last step grown on: no step of its own. */
export function amend<State>({ past }: History<State>, next: State): History<State> {
  return { past, present: next, future: [] }
}

export function undo<State>(history: History<State>): History<State> {
  const before = history.past.at(-1)
  if (before === undefined) return history
  return { past: history.past.slice(0, -1), present: before, future: [history.present, ...history.future] }
}

export function redo<State>(history: History<State>): History<State> {
  const after = history.future.at(0)
  if (after === undefined) return history
  return { past: [...history.past, history.present], present: after, future: history.future.slice(1) }
}
