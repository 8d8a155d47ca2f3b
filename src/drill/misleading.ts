/**
 * Readings that mislead. A sample that stood open skins over, a thermometer aimed at bright steel reads wrong, a gauge
 * was not wiped: the reading looks just like a fault, and reading again does not help. The sheet never misleads, nor
 * does a look at which ink sits where.
 */
import type { Cause, FaultKind } from './cause.ts'
import type { Evidence, EvidenceKind } from './evidence.ts'
import { evidenceKey } from './evidence.ts'

/** The measurement that shows a kind of fault directly, where there is one that can mislead. */
const shownBy = {
  'tack too high': 'tackmeter',
  'tack too low': 'tackmeter',
  'film too heavy': 'film gauge',
  'film too thin': 'film gauge',
  'unit too warm': 'thermometer',
  'water too high': 'water gauge',
  'paper weak': 'pick test',
  'paper too closed': 'absorption test',
  'speed too high': 'speed counter',
  'interval too short': 'unit timing',
} as const satisfies Partial<Record<FaultKind, EvidenceKind>>

export type MisleadingKind = (typeof shownBy)[keyof typeof shownBy]

const canMislead: ReadonlySet<EvidenceKind> = new Set(Object.values(shownBy))

export function mayMislead(evidence: Evidence): evidence is Evidence & { kind: MisleadingKind } {
  return canMislead.has(evidence.kind)
}

/** The piece of evidence that would show this cause, and that a misleading reading makes look like it; else null. */
export function directEvidence({ kind, unit }: Cause): (Evidence & { kind: MisleadingKind }) | null {
  const shown = (shownBy as Partial<Record<FaultKind, MisleadingKind>>)[kind]
  return shown ? { kind: shown, unit } : null
}

/** Its key. */
export function directKey(cause: Cause): string | null {
  const direct = directEvidence(cause)
  return direct && evidenceKey(direct)
}
