/** What a step may expect: of the bench (its order, its readings, its controls), or of the learner's answer. */
import * as v from 'valibot'
import { paperNames } from '../physics/paper.ts'
import { sheetSchema } from './action.ts'
import { fields, flag, id, inkName, kindMessage, listOf, number, oneOf, text } from './field.ts'
import { readingSchema, readings } from './reading.ts'

const units = [...new Set(Object.values(readings).map(({ unit }) => unit))]

/** A value always says its unit, and it is the unit of its reading. */
function compared<const Is extends string, const Extra extends v.ObjectEntries>(is: Is, extra: Extra) {
  return v.pipe(
    fields(`the expectation ${is}`, {
      is: v.literal(is),
      reading: readingSchema,
      value: number('value', -1e6, 1e6),
      unit: oneOf('unit', units),
      ...extra,
    }),
    v.rawCheck(({ dataset, addIssue }) => {
      if (!dataset.typed) return
      const { reading, unit } = dataset.value as { reading: v.InferOutput<typeof readingSchema>; unit: string }
      const own = readings[reading.what].unit
      if (unit === own) return
      addIssue({
        message: `${reading.what} is read in ${own}, not in ${unit}`,
        path: [{ type: 'object', origin: 'value', input: {}, key: 'unit', value: unit }],
      })
    }),
  )
}

const benchNames = ['order', 'within', 'at least', 'at most', 'paper', 'kind', 'waterless', 'sheet', 'patch'] as const

const benchOptions = [
  fields('the expectation order', { is: v.literal('order'), inks: listOf(inkName, 'inks', 2, 8) }),
  compared('within', { tolerance: number('tolerance', 0.001, 1e6) }),
  compared('at least', {}),
  compared('at most', {}),
  fields('the expectation paper', { is: v.literal('paper'), value: oneOf('paper', paperNames) }),
  fields('the expectation kind', { is: v.literal('kind'), value: oneOf('kind of press', ['sheet-fed', 'web']) }),
  fields('the expectation waterless', { is: v.literal('waterless'), value: flag }),
  fields('the expectation sheet', { is: v.literal('sheet'), value: sheetSchema }),
  fields('the expectation patch', { is: v.literal('patch'), inks: listOf(inkName, 'inks', 1, 8) }),
] as const

/** Something that must be so on the bench. */
export const benchSchema = v.variant('is', [...benchOptions], kindMessage('expectation of the bench', 'is', benchNames))
export type BenchExpectation = v.InferOutput<typeof benchSchema>

/** One answer to choose; where it is wrong, `feedback` says what the bench shows instead. */
const choiceSchema = fields('a choice', { id, text, feedback: v.exactOptional(text) })
const itemSchema = fields('an item', { id, text })

const questionNames = ['choice', 'sequence', 'diagnosis', 'number'] as const

const questionOptions = [
  fields('the expectation choice', {
    is: v.literal('choice'),
    choices: listOf(choiceSchema, 'choices', 2, 6),
    right: id,
  }),
  /** items are shown in the order written; `right` is the order asked for */
  fields('the expectation sequence', {
    is: v.literal('sequence'),
    items: listOf(itemSchema, 'items', 3, 8),
    right: listOf(id, 'ids', 3, 8),
  }),
  /** the cause, and what proves it */
  fields('the expectation diagnosis', {
    is: v.literal('diagnosis'),
    causes: listOf(choiceSchema, 'causes', 3, 8),
    right: id,
    evidence: listOf(itemSchema, 'pieces of evidence', 2, 8),
    because: listOf(id, 'ids', 1, 8),
  }),
  /** a number read off the bench and typed in; right is what the bench reads, within the tolerance */
  v.pipe(
    fields('the expectation number', {
      is: v.literal('number'),
      reading: readingSchema,
      tolerance: number('tolerance', 0.001, 1e6),
      unit: oneOf('unit', units),
    }),
    v.rawCheck(({ dataset, addIssue }) => {
      if (!dataset.typed) return
      const { reading, unit } = dataset.value
      const own = readings[reading.what].unit
      if (unit !== own) {
        addIssue({
          message: `${reading.what} is read in ${own}, not in ${unit}`,
          path: [{ type: 'object', origin: 'value', input: {}, key: 'unit', value: unit }],
        })
      }
    }),
  ),
] as const

export const expectationSchema = v.variant(
  'is',
  [...benchOptions, ...questionOptions],
  kindMessage('expectation', 'is', [...benchNames, ...questionNames]),
)
export type Expectation = v.InferOutput<typeof expectationSchema>
export type Question = Exclude<Expectation, BenchExpectation>

export function isQuestion(expectation: Expectation): expectation is Question {
  return (questionNames as readonly string[]).includes(expectation.is)
}

/** When a foreseen mistake has been made: on the bench, by a number typed, or by an order given. */
export const mistakeSchema = v.variant(
  'is',
  [
    ...benchOptions,
    fields('the mistake number', {
      is: v.literal('number'),
      from: number('number', -1e6, 1e6),
      to: number('number', -1e6, 1e6),
    }),
    fields('the mistake sequence', { is: v.literal('sequence'), order: listOf(id, 'ids', 1, 8) }),
  ],
  kindMessage('mistake', 'is', [...benchNames, 'number', 'sequence']),
)
export type Mistake = v.InferOutput<typeof mistakeSchema>
