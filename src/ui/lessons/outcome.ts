/** What is said once a step has been handed in: what the bench showed, and what became of the predictions. */
import type { TemplateResult } from 'lit'
import { html, nothing } from 'lit'
import type { Bench } from '../../lesson/bench.ts'
import type { Verdict } from '../../lesson/judge.ts'
import type { Glossary } from '../../lesson/language.ts'
import type { Lesson } from '../../lesson/lesson.ts'
import type { Progress } from '../../lesson/progress.ts'
import { recordOf, settledBy } from '../../lesson/progress.ts'
import { sayFinding } from '../../lesson/said.ts'
import type { Step } from '../../lesson/step.ts'
import { plainLine } from '../../lesson/prose.ts'
import type { LessonKey } from '../../words/en/lesson.ts'
import { say } from '../say.ts'
import { proseView } from './prose-view.ts'
import { inWords } from './reading-words.ts'

/** A step that was handed in and not met, with the bench as it was then. */
export interface Missed {
  verdict: Verdict
  bench: Bench
}

export function outcomeView(
  lesson: Lesson,
  progress: Progress,
  step: Step,
  missed: Missed | null,
  glossary: Glossary,
): TemplateResult | typeof nothing {
  if (step.kind === 'predict') return committedView(lesson, progress, step)
  if (step.kind === 'say') return nothing
  if (recordOf(progress, step.id).done) return doneView(lesson, progress, step, glossary)
  return missed ? missedView(missed, glossary) : nothing
}

function committedView(lesson: Lesson, progress: Progress, step: Extract<Step, { kind: 'predict' }>) {
  const { done, answer } = recordOf(progress, step.id)
  if (!done || !answer || !('choose' in answer)) return nothing
  const at = lesson.steps.findIndex(({ id }) => id === step.id)
  const settles = lesson.steps.findIndex(({ id }) => id === step.settledBy)
  return html`<div class="set-off told">
    <p>${say('lessons.committed', { chosen: choiceText(step, answer.choose) })}</p>
    <p>${say('lessons.toBeSettled', { more: Math.max(0, settles - at) })}</p>
  </div>`
}

function doneView(lesson: Lesson, progress: Progress, step: Step & { done?: string }, glossary: Glossary) {
  return html`<div class="set-off told">
    <p><strong>${say('lessons.done')}</strong></p>
    ${settledBy(lesson, progress, step.id).map(
      ({ step: predicted, chosen, met, feedback }) => html`
        <p>
          ${say(met ? 'lessons.cameTrue' : 'lessons.cameOtherwise', {
            chosen: choiceText(predicted, chosen),
            right: choiceText(predicted, predicted.right),
          })}
        </p>
        ${feedback === undefined ? nothing : proseView(feedback, glossary)}
      `,
    )}
    ${step.done === undefined ? nothing : proseView(step.done, glossary)}
  </div>`
}

/** What is said of any wrong answer, and needs no saying beside words of the lesson's own. */
const generalWords = [
  'lesson.sequence',
  'lesson.number',
  'lesson.otherNumber',
  'lesson.inPercent',
  'lesson.notAfter',
] satisfies LessonKey[]

function missedView({ verdict, bench }: Missed, glossary: Glossary) {
  // "Not yet" says all there is to say of a wrong answer; a mistake that was foreseen is told in words of its own.
  const said = new Set<LessonKey>(['lesson.answer'])
  if (verdict.feedback.length > 0) for (const general of generalWords) said.add(general)
  // That inks print in the wrong order is also why a trap of theirs cannot be read.
  if (verdict.findings.some(({ met, expectation }) => !met && expectation.is === 'order')) said.add('lesson.notAfter')
  const findings = verdict.findings
    .filter(({ met }) => !met)
    .map((finding) => ({ ...sayFinding(finding, bench), finding }))
    .filter(({ message }) => !said.has(message))
  return html`<div class="set-off told">
    <p><strong>${say('lessons.notYet')}</strong></p>
    ${findings.map(
      ({ message, values, finding }) => html`<p>${capitalised(say(message, inWords(values, finding)))}</p>`,
    )}
    ${verdict.feedback.map((words) => proseView(words, glossary))}
  </div>`
}

/** A sentence may begin with the name of a reading. */
function capitalised(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1)
}

function choiceText({ choices }: { choices: readonly { id: string; text: string }[] }, id: string): string {
  return plainLine(choices.find((choice) => choice.id === id)?.text ?? id)
}
