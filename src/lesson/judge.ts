/** Whether a step's expectation is met, and what the bench showed. Nothing here knows of a page. */
import { asShown } from './as-shown.ts'
import type { Bench } from './bench.ts'
import type { BenchExpectation, Mistake, Question } from './expectation.ts'
import { isQuestion } from './expectation.ts'
import { otherReading } from './other-reading.ts'
import type { ReadingRef, Unread } from './reading.ts'
import { read, readings } from './reading.ts'
import type { Answer, AskedStep, PredictStep } from './step.ts'

/** One expectation held against the bench. */
export interface Finding {
  met: boolean
  /** what was expected */
  expectation: BenchExpectation | Question
  /** what the bench reads, where a number was asked for, in `unit` */
  value?: number
  unit?: string
  /** why the bench gives no such reading */
  unread?: Unread
  /** the reading of the bench that was entered in place of the one asked for */
  taken?: ReadingRef
  /** of a diagnosis with the right cause, how much of the evidence that proves it was left out, and how much else was taken */
  proof?: { missing: number; surplus: number }
  /** a share of one was entered that is right in percent */
  asShare?: boolean
  /** of an order given in answer, how many stand where they belong before the first that does not */
  rightFromTop?: number
}

export interface Verdict {
  met: boolean
  findings: Finding[]
  /** Markdown for each foreseen mistake that was made */
  feedback: string[]
}

/** Judges a step that asks for something; a question without an answer is not met. */
export function judgeStep(step: AskedStep, bench: Bench, answer?: Answer): Verdict {
  const findings = step.expect.map((expectation) =>
    isQuestion(expectation) ? judgeAnswer(expectation, bench, answer) : judgeBench(expectation, bench),
  )
  const met = findings.every((finding) => finding.met)
  return { met, findings, feedback: met ? [] : feedbackOn(step, bench, answer) }
}

/** Whether a prediction came true, to be told once the step that settles it is done. */
export function judgePrediction(step: PredictStep, choose: string): { met: boolean; feedback: string | undefined } {
  return { met: choose === step.right, feedback: step.choices.find(({ id }) => id === choose)?.feedback }
}

function feedbackOn(step: AskedStep, bench: Bench, answer: Answer | undefined): string[] {
  const question = step.expect.find(isQuestion)
  const chosen = answer && ('choose' in answer ? answer.choose : 'cause' in answer ? answer.cause : undefined)
  const choices = question?.is === 'choice' ? question.choices : question?.is === 'diagnosis' ? question.causes : []
  const ofChoice = choices.filter((choice) => choice.id === chosen).map((choice) => choice.feedback)
  const ofMistakes = (step.feedback ?? []).filter(({ when }) => isMistake(when, bench, answer)).map(({ say }) => say)
  return [...ofChoice, ...ofMistakes].filter((words) => words !== undefined)
}

/** Whether this foreseen mistake has been made. */
export function isMistake(mistake: Mistake, bench: Bench, answer?: Answer): boolean {
  if (mistake.is === 'number') {
    return answer !== undefined && 'enter' in answer && answer.enter >= mistake.from && answer.enter <= mistake.to
  }
  if (mistake.is === 'sequence') {
    return answer !== undefined && 'sequence' in answer && startsWith(answer.sequence, mistake.order)
  }
  return judgeBench(mistake, bench).met
}

/** Holds one expectation against the bench. */
export function judgeBench(expectation: BenchExpectation, { setUp, patch }: Bench): Finding {
  switch (expectation.is) {
    case 'order':
      return { expectation, met: same(inOrder(setUp.inks, expectation.inks), expectation.inks) }
    case 'within':
    case 'at least':
    case 'at most':
      return measured(expectation, { setUp, patch })
    case 'paper':
      return { expectation, met: setUp.paper.name === expectation.value }
    case 'kind':
      return { expectation, met: setUp.press.kind === expectation.value }
    case 'waterless':
      return { expectation, met: setUp.press.waterless === expectation.value }
    case 'sheet': {
      const { reading } = setUp
      return { expectation, met: (typeof reading === 'object' ? reading.sheet : reading) === expectation.value }
    }
    case 'patch':
      return { expectation, met: same([...patch].sort(), [...expectation.inks].sort()) }
  }
}

/** The inks asked about, in the order they print in; others may stand between them. */
function inOrder(inks: readonly { name: string }[], asked: readonly string[]): string[] {
  return inks.map((ink) => ink.name).filter((name) => asked.includes(name))
}

/** An expectation of a reading's value. */
type Aim = Extract<BenchExpectation, { reading: ReadingRef }>

/** Whether a value is what is asked for, or is shown as what is asked for. */
function meets(value: number, expectation: Aim): boolean {
  return [value, asShown(value, expectation.reading.what)].some((each) => isAsAsked(each, expectation))
}

function isAsAsked(value: number, expectation: Aim): boolean {
  switch (expectation.is) {
    case 'within':
      return off(value, expectation.value) <= expectation.tolerance
    case 'at least':
      return value >= expectation.value
    case 'at most':
      return value <= expectation.value
  }
}

function measured(expectation: Aim, bench: Bench): Finding {
  const value = read(bench, expectation.reading)
  const { unit } = readings[expectation.reading.what]
  if (typeof value !== 'number') return { expectation, met: false, unit, unread: value }
  return { expectation, met: meets(value, expectation), value, unit }
}

function judgeAnswer(question: Question, bench: Bench, answer: Answer | undefined): Finding {
  const finding = { expectation: question, met: false }
  switch (question.is) {
    case 'choice':
      return { ...finding, met: answer !== undefined && 'choose' in answer && answer.choose === question.right }
    case 'sequence': {
      if (!answer || !('sequence' in answer)) return finding
      const { sequence } = answer
      const wrong = question.right.findIndex((id, at) => sequence[at] !== id)
      if (wrong < 0) return { ...finding, met: same(sequence, question.right) }
      return { ...finding, rightFromTop: wrong }
    }
    case 'diagnosis': {
      if (!answer || !('cause' in answer) || answer.cause !== question.right) return finding
      const missing = question.because.filter((id) => !answer.because.includes(id)).length
      const surplus = answer.because.filter((id) => !question.because.includes(id)).length
      return { ...finding, met: missing + surplus === 0, proof: { missing, surplus } }
    }
    case 'number': {
      const value = read(bench, question.reading)
      const { unit } = readings[question.reading.what]
      if (typeof value !== 'number') return { ...finding, unit, unread: value }
      const isRead = (entered: number) =>
        [value, asShown(value, question.reading.what)].some((each) => off(entered, each) <= question.tolerance)
      const met = answer !== undefined && 'enter' in answer && isRead(answer.enter)
      if (met || !answer || !('enter' in answer)) return { ...finding, met, value, unit }
      if (unit === '%' && isRead(100 * answer.enter)) {
        return { ...finding, met, value, unit, asShare: true }
      }
      const taken = otherReading(bench, question.reading, answer.enter, question.tolerance)
      return { ...finding, met, value, unit, ...(taken ? { taken } : {}) }
    }
  }
}

/** Distance, forgiving the last digit that binary arithmetic spoils. */
function off(value: number, aim: number): number {
  return Math.abs(value - aim) - 1e-9
}

function same(some: readonly string[], others: readonly string[]): boolean {
  return some.length === others.length && some.every((each, index) => each === others[index])
}

function startsWith(whole: readonly string[], start: readonly string[]): boolean {
  return start.every((each, index) => each === whole[index])
}
