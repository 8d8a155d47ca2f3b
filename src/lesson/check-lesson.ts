/** Checks one lesson file from its text: every problem at once, each with its line and column. */
import * as v from 'valibot'
import { said, saidFrom } from '../press/problem.ts'
import type { Glossary } from './language.ts'
import { glossaryFor } from './language.ts'
import type { Lesson } from './lesson.ts'
import { lessonSchema } from './lesson.ts'
import { passagesOf } from './passages.ts'
import { refusedIn } from './prose.ts'
import { checkReferences } from './references.ts'
import { checkReplay } from './replay.ts'
import { checkShape } from './shape.ts'
import type { Path, Place, Problem, Source } from './source.ts'
import { readSource, toldAt } from './source.ts'
import type { Located } from './term-order.ts'
import { checkTermOrder } from './term-order.ts'

/** What is known of a lesson's place in its course. */
export interface Standing {
  /** terms that need no explanation */
  everyday: readonly string[]
  /** terms that earlier lessons explain; undefined where the lesson stands alone, and may assume what it likes */
  explainedBefore?: ReadonlySet<string>
}

export interface CheckedLesson {
  /** the lesson, where nothing is wrong with its fields; it can then be run */
  lesson: Lesson | undefined
  /** in the order of the file */
  problems: Problem[]
  /** where a value stands, for problems that show only beside other lessons */
  placeOf: (path: Path) => Place
}

/** Never throws; `text` may be anything. */
export function checkLesson(text: string, standing: Standing): CheckedLesson {
  const source = readSource(text)
  if (source.problems.length > 0) return { lesson: undefined, problems: source.problems, placeOf: source.placeOf }
  const parsed = v.safeParse(lessonSchema, source.value)
  const glossary = glossaryFor({
    language: fieldOf(source.value, 'language'),
    glossary: fieldOf(source.value, 'glossary'),
  })
  const located = [
    ...(parsed.issues ?? []).map(locate),
    ...termProblems(source.value, standing, glossary),
    ...proseProblems(source.value),
    ...(parsed.success ? deeperProblems(parsed.output, glossary) : []),
  ]
  return {
    lesson: parsed.success ? parsed.output : undefined,
    problems: placed(located, source),
    placeOf: source.placeOf,
  }
}

/** What can be judged only once every field is sound. */
function deeperProblems(lesson: Lesson, glossary: Glossary): Located[] {
  const references = checkReferences(lesson, glossary)
  return [...references, ...checkShape(lesson), ...(references.length === 0 ? checkReplay(lesson) : [])]
}

function termProblems(value: unknown, { everyday, explainedBefore }: Standing, glossary: Glossary): Located[] {
  const assumes = namesAt(value, 'assumes')
  const declared = { everyday, assumes, introduces: namesAt(value, 'introduces') }
  return [
    ...checkTermOrder(passagesOf(value), declared, glossary),
    ...assumes.flatMap((term, at) =>
      explainedBefore && Object.hasOwn(glossary, term) && !explainedBefore.has(term) && !everyday.includes(term)
        ? [{ path: ['assumes', at], said: said('checker.assumedTooSoon', { id: term }) }]
        : [],
    ),
  ]
}

function proseProblems(value: unknown): Located[] {
  const { opening, steps, closing } = passagesOf(value)
  const all = [...opening, ...steps.flatMap(({ text, others }) => [...(text ? [text] : []), ...others]), ...closing]
  return all.flatMap(({ path, text }) =>
    refusedIn(text).map(({ at, said: refused }) => ({ path, offset: at, said: refused })),
  )
}

export function locate(issue: v.BaseIssue<unknown>): Located {
  const path = (issue.path ?? []).map(({ key }) => key as string | number)
  const unknownField = issue.type === 'strict_object' && issue.expected === 'never'
  return { path, said: saidFrom(issue.message), ...(unknownField ? { atKey: true as const } : {}) }
}

/** Gives each problem its line and column, and sorts them as they stand in the file. */
export function placed(located: readonly Located[], { placeOf, placeOfKey }: Source): Problem[] {
  return located
    .map(({ path, offset, atKey, said: found }) => toldAt(atKey ? placeOfKey(path) : placeOf(path, offset), found))
    .sort((a, b) => a.line - b.line || a.col - b.col)
}

/** A lesson's id and the terms it says it explains, whatever else may be wrong with it. */
export function outlineOf(text: string): { id: string; introduces: string[] } {
  const { value } = readSource(text)
  const id = fieldOf(value, 'id')
  return { id: typeof id === 'string' ? id : '', introduces: namesAt(value, 'introduces') }
}

function namesAt(value: unknown, field: string): string[] {
  const names = fieldOf(value, field)
  return Array.isArray(names) ? names.map((name) => (typeof name === 'string' ? name : '')) : []
}

function fieldOf(value: unknown, field: string): unknown {
  return typeof value === 'object' && value !== null && Object.hasOwn(value, field)
    ? (value as Record<string, unknown>)[field]
    : undefined
}
