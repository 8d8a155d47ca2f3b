/** A lesson file: one schema gives the types, the checks and the JSON Schema that helps an editor. */
import * as v from 'valibot'
import { carried, given } from '../press/problem.ts'
import { ranges } from '../press/ranges.ts'
import { cautionIds } from './caution.ts'
import { controls } from './control.ts'
import { fields, id, listOf, oneOf, text, wholeNumber } from './field.ts'
import { language, ownTermsSchema } from './language.ts'
import { setUpSchema } from './start.ts'
import { stepSchema, wayStep } from './step.ts'

/** The one format there is so far. */
const formatNumber = 1

export const format = v.literal(formatNumber, ({ input }) =>
  carried(typeof input === 'number' && input > formatNumber ? 'checker.newerFormat' : 'checker.format', {
    given: given(input),
    known: formatNumber,
  }),
)

const control = oneOf('control', controls)

const handoutSchema = fields('handout', {
  intro: v.exactOptional(text),
  /** steps whose section view is printed, as it stands once the step is done, with the sheet where the step has it */
  figures: v.exactOptional(listOf(fields('figure', { step: id, caption: text }), 'figures', 1, 6)),
  /** blanks to fill in, with the answers for a page of their own */
  blanks: listOf(fields('blank', { ask: text, answer: text }), 'blanks', 1, 20),
})

const lessonFields = {
  format,
  id,
  title: text,
  language,
  minutes: wholeNumber('minutes', 1, 120),
  audience: text,
  /** terms the lesson uses without explaining them */
  assumes: v.optional(listOf(id, 'terms', 0, 120), []),
  /** terms it explains */
  introduces: v.optional(listOf(id, 'terms', 0, 30), []),
  /** terms that the program's glossary does not have in this language */
  glossary: v.exactOptional(ownTermsSchema),
  objectives: listOf(text, 'objectives', 1, 6),
  sources: listOf(text, 'sources', 1, 20),
  cautions: listOf(oneOf('caution', cautionIds), 'cautions', 1, cautionIds.length),
  seed: v.exactOptional(wholeNumber('seed', ranges.seed.least, ranges.seed.most)),
  start: setUpSchema,
  /** controls the learner sees; all where it is left out */
  show: v.exactOptional(listOf(control, 'controls', 0, controls.length)),
  /** controls that are shown and cannot be changed */
  lock: v.optional(listOf(control, 'controls', 0, controls.length), []),
  steps: listOf(stepSchema, 'steps', 1, 40),
  solution: listOf(wayStep, 'ways', 1, 40),
  handout: v.exactOptional(handoutSchema),
}

export const lessonSchema = fields('lesson', lessonFields)
export type Lesson = v.InferOutput<typeof lessonSchema>
