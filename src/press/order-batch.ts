/** Results of a ranking in flat arrays, as they come from the workers and are kept: 40,320 orders take 2 MB. */
import type { OrderTerms } from './order-score.ts'
import { termNames } from './order-score.ts'
import type { RankedOrder } from './orders.ts'

export interface OrderBatch {
  /** the inks of each order, one order after another */
  orders: Uint8Array<ArrayBuffer>
  /** by order: its score, then its terms in the order of {@link termNames} */
  values: Float64Array<ArrayBuffer>
}

/** Numbers kept of each order. */
const width = 1 + termNames.length

export function batchOf(ranked: readonly RankedOrder[]): OrderBatch {
  return {
    orders: Uint8Array.from(ranked.flatMap(({ order }) => order)),
    values: Float64Array.from(ranked.flatMap(({ score, terms }) => [score, ...termNames.map((name) => terms[name])])),
  }
}

export function ordersIn({ values }: OrderBatch): number {
  return values.length / width
}

/** Order `index` (from 0) of a batch. */
export function rankedIn({ orders, values }: OrderBatch, index: number): RankedOrder {
  const inks = (orders.length * width) / values.length
  const [score, trap, contamination, picking, colour] = values.subarray(index * width, (index + 1) * width)
  return {
    order: Array.from(orders.subarray(index * inks, (index + 1) * inks)),
    score,
    terms: { trap, contamination, picking, colour } satisfies OrderTerms,
  }
}
