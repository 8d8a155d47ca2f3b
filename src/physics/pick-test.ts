/**
 * The pick test with accelerating speed (ISO 3783): a strip is printed with a tacky oil at a speed that rises along it,
 * and the place where its surface begins to tear is looked for. Pick resistance = pick velocity (m/s) x viscosity of
 * the oil (Pa s), in N/m. A pick velocity must not be read as a press speed: oil, film and nip are other than a press's.
 *
 * The pull along the strip rises as the press model lets pull rise with speed, with velocity times viscosity in place of
 * the speed, because that product is what the test takes to decide (after Stefan, from memory):
 *
 *     pull = P0 (velocity * viscosity)^a,  a the speed exponent of pull.ts
 *
 * so a surface of strength S begins to pick at velocity * viscosity = (share * S / P0)^(1/a).
 */
import type { Paper } from './paper.ts'
import { paperModulus, papers, wetSurfaceStrength } from './paper.ts'
import { speedExponent } from './pull.ts'
import { uniformAt } from './random.ts'

/** Pa s at 23 degC (from memory). */
export const oilViscosity = { low: 17.5, medium: 52, high: 110 } as const
export type Oil = keyof typeof oilViscosity
export const oils = Object.keys(oilViscosity) as Oil[]

/** A strip to be printed. */
export interface PickTest {
  paper: Paper
  oil: Oil
  /** m/s at the strip's end */
  endVelocity: number
  /** whether the strip is wetted first */
  wet: boolean
  seed: number
}

/** m/s: end velocities that can be dialled in; chosen so that every paper of the press begins to pick with one oil or another. */
export const endVelocities = { least: 0.5, most: 7, step: 0.1 } as const

/** mm of the strip; spots are looked at one by one along it and across it. Chosen. */
export const strip = { length: 200, along: 200, across: 12 } as const

/** Picking has begun where one spot in twenty is torn: chosen, as the first stray pick depends on luck. */
export const beginningShare = 0.05

/** Normal dampenings laid on a wetted strip: chosen as what four dampened units lay on a sheet. */
const wettingBefore = 4

/** Pull at which picking begins, as a share of the strength S: strength is Weibull with modulus 10. */
const beginningPull = (-Math.log(1 - beginningShare)) ** (1 / paperModulus)

/**
 * Tack units at 1 N/m: chosen so that coated paper (S = 60) begins to pick at 2.6 m/s with the medium oil. The others
 * then fall into their usual ranges (from memory: coated 1.5 to 3.5 and uncoated 0.8 to 2 m/s with the medium oil,
 * newsprint 1 to 2 with the low one).
 */
const pullAtOne = (beginningPull * papers.coated.surfaceStrength) / (2.6 * oilViscosity.medium) ** speedExponent

/** tack units on the surface at `velocity` (m/s) with this oil */
export function oilPull(oil: Oil, velocity: number): number {
  return pullAtOne * (velocity * oilViscosity[oil]) ** speedExponent
}

/** tack units: the strength of the strip's surface */
export function stripStrength({ paper, wet }: Pick<PickTest, 'paper' | 'wet'>): number {
  return wetSurfaceStrength(paper, wet ? wettingBefore : 0)
}

/** N/m: the pick resistance of a surface of this strength (tack units). */
export function pickResistance(strength: number): number {
  return ((beginningPull * strength) / pullAtOne) ** (1 / speedExponent)
}

/** The other way round: surface strength (tack units) from a pick resistance (N/m). */
export function strengthOfResistance(resistance: number): number {
  return (pullAtOne * resistance ** speedExponent) / beginningPull
}

/** m/s: where picking begins on this strip; may lie beyond its end. */
export function pickVelocity(test: Pick<PickTest, 'paper' | 'wet' | 'oil'>): number {
  return pickResistance(stripStrength(test)) / oilViscosity[test.oil]
}

/** m/s at `place` (mm from the start): a steady push, so speed goes with the root of the way. */
export function velocityAt({ endVelocity }: Pick<PickTest, 'endVelocity'>, place: number): number {
  return endVelocity * Math.sqrt(place / strip.length)
}

/** mm from the start at which the strip runs at `velocity` (m/s). */
export function placeOf({ endVelocity }: Pick<PickTest, 'endVelocity'>, velocity: number): number {
  return strip.length * (velocity / endVelocity) ** 2
}

/** Share of spots (0 to 1) torn where the strip runs at `velocity` (m/s). */
export function pickShareAt(test: PickTest, velocity: number): number {
  return -Math.expm1(-((oilPull(test.oil, velocity) / stripStrength(test)) ** paperModulus))
}

/** One torn spot. */
export interface TornSpot {
  /** mm from the start, and share of the strip's breadth */
  place: number
  across: number
  /** m/s */
  velocity: number
}

/** Prints the strip: the torn spots from start to end, each where its own drawn strength gave way. */
export function printStrip(test: PickTest): TornSpot[] {
  const torn: TornSpot[] = []
  for (let row = 0; row < strip.along; row++) {
    const place = ((row + 0.5) * strip.length) / strip.along
    const velocity = velocityAt(test, place)
    const share = pickShareAt(test, velocity)
    for (let column = 0; column < strip.across; column++) {
      const spot = row * strip.across + column
      if (uniformAt(test.seed, spotStream, spot) < share) {
        torn.push({ place, across: (column + 0.5) / strip.across, velocity })
      }
    }
  }
  return torn
}

const spotStream = 72

export type MarkVerdict = 'right' | 'too early' | 'too late' | 'nothing picks' | 'rightly none'

/** Share by which a marked velocity may miss: chosen, about twice the repeatability of the test. */
const markTolerance = 0.2

/** Judges the learner's mark: mm from the start where picking begins, or null for "nowhere on this strip". */
export function judgeMark(test: PickTest, mark: number | null): MarkVerdict {
  const begins = pickVelocity(test)
  if (mark === null) return begins > test.endVelocity / (1 + markTolerance) ? 'rightly none' : 'too late'
  if (begins > test.endVelocity * (1 + markTolerance)) return 'nothing picks'
  const ratio = velocityAt(test, mark) / begins
  if (ratio < 1 - markTolerance) return 'too early'
  return ratio > 1 + markTolerance ? 'too late' : 'right'
}

/** N/m: what a mark (mm) makes of the paper. */
export function resistanceOfMark(test: PickTest, mark: number): number {
  return velocityAt(test, mark) * oilViscosity[test.oil]
}
