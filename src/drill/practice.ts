/**
 * Spaced repetition: which kind of fault comes next. A kind that was missed comes back after one other drill; each time
 * it is found, it waits twice as long. Counted in drills, not in days, so that it needs no clock.
 */
import { uniformAt } from '../physics/random.ts'
import type { FaultKind } from './cause.ts'
import { faultKinds } from './cause.ts'

/** One drill done: the kind of its first fault, and whether its cause was found. */
export interface Attempt {
  readonly kind: FaultKind
  readonly found: boolean
}

/** Drills that pass before a kind comes back after a miss; doubled for every find in a row after it, up to the most. */
const waitAfterMiss = 2
const longestWait = 32

/** Drills to wait, counted from the last attempt at it; null for a kind never tried. */
export function waitFor(kind: FaultKind, history: readonly Attempt[]): number | null {
  const own = history.filter((attempt) => attempt.kind === kind)
  if (own.length === 0) return null
  const lastMiss = own.findLastIndex((attempt) => !attempt.found)
  const finds = own.length - 1 - lastMiss
  return Math.min(longestWait, waitAfterMiss * 2 ** finds)
}

/**
 * The kind to practise next: one that was missed last time and is due; else one never tried; else the one longest
 * overdue or due soonest. `seed` decides among equals. Never the same kind twice running, unless it is the only one.
 */
export function nextKind(
  history: readonly Attempt[],
  seed: number,
  kinds: readonly FaultKind[] = faultKinds,
): FaultKind {
  const last = history.at(-1)?.kind
  const possible = kinds.length > 1 ? kinds.filter((kind) => kind !== last) : kinds
  const scored = possible.map((kind, index) => {
    const wait = waitFor(kind, history)
    const latest = history.findLastIndex((attempt) => attempt.kind === kind)
    // Drills it is overdue by, once the next one is done.
    const overdue = wait === null ? 0 : history.length - latest - wait
    const missed = latest >= 0 && !history[latest].found && overdue >= 0
    return { kind, rank: missed ? 2 : wait === null ? 1 : 0, overdue, lot: uniformAt(seed, practiceStream, index) }
  })
  return scored.sort((a, b) => b.rank - a.rank || b.overdue - a.overdue || a.lot - b.lot)[0].kind
}

const practiceStream = 84
