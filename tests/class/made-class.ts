/**
 * A class made up for tests and for the bench: results as the course would give them, drawn from a seed. The learners
 * are numbered and called by common first names.
 */
import { faultKinds } from '../../src/drill/cause.ts'
import { isQuestion } from '../../src/lesson/expectation.ts'
import type { Lesson } from '../../src/lesson/lesson.ts'
import type { Step } from '../../src/lesson/step.ts'
import { seededDraws } from '../../src/physics/random.ts'
import type { LessonResult, Result, StepResult } from '../../src/session/result-format.ts'
import { madeDrill, madeResult } from './made-results.ts'

const names = ['Ada', 'Bruno', 'Carla', 'Dana', 'Emil', 'Fatima', 'Goran', 'Hanna', 'Ivo', 'Jana']
const monday = Date.UTC(2026, 2, 2, 8)

/** The nth learner, from 0: how many lessons were begun depends on `n`, the last of them may be open. */
export function classMember(n: number, lessons: readonly Lesson[]): Result {
  const draw = seededDraws(n, 900)
  const begun = Math.ceil(draw() * lessons.length)
  const made = new Date(monday + n * 60_000).toISOString()
  const results = lessons
    .slice(0, begun)
    .map((lesson, at) => lessonDone(lesson, draw, at < begun - 1 || draw() < 0.5, made))
  const drills = Array.from({ length: Math.floor(draw() * 6) }, (_, at) => {
    const [hidden, other] = [draw(), draw()].map((share) => keyOf(Math.floor(share * faultKinds.length)))
    const found = draw() < 0.6
    const first = found ? 'proven' : 'missed'
    return madeDrill([hidden], [found ? hidden : other], { drill: `easy-${n}${at}`, first }, 60 + 600 * draw())
  })
  const group = n % 3 === 0 ? 'Evening class' : 'Day class'
  return madeResult(`learner-${n}`, { name: `${names[n % names.length]} ${n}`, group, made, lessons: results, drills })
}

function keyOf(kind: number): string {
  const { [kind]: name } = faultKinds
  return /paper|water|speed|interval/.test(name) ? name : `${name} 1`
}

function lessonDone(lesson: Lesson, draw: () => number, done: boolean, at: string): LessonResult {
  const { id, title, language } = lesson
  const reached = done ? lesson.steps.length : Math.floor(draw() * lesson.steps.length)
  const steps = lesson.steps.map((step, place) => stepDone(step, draw, place < reached, at))
  const asked = steps.filter(({ kind }) => kind === 'do' || kind === 'expect')
  const score = asked.filter((step) => step.done && step.misses === 0 && step.hints === 0).length / asked.length
  return { id, own: false, title, language, started: at, done, active: Math.round(300 + 900 * draw()), score, steps }
}

function stepDone(step: Step, draw: () => number, done: boolean, at: string): StepResult {
  const { id, kind } = step
  const empty = { id, kind, done, hints: 0, misses: 0, attempts: [] }
  if (!done || kind === 'say') return empty
  const wrong = Math.floor(draw() * draw() * 4)
  const attempts = Array.from({ length: kind === 'predict' ? 1 : wrong + 1 }, (_, go) => {
    const met = kind === 'predict' ? draw() < 0.5 : go === wrong
    return { at, met, ...answerTo(step, draw) }
  })
  return { ...empty, misses: kind === 'predict' ? 0 : wrong, hints: draw() < 0.2 ? 1 : 0, attempts }
}

function answerTo(step: Step, draw: () => number): Pick<StepResult['attempts'][number], 'answer' | 'mistakes'> {
  const pick = <Item>(items: readonly Item[]) => items[Math.floor(draw() * items.length)]
  if (step.kind === 'predict') return { answer: { form: 'choice', chosen: pick(step.choices).id } }
  const question = step.kind === 'expect' ? step.expect.find(isQuestion) : undefined
  switch (question?.is) {
    case 'choice':
      return { answer: { form: 'choice', chosen: pick(question.choices).id } }
    case 'sequence':
      return { answer: { form: 'order', order: question.items.map((item) => item.id).sort(() => draw() - 0.5) } }
    case 'number': {
      const { tolerance, unit } = question
      return { answer: { form: 'reading', entered: Math.round(1000 * draw()) / 10, read: 41, tolerance, unit } }
    }
    case 'diagnosis': {
      const because = [pick(question.evidence).id]
      return { answer: { form: 'diagnosis', cause: pick(question.causes).id, because } }
    }
    case undefined:
      return step.kind !== 'say' && step.feedback ? { mistakes: [0] } : {}
  }
}
