import { describe, expect, it } from 'vitest'
import { allPairs, usualWeights } from '../../src/press/order-score.ts'
import { searchOrders } from '../../src/press/order-search.ts'
import { rankOrders, unitsToSolve } from '../../src/press/orders.ts'
import type { SetUp } from '../../src/press/setup.ts'
import { checkSetUp } from './legal-setups.ts'

const inksOf = (tacks: readonly number[]): SetUp => ({
  ...checkSetUp([]),
  inks: tacks.map((tack, place) => ({ name: `ink ${place + 1}`, tack, film: 4, coverage: 0.3 })),
})
const aimFor = (setUp: SetUp) => ({ overprints: allPairs(setUp.inks.length), weights: usualWeights })

describe('the bounded search', () => {
  const six = inksOf([12, 9, 16, 14, 10, 8])

  it('is exact, and says so, where it drops nothing', () => {
    const three = inksOf([12, 9, 16])
    const { found, exact, mostPossible } = searchOrders(three, aimFor(three))
    expect(exact).toBe(true)
    expect(found).toEqual(rankOrders(three, aimFor(three)).ranked)
    expect(mostPossible).toBe(found[0].score)
  })

  it('says that it is bounded, and bounds the best order truly', () => {
    const best = rankOrders(six, aimFor(six)).ranked[0].score
    for (const breadth of [1, 3, 12]) {
      const { found, exact, mostPossible } = searchOrders(six, aimFor(six), breadth)
      expect(exact).toBe(false)
      expect(found[0].score).toBeLessThanOrEqual(best + 1e-9)
      expect(mostPossible).toBeGreaterThanOrEqual(best - 1e-9)
    }
  })

  it('settles a small part of the units for eight inks', () => {
    const eight = inksOf([16, 14, 12, 10, 9, 8, 13, 11])
    const { found, solved } = searchOrders(eight, aimFor(eight))
    expect(solved).toBeLessThan(unitsToSolve(8) / 20)
    expect(new Set(found[0].order).size).toBe(8)
  })
})
