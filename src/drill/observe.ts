/** What a learner reads when taking a piece of evidence: the true readings with noise on them, or their averages. */
import { average, readingNoise } from '../physics/repeatability.ts'
import { casebookOf } from './casebook.ts'
import type { Drill } from './drill.ts'
import type { Evidence, Quantity } from './evidence.ts'
import { deviationOf, evidenceKey, offScale } from './evidence.ts'

export interface Observation {
  readonly quantity: Quantity
  /** as read, in the quantity's own unit */
  readonly value: number
  /** what it is when the job runs well, and between what values nearly all readings (2 deviations) of a good run lie */
  readonly good: number
  readonly usual: readonly [number, number]
  /** the reading's place on the quantity's even scale, and the standard deviation of it there */
  readonly onScale: number
  readonly deviation: number
}

/** Most readings that are averaged. */
export const mostReadings = 16

/**
 * Takes `readings` readings (1 to 16) of every quantity of a piece of evidence and averages each. The same drill gives
 * the same readings; more of them take away the instrument's own noise, but not what differs from sheet to sheet.
 */
export function observe(drill: Drill, evidence: Evidence, readings = 1): Observation[] {
  const { quantities, good } = casebookOf(drill.job)
  const key = evidenceKey(evidence)
  return quantities.flatMap((quantity, index) => {
    if (evidenceKey(quantity.evidence) !== key) return []
    const { scale, repeats, varies } = quantity
    const drawn = Array.from({ length: readings }, (_, reading) => {
      return drill.readings[index] + repeats * readingNoise(drill.request.seed, readingStream + index, reading)
    })
    const onScale = average(drawn, repeats).mean + varies * readingNoise(drill.request.seed, variationStream, index)
    const deviation = deviationOf(quantity, readings)
    const usual = [offScale(scale, good[index] - 2 * deviation), offScale(scale, good[index] + 2 * deviation)] as const
    return [
      { quantity, value: offScale(scale, onScale), good: offScale(scale, good[index]), usual, onScale, deviation },
    ]
  })
}

/** Streams of the drill's seed, far from those that drew the drill. */
const variationStream = 1000
const readingStream = 1001
