/**
 * Statements (xAPI) of learners, as report/learning-system/statements.ts writes them and a record store hands them out,
 * turned into results: answers give attempts, a completed task with a score gives a finished lesson. Statements of others
 * are left alone.
 */
import * as v from 'valibot'
import type { AnswerGiven, Attempt } from '../lesson/attempt.ts'
import { mostAttempts } from '../lesson/attempt.ts'
import type { LessonResult, StepResult } from '../session/result-format.ts'
import { extensionIds } from '../session/statement-extensions.ts'
import { statedDrill } from './stated-drill.ts'
import type { Statement } from './statement.ts'
import { activeIn, statementSchema } from './statement.ts'
import type { HandedResult } from './roll.ts'

/** What a completed lesson says it is. */
const objective = 'http://adlnet.gov/expapi/activities/objective'

export interface Stated {
  readonly results: HandedResult[]
  /** statements that told nothing of a lesson or a drill of ours; one that came twice is not among them */
  readonly passedOver: number
}

/** One result for each actor; those without a statement of ours give none. */
export function resultsOf(given: readonly unknown[]): Stated {
  const byActor = new Map<string, Statement[]>()
  const seen = new Set<string>()
  let twice = 0
  for (const each of given) {
    const parsed = v.safeParse(statementSchema, each, { abortEarly: true })
    if (!parsed.success || !/\/(answered|completed)$/.test(parsed.output.verb.id)) continue
    const { actor, timestamp, verb, object, result } = parsed.output
    const who = actorId(actor)
    // A store may hand out one statement on two pages.
    const key = JSON.stringify([who, timestamp, verb.id, object.id, result.response])
    if (who === '') continue
    if (seen.has(key)) {
      twice++
      continue
    }
    seen.add(key)
    listIn(byActor, who).push(parsed.output)
  }
  const stated = [...byActor].flatMap(([id, statements]) => resultOf(id, statements) ?? [])
  const taken = stated.reduce((sum, each) => sum + each.taken, 0)
  return { results: stated.map(({ result }) => result), passedOver: given.length - twice - taken }
}

function actorId({ account, mbox }: Statement['actor']): string {
  return (account ? `${account.homePage} ${account.name}` : mbox).trim().slice(0, 200)
}

/** With how many of the statements went into it. */
function resultOf(id: string, unordered: readonly Statement[]): { result: HandedResult; taken: number } | null {
  const statements = [...unordered].sort((a, b) => Date.parse(a.timestamp) - Date.parse(b.timestamp))
  const lessons = new Map<string, LessonResult>()
  const told = new Map<string, Statement[]>()
  const named = new Set<string>()
  const drills = new Map<string, Statement[]>()
  for (const statement of statements) {
    // Ids hold single hyphens only, so that two part the lesson from the step.
    const [task, step] = (statement.object.id.split('/').at(-1) ?? '').slice(0, 120).split('--') as [string, string?]
    if (task === 'drill' && step !== undefined) listIn(drills, step).push(statement)
    else if (/^[a-z][a-z0-9-]{0,59}$/.test(task) && !/^drill-\d+$/.test(task)) {
      if (statement.object.definition.type === objective) named.add(task)
      const lesson = lessons.get(task) ?? emptyLesson(task, statement.timestamp)
      const next = step === undefined ? completed(lesson, statement) : answered(lesson, step.slice(0, 60), statement)
      if (!next) continue
      lessons.set(task, next)
      listIn(told, task).push(statement)
    }
  }
  const stated = [...drills].flatMap(([code, answers]) => {
    const drill = statedDrill(code, answers)
    return drill ? [{ drill, answers }] : []
  })
  // Anything may have been completed: it is a lesson of ours if it says so, or if one of its questions was answered.
  const ours = [...lessons]
    .filter(([task, { steps }]) => steps.length > 0 || named.has(task))
    .map(([task, lesson]) => ({ ...lesson, active: activeIn(told.get(task) ?? []) }))
  if (ours.length + stated.length === 0) return null
  const latest = statements[statements.length - 1]
  const ofLessons = ours.reduce((sum, lesson) => sum + (told.get(lesson.id)?.length ?? 0), 0)
  return {
    result: {
      made: latest.timestamp,
      learner: { id, name: latest.actor.name.slice(0, 80) },
      lessons: ours,
      drills: stated.map(({ drill }) => drill),
    },
    taken: stated.reduce((sum, { answers }) => sum + answers.length, ofLessons),
  }
}

function listIn(lists: Map<string, Statement[]>, key: string): Statement[] {
  let list = lists.get(key)
  if (!list) lists.set(key, (list = []))
  return list
}

function emptyLesson(id: string, started: string): LessonResult {
  return { id, own: false, title: id, language: '', started, done: false, active: 0, score: null, steps: [] }
}

/** The whole package is completed too, but with no score of its own. */
function completed(lesson: LessonResult, { result, timestamp }: Statement): LessonResult | null {
  if (!result.score) return null
  const attemptsAt = (id: string) => lesson.steps.find((step) => step.id === id)?.attempts ?? []
  const stated = result.extensions[extensionIds.steps]?.map((step) => ({ ...step, attempts: attemptsAt(step.id) }))
  const steps = stated ?? lesson.steps
  return { ...lesson, done: true, finished: timestamp, score: result.score.scaled, steps }
}

function answered(lesson: LessonResult, id: string, statement: Statement): LessonResult | null {
  const { result, object, timestamp, context } = statement
  if (result.response === undefined) return null
  const [right] = object.definition.correctResponsesPattern
  const { [extensionIds.attempt]: stated, [extensionIds.hints]: hints = 0 } = result.extensions
  // A prediction is not judged in its statement; the right one stands beside it.
  const met = result.success ?? result.response === right
  const attempt: Attempt = { at: timestamp, met, ...(stated ?? answerOf(statement, result.response, right)) }
  const before = lesson.steps.find((step) => step.id === id)
  const isPrediction = result.success === undefined
  const step: StepResult = {
    id,
    kind: context.extensions[extensionIds.stepKind] ?? (isPrediction ? 'predict' : 'expect'),
    done: (before?.done ?? false) || met || isPrediction,
    misses: (before?.misses ?? 0) + (met || isPrediction ? 0 : 1),
    hints: Math.max(before?.hints ?? 0, hints),
    attempts: [...(before?.attempts ?? []), attempt].slice(0, mostAttempts),
  }
  const steps = before ? lesson.steps.map((each) => (each === before ? step : each)) : [...lesson.steps, step]
  return { ...lesson, steps }
}

function answerOf({ object }: Statement, response: string, right: string | undefined): { answer?: AnswerGiven } {
  const parts = response.split('[,]').map((part) => part.slice(0, 120))
  switch (object.definition.interactionType) {
    case 'choice': {
      const cause = parts.find((part) => part.startsWith('cause-'))
      if (cause === undefined) return { answer: { form: 'choice', chosen: parts[0] } }
      const because = parts.filter((part) => part.startsWith('seen-')).map((part) => part.slice('seen-'.length))
      return { answer: { form: 'diagnosis', cause: cause.slice('cause-'.length), because } }
    }
    case 'sequencing':
      return { answer: { form: 'order', order: parts } }
    case 'numeric': {
      const entered = Number(response)
      if (!Number.isFinite(entered)) return {}
      const [least, most] = (right ?? '').split('[:]').map(Number)
      const tolerance = Number.isFinite(most - least) ? (most - least) / 2 : 0
      return { answer: { form: 'reading', entered, tolerance, unit: '' } }
    }
    default:
      return {}
  }
}
