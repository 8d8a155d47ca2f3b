/** One thing a learner handed in, told so that any learning system can hold it: what was asked, what was right, what was given. */
import type { Bench } from '../../lesson/bench.ts'
import { isQuestion } from '../../lesson/expectation.ts'
import type { Lesson } from '../../lesson/lesson.ts'
import type { StepRecord } from '../../lesson/progress.ts'
import { plainLine } from '../../lesson/prose.ts'
import { read } from '../../lesson/reading.ts'
import type { Step } from '../../lesson/step.ts'
import { stepName } from './account.ts'

export interface Choice {
  /** small letters, digits, hyphens and underscores */
  readonly id: string
  readonly text: string
}

export type Reply =
  /** one choice or several, in any order */
  | {
      readonly form: 'choice'
      readonly choices: readonly Choice[]
      readonly right: readonly string[]
      readonly given: readonly string[]
    }
  | {
      readonly form: 'sequence'
      readonly choices: readonly Choice[]
      readonly right: readonly string[]
      readonly given: readonly string[]
    }
  /** right is from `least` to `most`; null where the bench gives no such reading */
  | { readonly form: 'number'; readonly least: number | null; readonly most: number | null; readonly given: number }
  /** something done on the bench: the inks and tacks it stood at */
  | { readonly form: 'deed'; readonly given: string }

export interface Answered {
  /** of the question, such as tack--guess */
  readonly id: string
  /** id of the task it belongs to */
  readonly task: string
  readonly asks: string
  readonly reply: Reply
  /** null for a prediction, which is no matter of right or wrong */
  readonly met: boolean | null
}

/** Characters of a question as told; more than any one sentence of the course. */
const longestAsked = 250

/** What was handed in at a step, on the bench as it stood. Steps that are only read have nothing to tell. */
export function answeredAt(lesson: Lesson, step: Step, { answer, done }: StepRecord, bench: Bench): Answered | null {
  if (step.kind === 'say') return null
  const told = { id: stepName(lesson.id, step.id), task: lesson.id, asks: shortly(step.text) }
  if (step.kind === 'predict') {
    if (!answer || !('choose' in answer)) return null
    return { ...told, reply: chosen(step.choices, [step.right], [answer.choose]), met: null }
  }
  return { ...told, reply: replyTo(step, answer, bench), met: done }
}

function replyTo(step: Extract<Step, { kind: 'do' | 'expect' }>, answer: StepRecord['answer'], bench: Bench): Reply {
  const question = step.expect.find(isQuestion)
  if (question?.is === 'choice' && answer && 'choose' in answer) {
    return chosen(question.choices, [question.right], [answer.choose])
  }
  if (question?.is === 'diagnosis' && answer && 'cause' in answer) {
    const causes = question.causes.map(({ id, text }) => ({ id: `cause-${id}`, text }))
    const evidence = question.evidence.map(({ id, text }) => ({ id: `seen-${id}`, text }))
    const named = (cause: string, because: readonly string[]) => [
      `cause-${cause}`,
      ...because.map((id) => `seen-${id}`),
    ]
    return chosen(
      [...causes, ...evidence],
      named(question.right, question.because),
      named(answer.cause, answer.because),
    )
  }
  if (question?.is === 'sequence' && answer && 'sequence' in answer) {
    return { ...chosen(question.items, question.right, answer.sequence), form: 'sequence' }
  }
  if (question?.is === 'number' && answer && 'enter' in answer) {
    const value = read(bench, question.reading)
    const range = typeof value === 'number' ? [value - question.tolerance, value + question.tolerance] : [null, null]
    return { form: 'number', least: range[0], most: range[1], given: answer.enter }
  }
  const order = step.expect.find((expectation) => expectation.is === 'order')
  const { inks } = bench.setUp
  if (order?.is === 'order' && order.inks.every((name) => inks.some((ink) => ink.name === name))) {
    const given = inks.map(({ name }) => name).filter((name) => order.inks.includes(name))
    const choices = given.map((name) => ({ id: plainId(name), text: name }))
    return { form: 'sequence', choices, right: order.inks.map(plainId), given: given.map(plainId) }
  }
  return { form: 'deed', given: inks.map(({ name, tack }) => `${plainId(name)} ${Number(tack.toFixed(2))}`).join(', ') }
}

function chosen(
  choices: readonly Choice[],
  right: readonly string[],
  given: readonly string[],
): Reply & { form: 'choice' } {
  return { form: 'choice', choices: choices.map(({ id, text }) => ({ id, text: shortly(text) })), right, given }
}

/** A name as an id: an ink may be called anything. */
export function plainId(name: string): string {
  const plain = name
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
  return plain === '' ? 'other' : plain
}

/** Markdown as one plain line. */
function shortly(markdown: string): string {
  const line = plainLine(markdown)
  return line.length > longestAsked ? `${line.slice(0, longestAsked - 1)}…` : line
}
