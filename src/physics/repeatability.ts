/**
 * How well an instrument repeats itself: the standard deviation of one reading of the same thing. All are chosen (of
 * the size of the last digit such an instrument shows), since they belong to the instrument and not to nature.
 */
import { normalPairAt } from './random.ts'

export const repeatability = {
  /** of a density, whatever the filter */
  density: 0.01,
  /** tack units, of a tackmeter with the scale of the press model */
  tackmeter: 0.2,
  /** mg, of a balance */
  weighing: 0.1,
  /** degC, of a thermometer aimed at rollers */
  thermometer: 1,
  /** um, of a gauge for the film on a roller */
  filmGauge: 0.15,
  /** share of normal dampening, of a gauge for the water on a plate */
  waterGauge: 0.08,
  /** share of the reading, of the velocity at which a paper begins to pick */
  pickVelocity: 0.1,
  /** share of the reading, of an absorption test */
  absorption: 0.08,
  /** share of the reading, of a speed counter and of a time taken between units */
  timing: 0.02,
} as const

/** A standard normal draw for the `index`-th reading of `stream` under `seed`. */
export function readingNoise(seed: number, stream: number, index: number): number {
  return normalPairAt(seed, stream, index)[0]
}

export interface Averaged {
  mean: number
  /** how many readings */
  count: number
  /** standard error of the mean, from the stated repeatability: it falls with the root of the count */
  error: number
}

/** The mean of readings that each repeat within `deviation`; at least one reading. */
export function average(readings: readonly number[], deviation: number): Averaged {
  if (readings.length === 0) throw new RangeError('No readings were given. An average needs at least one.')
  const mean = readings.reduce((sum, reading) => sum + reading, 0) / readings.length
  return { mean, count: readings.length, error: deviation / Math.sqrt(readings.length) }
}
