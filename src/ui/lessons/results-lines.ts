/** What a results sheet says, line by line, for the page and for a text file alike. */
import { glossaryFor } from '../../lesson/language.ts'
import type { Lesson } from '../../lesson/lesson.ts'
import type { Progress } from '../../lesson/progress.ts'
import { recordOf, summaryOf } from '../../lesson/progress.ts'
import { plainLine } from '../../lesson/prose.ts'
import { say } from '../say.ts'

export interface ResultLine {
  label: string
  count: number
  /** of how many, where it is a share */
  all?: number
}

export function resultHead(lesson: Lesson, progress: Progress): string {
  const { finished, done, steps } = summaryOf(lesson, progress)
  return finished ? say('lessons.resultsFinished', { steps }) : say('lessons.resultsOpen', { done, steps })
}

/** Whoever is through is told that trying and asking are how it is learned; nothing before. */
export function cheer(lesson: Lesson, progress: Progress): string | undefined {
  const { finished, misses, hints } = summaryOf(lesson, progress)
  if (!finished) return undefined
  return say('lessons.cheer', { how: misses > 0 ? 'tries' : hints > 0 ? 'hints' : 'first' })
}

export function aimsHead(lesson: Lesson, progress: Progress): string {
  return say(summaryOf(lesson, progress).finished ? 'lessons.canNow' : 'lessons.aimsHead')
}

/** Whether a prediction was made that did not come true. */
export function foretoldWrongly(lesson: Lesson, progress: Progress): boolean {
  return lesson.steps.some((step) => {
    const { answer } = recordOf(progress, step.id)
    return step.kind === 'predict' && answer !== undefined && 'choose' in answer && answer.choose !== step.right
  })
}

/** The words that the lesson has explained, as headwords; none before its end. */
export function wordsOf(lesson: Lesson, progress: Progress): string[] {
  if (!summaryOf(lesson, progress).finished) return []
  const glossary = glossaryFor(lesson)
  return lesson.introduces.flatMap((id) => (Object.hasOwn(glossary, id) ? [glossary[id].term] : []))
}

export function resultLines(lesson: Lesson, progress: Progress): ResultLine[] {
  const { predictions, foretold, asked, solved, unaided, hints, misses } = summaryOf(lesson, progress)
  return [
    { label: say('lessons.predictions'), count: foretold, all: predictions },
    { label: say('lessons.solved'), count: solved, all: asked },
    { label: say('lessons.unaided'), count: unaided },
    { label: say('lessons.misses'), count: misses },
    { label: say('lessons.hintsUsed'), count: hints },
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
    aimsHead(lesson, progress),
    ...lesson.objectives.map((objective) => `- ${plainLine(objective)}`),
    '',
    ...resultLines(lesson, progress).map(({ label, count, all }) =>
      say('lessons.resultLine', { label, value: all === undefined ? count : say('lessons.countOf', { count, all }) }),
    ),
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
