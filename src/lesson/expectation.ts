/** What a step may expect: of the bench (its order, its readings, its controls), or of the learner's answer. */
import * as v from 'valibot'
import { paperNames } from '../physics/paper.ts'
import { carried } from '../press/problem.ts'
import { sheetSchema } from './action.ts'
import { fields, flag, id, inkName, kindMessage, listOf, number, oneOf, text } from './field.ts'
import { readingSchema, readings } from './reading.ts'

const units = [...new Set(Object.values(readings).map(({ unit }) => unit))]

/** A value always says its unit, and it is the unit of its reading. */
function compared<const Is extends string, const Extra extends v.ObjectEntries>(is: Is, extra: Extra) {
  return v.pipe(
    fields(['expectation', is], {
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
        message: carried('checker.unit', { word: reading.what, allowed: own, given: unit }),
        path: [{ type: 'object', origin: 'value', input: {}, key: 'unit', value: unit }],
      })
    }),
  )
}

const benchNames = ['order', 'within', 'at least', 'at most', 'paper', 'kind', 'waterless', 'sheet', 'patch'] as const

const benchOptions = [
  fields(['expectation', 'order'], { is: v.literal('order'), inks: listOf(inkName, 'inks', 2, 8) }),
  compared('within', { tolerance: number('tolerance', 0.001, 1e6) }),
  compared('at least', {}),
  compared('at most', {}),
  fields(['expectation', 'paper'], { is: v.literal('paper'), value: oneOf('paper', paperNames) }),
  fields(['expectation', 'kind'], { is: v.literal('kind'), value: oneOf('kindOfPress', ['sheet-fed', 'web']) }),
  fields(['expectation', 'waterless'], { is: v.literal('waterless'), value: flag }),
  fields(['expectation', 'sheet'], { is: v.literal('sheet'), value: sheetSchema }),
  fields(['expectation', 'patch'], { is: v.literal('patch'), inks: listOf(inkName, 'inks', 1, 8) }),
] as const

/** Something that must be so on the bench. */
export const benchSchema = v.variant('is', [...benchOptions], kindMessage('benchExpectation', 'is', benchNames))
export type BenchExpectation = v.InferOutput<typeof benchSchema>

/** One answer to choose; where it is wrong, `feedback` says what the bench shows instead. */
const choiceSchema = fields('choice', { id, text, feedback: v.exactOptional(text) })
const itemSchema = fields('item', { id, text })

const questionNames = ['choice', 'sequence', 'diagnosis', 'number'] as const

const questionOptions = [
  fields(['expectation', 'choice'], {
    is: v.literal('choice'),
    choices: listOf(choiceSchema, 'choices', 2, 6),
    right: id,
  }),
  /** items are shown in the order written; `right` is the order asked for */
  fields(['expectation', 'sequence'], {
    is: v.literal('sequence'),
    items: listOf(itemSchema, 'items', 3, 8),
    right: listOf(id, 'ids', 3, 8),
  }),
  /** the cause, and what proves it */
  fields(['expectation', 'diagnosis'], {
    is: v.literal('diagnosis'),
    causes: listOf(choiceSchema, 'causes', 3, 8),
    right: id,
    evidence: listOf(itemSchema, 'evidence', 2, 8),
    because: listOf(id, 'ids', 1, 8),
  }),
  /** a number read off the bench and typed in; right is what the bench reads, within the tolerance */
  v.pipe(
    fields(['expectation', 'number'], {
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
          message: carried('checker.unit', { word: reading.what, allowed: own, given: unit }),
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
    fields(['mistake', 'number'], {
      is: v.literal('number'),
      from: number('number', -1e6, 1e6),
      to: number('number', -1e6, 1e6),
    }),
    fields(['mistake', 'sequence'], { is: v.literal('sequence'), order: listOf(id, 'ids', 1, 8) }),
  ],
  kindMessage('mistake', 'is', [...benchNames, 'number', 'sequence']),
)
export type Mistake = v.InferOutput<typeof mistakeSchema>
