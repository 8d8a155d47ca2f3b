/**
 * Drills at work, kept in this browser: what was looked at and how often, what was named and done. The readings need not
 * be kept, as the same drill gives the same ones, noise and all. The latest few are kept, so that two tabs with two
 * drills do not lose each other's.
 */
import * as v from 'valibot'
import type { Cause } from '../drill/cause.ts'
import { causeKey, causeOf } from '../drill/cause.ts'
import type { Cure } from '../drill/cure.ts'
import type { DrillRequest } from '../drill/drill.ts'
import type { Evidence } from '../drill/evidence.ts'
import { evidenceKey, evidenceOf } from '../drill/evidence.ts'
import { readDrill, writeDrill } from '../drill/link.ts'
import type { Work } from '../drill/work.ts'
import type { RecordStorage } from './drill-record.ts'
import { causesSchema, cureWritten, curesSchema, evidenceListSchema, measuredSchema } from './drill-way.ts'

const entrySchema = v.object({
  /** as drill/link.ts writes it */
  drill: v.string(),
  taken: measuredSchema,
  diagnosis: v.nullable(v.object({ causes: causesSchema, evidence: evidenceListSchema })),
  cures: curesSchema,
  answerShown: v.boolean(),
  /** cured, so that the next visit begins with something new */
  finished: v.boolean(),
})
type Entry = v.InferOutput<typeof entrySchema>

export interface KeptDrill {
  readonly work: Work
  readonly answerShown: boolean
  readonly finished: boolean
}

export const workKey = 'tackstair drills at work'

/** Chosen: more than anybody has open at once. */
const mostKept = 8

/** What was kept of this drill; undefined where nothing was, or where it can no longer be read. */
export function keptDrill(storage: RecordStorage | null, request: DrillRequest): KeptDrill | undefined {
  const entry = entries(storage).find(({ drill }) => drill === writeDrill(request))
  if (!entry) return undefined
  const { taken, diagnosis, cures, answerShown, finished } = entry
  const work: Work = {
    taken: taken.flatMap(({ evidence, readings }) =>
      evidenceIn([evidence]).map((piece) => ({ evidence: piece, readings })),
    ),
    diagnosis: diagnosis && { causes: causesIn(diagnosis.causes), evidence: evidenceIn(diagnosis.evidence) },
    cures: cures.flatMap(cureIn),
  }
  return { work, answerShown, finished }
}

/** The drill that was worked on last and is not finished. */
export function drillLeftOpen(storage: RecordStorage | null): DrillRequest | null {
  const latest = entries(storage).at(0)
  return !latest || latest.finished ? null : readDrill(latest.drill)
}

/** Keeps it in place of what was kept of the same drill before; where the browser takes nothing, nothing is kept. */
export function keepDrill(
  storage: RecordStorage | null,
  request: DrillRequest,
  { work, answerShown, finished }: KeptDrill,
): void {
  const drill = writeDrill(request)
  const entry: Entry = {
    drill,
    taken: work.taken.map(({ evidence, readings }) => ({ evidence: evidenceKey(evidence), readings })),
    diagnosis: work.diagnosis && {
      causes: work.diagnosis.causes.map(causeKey),
      evidence: work.diagnosis.evidence.map(evidenceKey),
    },
    cures: work.cures.map(cureWritten),
    answerShown,
    finished,
  }
  const others = entries(storage).filter((each) => each.drill !== drill)
  try {
    storage?.setItem(workKey, JSON.stringify([entry, ...others].slice(0, mostKept)))
  } catch (error) {
    // Full or blocked: the record of drills says on the page that nothing is kept.
    if (!(error instanceof DOMException)) throw error
  }
}

function entries(storage: RecordStorage | null): Entry[] {
  try {
    const kept: unknown = JSON.parse(storage?.getItem(workKey) ?? '[]')
    if (!Array.isArray(kept)) return []
    return kept.flatMap((each) => {
      const parsed = v.safeParse(entrySchema, each)
      return parsed.success ? [parsed.output] : []
    })
  } catch (error) {
    // A blocked storage, or a text that is no record: there is none then.
    if (error instanceof SyntaxError || error instanceof DOMException) return []
    throw error
  }
}

/** Whether one entry as it is kept can be read back. */
export function isReadable(kept: unknown): boolean {
  return v.is(entrySchema, kept)
}

function causesIn(keys: readonly string[]): Cause[] {
  return keys.flatMap((each) => causeOf(each) ?? [])
}

function evidenceIn(keys: readonly string[]): Evidence[] {
  return keys.flatMap((each) => evidenceOf(each) ?? [])
}

function cureIn(written: Entry['cures'][number]): Cure[] {
  if ('putRight' in written) return causesIn([written.putRight]).map((cause) => ({ kind: 'put right', cause }))
  return [{ kind: 'remedy', remedy: written.remedy, unit: written.unit === undefined ? null : written.unit - 1 }]
}
