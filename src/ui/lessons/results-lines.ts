/** What a results sheet says, line by line, for the page and for a text file alike. */
import type { Lesson } from '../../lesson/lesson.ts'
import type { Progress } from '../../lesson/progress.ts'
import { recordOf, summaryOf } from '../../lesson/progress.ts'
import { say } from '../say.ts'

export interface ResultLine {
  label: string
  value: string
}

export function resultHead(lesson: Lesson, progress: Progress): string {
  const { finished, done, steps } = summaryOf(lesson, progress)
  return finished ? say('lessons.resultsFinished', { steps }) : say('lessons.resultsOpen', { done, steps })
}

export function resultLines(lesson: Lesson, progress: Progress): ResultLine[] {
  const { predictions, foretold, asked, unaided, hints, misses } = summaryOf(lesson, progress)
  return [
    { label: say('lessons.predictions'), value: say('lessons.countOf', { count: foretold, all: predictions }) },
    { label: say('lessons.unaided'), value: say('lessons.countOf', { count: unaided, all: asked }) },
    { label: say('lessons.misses'), value: String(misses) },
    { label: say('lessons.hintsUsed'), value: String(hints) },
  ]
}

export interface StepLine {
  step: number
  kind: string
  state: string
  misses: number
  hints: number
}

export function stepLines(lesson: Lesson, progress: Progress): StepLine[] {
  return lesson.steps.map(({ id, kind }, at) => {
    const { done, misses, hints } = recordOf(progress, id)
    const state = say(done ? 'lessons.stateDone' : 'lessons.stateOpen')
    return { step: at + 1, kind: say(`lessons.stepKind.${kind}`), state, misses, hints }
  })
}

/** The whole sheet as plain text. */
export function resultText(lesson: Lesson, progress: Progress, name: string, date: string): string {
  return [
    say('lessons.results', { title: lesson.title }),
    ...(name === '' ? [] : [say('lessons.namedResult', { name })]),
    say('lessons.dateResult', { date }),
    '',
    resultHead(lesson, progress),
    ...resultLines(lesson, progress).map((line) => say('lessons.resultLine', { ...line })),
    '',
    ...stepLines(lesson, progress).map(({ step, kind, state, misses, hints }) =>
      [
        say('lessons.resultLine', { label: `${step} ${kind}`, value: state }),
        say('lessons.resultLine', { label: say('lessons.triesHead'), value: misses }),
        say('lessons.resultLine', { label: say('lessons.hintsHead'), value: hints }),
      ].join('; '),
    ),
    '',
  ].join('\n')
}
