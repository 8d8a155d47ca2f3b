/**
 * How far apart two explanations of a sheet are. The distance is counted in standard deviations of the readings, over
 * all quantities of the evidence allowed, with the other explanation at the size of fault that suits it best, and with
 * one reading set aside as misleading, whichever helps it most. What is left cannot be blamed on noise.
 */
import type { Casebook, Curve } from './casebook.ts'
import { curveOf } from './casebook.ts'
import type { Cause } from './cause.ts'
import type { Evidence } from './evidence.ts'
import { deviationOf, evidenceKey } from './evidence.ts'
import { directEvidence, mayMislead } from './misleading.ts'

/** Standard deviations that rule a cause out: chosen; the better of two causes this far apart is wrong 1 time in 160. */
export const ruledOutAt = 5

/** What could be wrong: every set of `count` of the offered causes that can be so at the same time. */
export function explanations(offered: readonly Cause[], count: number): Cause[][] {
  if (count === 1) return offered.map((cause) => [cause])
  return offered.flatMap((one, index) =>
    offered
      .slice(index + 1)
      .filter((other) => !excludeEachOther(one, other))
      .map((other) => [one, other]),
  )
}

/** Too high and too low of one thing, or the same thing twice. */
function excludeEachOther(one: Cause, other: Cause): boolean {
  if (one.kind === 'order swapped' && other.kind === 'order swapped') return true
  const [first, second] = [directEvidence(one), directEvidence(other)]
  return first !== null && second !== null && evidenceKey(first) === evidenceKey(second)
}

/**
 * The curves whose sizes an explanation leaves open. Two faults are taken to add up, each on the quantities' own
 * scales, unless one of them is a swapped order.
 */
function curvesOf(book: Casebook, causes: readonly Cause[]): Curve[] {
  const swap = causes.find(({ kind }) => kind === 'order swapped')
  if (causes.length === 1 || !swap) return causes.map((cause) => curveOf(book, cause))
  return causes.filter((cause) => cause !== swap).map((cause) => curveOf(book, cause, swap))
}

/** Sizes tried over the whole range of one fault alone, and of each of two. */
const sizesTried = [25, 9] as const

/** Every combination of evenly spaced sizes, as how far up their ranges they are (0 to 1). */
function grid(sizes: number): number[][] {
  const count = sizesTried[sizes - 1]
  const steps = Array.from({ length: count }, (_, i) => i / (count - 1))
  return sizes === 1 ? steps.map((share) => [share]) : steps.flatMap((a) => steps.map((b) => [a, b]))
}

/** All readings that an explanation can give, over evenly spaced sizes of its faults. */
export function readingsUnder(book: Casebook, causes: readonly Cause[]): Float64Array[] {
  const curves = curvesOf(book, causes)
  return grid(curves.length).map((shares) => {
    const readings = new Float64Array(book.good.length)
    for (let index = 0; index < readings.length; index++) readings[index] = readingAt(book, curves, shares, index)
    return readings
  })
}

/** One quantity under an explanation. */
function readingAt(book: Casebook, curves: readonly Curve[], shares: readonly number[], index: number): number {
  let reading = (1 - curves.length) * book.good[index]
  for (let i = 0; i < curves.length; i++) {
    const { readings } = curves[i]
    const place = shares[i] * (readings.length - 1)
    const left = Math.max(0, Math.min(readings.length - 2, Math.floor(place)))
    const low = readings[left][index]
    reading += readings.length === 1 ? low : low + (place - left) * (readings[left + 1][index] - low)
  }
  return reading
}

/** How many standard deviations an explanation is from the readings `found`, by the evidence allowed. */
export function distance(
  book: Casebook,
  found: Float64Array,
  causes: readonly Cause[],
  evidence: readonly Evidence[],
): number {
  const curves = curvesOf(book, causes)
  const keys = evidence.map(evidenceKey)
  const misleads = evidence.map(mayMislead)
  const places = book.keys.flatMap((key, index) => (keys.includes(key) ? [index] : []))
  const pieceOf = places.map((index) => keys.indexOf(book.keys[index]))
  const deviations = places.map((index) => deviationOf(book.quantities[index]))
  const parts = new Float64Array(keys.length)
  /** all of the squared distance, without the one reading that may mislead and speaks most against the explanation */
  const squared = (shares: readonly number[]) => {
    parts.fill(0)
    for (let i = 0; i < places.length; i++) {
      const off = (found[places[i]] - readingAt(book, curves, shares, places[i])) / deviations[i]
      parts[pieceOf[i]] += off * off
    }
    let sum = 0
    let worst = 0
    for (let piece = 0; piece < parts.length; piece++) {
      sum += parts[piece]
      if (misleads[piece]) worst = Math.max(worst, parts[piece])
    }
    return sum - worst
  }
  let start: readonly number[] = []
  let least = Infinity
  for (const shares of grid(curves.length)) {
    const there = squared(shares)
    if (there < least) [start, least] = [shares, there]
  }
  return Math.sqrt(closeIn(start, least, squared))
}

/** Halvings of the step when closing in: the sizes come out to a thousandth of their range. */
const halvings = 6

/** The least value near `start`: a step up or down each size as long as that helps, then half the step. */
function closeIn(start: readonly number[], value: number, valueAt: (shares: readonly number[]) => number): number {
  let at = start
  let least = value
  let step = 0.5 / (sizesTried[start.length - 1] - 1)
  for (let halving = 0; halving < halvings; halving++, step /= 2) {
    for (let size = 0; size < at.length; size++) {
      for (const turn of [-step, step]) {
        const next = at.with(size, Math.min(1, Math.max(0, at[size] + turn)))
        const there = valueAt(next)
        if (there < least) [at, least] = [next, there]
      }
    }
  }
  return least
}
