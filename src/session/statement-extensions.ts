/**
 * What statements (xAPI) say beyond the fields of the standard, so that the board shows of them what it shows of result
 * files. They are URNs, as the program has no address of its own. In an answer's context:
 *
 *   given-at        ISO 8601: when it was really given, where it is told in a later visit
 *   step-kind       of the lesson's step: predict, do, expect
 *
 * In the result of an answer:
 *
 *   attempt         as in a result file (lesson/attempt.ts): what was answered, with the unit and the tolerance of a reading,
 *                   what the bench showed, and which foreseen mistakes were made
 *   hints           taken at this step until then
 *   active          s spent on the lesson or drill until then, while the page was visible
 *   worth           of an answer to a drill: proven, found or missed
 *   evidence-named  named as proof, by keys such as "thermometer 2"
 *   evidence-asked  everything asked for until then, and how many readings of each were averaged
 *
 * In the result of a completed lesson:
 *
 *   active          as above
 *   steps           every step: id, kind, whether it is done, misses and hints
 */
import * as v from 'valibot'
import { attemptSchema } from '../lesson/attempt.ts'
import { evidenceListSchema, measuredSchema, worth } from './drill-way.ts'

const urn = 'urn:tackstair:'
export const extensionIds = {
  givenAt: `${urn}given-at`,
  stepKind: `${urn}step-kind`,
  attempt: `${urn}attempt`,
  hints: `${urn}hints`,
  active: `${urn}active`,
  worth: `${urn}worth`,
  evidenceNamed: `${urn}evidence-named`,
  evidenceAsked: `${urn}evidence-asked`,
  steps: `${urn}steps`,
} as const

const count = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(1_000_000))
const seconds = v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(1e9))

const stepSchema = v.object({
  id: v.pipe(v.string(), v.minLength(1), v.maxLength(60)),
  kind: v.picklist(['say', 'predict', 'do', 'expect']),
  done: v.boolean(),
  misses: count,
  hints: count,
})

/** One that cannot be read is as good as missing: the statement counts without it. */
function ifSound<Kept>(schema: v.GenericSchema<unknown, Kept>) {
  return v.fallback(v.optional(schema), undefined)
}

export const contextExtensions = v.object({
  [extensionIds.stepKind]: ifSound(v.picklist(['predict', 'do', 'expect'])),
})

export const resultExtensions = v.object({
  [extensionIds.attempt]: ifSound(v.omit(attemptSchema, ['at', 'met'])),
  [extensionIds.hints]: ifSound(count),
  [extensionIds.active]: ifSound(seconds),
  [extensionIds.worth]: ifSound(worth),
  [extensionIds.evidenceNamed]: ifSound(evidenceListSchema),
  [extensionIds.evidenceAsked]: ifSound(measuredSchema),
  [extensionIds.steps]: ifSound(v.pipe(v.array(stepSchema), v.maxLength(40))),
})

type Kept<Fields> = { readonly [Field in keyof Fields]?: Exclude<Fields[Field], undefined> }
export type ContextExtensions = Kept<v.InferOutput<typeof contextExtensions>>
export type ResultExtensions = Kept<v.InferOutput<typeof resultExtensions>>
