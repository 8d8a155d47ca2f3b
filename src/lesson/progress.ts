/**
 * One learner's way through a lesson, as plain data that can be kept and read back. Every move is a function from one
 * state to the next; the bench itself is kept elsewhere and only handed in to be judged.
 */
import * as v from 'valibot'
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
})
/** What happened at one step. */
export type StepRecord = v.InferOutput<typeof recordSchema>

const progressSchema = v.object({
  lesson: v.string(),
  /** id of the step in front of the learner */
  step: v.string(),
  records: v.record(v.string(), recordSchema),
})
export type Progress = v.InferOutput<typeof progressSchema>

const fresh: StepRecord = { done: false, misses: 0, hints: 0 }

/** Begins at the first step, or at any other, as an instructor may wish. */
export function begin(lesson: Lesson, step = lesson.steps[0].id): Progress {
  return { lesson: lesson.id, step, records: {} }
}

/** What was kept of an earlier visit; undefined where it is of another lesson or makes no sense. */
export function resume(lesson: Lesson, kept: unknown): Progress | undefined {
  const parsed = v.safeParse(progressSchema, kept)
  if (!parsed.success || parsed.output.lesson !== lesson.id) return undefined
  const { records, step } = parsed.output
  const known = Object.entries(records).filter(([id]) => lesson.steps.some((each) => each.id === id))
  const first = lesson.steps[0].id
  return {
    lesson: lesson.id,
    step: lesson.steps.some(({ id }) => id === step) ? step : first,
    records: Object.fromEntries(known),
  }
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
export function goOn(lesson: Lesson, progress: Progress): Progress {
  if (!mayGoOn(lesson, progress)) return progress
  const read = withRecord(progress, { ...recordOf(progress, progress.step), done: true })
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
  const { misses, hints } = recordOf(progress, progress.step)
  return withRecord(progress, { done: false, misses, hints })
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
export function handIn(lesson: Lesson, progress: Progress, bench: Bench, answer?: Answer): Handed {
  const step = currentStep(lesson, progress)
  const record = recordOf(progress, step.id)
  const answered = answer === undefined ? record : { ...record, answer }
  if (step.kind === 'say') return { progress: withRecord(progress, { ...record, done: true }), settled: [] }
  if (step.kind === 'predict') {
    const committed = record.done || answer === undefined
    return { progress: committed ? progress : withRecord(progress, { ...answered, done: true }), settled: [] }
  }
  const verdict = judgeStep(step, bench, answer)
  const judged = { ...answered, done: record.done || verdict.met, misses: record.misses + (verdict.met ? 0 : 1) }
  const next = withRecord(progress, judged)
  return { progress: next, verdict, settled: verdict.met ? settledBy(lesson, next, step.id) : [] }
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
  /** do and expect steps, and those met at the first go without a hint */
  asked: number
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
    unaided: asked.filter(({ record }) => record.done && record.misses === 0 && record.hints === 0).length,
    hints: records.reduce((sum, { record }) => sum + record.hints, 0),
    misses: records.reduce((sum, { record }) => sum + record.misses, 0),
    finished: done === records.length,
  }
}

function withRecord(progress: Progress, record: StepRecord): Progress {
  return { ...progress, records: { ...progress.records, [progress.step]: record } }
}

function indexOf(lesson: Lesson, { step }: Progress): number {
  return lesson.steps.findIndex(({ id }) => id === step)
}
