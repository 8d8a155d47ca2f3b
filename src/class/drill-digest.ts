/** What counts of one drill a learner did: the kinds that were hidden, and the kinds named at the first answer. */
import type { FaultKind } from '../drill/cause.ts'
import { causeOf } from '../drill/cause.ts'
import { readDrill } from '../drill/link.ts'
import type { Level } from '../drill/level.ts'
import type { DrillResult } from '../session/result-format.ts'

export interface DrillDigest {
  readonly level: Level
  /** unknown where an older program kept the record */
  readonly hidden: readonly FaultKind[]
  /** at the first answer: a true cause of this kind was named, or one was named that is not there */
  readonly hit: readonly FaultKind[]
  readonly wrong: readonly FaultKind[]
  readonly first: DrillResult['first']
  readonly cured: boolean
  /** s; null where unknown */
  readonly active: number | null
}

export function drillDigest({ drill, first, cured, way }: Omit<DrillResult, 'job'>): DrillDigest {
  const level = readDrill(drill)?.level ?? 'easy'
  // A cause counts with its unit.
  const named = way?.named.at(0)?.causes ?? []
  const hidden = way?.hidden ?? []
  return {
    level,
    hidden: kinds(hidden),
    hit: kinds(hidden.filter((key) => named.includes(key))),
    wrong: kinds(named.filter((key) => !hidden.includes(key))),
    first,
    cured,
    active: way?.active ?? null,
  }
}

function kinds(keys: readonly string[]): FaultKind[] {
  return keys.flatMap((key) => causeOf(key)?.kind ?? [])
}
