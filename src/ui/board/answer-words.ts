/** A wrong answer in words, and what the lesson says to it, as far as this page has the lesson. */
import type { WrongAnswer } from '../../class/lesson-entry.ts'
import type { Question } from '../../lesson/expectation.ts'
import { isQuestion } from '../../lesson/expectation.ts'
import type { Lesson } from '../../lesson/lesson.ts'
import { plainLine } from '../../lesson/prose.ts'
import type { Step } from '../../lesson/step.ts'
import { language } from '../language.ts'
import { shownUnit } from '../lessons/shown-unit.ts'
import { say, sayList, sayNumber } from '../say.ts'

interface Told {
  readonly words: string
  /** Markdown */
  readonly feedback: readonly string[]
}

export function answerWords(lesson: Lesson | undefined, stepId: string, { answer, mistakes }: WrongAnswer): Told {
  const step = lesson?.steps.find(({ id }) => id === stepId)
  const question = step && questionOf(step)
  const foreseen = step && 'feedback' in step ? (step.feedback ?? []).filter((_, at) => mistakes.includes(at)) : []
  const ofMistakes = foreseen.map((each) => each.say)
  const textOf = (items: readonly { id: string; text: string }[] | undefined, id: string) =>
    plainLine(items?.find((item) => item.id === id)?.text ?? id)
  if (!answer) return { words: say('board.answer.bench'), feedback: ofMistakes }
  switch (answer.form) {
    case 'choice': {
      const choices = step?.kind === 'predict' ? step.choices : question?.is === 'choice' ? question.choices : []
      const own = choices.find(({ id }) => id === answer.chosen)?.feedback
      return { words: textOf(choices, answer.chosen), feedback: [...(own === undefined ? [] : [own]), ...ofMistakes] }
    }
    case 'order': {
      const items = question?.is === 'sequence' ? question.items : []
      const order = answer.order.map((id) => textOf(items, id)).join(language().direction === 'rtl' ? ' ← ' : ' → ')
      return { words: say('board.answer.order', { order }), feedback: ofMistakes }
    }
    case 'diagnosis': {
      const { causes, evidence } = question?.is === 'diagnosis' ? question : { causes: [], evidence: [] }
      const because = sayList(answer.because.map((id) => textOf(evidence, id)))
      const own = causes.find(({ id }) => id === answer.cause)?.feedback
      return {
        words: say('board.answer.diagnosis', { cause: textOf(causes, answer.cause), because }),
        feedback: [...(own === undefined ? [] : [own]), ...ofMistakes],
      }
    }
    case 'reading': {
      const unit = shownUnit(answer.unit)
      const mistake = foreseen.map(({ when }) => when).find((when) => when.is === 'number')
      const words = mistake
        ? say('board.answer.foreseen', { from: sayNumber(mistake.from, 0, 2), to: sayNumber(mistake.to, 0, 2), unit })
        : say('board.answer.reading', { value: sayNumber(Number(answer.entered.toPrecision(2)), 0, 6), unit })
      return { words, feedback: ofMistakes }
    }
  }
}

function questionOf(step: Step): Question | undefined {
  return step.kind === 'expect' ? step.expect.find(isQuestion) : undefined
}
