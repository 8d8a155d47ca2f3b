/** Whatever a lesson refers to exists: ids are unique, answers are among the choices, steps and terms are there. */
import type { ProblemSaid } from '../press/problem.ts'
import { said } from '../press/problem.ts'
import { isQuestion } from './expectation.ts'
import type { NameOf } from './field.ts'
import { nearOr } from './field.ts'
import type { Glossary } from './language.ts'
import { glossaryIn } from './language.ts'
import type { Lesson } from './lesson.ts'
import type { Path } from './source.ts'
import type { Step } from './step.ts'
import type { Located } from './term-order.ts'

export function checkReferences(lesson: Lesson, glossary: Glossary): Located[] {
  const steps = lesson.steps.map((step) => step.id)
  const terms = Object.keys(glossary)
  return [
    ...twice(lesson.steps, ['steps']),
    ...lesson.steps.flatMap((step, at) => stepReferences(step, ['steps', at], lesson, terms)),
    ...namesOf(lesson.assumes, ['assumes'], 'term', terms),
    ...namesOf(lesson.introduces, ['introduces'], 'term', terms),
    ...unexplained(lesson),
    ...ownTerms(lesson),
    ...lesson.assumes.flatMap((term, at) =>
      lesson.introduces.includes(term)
        ? [{ path: ['assumes', at], said: said('checker.assumedAndIntroduced', { id: term }) }]
        : [],
    ),
    ...solutionReferences(lesson, steps),
    ...(lesson.handout?.figures ?? []).flatMap(({ step }, at) =>
      name(step, ['handout', 'figures', at, 'step'], 'step', steps),
    ),
    ...lesson.lock.flatMap((control, at) =>
      lesson.show && !lesson.show.includes(control)
        ? [{ path: ['lock', at], said: said('checker.lockedUnseen', { word: control }) }]
        : [],
    ),
  ]
}

function stepReferences(step: Step, path: Path, { steps, introduces }: Lesson, terms: string[]): Located[] {
  return [
    ...(step.explains ?? []).flatMap((term, at) => {
      const unknown = name(term, [...path, 'explains', at], 'term', terms)
      if (unknown.length > 0 || introduces.includes(term)) return unknown
      return [{ path: [...path, 'explains', at], said: said('checker.notIntroduced', { id: term }) }]
    }),
    ...(step.kind === 'predict' ? predictReferences(step, path, steps) : []),
    ...('expect' in step ? questionReferences(step, path) : []),
  ]
}

function predictReferences(step: Extract<Step, { kind: 'predict' }>, path: Path, steps: Step[]): Located[] {
  const ids = step.choices.map(({ id }) => id)
  const later = steps.slice(steps.indexOf(step) + 1).filter(({ kind }) => kind === 'do' || kind === 'expect')
  return [
    ...twice(step.choices, [...path, 'choices']),
    ...name(step.right, [...path, 'right'], 'choice', ids),
    ...name(
      step.settledBy,
      [...path, 'settledBy'],
      'laterStep',
      later.map(({ id }) => id),
    ),
  ]
}

function questionReferences(step: Extract<Step, { kind: 'do' | 'expect' }>, path: Path): Located[] {
  const index = step.expect.findIndex(isQuestion)
  if (index < 0) return []
  const question = step.expect[index]
  const at = [...path, 'expect', index]
  const sequences = (step.feedback ?? []).flatMap(({ when }, number) =>
    when.is === 'sequence' && question.is === 'sequence'
      ? namesOf(when.order, [...path, 'feedback', number, 'when', 'order'], 'item', idsOf(question.items))
      : [],
  )
  switch (question.is) {
    case 'choice':
      return [
        ...twice(question.choices, [...at, 'choices']),
        ...name(question.right, [...at, 'right'], 'choice', idsOf(question.choices)),
      ]
    case 'diagnosis':
      return [
        ...twice(question.causes, [...at, 'causes']),
        ...twice(question.evidence, [...at, 'evidence']),
        ...name(question.right, [...at, 'right'], 'cause', idsOf(question.causes)),
        ...namesOf(question.because, [...at, 'because'], 'evidence', idsOf(question.evidence)),
      ]
    case 'sequence': {
      const { right, items } = question
      const ids = idsOf(items)
      const unlike = right.length !== ids.length || new Set(right).size !== right.length
      return [
        ...sequences,
        ...twice(items, [...at, 'items']),
        ...namesOf(right, [...at, 'right'], 'item', ids),
        ...(unlike ? [{ path: [...at, 'right'], said: said('checker.everyItem') }] : []),
      ]
    }
    default:
      return []
  }
}

function solutionReferences({ solution }: Lesson, steps: string[]): Located[] {
  const known = solution.flatMap(({ step }, at) => name(step, ['solution', at, 'step'], 'step', steps))
  const repeated = solution.flatMap(({ step }, at) =>
    solution.findIndex((other) => other.step === step) < at
      ? [{ path: ['solution', at, 'step'], said: said('checker.solvedTwice', { id: step }) }]
      : [],
  )
  return [...known, ...repeated]
}

/** Terms the lesson brings along: new ones, whose words mean nothing else. */
function ownTerms({ glossary: own = [], language }: Lesson): Located[] {
  const given = glossaryIn(language)
  const taken = new Map(
    Object.entries(given).flatMap(([id, { term, forms }]) => [term, ...forms].map((form) => [form.toLowerCase(), id])),
  )
  return [
    ...twice(own, ['glossary']),
    ...own.flatMap(({ id, term, forms }, at) => {
      if (Object.hasOwn(given, id)) {
        return [{ path: ['glossary', at, 'id'], said: said('checker.ownTermKnown', { id }) }]
      }
      const words = [term, ...forms]
      const clash = words.find((word) => taken.has(word.toLowerCase()))
      const other = clash === undefined ? undefined : taken.get(clash.toLowerCase())
      for (const word of words) taken.set(word.toLowerCase(), id)
      if (clash === undefined || other === undefined) return []
      return [{ path: ['glossary', at], said: said('checker.ownWordTaken', { word: clash, id: other }) }]
    }),
  ]
}

/** Terms that no step explains. */
function unexplained({ introduces, steps }: Lesson): Located[] {
  const explained = new Set(steps.flatMap((step) => step.explains ?? []))
  return introduces.flatMap((term, at) =>
    explained.has(term) ? [] : [{ path: ['introduces', at], said: said('checker.neverExplained', { id: term }) }],
  )
}

function name(given: string, path: Path, what: NameOf<'such'>, names: readonly string[]): Located[] {
  return names.includes(given) ? [] : [{ path, said: noSuch(given, what, names) }]
}

/** Names that are told; of more than these nobody reads all. */
const mostNames = 12

export function noSuch(given: string, what: NameOf<'such'>, names: readonly string[]): ProblemSaid {
  const allowed = names.length > 0 && names.length <= mostNames ? names.join(', ') : 'none'
  return said('checker.noSuch', {
    word: given,
    what: said(`checker.such.${what}`),
    allowed,
    near: nearOr(given, names),
  })
}

function namesOf(given: readonly string[], path: Path, what: NameOf<'such'>, names: readonly string[]): Located[] {
  return given.flatMap((each, at) => name(each, [...path, at], what, names))
}

function twice(items: readonly { id: string }[], path: Path): Located[] {
  return items.flatMap(({ id }, at) =>
    items.findIndex((other) => other.id === id) < at
      ? [{ path: [...path, at, 'id'], said: said('checker.idTwice', { id }) }]
      : [],
  )
}

function idsOf(items: readonly { id: string }[]): string[] {
  return items.map(({ id }) => id)
}
