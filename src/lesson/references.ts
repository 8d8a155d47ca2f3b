/** Whatever a lesson refers to exists: ids are unique, answers are among the choices, steps and terms are there. */
import { isQuestion } from './expectation.ts'
import { didYouMean } from './field.ts'
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
    ...namesOf(lesson.assumes, ['assumes'], 'term of the glossary', terms),
    ...namesOf(lesson.introduces, ['introduces'], 'term of the glossary', terms),
    ...unexplained(lesson),
    ...ownTerms(lesson),
    ...lesson.assumes.flatMap((term, at) =>
      lesson.introduces.includes(term)
        ? [{ path: ['assumes', at], message: `${term} is both assumed and introduced; keep one of them` }]
        : [],
    ),
    ...solutionReferences(lesson, steps),
    ...(lesson.handout?.figures ?? []).flatMap(({ step }, at) =>
      name(step, ['handout', 'figures', at, 'step'], 'step', steps),
    ),
    ...lesson.lock.flatMap((control, at) =>
      lesson.show && !lesson.show.includes(control)
        ? [{ path: ['lock', at], message: `${control} is locked but not shown; add it to show or take it out here` }]
        : [],
    ),
  ]
}

function stepReferences(step: Step, path: Path, { steps, introduces }: Lesson, terms: string[]): Located[] {
  return [
    ...(step.explains ?? []).flatMap((term, at) => {
      const unknown = name(term, [...path, 'explains', at], 'term of the glossary', terms)
      if (unknown.length > 0 || introduces.includes(term)) return unknown
      return [{ path: [...path, 'explains', at], message: `${term} is explained here but not listed under introduces` }]
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
    ...name(step.right, [...path, 'right'], 'choice of this step', ids),
    ...name(
      step.settledBy,
      [...path, 'settledBy'],
      'later do or expect step',
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
      ? namesOf(when.order, [...path, 'feedback', number, 'when', 'order'], 'item of this step', idsOf(question.items))
      : [],
  )
  switch (question.is) {
    case 'choice':
      return [
        ...twice(question.choices, [...at, 'choices']),
        ...name(question.right, [...at, 'right'], 'choice of this step', idsOf(question.choices)),
      ]
    case 'diagnosis':
      return [
        ...twice(question.causes, [...at, 'causes']),
        ...twice(question.evidence, [...at, 'evidence']),
        ...name(question.right, [...at, 'right'], 'cause of this step', idsOf(question.causes)),
        ...namesOf(question.because, [...at, 'because'], 'evidence of this step', idsOf(question.evidence)),
      ]
    case 'sequence': {
      const { right, items } = question
      const ids = idsOf(items)
      const unlike = right.length !== ids.length || new Set(right).size !== right.length
      return [
        ...sequences,
        ...twice(items, [...at, 'items']),
        ...namesOf(right, [...at, 'right'], 'item of this step', ids),
        ...(unlike ? [{ path: [...at, 'right'], message: 'right names every item of this step exactly once' }] : []),
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
      ? [{ path: ['solution', at, 'step'], message: `${step} is solved twice; allowed is once` }]
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
        return [
          { path: ['glossary', at, 'id'], message: `${id} is in the program's glossary already; take it out here` },
        ]
      }
      const words = [term, ...forms]
      const clash = words.find((word) => taken.has(word.toLowerCase()))
      const other = clash === undefined ? undefined : taken.get(clash.toLowerCase())
      for (const word of words) taken.set(word.toLowerCase(), id)
      if (clash === undefined || other === undefined) return []
      return [
        { path: ['glossary', at], message: `"${clash}" is a word of ${other} already; every word belongs to one term` },
      ]
    }),
  ]
}

/** Terms that no step explains. */
function unexplained({ introduces, steps }: Lesson): Located[] {
  const explained = new Set(steps.flatMap((step) => step.explains ?? []))
  return introduces.flatMap((term, at) =>
    explained.has(term)
      ? []
      : [{ path: ['introduces', at], message: `${term} is introduced, but no step lists it under explains` }],
  )
}

function name(given: string, path: Path, what: string, names: readonly string[]): Located[] {
  if (names.includes(given)) return []
  const few = names.length > 0 && names.length <= 12 ? `; allowed are ${names.join(', ')}` : ''
  return [{ path, message: `${given} is no ${what}${few}${didYouMean(given, names)}` }]
}

function namesOf(given: readonly string[], path: Path, what: string, names: readonly string[]): Located[] {
  return given.flatMap((each, at) => name(each, [...path, at], what, names))
}

function twice(items: readonly { id: string }[], path: Path): Located[] {
  return items.flatMap(({ id }, at) =>
    items.findIndex((other) => other.id === id) < at
      ? [{ path: [...path, at, 'id'], message: `the id ${id} is given twice; allowed is each id once` }]
      : [],
  )
}

function idsOf(items: readonly { id: string }[]): string[] {
  return items.map(({ id }) => id)
}
