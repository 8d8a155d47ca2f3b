/** The bench as a lesson sees it: a set-up, the patch looked at, and what its sheet reads. */
import type { Strip } from '../measure/strip.ts'
import { stripOf } from '../measure/strip.ts'
import type { ProblemSaid } from '../press/problem.ts'
import { said } from '../press/problem.ts'
import type { Readings } from '../press/readings.ts'
import { runPress } from '../press/run.ts'
import type { SetUp } from '../press/setup.ts'

export interface Bench {
  readonly setUp: SetUp
  /** names of the inks that print in the patch looked at */
  readonly patch: readonly string[]
}

export function benchOf(setUp: SetUp): Bench {
  return { setUp, patch: setUp.inks.map((ink) => ink.name) }
}

/** A set-up is never changed in place, so that its readings can be kept with it. */
const kept = new WeakMap<SetUp, Strip>()

/** The control strip of the sheet; worked out once for each set-up, its patches when they are asked for. */
export function stripFor(setUp: SetUp): Strip {
  let strip = kept.get(setUp)
  if (!strip) {
    strip = stripOf(runPress(setUp))
    kept.set(setUp, strip)
  }
  return strip
}

/** What the sheet reads. */
export function readingsOf(setUp: SetUp): Readings {
  return stripFor(setUp).sheet
}

/** The unit (from 0) of the ink called `name`, or what is wrong. */
export function unitOf(setUp: SetUp, name: string): number | { problem: ProblemSaid } {
  const unit = setUp.inks.findIndex((ink) => ink.name === name)
  if (unit >= 0) return unit
  return { problem: said('checker.noInk', { word: name, allowed: setUp.inks.map((ink) => ink.name).join(', ') }) }
}
