/**
 * Picking: the chance that the paper's surface is weaker than the pull that reaches it. The pull is Weibull with
 * modulus m (the evenness) and scale F, the strength Weibull with modulus 10 and scale S, so the chance
 *
 *     P = integral over e from 0 to infinity of e^-e (1 - exp(-(F/S)^10 e^(10/m)))
 *
 * depends on F/S and m alone. It is integrated once per m over ln e, and looked up afterwards.
 */
import { paperModulus } from './paper.ts'

/** ln(F/S) at the ends of the table: below, the chance falls as (F/S)^10; above, every spot picks. */
const lowest = -3
const highest = 7
const step = 1 / 40
const points = Math.round((highest - lowest) / step) + 1

interface PickTable {
  /** ln P at each point */
  value: Float64Array
  /** d ln P / d ln(F/S) at each point */
  slope: Float64Array
}

const tables = new Map<number, PickTable>()

/**
 * The integral itself, by the trapezoid rule over u = ln e, which converges faster than any power of the step for
 * such an integrand. Returns P and dP/d ln(F/S). `lnRatio` is ln(F/S), any finite number.
 */
export function integratePick(lnRatio: number, evenness: number): { chance: number; slope: number } {
  const power = paperModulus / evenness
  const du = 1 / 8
  let chance = 0
  let slope = 0
  for (let u = -40; u <= 5; u += du) {
    const load = Math.exp(paperModulus * lnRatio + power * u)
    const density = Math.exp(u - Math.exp(u)) * du
    chance -= density * Math.expm1(-load)
    slope += density * paperModulus * load * Math.exp(-load)
  }
  return { chance, slope }
}

function tabulate(evenness: number): PickTable {
  const value = new Float64Array(points)
  const slope = new Float64Array(points)
  for (let i = 0; i < points; i++) {
    const at = integratePick(lowest + i * step, evenness)
    value[i] = Math.log(at.chance)
    slope[i] = at.slope / at.chance
  }
  return { value, slope }
}

/**
 * Some spot always holds. Were the chance 1, also by rounding, a blanket would lift and never give back, and have no film
 * to settle to.
 */
const highestChance = 1 - 1e-12

/** How many tables are kept: one per evenness in use; more are dropped, oldest first, so that memory stays bounded. */
const tablesKept = 32

function dropOldest(): void {
  for (const oldest of tables.keys()) {
    tables.delete(oldest)
    return
  }
}

function tableFor(evenness: number): PickTable {
  let table = tables.get(evenness)
  if (!table) {
    table = tabulate(evenness)
    if (tables.size >= tablesKept) dropOldest()
    tables.set(evenness, table)
  }
  return table
}

/**
 * A function from ln(F/S) to the chance (0 to 1) that a spot of the surface is torn, for one evenness. Cubic Hermite
 * interpolation of ln P keeps a relative error below 1e-6 (tested), also where the chance is tiny.
 */
export function pickChance(evenness: number): (lnRatio: number) => number {
  const { value, slope } = tableFor(evenness)
  return (lnRatio) => {
    // Also catches minus infinity, the pull of no ink at all.
    if (lnRatio <= lowest) return Math.exp(value[0] + paperModulus * (lnRatio - lowest))
    if (lnRatio >= highest) return highestChance
    const place = (lnRatio - lowest) / step
    const i = Math.min(points - 2, Math.floor(place))
    const t = place - i
    const t2 = t * t
    const t3 = t2 * t
    const lnChance =
      (2 * t3 - 3 * t2 + 1) * value[i] +
      (t3 - 2 * t2 + t) * step * slope[i] +
      (3 * t2 - 2 * t3) * value[i + 1] +
      (t3 - t2) * step * slope[i + 1]
    return Math.min(highestChance, Math.exp(lnChance))
  }
}
