/** The bench as a lesson sees it: a set-up, the patch looked at, and what its sheet reads. */
import type { Readings } from '../press/readings.ts'
import { readSheet } from '../press/readings.ts'
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
const kept = new WeakMap<SetUp, Readings>()

/** What the sheet reads; worked out once for each set-up. */
export function readingsOf(setUp: SetUp): Readings {
  let readings = kept.get(setUp)
  if (!readings) {
    readings = readSheet(runPress(setUp))
    kept.set(setUp, readings)
  }
  return readings
}

/** The unit (from 0) of the ink called `name`, or what is wrong in words. */
export function unitOf(setUp: SetUp, name: string): number | { problem: string } {
  const unit = setUp.inks.findIndex((ink) => ink.name === name)
  if (unit >= 0) return unit
  return { problem: `no ink is called ${name}; on the press are ${setUp.inks.map((ink) => ink.name).join(', ')}` }
}
