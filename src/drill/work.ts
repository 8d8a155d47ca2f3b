/**
 * A learner at work on a drill, from the first look to the cure, as plain data: each step gives a new state, so that it
 * can be kept, undone and sent on. Nothing is scored by time or by the number of looks.
 */
import type { Cause } from './cause.ts'
import type { Cure } from './cure.ts'
import type { Drill } from './drill.ts'
import type { Evidence } from './evidence.ts'
import { evidenceKey } from './evidence.ts'
import type { CureVerdict, DiagnosisVerdict } from './judge.ts'
import { judgeCure, judgeDiagnosis } from './judge.ts'
import { mostReadings } from './observe.ts'
import type { Attempt } from './practice.ts'

interface Taken {
  readonly evidence: Evidence
  /** how many readings were averaged */
  readonly readings: number
}

export interface Work {
  /** in the order in which it was taken */
  readonly taken: readonly Taken[]
  readonly diagnosis: { readonly causes: readonly Cause[]; readonly evidence: readonly Evidence[] } | null
  readonly cures: readonly Cure[]
}

export const noWork: Work = { taken: [], diagnosis: null, cures: [] }

/** Takes a piece of evidence, or reads one already taken again and averages: up to 16 readings. */
export function take(work: Work, evidence: Evidence, readings = 1): Work {
  const key = evidenceKey(evidence)
  const before = work.taken.find((taken) => evidenceKey(taken.evidence) === key)
  if (!before) return { ...work, taken: [...work.taken, { evidence, readings: Math.min(mostReadings, readings) }] }
  const again = { evidence, readings: Math.min(mostReadings, before.readings + readings) }
  return { ...work, taken: work.taken.map((taken) => (taken === before ? again : taken)) }
}

/** Names causes and the evidence for them; evidence that was never taken proves nothing and is left out. */
export function diagnose(work: Work, causes: readonly Cause[], evidence: readonly Evidence[]): Work {
  const taken = new Set(work.taken.map((each) => evidenceKey(each.evidence)))
  return { ...work, diagnosis: { causes, evidence: evidence.filter((piece) => taken.has(evidenceKey(piece))) } }
}

/** Applies a cure on top of those already applied; without a diagnosis nothing is touched. */
export function cure(work: Work, applied: Cure): Work {
  return work.diagnosis ? { ...work, cures: [...work.cures, applied] } : work
}

export interface WorkVerdict {
  readonly diagnosis: DiagnosisVerdict | null
  /** null until something was done */
  readonly cure: CureVerdict | null
  /** just the true causes were named */
  readonly found: boolean
  /** and the evidence named rules out every other explanation */
  readonly proven: boolean
  /** and the sheet is good again */
  readonly cured: boolean
}

export function judgeWork(drill: Drill, { taken, diagnosis: named, cures }: Work): WorkVerdict {
  const atHand = taken.map(({ evidence }) => evidence)
  const diagnosis = named && judgeDiagnosis(drill, named.causes, named.evidence, atHand)
  const cure = cures.length > 0 ? judgeCure(drill, cures) : null
  const found = diagnosis !== null && diagnosis.wrong.length === 0 && diagnosis.missed.length === 0
  return {
    diagnosis,
    cure,
    found,
    proven: found && diagnosis.leftOpen.length === 0,
    cured: found && cure !== null && cure.back,
  }
}

/** What practice remembers of it (see practice.ts): a cause counts as found once it is proven. */
export function attemptOf({ faults }: Drill, { proven }: WorkVerdict): Attempt {
  return { kind: faults[0].kind, found: proven }
}
