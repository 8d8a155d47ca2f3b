/**
 * What a job would show under each single cause, worked out once for every job and kept: the readings of the good
 * sheet, and for each cause a curve of readings over the size of the fault.
 */
import { colourDifference } from '../colour/colour-difference.ts'
import type { Lab } from '../colour/lab.ts'
import type { SetUp } from '../press/setup.ts'
import type { Cause } from './cause.ts'
import { allCauses, causeKey } from './cause.ts'
import type { Quantity } from './evidence.ts'
import { evidenceKey, offScale, quantitiesOf } from './evidence.ts'
import { expectedReadings } from './expected.ts'
import { faultSizes, withFaults } from './fault.ts'
import type { JobId } from './jobs.ts'
import { jobs } from './jobs.ts'

/** Readings over the sizes of one cause, from least to most, evenly spaced. */
export interface Curve {
  readonly cause: Cause
  readonly sizes: readonly number[]
  /** by size, then by quantity, on the quantity's own scale */
  readonly readings: readonly Float64Array[]
}

export interface Casebook {
  readonly ticket: SetUp
  readonly quantities: readonly Quantity[]
  /** by quantity: the key of the evidence it belongs to */
  readonly keys: readonly string[]
  /** every cause the job can have */
  readonly causes: readonly Cause[]
  readonly good: Float64Array
  /** by causeKey, as far as they have been asked for */
  readonly curves: Map<string, Curve>
}

/** Sizes computed; those between are interpolated in a straight line (tests hold the error below the noise). */
const sizesComputed = 7
const sizesComputedSwapped = 4

/** A colour difference (dE00) that is noticed: chosen, as twice what an eye just sees side by side. */
export const noticedDifference = 2
/** Share of spots torn, beyond what the good sheet has, that is noticed: chosen. */
const noticedTorn = 0.005

const casebooks = new Map<JobId, Casebook>()

export function casebookOf(job: JobId): Casebook {
  const known = casebooks.get(job)
  if (known) return known
  const made = openCasebook(jobs[job])
  casebooks.set(job, made)
  return made
}

function openCasebook(ticket: SetUp): Casebook {
  const quantities = quantitiesOf(ticket)
  const causes = allCauses(ticket.inks.length).filter(
    ({ kind }) => !(ticket.press.waterless && kind === 'water too high'),
  )
  const keys = quantities.map(({ evidence }) => evidenceKey(evidence))
  return { ticket, quantities, keys, causes, good: expectedReadings(ticket, ticket, quantities), curves: new Map() }
}

/**
 * The curve of a cause that the job can have, computed when it is first asked for; with `swap`, on a press whose inks
 * are swapped too. Other faults are taken to add up, but a swapped order changes what every other fault does.
 */
export function curveOf({ ticket, quantities, curves }: Casebook, cause: Cause, swap?: Cause): Curve {
  const key = swap ? `${causeKey(cause)}, ${causeKey(swap)}` : causeKey(cause)
  const known = curves.get(key)
  if (known) return known
  const { least, most } = faultSizes[cause.kind]
  const count = least === most ? 1 : swap ? sizesComputedSwapped : sizesComputed
  const sizes = Array.from({ length: count }, (_, i) =>
    count === 1 ? least : least + ((most - least) * i) / (count - 1),
  )
  const readings = sizes.map((size) => {
    const faults = [{ ...cause, size }, ...(swap ? [{ ...swap, size: 1 }] : [])]
    return expectedReadings(ticket, withFaults(ticket, faults), quantities)
  })
  const curve = { cause, sizes, readings }
  curves.set(key, curve)
  return curve
}

/** Whether this cause at its largest shows on the job's sheet: only such causes are hidden and offered. */
export function canShow(book: Casebook, cause: Cause): boolean {
  return isNoticed(book, curveOf(book, cause).readings.at(-1) ?? book.good)
}

/** Readings at one size of a cause, a size between computed ones in a straight line. */
export function readingsAt(curve: Curve, size: number): Float64Array {
  const { least, most } = faultSizes[curve.cause.kind]
  return readingsAtShare(curve, least === most ? 0 : (size - least) / (most - least))
}

/** The same by how far up the range of sizes (0 to 1) the size is. */
export function readingsAtShare({ readings }: Curve, share: number): Float64Array {
  const last = readings.length - 1
  if (last === 0) return readings[0]
  const place = Math.min(last, Math.max(0, share * last))
  const left = Math.min(last - 1, Math.floor(place))
  const [low, high] = [readings[left], readings[left + 1]]
  return low.map((value, index) => value + (place - left) * (high[index] - value))
}

/** How far a sheet is from the good one. */
export interface Difference {
  /** dE00 of the patch that is farthest off, and which it is */
  readonly colour: number
  readonly patch: number
  /** share of spots torn */
  readonly torn: number
}

export function differenceFromGood({ quantities, good }: Casebook, readings: Float64Array): Difference {
  const worst = { colour: 0, patch: 0, torn: 0 }
  quantities.forEach(({ name, patch = 0, scale }, index) => {
    if (name === 'torn') worst.torn = Math.max(worst.torn, offScale(scale, readings[index]))
    // The three numbers of a colour stand side by side.
    if (name !== 'lightness') return
    const difference = colourDifference(labAt(good, index), labAt(readings, index))
    if (difference > worst.colour) Object.assign(worst, { colour: difference, patch })
  })
  return worst
}

function labAt(readings: Float64Array, index: number): Lab {
  return [readings[index], readings[index + 1], readings[index + 2]]
}

/** Whether a crew would stop the press for this sheet. */
export function isNoticed(book: Casebook, readings: Float64Array): boolean {
  const { colour, torn } = differenceFromGood(book, readings)
  const already = differenceFromGood(book, book.good).torn
  return colour >= noticedDifference || torn - already >= noticedTorn
}
