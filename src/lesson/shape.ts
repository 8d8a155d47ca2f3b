/** What makes a lesson more than pages to click through: enough steps, of enough kinds, with something at stake. */
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
  const wanted: [boolean, string][] = [
    [steps.length >= fewestSteps, `has ${String(steps.length)} steps; a lesson needs at least ${String(fewestSteps)}`],
    [
      kinds.size >= fewestKinds,
      `has steps of ${String(kinds.size)} kinds; a lesson needs at least ${String(fewestKinds)} of say, predict, do, expect`,
    ],
    [kinds.has('predict'), 'has no predict step; the learner commits to an answer before the bench shows it'],
    [steps.some(isMeasured), 'measures nothing; at least one step expects a reading taken off the sheet'],
    [
      foreseen >= fewestForeseen,
      `has feedback for ${String(foreseen)} foreseen errors; a lesson needs at least ${String(fewestForeseen)}`,
    ],
  ]
  return wanted.filter(([met]) => !met).map(([, message]) => ({ path: ['steps'], atKey: true, message }))
}

/** A step that is done only with a reading off the sheet or the rollers, not a control. */
function isMeasured(step: Step): boolean {
  return 'expect' in step && step.expect.some((each) => 'reading' in each && readings[each.reading.what].measured)
}

function foreseenErrors(step: Step): number {
  if (step.kind === 'say') return 0
  const question = step.kind === 'predict' ? step : step.expect.find(isQuestion)
  const choices = question
    ? 'choices' in question
      ? question.choices
      : 'causes' in question
        ? question.causes
        : []
    : []
  const right = question && 'right' in question ? question.right : undefined
  const ofChoices = choices.filter(({ id, feedback }) => feedback !== undefined && id !== right).length
  return ofChoices + (step.kind === 'predict' ? 0 : (step.feedback?.length ?? 0))
}
