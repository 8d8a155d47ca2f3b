/** Every order of the loaded inks, printed, settled and scored. */
import type { OrderPath } from './order-path.ts'
import { orderPath, putOn, takeOff, takeTo } from './order-path.ts'
import type { OrderAim, OrderTerms } from './order-score.ts'
import { scoreOf, termsOf } from './order-score.ts'
import type { SetUp } from './setup.ts'

export interface RankedOrder {
  /** the ink on each unit, first to last, by its place in the set-up */
  order: number[]
  score: number
  terms: OrderTerms
}

/** n * (n - 1) * ... * 1 */
export function factorial(n: number): number {
  return n < 2 ? 1 : n * factorial(n - 1)
}

/** Units to settle for all orders of n inks, beginnings shared. */
export function unitsToSolve(inks: number): number {
  return Array.from({ length: inks }, (_, left) => factorial(inks) / factorial(left)).reduce(
    (sum, each) => sum + each,
    0,
  )
}

/** All orders, best first; equal scores stand in the order of their inks' places, never of their names. */
export function rankOrders(setUp: SetUp, aim: OrderAim): { ranked: RankedOrder[]; solved: number } {
  const path = orderPath(setUp)
  const ranked: RankedOrder[] = []
  for (const each of ordersBelow(path, [], aim)) ranked.push(each)
  ranked.sort(bestFirst)
  return { ranked, solved: path.solved }
}

export function bestFirst(a: RankedOrder, b: RankedOrder): number {
  return a.score === b.score ? compareOrders(a.order, b.order) : b.score - a.score
}

/** By the inks' places, from the first unit on: so one after another, orders share most of their beginnings. */
export function compareOrders(a: readonly number[], b: readonly number[]): number {
  const differs = a.findIndex((ink, unit) => ink !== b[unit])
  return differs < 0 ? 0 : a[differs] - b[differs]
}

/** Every order with this beginning, one after another. */
export function* ordersBelow(
  path: OrderPath,
  beginning: readonly number[],
  aim: OrderAim,
): Generator<RankedOrder, void, undefined> {
  takeTo(path, beginning)
  yield* descend(path, aim)
}

function* descend(path: OrderPath, aim: OrderAim): Generator<RankedOrder, void, undefined> {
  if (path.depth === path.inks) {
    const terms = termsOf(path, aim)
    yield { order: Array.from(path.order), score: scoreOf(terms, aim.weights), terms }
    return
  }
  for (const ink of inksLeft(path)) {
    putOn(path, ink)
    yield* descend(path, aim)
    takeOff(path)
  }
}

/** The inks not yet on the press. */
export function inksLeft({ order, depth, inks }: OrderPath): number[] {
  const on = Array.from(order.subarray(0, depth))
  return Array.from({ length: inks }, (_, ink) => ink).filter((ink) => !on.includes(ink))
}

/** All beginnings of `length` inks: the shares of work that are handed out. */
export function beginnings(inks: number, length: number): number[][] {
  if (length === 0) return [[]]
  return beginnings(inks, length - 1).flatMap((beginning) =>
    Array.from({ length: inks }, (_, ink) => ink)
      .filter((ink) => !beginning.includes(ink))
      .map((ink) => [...beginning, ink]),
  )
}
