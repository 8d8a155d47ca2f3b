/** A printable sheet of a lesson: what to do, figures, blanks to fill in, and the answers for a page of their own. */
import type { Bench } from './bench.ts'
import type { Lesson } from './lesson.ts'
import type { Stand } from './stand.ts'
import { walk } from './walk.ts'

export interface Handout {
  title: string
  objectives: string[]
  /** Markdown */
  intro: string | undefined
  /** Markdown of each step the learner works at */
  steps: { id: string; text: string; choices: string[] }[]
  /** the bench to draw, where the sheet then stands, and what to write below it */
  figures: { bench: Bench; stand: Stand; caption: string }[]
  blanks: string[]
  /** in the order of the blanks */
  answers: string[]
  cautions: Lesson['cautions']
  sources: string[]
}

export function handoutOf(lesson: Lesson): Handout {
  const stations = walk(lesson)
  const { handout } = lesson
  return {
    title: lesson.title,
    objectives: lesson.objectives,
    intro: handout?.intro,
    steps: lesson.steps.map((step) => ({ id: step.id, text: step.text, choices: choicesOf(step) })),
    figures: (handout?.figures ?? []).flatMap(({ step: id, caption }) =>
      lesson.steps.flatMap((step, at) => (step.id === id ? [{ bench: stations[at].done, stand: step, caption }] : [])),
    ),
    blanks: (handout?.blanks ?? []).map(({ ask }) => ask),
    answers: (handout?.blanks ?? []).map(({ answer }) => answer),
    cautions: [...new Set([...lesson.cautions, ...lesson.steps.flatMap((step) => step.cautions ?? [])])],
    sources: lesson.sources,
  }
}

function choicesOf(step: Lesson['steps'][number]): string[] {
  if (step.kind === 'predict') return step.choices.map(({ text }) => text)
  if (step.kind === 'say') return []
  return step.expect.flatMap((each) => {
    if (each.is === 'choice') return each.choices.map(({ text }) => text)
    if (each.is === 'diagnosis') return each.causes.map(({ text }) => text)
    return each.is === 'sequence' ? each.items.map(({ text }) => text) : []
  })
}
