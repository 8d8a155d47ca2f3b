/** What makes a lesson more than pages to click through: enough steps, of enough kinds, with something at stake. */
import type { ProblemSaid } from '../press/problem.ts'
import { said } from '../press/problem.ts'
import type { Expectation } from './expectation.ts'
import { isQuestion } from './expectation.ts'
import type { Lesson } from './lesson.ts'
import { readings } from './reading.ts'
import type { Step } from './step.ts'
import type { Located } from './term-order.ts'

const fewestSteps = 6
const fewestKinds = 3
const fewestForeseen = 2

export function checkShape({ steps }: Lesson): Located[] {
  const kinds = new Set(steps.map(({ kind }) => kind))
  const foreseen = steps.reduce((sum, step) => sum + foreseenErrors(step), 0)
  const wanted: [boolean, ProblemSaid][] = [
    [steps.length >= fewestSteps, said('checker.fewSteps', { count: steps.length, least: fewestSteps })],
    [kinds.size >= fewestKinds, said('checker.fewKinds', { count: kinds.size, least: fewestKinds })],
    [kinds.has('predict'), said('checker.noPrediction')],
    [steps.some(isMeasured), said('checker.nothingMeasured')],
    [foreseen >= fewestForeseen, said('checker.fewForeseen', { count: foreseen, least: fewestForeseen })],
  ]
  return [
    ...wanted.filter(([met]) => !met).map(([, found]) => ({ path: ['steps'], atKey: true as const, said: found })),
    ...unsettled(steps),
  ]
}

/** Predictions whose answer the bench never shows. */
function unsettled(steps: readonly Step[]): Located[] {
  return steps.flatMap((step, at) => {
    const settling = step.kind === 'predict' ? steps.find(({ id }) => id === step.settledBy) : undefined
    if (!settling || isMeasured(settling) || (settling.claims ?? []).some(reads)) return []
    return [{ path: ['steps', at, 'settledBy'], said: said('checker.unsettled', { id: settling.id }) }]
  })
}

/** A step that is done only with a reading off the sheet or the rollers, not a control. */
function isMeasured(step: Step): boolean {
  return 'expect' in step && step.expect.some(reads)
}

function reads(expectation: Expectation): boolean {
  return 'reading' in expectation && readings[expectation.reading.what].measured
}

/** Mistakes that the step has words for. */
function foreseenErrors(step: Step): number {
  if (step.kind === 'say') return 0
  if (step.kind === 'predict') return answeredWrongs(step.choices, step.right)
  const question = step.expect.find(isQuestion)
  const ofMistakes = step.feedback?.length ?? 0
  if (question?.is === 'choice') return ofMistakes + answeredWrongs(question.choices, question.right)
  if (question?.is === 'diagnosis') return ofMistakes + answeredWrongs(question.causes, question.right)
  return ofMistakes
}

function answeredWrongs(choices: readonly { id: string; feedback?: string }[], right: string): number {
  return choices.filter(({ id, feedback }) => feedback !== undefined && id !== right).length
}
