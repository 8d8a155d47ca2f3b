/**
 * A lesson as a class did it: its steps, and every wrong answer that was given, once each. What one learner did is kept
 * as a few small numbers that point in here, so that thousands of learners fit into a page.
 */
import type { AnswerGiven, Attempt } from '../lesson/attempt.ts'
import type { LessonResult, StepResult } from '../session/result-format.ts'

export interface WrongAnswer {
  /** place of its step */
  readonly step: number
  /** missing where the step asks nothing but the bench */
  readonly answer: AnswerGiven | undefined
  /** foreseen mistakes that were made: places in the step's list of feedback */
  readonly mistakes: readonly number[]
}

/** What a learner did at a step, as bits of one number. */
export const bits = { reached: 1, done: 2, firstGo: 4 } as const

/** One learner's lesson. */
export interface LessonDigest {
  readonly done: boolean
  /** steps done, of so many */
  readonly stepsDone: number
  readonly stepsAll: number
  /** s */
  readonly active: number
  readonly score: number | null
  /** by place of the step: bits */
  readonly steps: Uint8Array
  /** places in the lesson's list of wrong answers, each once */
  readonly wrong: Uint32Array
}

export class LessonEntry {
  readonly id: string
  readonly own: boolean
  readonly title: string
  readonly language: string
  /** all steps that any result had, in the order of the first result */
  readonly steps: Pick<StepResult, 'id' | 'kind'>[] = []
  readonly wrong: WrongAnswer[] = []
  readonly #places = new Map<string, number>()
  readonly #answers = new Map<string, number>()

  constructor({ id, own, title, language }: Pick<LessonResult, 'id' | 'own' | 'title' | 'language'>) {
    this.id = id
    this.own = own
    this.title = title
    this.language = language
  }

  /** Takes in what a learner did; a step of another version of the lesson gets a place of its own. */
  digest({ steps, done, active, score }: LessonResult): LessonDigest {
    const places = steps.map((step) => this.#placeOf(step))
    const marks = new Uint8Array(this.steps.length)
    const wrong = new Set<number>()
    steps.forEach((step, at) => {
      marks[places[at]] = marksOf(step)
      for (const attempt of step.attempts) if (!attempt.met) wrong.add(this.#wrongAt(places[at], attempt))
    })
    const stepsDone = steps.filter((step) => step.done).length
    return { done, stepsDone, stepsAll: steps.length, active, score, steps: marks, wrong: Uint32Array.from(wrong) }
  }

  #placeOf({ id, kind }: StepResult): number {
    let place = this.#places.get(id)
    if (place === undefined) {
      place = this.steps.push({ id, kind }) - 1
      this.#places.set(id, place)
    }
    return place
  }

  #wrongAt(step: number, { answer, mistakes = [] }: Attempt): number {
    const key = `${step} ${mistakes.join()} ${answerKey(answer, mistakes)}`
    let place = this.#answers.get(key)
    if (place === undefined) {
      place = this.wrong.push({ step, answer, mistakes }) - 1
      this.#answers.set(key, place)
    }
    return place
  }
}

function marksOf({ kind, done, misses, hints, attempts }: StepResult): number {
  const reached = done || attempts.length > 0 || misses > 0 || hints > 0
  const firstGo = kind === 'predict' ? attempts.at(0)?.met === true : done && misses === 0 && hints === 0
  return (reached ? bits.reached : 0) | (done ? bits.done : 0) | (firstGo ? bits.firstGo : 0)
}

/** Answers alike have the same key. Numbers that were foreseen count as one mistake, others by two digits. */
function answerKey(answer: AnswerGiven | undefined, mistakes: readonly number[]): string {
  if (!answer) return ''
  switch (answer.form) {
    case 'choice':
      return answer.chosen
    case 'order':
      return answer.order.join(' ')
    case 'diagnosis':
      return [answer.cause, ...[...answer.because].sort()].join(' ')
    case 'reading':
      return mistakes.length > 0 ? '' : answer.entered.toPrecision(2)
  }
}
