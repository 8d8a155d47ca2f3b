/** Two records of the same lesson put together, as when work from another computer is brought along. Nothing done is lost. */
import { mostAttempts } from './attempt.ts'
import type { Progress, StepRecord } from './progress.ts'

type Attempts = StepRecord['attempts']

/** Steps that are finished. */
export function stepsDone({ records }: Progress): number {
  return Object.values(records).filter(({ done }) => done).length
}

/**
 * Every step that is finished in either is finished, by the answer given here where it is finished in both. The open step
 * is that of whoever has finished more, and the one here where both have finished as many. Of two times spent the longer
 * one counts, since the one may go on from the other.
 */
export function mergeProgress(here: Progress, theirs: Progress): Progress {
  const ids = new Set([...Object.keys(theirs.records), ...Object.keys(here.records)])
  const records = Object.fromEntries([...ids].map((id) => [id, mergeRecords(of(here, id), of(theirs, id))]))
  const ahead = stepsDone(theirs) > stepsDone(here) ? theirs : here
  // Moments are written so that the earlier one comes first as a text too.
  const started = [here.started, theirs.started].filter(isThere).toSorted().at(0)
  const finished = [here.finished, theirs.finished].filter(isThere).toSorted().at(0)
  const active = [here.active, theirs.active].filter(isThere)
  return {
    lesson: here.lesson,
    step: ahead.step,
    records,
    ...(started === undefined ? {} : { started }),
    ...(finished === undefined ? {} : { finished }),
    ...(active.length === 0 ? {} : { active: Math.max(...active) }),
  }
}

function isThere<Value>(value: Value | undefined): value is Value {
  return value !== undefined
}

function of({ records }: Progress, id: string): StepRecord | undefined {
  return Object.hasOwn(records, id) ? records[id] : undefined
}

function mergeRecords(here: StepRecord | undefined, theirs: StepRecord | undefined): StepRecord {
  if (!here || !theirs) return (here ?? theirs) as StepRecord
  const [leading, other] = theirs.done && !here.done ? [theirs, here] : [here, theirs]
  const most = (count: 'misses' | 'hints') => Math.max(here[count], theirs[count])
  const attempts = mergeAttempts(other.attempts, leading.attempts)
  return { ...leading, misses: most('misses'), hints: most('hints'), ...(attempts ? { attempts } : {}) }
}

/** All attempts of both, each once; the last ones stay those of the side that leads. */
function mergeAttempts(other: Attempts, leading: Attempts): Attempts {
  if (!other || !leading) return leading ?? other
  const known = new Set(leading.map((attempt) => JSON.stringify(attempt)))
  return [...other.filter((attempt) => !known.has(JSON.stringify(attempt))), ...leading].slice(-mostAttempts)
}
