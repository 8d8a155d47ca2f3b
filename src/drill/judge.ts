/** Judges a learner's diagnosis and cure. No points, no clock, no money: what was right, what it rests on, what it costs. */
import type { Effect } from '../press/effects.ts'
import { effectsOf } from '../press/effects.ts'
import type { CautionKey } from '../press/cautions.ts'
import type { SetUp } from '../press/setup.ts'
import type { Difference } from './casebook.ts'
import { casebookOf, differenceFromGood, isNoticed } from './casebook.ts'
import type { Cause } from './cause.ts'
import { causeKey, sameCause } from './cause.ts'
import type { Contradiction } from './contradiction.ts'
import { contradiction, furtherProof } from './contradiction.ts'
import type { Cure } from './cure.ts'
import { applyCure, cautionsOf } from './cure.ts'
import type { Drill } from './drill.ts'
import { identifies, notRuledOut } from './drill.ts'
import { directKey } from './misleading.ts'
import type { Evidence } from './evidence.ts'
import { allEvidence, evidenceKey, seenEvidence } from './evidence.ts'
import { expectedReadings } from './expected.ts'

export interface DiagnosisVerdict {
  /** named and true; named and not true; true and not named */
  readonly right: readonly Cause[]
  readonly wrong: readonly Cause[]
  readonly missed: readonly Cause[]
  /** other explanations that the named evidence does not rule out; none: it really separates the cause */
  readonly leftOpen: readonly (readonly Cause[])[]
  /** named evidence without which just as much would be ruled out */
  readonly needless: readonly Evidence[]
  /** whether the named cause is the one that the misleading reading speaks for */
  readonly misled: boolean
  /** of what was taken, what speaks most against a wrong diagnosis; null where it is right or all of that fits it */
  readonly against: Contradiction | null
  /** what to take next: seen, it speaks against the wrong diagnosis; or it helps against an explanation left open */
  readonly next: Evidence | null
  /** evidence that would have been enough */
  readonly enough: readonly Evidence[]
}

/** `evidence` is what was named as proof, `taken` all that the learner has at hand. */
export function judgeDiagnosis(
  drill: Drill,
  named: readonly Cause[],
  evidence: readonly Evidence[],
  taken: readonly Evidence[] = evidence,
): DiagnosisVerdict {
  const isTrue = (cause: Cause) => drill.faults.some((fault) => sameCause(fault, cause))
  const wrong = named.filter((cause) => !isTrue(cause))
  const leftOpen = notRuledOut(drill, evidence)
  const against = wrong.length > 0 ? contradiction(drill, named, taken) : null
  const beside = (atHand: readonly Evidence[]) => {
    const keys = atHand.map(evidenceKey)
    return allEvidence(drill.ticket).filter((piece) => !keys.includes(evidenceKey(piece)))
  }
  const next = () => {
    if (wrong.length === 0)
      return leftOpen.length > 0 ? furtherProof(drill, leftOpen[0], evidence, beside(evidence)) : null
    // A measurement that speaks against it would be that of the true cause, and give it away.
    const seen = beside(taken).filter(({ kind }) => seenEvidence.some((each) => each === kind))
    return against ? null : (contradiction(drill, named, seen)?.quantity.evidence ?? null)
  }
  return {
    right: named.filter(isTrue),
    wrong,
    missed: drill.faults.filter((fault) => !named.some((cause) => sameCause(fault, cause))),
    leftOpen,
    needless: evidence.filter((piece) => {
      const rest = evidence.filter((other) => evidenceKey(other) !== evidenceKey(piece))
      return notRuledOut(drill, rest).length === leftOpen.length
    }),
    misled: wrong.some((cause) => sameCause(cause, drill.misleading.looksLike)),
    against,
    next: next(),
    enough: enoughEvidence(drill),
  }
}

/**
 * Evidence that rules out every other explanation and none of which can be spared: everything is taken, then put back
 * piece by piece as long as what is left still does. What costs a walk to the press is put back first.
 */
export function enoughEvidence(drill: Drill): Evidence[] {
  const speaking = [...drill.faults, drill.misleading.looksLike].map(directKey)
  const seenFirst = allEvidence(drill.ticket)
  const aside = (piece: Evidence) => !speaking.includes(evidenceKey(piece))
  const order = [...seenFirst].reverse().sort((a, b) => Number(aside(b)) - Number(aside(a)))
  return order.reduce<Evidence[]>((kept, piece) => {
    const rest = kept.filter((other) => other !== piece)
    return identifies(drill, rest) ? rest : kept
  }, seenFirst)
}

export interface CureVerdict {
  /** to be told before anything else */
  readonly cautions: readonly CautionKey[]
  /** the press after the cure */
  readonly press: SetUp
  readonly before: Difference
  readonly after: Difference
  /** whether the sheet would pass again */
  readonly back: boolean
  /** whether it is farther from the good sheet than before */
  readonly worse: boolean
  /** whether the cure changed nothing */
  readonly idle: boolean
  /** whether just the true causes were put right */
  readonly atTheRoot: boolean
  /** everything computed that got better, and that got worse */
  readonly gains: readonly Effect[]
  readonly sideEffects: readonly Effect[]
}

/** Colour difference (dE00) and share of torn spots by which a sheet counts as farther off; chosen well below what is noticed. */
export const worseBy = { colour: 0.25, torn: 0.001 } as const

export function judgeCure(drill: Drill, cures: readonly Cure[]): CureVerdict {
  const book = casebookOf(drill.job)
  const press = cures.reduce((now, cure) => applyCure(drill, now, cure), drill.press)
  const read = (setUp: SetUp) => expectedReadings(book.ticket, setUp, book.quantities)
  const readings = read(press)
  const unchanged = read(drill.press)
  const before = differenceFromGood(book, unchanged)
  const after = differenceFromGood(book, readings)
  const effects = effectsOf(drill.press, press)
  const putRight = cures.flatMap((cure) => (cure.kind === 'put right' ? [causeKey(cure.cause)] : []))
  return {
    cautions: [...new Set(cures.flatMap(cautionsOf))],
    press,
    before,
    after,
    back: !isNoticed(book, readings),
    worse: after.colour > before.colour + worseBy.colour || after.torn > before.torn + worseBy.torn,
    idle: readings.every((reading, index) => Math.abs(reading - unchanged[index]) < 1e-9),
    atTheRoot:
      putRight.length === cures.length &&
      putRight.length === drill.faults.length &&
      drill.faults.every((fault) => putRight.includes(causeKey(fault))),
    gains: effects.filter(({ turn }) => turn === 'better'),
    sideEffects: effects.filter(({ turn }) => turn === 'worse'),
  }
}
