/** The four kinds of step, and what each may hold. */
import * as v from 'valibot'
import { carried } from '../press/problem.ts'
import { inkCount } from '../press/ranges.ts'
import { actionSchema } from './action.ts'
import { cautionIds } from './caution.ts'
import { benchSchema, expectationSchema, isQuestion, mistakeSchema } from './expectation.ts'
import { fields, id, kindMessage, listOf, oneOf, text, wholeNumber } from './field.ts'

const stepKinds = ['say', 'predict', 'do', 'expect'] as const

const unit = wholeNumber('unit', 1, inkCount.most)

/** The pictures of the bench, of which a lesson shows one at a time. */
const pictures = ['section', 'loupe', 'press line'] as const
export type Picture = (typeof pictures)[number]

const everyStep = {
  id,
  text,
  /** terms this step explains: each stands in its text in bold, and its glossary sentence is shown beside it */
  explains: v.exactOptional(listOf(id, 'terms', 1, 6)),
  /** what the lesson itself changes on the bench as the step opens */
  changes: v.exactOptional(listOf(actionSchema, 'changes', 1, 12)),
  /** unit, counted from 1, that the sheet has just run through as the step opens, and again after every change */
  sheetAfter: v.exactOptional(unit),
  /** in its place: unit, counted from 1, in whose nip the sheet is, while the films part */
  sheetIn: v.exactOptional(unit),
  /** the picture that the bench turns to as the step opens; the learner may turn to another */
  picture: v.exactOptional(oneOf('picture', pictures)),
  /** what the text says of the bench, to be proved true once the step is done */
  claims: v.exactOptional(listOf(benchSchema, 'claims', 1, 12)),
  cautions: v.exactOptional(listOf(oneOf('caution', cautionIds), 'cautions', 1, cautionIds.length)),
  /** for the instructor's eyes */
  note: v.exactOptional(text),
}

const feedbackSchema = fields('feedback', {
  when: mistakeSchema,
  say: text,
  /** how a learner would get there from the step's start: the checker then proves that this feedback comes */
  after: v.exactOptional(listOf(actionSchema, 'changes', 1, 8)),
})

const askedStep = {
  ...everyStep,
  hints: v.exactOptional(listOf(text, 'hints', 1, 5)),
  feedback: v.exactOptional(listOf(feedbackSchema, 'feedbacks', 1, 8)),
  /** said once the step is done: what the bench showed, and why */
  done: v.exactOptional(text),
}

const predictSchema = fields('predict', {
  kind: v.literal('predict'),
  ...everyStep,
  choices: listOf(fields('choice', { id, text, feedback: v.exactOptional(text) }), 'choices', 2, 6),
  right: id,
  /** the later step on which the bench shows the answer; only then is the learner told */
  settledBy: id,
})

export const stepSchema = v.variant(
  'kind',
  [
    fields('say', { kind: v.literal('say'), ...everyStep }),
    predictSchema,
    /** something to be done on the bench */
    fields('do', { kind: v.literal('do'), ...askedStep, expect: listOf(benchSchema, 'expectations', 1, 6) }),
    /** something to be reached on the bench by one's own way, or one question to be answered, or both */
    v.pipe(
      fields('expect', {
        kind: v.literal('expect'),
        ...askedStep,
        expect: listOf(expectationSchema, 'expectations', 1, 6),
      }),
      v.check(({ expect }) => expect.filter(isQuestion).length <= 1, carried('checker.oneQuestion')),
    ),
  ],
  kindMessage('step', 'kind', stepKinds),
)
export type Step = v.InferOutput<typeof stepSchema>
export type PredictStep = Extract<Step, { kind: 'predict' }>
export type AskedStep = Extract<Step, { kind: 'do' | 'expect' }>

/** What a learner hands in to a prediction or a question. */
export type Answer =
  { choose: string } | { sequence: string[] } | { enter: number } | { cause: string; because: string[] }

/** The author's own way through one step: changes to the bench, or an answer. */
export const wayStep = fields('way', {
  step: id,
  changes: v.exactOptional(listOf(actionSchema, 'changes', 1, 12)),
  choose: v.exactOptional(id),
  sequence: v.exactOptional(listOf(id, 'ids', 3, 8)),
  enter: v.exactOptional(v.number(carried('checker.answerNumber'))),
  cause: v.exactOptional(id),
  because: v.exactOptional(listOf(id, 'ids', 1, 8)),
})
export type WayStep = v.InferOutput<typeof wayStep>

export function answerOf({ choose, sequence, enter, cause, because }: WayStep): Answer | undefined {
  if (choose !== undefined) return { choose }
  if (sequence !== undefined) return { sequence }
  if (enter !== undefined) return { enter }
  if (cause !== undefined) return { cause, because: because ?? [] }
  return undefined
}
