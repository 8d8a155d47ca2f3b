/**
 * One learner's way through a lesson, as plain data that can be kept and read back. Every move is a function from one
 * state to the next; the bench itself is kept elsewhere and only handed in to be judged.
 */
import * as v from 'valibot'
import { attempt, attemptSchema, moment, mostAttempts, prediction } from './attempt.ts'
import type { Attempt } from './attempt.ts'
import type { Bench } from './bench.ts'
import type { Verdict } from './judge.ts'
import { judgePrediction, judgeStep } from './judge.ts'
import type { Lesson } from './lesson.ts'
import type { Answer, PredictStep, Step } from './step.ts'

const answerSchema = v.union([
  v.object({ choose: v.string() }),
  v.object({ sequence: v.array(v.string()) }),
  v.object({ enter: v.number() }),
  v.object({ cause: v.string(), because: v.array(v.string()) }),
])

const recordSchema = v.object({
  /** finished: read, committed or met */
  done: v.boolean(),
  /** how often it was handed in and not met */
  misses: v.number(),
  /** how many hints were asked for */
  hints: v.number(),
  answer: v.exactOptional(answerSchema),
  /** every time it was handed in, the first first; none where an older program kept it */
  attempts: v.exactOptional(v.fallback(v.array(attemptSchema), [])),
})
/** What happened at one step. */
export type StepRecord = v.InferOutput<typeof recordSchema>

const progressSchema = v.object({
  lesson: v.string(),
  /** id of the step in front of the learner */
  step: v.string(),
  records: v.record(v.string(), recordSchema),
  /** when it was begun, and when every step was done for the first time; unknown where an older program kept it */
  started: v.exactOptional(moment),
  finished: v.exactOptional(moment),
  /** s spent on it, while the page was visible */
  active: v.exactOptional(v.number()),
})
export type Progress = v.InferOutput<typeof progressSchema>

const fresh: StepRecord = { done: false, misses: 0, hints: 0 }

/** Begins at the first step, or at any other, as an instructor may wish; `at` is the moment, where there is a clock. */
export function begin(lesson: Lesson, step = lesson.steps[0].id, at?: string): Progress {
  return { lesson: lesson.id, step, records: {}, ...(at === undefined ? {} : { started: at }) }
}

/** What was kept, of whatever lesson; undefined where it makes no sense. */
export function readProgress(kept: unknown): Progress | undefined {
  const parsed = v.safeParse(progressSchema, kept)
  return parsed.success ? parsed.output : undefined
}

/** What was kept of an earlier visit; undefined where it is of another lesson or makes no sense. */
export function resume(lesson: Lesson, kept: unknown): Progress | undefined {
  const read = readProgress(kept)
  if (read?.lesson !== lesson.id) return undefined
  const { records, step } = read
  const known = Object.entries(records).filter(([id]) => lesson.steps.some((each) => each.id === id))
  const first = lesson.steps[0].id
  return {
    ...read,
    step: lesson.steps.some(({ id }) => id === step) ? step : first,
    records: Object.fromEntries(known),
  }
}

/** The same with so many seconds more spent on it. */
export function spend(progress: Progress, seconds: number): Progress {
  return { ...progress, active: (progress.active ?? 0) + seconds }
}

export function currentStep(lesson: Lesson, { step }: Progress): Step {
  return lesson.steps.find(({ id }) => id === step) ?? lesson.steps[0]
}

export function recordOf({ records }: Progress, step: string): StepRecord {
  return Object.hasOwn(records, step) ? records[step] : fresh
}

/** Whether the learner may go on: say steps need no more than reading. */
export function mayGoOn(lesson: Lesson, progress: Progress): boolean {
  return currentStep(lesson, progress).kind === 'say' || recordOf(progress, progress.step).done
}

/** The next step, or the same state where there is none or this one is not done. */
export function goOn(lesson: Lesson, progress: Progress, at?: string): Progress {
  if (!mayGoOn(lesson, progress)) return progress
  const read = ended(lesson, withRecord(progress, { ...recordOf(progress, progress.step), done: true }), at)
  const next = lesson.steps.at(indexOf(lesson, progress) + 1)
  return next ? { ...read, step: next.id } : read
}

export function goBack(lesson: Lesson, progress: Progress): Progress {
  const index = indexOf(lesson, progress)
  return index > 0 ? { ...progress, step: lesson.steps[index - 1].id } : progress
}

export function askHint(lesson: Lesson, progress: Progress): Progress {
  const step = currentStep(lesson, progress)
  const all = (step.kind === 'do' || step.kind === 'expect' ? step.hints : undefined) ?? []
  const record = recordOf(progress, step.id)
  return withRecord(progress, { ...record, hints: Math.min(all.length, record.hints + 1) })
}

/** Forgets what was answered at this step, so that it can be tried again; a committed prediction stays. */
export function retry(lesson: Lesson, progress: Progress): Progress {
  if (currentStep(lesson, progress).kind === 'predict') return progress
  const { misses, hints, attempts } = recordOf(progress, progress.step)
  return withRecord(progress, { done: false, misses, hints, ...(attempts ? { attempts } : {}) })
}

export interface Handed {
  progress: Progress
  /** absent for a prediction, which is judged only once the bench has shown the answer */
  verdict?: Verdict
  /** predictions that this step has settled, with what was foretold */
  settled: Settled[]
}

interface Settled {
  step: PredictStep
  chosen: string
  met: boolean
  feedback: string | undefined
}

/** Hands in this step: an answer, the bench as it stands, or both. A committed prediction stays as it is. */
export function handIn(lesson: Lesson, progress: Progress, bench: Bench, answer?: Answer, at?: string): Handed {
  const step = currentStep(lesson, progress)
  const record = recordOf(progress, step.id)
  const noted = (next: StepRecord) => ended(lesson, withRecord(progress, next), at)
  if (step.kind === 'say') return { progress: noted({ ...record, done: true }), settled: [] }
  if (step.kind === 'predict') {
    if (record.done || answer === undefined) return { progress, settled: [] }
    const attempts = 'choose' in answer ? [prediction(step, answer.choose, at)] : []
    return { progress: noted({ ...record, answer, done: true, attempts }), settled: [] }
  }
  const verdict = judgeStep(step, bench, answer)
  const { met } = verdict
  const next = noted({
    ...record,
    ...(answer === undefined ? {} : { answer }),
    done: record.done || met,
    misses: record.misses + (met ? 0 : 1),
    attempts: withAttempt(record.attempts, attempt(step, bench, answer, verdict, at)),
  })
  return { progress: next, verdict, settled: met ? settledBy(lesson, next, step.id) : [] }
}

/** Of very many attempts the first are kept, and the last one, which may be the one that met it. */
function withAttempt(before: readonly Attempt[] = [], latest: Attempt): Attempt[] {
  return [...before.slice(0, mostAttempts - 1), latest]
}

/** The predictions that the step `by` settles and that were committed. */
export function settledBy(lesson: Lesson, progress: Progress, by: string): Settled[] {
  return lesson.steps.flatMap((step) => {
    if (step.kind !== 'predict' || step.settledBy !== by) return []
    const { answer } = recordOf(progress, step.id)
    if (!answer || !('choose' in answer)) return []
    return [{ step, chosen: answer.choose, ...judgePrediction(step, answer.choose) }]
  })
}

export interface Summary {
  steps: number
  done: number
  predictions: number
  /** of them, those that came true */
  foretold: number
  /** do and expect steps, those met, and those met at the first go without a hint */
  asked: number
  solved: number
  unaided: number
  hints: number
  misses: number
  finished: boolean
}

/** What a results page says of the lesson. */
export function summaryOf(lesson: Lesson, progress: Progress): Summary {
  const records = lesson.steps.map((step) => ({ step, record: recordOf(progress, step.id) }))
  const predictions = records.filter(({ step }) => step.kind === 'predict')
  const asked = records.filter(({ step }) => step.kind === 'do' || step.kind === 'expect')
  const done = records.filter(({ record }) => record.done).length
  return {
    steps: records.length,
    done,
    predictions: predictions.length,
    foretold: predictions.filter(
      ({ step, record: { answer } }) =>
        step.kind === 'predict' && answer !== undefined && 'choose' in answer && answer.choose === step.right,
    ).length,
    asked: asked.length,
    solved: asked.filter(({ record }) => record.done).length,
    unaided: asked.filter(({ record }) => record.done && record.misses === 0 && record.hints === 0).length,
    hints: records.reduce((sum, { record }) => sum + record.hints, 0),
    misses: records.reduce((sum, { record }) => sum + record.misses, 0),
    finished: done === records.length,
  }
}

function withRecord(progress: Progress, record: StepRecord): Progress {
  return { ...progress, records: { ...progress.records, [progress.step]: record } }
}

/** With the moment at which everything was done, once it is. */
function ended(lesson: Lesson, progress: Progress, at: string | undefined): Progress {
  if (at === undefined || progress.finished !== undefined) return progress
  return lesson.steps.every(({ id }) => recordOf(progress, id).done) ? { ...progress, finished: at } : progress
}

function indexOf(lesson: Lesson, { step }: Progress): number {
  return lesson.steps.findIndex(({ id }) => id === step)
}
