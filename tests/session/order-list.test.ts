import { describe, expect, it } from 'vitest'
import { batchOf } from '../../src/press/order-batch.ts'
import type { OrderWeights } from '../../src/press/order-score.ts'
import { allPairs, usualWeights } from '../../src/press/order-score.ts'
import { positionScores } from '../../src/press/order-positions.ts'
import { rankOrders } from '../../src/press/orders.ts'
import { OrderList } from '../../src/session/order-list.ts'
import { checkSetUp } from '../press/legal-setups.ts'

const setUp = checkSetUp([12, 10, 16, 14])
const rankedBy = (weights: OrderWeights) => rankOrders(setUp, { overprints: allPairs(4), weights }).ranked

function listOf(ranked = rankedBy(usualWeights)): OrderList {
  const list = new OrderList(4)
  list.addBatch(batchOf(ranked))
  return list
}

describe('a list of orders', () => {
  it('weighed by any weights stands as a ranking made with these weights', () => {
    const list = listOf(rankedBy(usualWeights).toReversed())
    for (const weights of [usualWeights, { trap: 0, contamination: 500, picking: 10, colour: 0 }]) {
      const { best, scores } = list.weigh(weights)
      const ranked = rankedBy(weights)
      expect(Array.from(best, (number) => list.order(number))).toEqual(ranked.map(({ order }) => order))
      expect(Array.from(best, (number) => scores[number])).toEqual(ranked.map(({ score }) => score))
    }
  })

  it('keeps the inks where they stood when nothing counts', () => {
    const { best } = listOf().weigh({ trap: 0, contamination: 0, picking: 0, colour: 0 })
    const orders = Array.from(best, (number) => listOf().order(number).join(''))
    expect(orders).toEqual(orders.toSorted())
  })

  it('takes up no order twice', () => {
    const list = listOf()
    list.addBatch(batchOf(rankedBy(usualWeights)))
    list.add(rankedBy(usualWeights)[3])
    expect(list.count).toBe(24)
  })

  it('tells which ink stands on which unit', () => {
    const list = listOf()
    for (let number = 0; number < list.count; number++)
      expect([0, 1, 2, 3].map((unit) => list.inkAt(number, unit))).toEqual(list.order(number))
  })

  it('gives positions the same means as the ranking itself', () => {
    const list = listOf()
    const weighed = list.weigh(usualWeights)
    const [own, whole] = [positionScores(4, list.scored(weighed)), positionScores(4, rankedBy(usualWeights))]
    own?.mean.flat().forEach((mean, at) => expect(mean).toBeCloseTo(whole?.mean.flat()[at] ?? NaN, 10))
    expect([own?.worst.ink, own?.worst.unit]).toEqual([whole?.worst.ink, whole?.worst.unit])
  })
})
