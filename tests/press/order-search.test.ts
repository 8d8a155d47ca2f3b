import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { allPairs, usualWeights } from '../../src/press/order-score.ts'
import { searchOrders } from '../../src/press/order-search.ts'
import { rankOrders, unitsToSolve } from '../../src/press/orders.ts'
import type { SetUp } from '../../src/press/setup.ts'
import { anySetUp, checkSetUp } from './legal-setups.ts'

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

  it('ends, however narrow, where no ink can be moved for the better, and no worse than falling tacks', () => {
    for (const setUp of fc.sample(anySetUp(4, 4), { numRuns: 30, seed: 1 })) {
      const { found } = searchOrders(setUp, aimFor(setUp), 1)
      const scores = new Map(
        rankOrders(setUp, aimFor(setUp)).ranked.map(({ order, score }) => [order.join(), score] as const),
      )
      const best = found[0].order
      const falling = setUp.inks.map((_, ink) => ink).sort((a, b) => setUp.inks[b].tack - setUp.inks[a].tack)
      const moved = best.flatMap((ink, from) => best.map((_, to) => best.toSpliced(from, 1).toSpliced(to, 0, ink)))
      for (const order of [falling, ...moved]) {
        expect(scores.get(order.join())).toBeLessThanOrEqual(found[0].score + 1e-9)
      }
      expect(found.map(({ score }) => score)).toEqual(found.map(({ score }) => score).sort((a, b) => b - a))
    }
  })

  it('settles a small part of the units for eight inks', () => {
    const eight = inksOf([16, 14, 12, 10, 9, 8, 13, 11])
    const { found, solved } = searchOrders(eight, aimFor(eight))
    expect(solved).toBeLessThan(unitsToSolve(8) / 20)
    expect(new Set(found[0].order).size).toBe(8)
  })
})
