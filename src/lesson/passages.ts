/**
 * Every text of a lesson that the learner reads, in the order it is read. It takes raw data, so that words are checked
 * also in a lesson that has other faults.
 */
import type { Path } from './source.ts'

export interface Passage {
  path: Path
  text: string
}

export interface StepPassages {
  path: Path
  /** ids of the terms the step explains, as written */
  explains: string[]
  /** the step's own text, where terms are explained */
  text: Passage | undefined
  /** all that is read after it: choices, hints, feedback, the closing words */
  others: Passage[]
}

export interface LessonPassages {
  /** read before the first step */
  opening: Passage[]
  steps: StepPassages[]
  /** read after the last */
  closing: Passage[]
}

type Raw = Record<string, unknown>

export function passagesOf(lesson: unknown): LessonPassages {
  const raw = record(lesson)
  return {
    opening: [
      ...textsAt(raw, ['title']),
      ...list(raw['objectives']).flatMap((_, at) => textsAt(raw, ['objectives', at])),
    ],
    steps: list(raw['steps']).map((step, at) => stepPassages(raw, record(step), ['steps', at])),
    closing: handoutPassages(raw),
  }
}

function stepPassages(raw: Raw, step: Raw, path: Path): StepPassages {
  const under = (...rest: (string | number)[]) => textsAt(raw, [...path, ...rest])
  const choices = (...to: (string | number)[]) =>
    list(valueAt(raw, [...path, ...to])).flatMap((_, at) => [
      ...under(...to, at, 'text'),
      ...under(...to, at, 'feedback'),
    ])
  return {
    path,
    explains: list(step['explains']).filter((term) => typeof term === 'string'),
    text: under('text')[0],
    others: [
      ...choices('choices'),
      ...list(step['expect']).flatMap((_, at) =>
        ['choices', 'items', 'causes', 'evidence'].flatMap((field) => choices('expect', at, field)),
      ),
      ...list(step['hints']).flatMap((_, at) => under('hints', at)),
      ...list(step['feedback']).flatMap((_, at) => under('feedback', at, 'say')),
      ...under('done'),
    ],
  }
}

function handoutPassages(raw: Raw): Passage[] {
  const handout = record(raw['handout'])
  return [
    ...textsAt(raw, ['handout', 'intro']),
    ...list(handout['figures']).flatMap((_, at) => textsAt(raw, ['handout', 'figures', at, 'caption'])),
    ...list(handout['blanks']).flatMap((_, at) => [
      ...textsAt(raw, ['handout', 'blanks', at, 'ask']),
      ...textsAt(raw, ['handout', 'blanks', at, 'answer']),
    ]),
  ]
}

/** The text at a path, as a list of one, or none where there is no text. */
function textsAt(raw: Raw, path: Path): Passage[] {
  const text = valueAt(raw, path)
  return typeof text === 'string' ? [{ path, text }] : []
}

function valueAt(raw: Raw, path: Path): unknown {
  return path.reduce<unknown>((value, key) => (Array.isArray(value) ? value[Number(key)] : record(value)[key]), raw)
}

function record(value: unknown): Raw {
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Raw) : {}
}

function list(value: unknown): unknown[] {
  return Array.isArray(value) ? value : []
}
