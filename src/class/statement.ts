/** What is read of one statement (xAPI 1.0.3); everything else in it is left alone. */
import * as v from 'valibot'
import { moment } from '../lesson/attempt.ts'
import { contextExtensions, extensionIds, resultExtensions } from '../session/statement-extensions.ts'

const text = v.pipe(v.string(), v.maxLength(2000))
const actorSchema = v.object({
  name: v.optional(text, ''),
  mbox: v.optional(text, ''),
  account: v.optional(v.object({ homePage: v.optional(text, ''), name: text })),
})
export const statementSchema = v.object({
  timestamp: moment,
  actor: actorSchema,
  verb: v.object({ id: text }),
  object: v.object({
    id: text,
    definition: v.optional(
      v.object({
        type: v.optional(text, ''),
        interactionType: v.optional(text, ''),
        correctResponsesPattern: v.optional(v.array(text), []),
      }),
      {},
    ),
  }),
  result: v.optional(
    v.object({
      response: v.optional(text),
      success: v.optional(v.boolean()),
      completion: v.optional(v.boolean()),
      duration: v.optional(text, ''),
      score: v.optional(v.object({ scaled: v.pipe(v.number(), v.minValue(0), v.maxValue(1)) })),
      extensions: v.fallback(v.optional(resultExtensions, {}), {}),
    }),
    {},
  ),
  context: v.fallback(v.optional(v.object({ extensions: v.fallback(v.optional(contextExtensions, {}), {}) }), {}), {
    extensions: {},
  }),
})
export type Statement = v.InferOutput<typeof statementSchema>

/** s in an ISO 8601 duration of hours, minutes and seconds; 0 for any other, and for one that no visit lasts. */
function secondsIn(duration: string): number {
  const [, hours = 0, minutes = 0, seconds = 0] =
    /^PT(?:(\d{1,6})H)?(?:(\d{1,8})M)?(?:(\d{1,9}(?:\.\d+)?)S)?$/.exec(duration) ?? []
  return Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds)
}

/** s spent on a lesson or drill by what its statements say, or else by how long each answer took. */
export function activeIn(statements: readonly Statement[]): number {
  const stated = statements.flatMap(({ result }) => result.extensions[extensionIds.active] ?? [])
  if (stated.length > 0) return Math.max(...stated)
  return statements.reduce((sum, { result }) => sum + secondsIn(result.duration), 0)
}
