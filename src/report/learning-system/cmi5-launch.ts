/** What a cmi5 system says in the launch address (cmi5 1.0, 8.1) and in its launch data (10.0). */
import * as v from 'valibot'

export interface Cmi5Launch {
  /** with a slash at its end */
  readonly endpoint: string
  readonly fetch: string
  readonly actor: Readonly<Record<string, unknown>>
  readonly registration: string
  readonly activityId: string
}

/** Null where a part is missing: then no system has launched the page. */
export function readCmi5Launch(search: string): Cmi5Launch | null {
  const given = new URLSearchParams(search)
  const [endpoint, fetch, actor, registration, activityId] = [
    'endpoint',
    'fetch',
    'actor',
    'registration',
    'activityId',
  ].map((name) => given.get(name) ?? '')
  const parsed = v.safeParse(v.record(v.string(), v.unknown()), parsedJson(actor))
  if (!isAddress(endpoint) || !isAddress(fetch) || !parsed.success || registration === '' || activityId === '')
    return null
  return {
    endpoint: endpoint.endsWith('/') ? endpoint : `${endpoint}/`,
    fetch,
    actor: parsed.output,
    registration,
    activityId,
  }
}

const launchDataSchema = v.object({
  contextTemplate: v.record(v.string(), v.unknown()),
  launchMode: v.fallback(v.picklist(['Normal', 'Browse', 'Review']), 'Normal'),
  masteryScore: v.exactOptional(v.fallback(v.optional(v.pipe(v.number(), v.minValue(0), v.maxValue(1))), undefined)),
  returnURL: v.exactOptional(v.fallback(v.optional(v.string()), undefined)),
})
export type LaunchData = v.InferOutput<typeof launchDataSchema>

export function readLaunchData(text: string): LaunchData | null {
  const parsed = v.safeParse(launchDataSchema, parsedJson(text))
  return parsed.success ? parsed.output : null
}

/** Languages the learner prefers, the best first (11.1). */
export function readLanguages(text: string): string[] {
  const schema = v.object({ languagePreference: v.string() })
  const parsed = v.safeParse(schema, parsedJson(text))
  return parsed.success ? parsed.output.languagePreference.split(',').map((tag) => tag.trim()) : []
}

export function parsedJson(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch (error) {
    if (error instanceof SyntaxError) return undefined
    throw error
  }
}

function isAddress(text: string): boolean {
  return /^https?:\/\//.test(text) && URL.canParse(text)
}
