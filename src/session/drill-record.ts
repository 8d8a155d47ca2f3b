/** The record of drills done, kept in this browser as JSON; where it keeps nothing, until the page is closed. */
import * as v from 'valibot'
import { faultKinds } from '../drill/cause.ts'
import { jobIds } from '../drill/jobs.ts'
import { readDrill } from '../drill/link.ts'
import type { Attempt } from '../drill/practice.ts'
import { drillWaySchema, worth } from './drill-way.ts'

const entrySchema = v.object({
  /** as src/drill/link.ts writes it */
  drill: v.pipe(
    v.string(),
    v.check((text) => readDrill(text) !== null),
  ),
  job: v.picklist(jobIds),
  /** of its first fault */
  kind: v.picklist(faultKinds),
  /** what the first answer was worth; practice goes by it */
  first: worth,
  /** how often a cause was named */
  tries: v.number(),
  /** pieces of evidence taken */
  taken: v.number(),
  cured: v.boolean(),
  /** how the learner went about it; missing where an older program kept the record */
  way: v.exactOptional(v.fallback(v.optional(drillWaySchema), undefined)),
})

export type DrillEntry = Readonly<v.InferOutput<typeof entrySchema>>

export type RecordStorage = Pick<Storage, 'getItem' | 'setItem'>

export const recordKey = 'tackstair drills'

/** The record kept; entries that can no longer be read are left out. */
export function readRecord(storage: RecordStorage | null): DrillEntry[] {
  try {
    const kept: unknown = JSON.parse(storage?.getItem(recordKey) ?? '[]')
    if (!Array.isArray(kept)) return []
    return kept.flatMap(readEntry)
  } catch (error) {
    // A blocked storage, or a text that is no record: there is none then.
    if (error instanceof SyntaxError || error instanceof DOMException) return []
    throw error
  }
}

/** One entry read back, or none. */
export function readEntry(kept: unknown): DrillEntry[] {
  const parsed = v.safeParse(entrySchema, kept)
  return parsed.success ? [parsed.output] : []
}

/** Whether the browser has taken it. */
export function writeRecord(storage: RecordStorage | null, entries: readonly DrillEntry[]): boolean {
  if (!storage) return false
  try {
    storage.setItem(recordKey, JSON.stringify(entries))
    return true
  } catch (error) {
    if (error instanceof DOMException) return false
    throw error
  }
}

/** What practice goes by. */
export function attemptsIn(entries: readonly DrillEntry[]): Attempt[] {
  return entries.map(({ kind, first }) => ({ kind, found: first === 'proven' }))
}
