/** How a learner went about a drill, as it is kept and handed in: what was hidden, looked at, named and done about it. */
import * as v from 'valibot'
import { causeKey, causeOf } from '../drill/cause.ts'
import type { Cure } from '../drill/cure.ts'
import type { Drill } from '../drill/drill.ts'
import { evidenceKey, evidenceOf } from '../drill/evidence.ts'
import { mostReadings } from '../drill/observe.ts'
import type { Work, WorkVerdict } from '../drill/work.ts'
import { moment } from '../lesson/attempt.ts'
import { remedyNames } from '../press/remedies.ts'

/** A cause as causeKey writes it, such as "unit too warm 2"; units counted from 1 by the order of the ticket. */
const cause = v.pipe(
  v.string(),
  v.check((key) => causeOf(key) !== null),
)
/** A piece of evidence as evidenceKey writes it, such as "thermometer 2". */
const evidence = v.pipe(
  v.string(),
  v.check((key) => evidenceOf(key) !== null),
)
export const causesSchema = v.pipe(v.array(cause), v.maxLength(40))
export const evidenceListSchema = v.pipe(v.array(evidence), v.maxLength(60))
const unit = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(8))
const readingsTaken = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(mostReadings))

/** Evidence taken, and how many readings of each were averaged. */
export const measuredSchema = v.pipe(v.array(v.object({ evidence, readings: readingsTaken })), v.maxLength(60))

/** What naming causes was worth: just the true causes and proven by the evidence, found but not proven, or not found. */
export const worth = v.picklist(['proven', 'found', 'missed'])

/** Answers kept of one drill; chosen, far more than there are causes to name. */
const mostNamed = 50

/** What was done: a cause put right, or a remedy, perhaps at one unit. */
export const curesSchema = v.pipe(
  v.array(
    v.union([
      v.object({ putRight: cause }),
      v.object({ remedy: v.picklist(remedyNames), unit: v.exactOptional(unit) }),
    ]),
  ),
  v.maxLength(mostNamed),
)

export const drillWaySchema = v.object({
  /** first and last answer */
  started: v.exactOptional(moment),
  last: v.exactOptional(moment),
  /** s spent on it, while the page was visible */
  active: v.pipe(v.number(), v.finite(), v.minValue(0)),
  /** the true causes, and those there were to choose from */
  hidden: causesSchema,
  offered: causesSchema,
  /** every answer, the first first */
  named: v.pipe(
    v.array(
      v.object({
        at: v.exactOptional(moment),
        causes: causesSchema,
        evidence: evidenceListSchema,
        worth,
      }),
    ),
    v.maxLength(mostNamed),
  ),
  /** evidence taken, and how many readings of each were averaged */
  measured: measuredSchema,
  /** what was done about it in the end: a cause put right, or a remedy, perhaps at one unit */
  cures: curesSchema,
})
export type DrillWay = Readonly<v.InferOutput<typeof drillWaySchema>>

/** What there is to say of what was done until now. */
export function wayOn(
  before: DrillWay | undefined,
  drill: Drill,
  work: Work,
  { found, proven }: WorkVerdict,
  { named, at, active }: { named: boolean; at: string | undefined; active: number },
): DrillWay {
  const moments = at === undefined ? {} : { started: before?.started ?? at, last: at }
  const answer = named &&
    work.diagnosis && {
      ...(at === undefined ? {} : { at }),
      causes: work.diagnosis.causes.map(causeKey),
      evidence: work.diagnosis.evidence.map(evidenceKey),
      worth: worthOf({ found, proven }),
    }
  return {
    ...moments,
    active: (before?.active ?? 0) + active,
    hidden: drill.faults.map(causeKey),
    offered: drill.offered.map(causeKey),
    named: [...(before?.named ?? []).slice(0, mostNamed - 1), ...(answer ? [answer] : [])],
    measured: measured(before?.measured ?? [], work),
    cures: work.cures.slice(-mostNamed).map(cureWritten),
  }
}

export function worthOf({ found, proven }: Pick<WorkVerdict, 'found' | 'proven'>): v.InferOutput<typeof worth> {
  return proven ? 'proven' : found ? 'found' : 'missed'
}

/** Where the drill was done before, what was measured then stays, with the greater number of readings. */
function measured(before: DrillWay['measured'], { taken }: Work): DrillWay['measured'] {
  const now = new Map(before.map(({ evidence: key, readings }) => [key, readings]))
  for (const { evidence: piece, readings } of taken) {
    const key = evidenceKey(piece)
    now.set(key, Math.max(readings, now.get(key) ?? 0))
  }
  return [...now].map(([key, readings]) => ({ evidence: key, readings }))
}

export function cureWritten(cure: Cure): DrillWay['cures'][number] {
  if (cure.kind === 'put right') return { putRight: causeKey(cure.cause) }
  return { remedy: cure.remedy, ...(cure.unit === null ? {} : { unit: cure.unit + 1 }) }
}
