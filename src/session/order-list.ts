/**
 * Orders as they are found, with what was read off each: flat arrays, so that all 40,320 of eight inks are weighed
 * anew in a moment when a weight is changed, without printing anything again.
 */
import type { OrderBatch } from '../press/order-batch.ts'
import { ordersIn, rankedIn } from '../press/order-batch.ts'
import type { OrderTerms, OrderWeights } from '../press/order-score.ts'
import { scoreOf, termNames } from '../press/order-score.ts'
import type { RankedOrder } from '../press/orders.ts'
import { factorial } from '../press/orders.ts'

/** Orders by their numbers in the list, best first, with their scores. */
export interface Weighed {
  /** numbers of orders in the list */
  readonly best: Uint32Array
  /** by number, not by rank */
  readonly scores: Float64Array
}

export class OrderList {
  readonly inks: number
  #count = 0
  readonly #keys: Float64Array
  readonly #orders: Uint8Array
  readonly #terms: Float64Array
  readonly #known = new Set<number>()

  constructor(inks: number) {
    const most = factorial(inks)
    this.inks = inks
    this.#keys = new Float64Array(most)
    this.#orders = new Uint8Array(most * inks)
    this.#terms = new Float64Array(most * termNames.length)
  }

  get count(): number {
    return this.#count
  }

  /** Takes an order up, unless it is there already. */
  add({ order, terms }: Pick<RankedOrder, 'order' | 'terms'>): void {
    const key = order.reduce((sum, ink) => sum * this.inks + ink, 0)
    if (this.#known.has(key)) return
    this.#known.add(key)
    this.#keys[this.#count] = key
    this.#orders.set(order, this.#count * this.inks)
    termNames.forEach((name, at) => (this.#terms[this.#count * termNames.length + at] = terms[name]))
    this.#count++
  }

  addBatch(batch: OrderBatch): void {
    for (let index = 0; index < ordersIn(batch); index++) this.add(rankedIn(batch, index))
  }

  /** Places of the inks, first unit to last. */
  order(number: number): number[] {
    return Array.from(this.#orders.subarray(number * this.inks, (number + 1) * this.inks))
  }

  terms(number: number): OrderTerms {
    const terms = this.#terms
    const at = number * termNames.length
    return { trap: terms[at], contamination: terms[at + 1], picking: terms[at + 2], colour: terms[at + 3] }
  }

  inkAt(number: number, unit: number): number {
    return this.#orders[number * this.inks + unit]
  }

  /** Best first by these weights; equal scores stand in the order of their inks' places. */
  weigh(weights: OrderWeights): Weighed {
    const keys = this.#keys
    const best = new Uint32Array(this.#count).map((_, number) => number)
    const scores = new Float64Array(this.#count).map((_, number) => scoreOf(this.terms(number), weights))
    best.sort((a, b) => scores[b] - scores[a] || keys[a] - keys[b])
    return { best, scores }
  }

  /** Every order with its score, for {@link positionScores}. */
  *scored({ scores }: Weighed): Generator<Pick<RankedOrder, 'order' | 'score'>, void, undefined> {
    for (let number = 0; number < scores.length; number++) yield { order: this.order(number), score: scores[number] }
  }
}
