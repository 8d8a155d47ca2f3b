/** One thing a learner handed in, told so that any learning system can hold it: what was asked, what was right, what was given. */
import type { Attempt } from '../../lesson/attempt.ts'
import type { Expectation } from '../../lesson/expectation.ts'
import { isQuestion } from '../../lesson/expectation.ts'
import type { Lesson } from '../../lesson/lesson.ts'
import type { Progress } from '../../lesson/progress.ts'
import { recordOf } from '../../lesson/progress.ts'
import { plainLine } from '../../lesson/prose.ts'
import type { Step } from '../../lesson/step.ts'
import type { DrillWay } from '../../session/drill-way.ts'
import type { ContextExtensions, ResultExtensions } from '../../session/statement-extensions.ts'
import { extensionIds } from '../../session/statement-extensions.ts'
import { stepName } from './account.ts'
import type { KeptBench, LessonWork } from './work.ts'

interface Choice {
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
  /** what only statements have room for; missing where an older program left it waiting */
  readonly more?: { readonly context: ContextExtensions; readonly result: ResultExtensions }
}

/** Characters of a question as told; more than any one sentence of the course. */
const longestAsked = 250

/** One attempt at a step of a lesson. `bench` is the bench as it stood, where it is known. */
export function answeredAt(
  lesson: Lesson,
  step: AttemptedStep,
  attempt: Attempt,
  { progress, bench }: LessonWork,
): Answered {
  const { answer, bench: findings, mistakes } = attempt
  const given = {
    ...(answer === undefined ? {} : { answer }),
    ...(findings === undefined ? {} : { bench: findings }),
    ...(mistakes === undefined ? {} : { mistakes }),
  }
  return {
    id: stepName(lesson.id, step.id),
    task: lesson.id,
    asks: shortly(step.text),
    reply: replyTo(step, attempt, bench),
    met: step.kind === 'predict' ? null : attempt.met,
    more: {
      context: { [extensionIds.stepKind]: step.kind },
      result: {
        [extensionIds.attempt]: given,
        [extensionIds.hints]: recordOf(progress, step.id).hints,
        ...activeOf(progress),
      },
    },
  }
}

/** Left out where an older program kept none. */
export function activeOf({ active }: Progress): ResultExtensions {
  return active === undefined ? {} : { [extensionIds.active]: Math.round(active) }
}

type AttemptedStep = Exclude<Step, { kind: 'say' }>

function replyTo(step: AttemptedStep, { answer, bench: findings = [] }: Attempt, bench: KeptBench | null): Reply {
  const question = step.kind === 'predict' ? null : (step.expect as readonly Expectation[]).find(isQuestion)
  if (step.kind === 'predict' && answer?.form === 'choice') return choice(step.choices, [step.right], [answer.chosen])
  if (question?.is === 'choice' && answer?.form === 'choice') {
    return choice(question.choices, [question.right], [answer.chosen])
  }
  if (question?.is === 'diagnosis' && answer?.form === 'diagnosis') {
    const causes = question.causes.map(({ id, text }) => ({ id: `cause-${id}`, text }))
    const evidence = question.evidence.map(({ id, text }) => ({ id: `seen-${id}`, text }))
    const named = (cause: string, because: readonly string[]) => [
      `cause-${cause}`,
      ...because.map((id) => `seen-${id}`),
    ]
    return choice(
      [...causes, ...evidence],
      named(question.right, question.because),
      named(answer.cause, answer.because),
    )
  }
  if (question?.is === 'sequence' && answer?.form === 'order') {
    return { ...choice(question.items, question.right, answer.order), form: 'sequence' }
  }
  if (answer?.form === 'reading') {
    const { entered: given, read, tolerance } = answer
    return read === undefined
      ? { form: 'number', least: null, most: null, given }
      : { form: 'number', least: read - tolerance, most: read + tolerance, given }
  }
  const inks = bench?.setUp.inks ?? []
  const order =
    step.kind === 'predict' ? null : (step.expect as readonly Expectation[]).find(({ is }) => is === 'order')
  if (order?.is === 'order' && order.inks.every((name) => inks.some((ink) => ink.name === name))) {
    const given = inks.map(({ name }) => name).filter((name) => order.inks.includes(name))
    const choices = given.map((name) => ({ id: plainId(name), text: name }))
    return { form: 'sequence', choices, right: order.inks.map(plainId), given: given.map(plainId) }
  }
  const done = inks.map(({ name, tack }) => `${plainId(name)} ${Number(tack.toFixed(2))}`)
  return { form: 'deed', given: (done.length > 0 ? done : findings.map(({ is, met }) => `${is} ${met}`)).join(', ') }
}

/** One answer to a fault drill: the causes named, out of those there were to choose from. */
export function answeredInDrill(task: string, code: string, asks: string, way: DrillWay, at: number): Answered {
  const { causes, evidence, worth } = way.named[at]
  const choices = [...new Set([...way.offered, ...way.hidden, ...causes])].map((key) => ({
    id: plainId(key),
    text: key,
  }))
  return {
    id: `drill--${plainId(code)}`,
    task,
    asks,
    reply: choice(choices, way.hidden.map(plainId), causes.map(plainId)),
    met: worth !== 'missed',
    more: {
      context: {},
      result: {
        [extensionIds.worth]: worth,
        [extensionIds.evidenceNamed]: evidence,
        [extensionIds.evidenceAsked]: way.measured,
        [extensionIds.active]: Math.round(way.active),
      },
    },
  }
}

function choice(
  choices: readonly Choice[],
  right: readonly string[],
  given: readonly string[],
): Reply & { form: 'choice' } {
  return { form: 'choice', choices: choices.map(({ id, text }) => ({ id, text: shortly(text) })), right, given }
}

/** A name as an id: an ink may be called anything. */
function plainId(name: string): string {
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
