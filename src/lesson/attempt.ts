/** One time that a step was handed in: what was answered, what the bench showed, and which foreseen mistakes were made. */
import * as v from 'valibot'
import type { Bench } from './bench.ts'
import { isQuestion } from './expectation.ts'
import type { Verdict } from './judge.ts'
import { isMistake } from './judge.ts'
import type { Answer, PredictStep, Step } from './step.ts'

/** Attempts kept of one step; later ones are only counted (`misses`). Chosen: far more than anyone makes in earnest. */
export const mostAttempts = 50

/** A moment as ISO 8601 in UTC, such as 2026-03-02T08:30:00.000Z. */
export const moment = v.pipe(v.string(), v.maxLength(40), v.isoTimestamp())

const word = v.pipe(v.string(), v.maxLength(120))
const words = v.pipe(v.array(word), v.maxLength(40))
const finite = v.pipe(v.number(), v.finite())

/** An answer, by its form. */
const answerSchema = v.variant('form', [
  /** a prediction, or one of several answers */
  v.object({ form: v.literal('choice'), chosen: word }),
  /** ids, first on top */
  v.object({ form: v.literal('order'), order: words }),
  /** a number read off the bench and typed: what was typed, what the bench read, and how far off it may be, all in `unit` */
  v.object({
    form: v.literal('reading'),
    entered: finite,
    read: v.exactOptional(finite),
    tolerance: finite,
    unit: word,
  }),
  /** a cause and what proves it */
  v.object({ form: v.literal('diagnosis'), cause: word, because: words }),
])
export type AnswerGiven = v.InferOutput<typeof answerSchema>

/** One expectation of the bench: its kind (see expectation.ts), and where a number was asked for what the bench read. */
const benchFindingSchema = v.object({
  is: word,
  met: v.boolean(),
  read: v.exactOptional(finite),
  unit: v.exactOptional(word),
})

export const attemptSchema = v.object({
  at: v.exactOptional(moment),
  /** of a prediction: whether it is what the bench will show */
  met: v.boolean(),
  /** missing where the step asks nothing but the bench */
  answer: v.exactOptional(answerSchema),
  /** what was expected of the bench; missing where the step asks nothing of it */
  bench: v.exactOptional(v.pipe(v.array(benchFindingSchema), v.maxLength(12))),
  /** foreseen mistakes that were made: places in the step's list `feedback`, the first is 0; missing where none was */
  mistakes: v.exactOptional(v.pipe(v.array(v.pipe(v.number(), v.integer(), v.minValue(0))), v.maxLength(12))),
})
export type Attempt = v.InferOutput<typeof attemptSchema>

/** A prediction as it was committed. */
export function prediction(step: PredictStep, chosen: string, at: string | undefined): Attempt {
  return { ...(at === undefined ? {} : { at }), met: chosen === step.right, answer: { form: 'choice', chosen } }
}

/** A step as it was handed in and judged. */
export function attempt(
  step: Extract<Step, { kind: 'do' | 'expect' }>,
  bench: Bench,
  answer: Answer | undefined,
  { met, findings }: Verdict,
  at: string | undefined,
): Attempt {
  const question = findings.find(({ expectation }) => isQuestion(expectation))
  const ofBench = findings.flatMap(({ expectation: { is }, met: so, value, unit }, place) =>
    isQuestion(step.expect[place]) ? [] : [{ is, met: so, ...read(value), ...(unit === undefined ? {} : { unit }) }],
  )
  const mistakes = met
    ? []
    : (step.feedback ?? []).flatMap(({ when }, at) => (isMistake(when, bench, answer) ? [at] : []))
  const given = question && answer && answerGiven(question.expectation, answer, question.value)
  return {
    ...(at === undefined ? {} : { at }),
    met,
    ...(given ? { answer: given } : {}),
    ...(ofBench.length > 0 ? { bench: ofBench } : {}),
    ...(mistakes.length > 0 ? { mistakes } : {}),
  }
}

function answerGiven(
  question: Verdict['findings'][number]['expectation'],
  answer: Answer,
  value: number | undefined,
): AnswerGiven | undefined {
  if ('choose' in answer) return { form: 'choice', chosen: answer.choose }
  if ('sequence' in answer) return { form: 'order', order: answer.sequence }
  if ('cause' in answer) return { form: 'diagnosis', cause: answer.cause, because: answer.because }
  if (question.is !== 'number') return undefined
  const { tolerance, unit } = question
  return { form: 'reading', entered: answer.enter, ...read(value), tolerance, unit }
}

function read(value: number | undefined): { read?: number } {
  return value === undefined ? {} : { read: value }
}
