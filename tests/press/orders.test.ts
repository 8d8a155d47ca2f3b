import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { papers } from '../../src/physics/paper.ts'
import { readSheet, pairs } from '../../src/press/readings.ts'
import { runPress } from '../../src/press/run.ts'
import { allPairs, scoreOf, usualWeights } from '../../src/press/order-score.ts'
import { batchOf, ordersIn, rankedIn } from '../../src/press/order-batch.ts'
import { positionScores } from '../../src/press/order-positions.ts'
import type { RankedOrder } from '../../src/press/orders.ts'
import { beginnings, bestFirst, factorial, rankOrders, unitsToSolve } from '../../src/press/orders.ts'
import type { SetUp } from '../../src/press/setup.ts'
import { anySetUp, checkSetUp } from './legal-setups.ts'

const aimFor = (setUp: SetUp) => ({ overprints: allPairs(setUp.inks.length), weights: usualWeights })

/** The same order printed by itself from the very beginning, no unit shared with any other. */
function bruteForce(setUp: SetUp, order: readonly number[]) {
  const readings = readSheet(runPress({ ...setUp, inks: order.map((ink) => setUp.inks[ink]) }))
  const traps = readings.traps.map(({ massTrap }) => Math.min(1, massTrap))
  return {
    trap: traps.reduce((sum, trap) => sum + trap, 0) / pairs(order.length).length,
    contamination: Math.max(...readings.contamination),
    picking: readings.worstTorn,
  }
}

function farthestFromBruteForce(setUp: SetUp, ranked: readonly RankedOrder[]): number {
  return Math.max(
    ...ranked.flatMap(({ order, terms }) => {
      const alone = bruteForce(setUp, order)
      return (['trap', 'contamination', 'picking'] as const).map((name) => Math.abs(terms[name] - alone[name]))
    }),
  )
}

const five: SetUp = {
  ...checkSetUp([16, 14, 12, 10]),
  inks: [
    ...checkSetUp([16, 14, 12, 10]).inks,
    { name: 'orange', tack: 13, film: 3, coverage: 0.2, temperature: 30, dryBefore: false },
  ],
}

describe('ranking by shared beginnings', () => {
  it.each([
    ['three inks', { ...checkSetUp([10, 16, 12]), paper: papers['weak uncoated'] }],
    ['four inks', checkSetUp([12, 10, 16, 14])],
    ['five inks', five],
  ])('finds what every order printed by itself comes to, to 1e-7: %s', { timeout: 60_000 }, (_, setUp) => {
    const { ranked } = rankOrders(setUp, aimFor(setUp))
    expect(new Set(ranked.map(({ order }) => order.join())).size).toBe(factorial(setUp.inks.length))
    expect(farthestFromBruteForce(setUp, ranked)).toBeLessThan(1e-7)
  })

  it('does so for set-ups from the whole legal range', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(anySetUp(2, 4), (setUp) => {
        // A soiled store of the first unit holds the second's ink, and the settled state forgets it: nothing else depends on later units.
        const { ranked } = rankOrders(setUp, aimFor(setUp))
        expect(farthestFromBruteForce(setUp, ranked)).toBeLessThan(1e-7)
      }),
      { numRuns: 150, seed: 5 },
    )
  })

  it('settles n!/(n-1)! + ... + n! units instead of n times n!', () => {
    // By hand: 4 + 12 + 24 + 24 of 96; 8 + 56 + 336 + 1680 + 6720 + 20160 + 40320 + 40320 of 322560.
    expect(rankOrders(checkSetUp([16, 14, 12, 10]), aimFor(checkSetUp([16, 14, 12, 10]))).solved).toBe(64)
    expect(unitsToSolve(4)).toBe(64)
    expect(unitsToSolve(8)).toBe(109_600)
  })

  it('hands out every beginning once', () => {
    expect(beginnings(4, 2)).toHaveLength(12)
    expect(new Set(beginnings(8, 2).map(String)).size).toBe(56)
    expect(beginnings(3, 0)).toEqual([[]])
  })

  it('takes no notice of what the inks are called', () => {
    const setUp = checkSetUp([12, 10, 16, 14])
    const renamed = { ...setUp, inks: setUp.inks.map((ink, place) => ({ ...ink, name: 'zyxw'[place] })) }
    expect(rankOrders(renamed, aimFor(renamed)).ranked).toEqual(rankOrders(setUp, aimFor(setUp)).ranked)
  })

  it('ranks the same orders the same way, whichever order the inks are loaded in', () => {
    const setUp = checkSetUp([16, 14, 12, 10])
    const loaded = { ...setUp, inks: [2, 0, 3, 1].map((place) => setUp.inks[place]) }
    const named = (of: SetUp) =>
      rankOrders(of, aimFor(of)).ranked.map(({ order, score }) => ({
        order: order.map((ink) => of.inks[ink].name),
        score: Number(score.toFixed(9)),
      }))
    expect(named(loaded)).toEqual(named(setUp))
  })

  it('keeps inks that are alike in the order of their places', () => {
    const alike = checkSetUp([13, 13, 13])
    const { ranked } = rankOrders(alike, aimFor(alike))
    expect(ranked[0].score - ranked[5].score).toBe(0)
    expect(ranked.map(({ order }) => order.join())).toEqual(['0,1,2', '0,2,1', '1,0,2', '1,2,0', '2,0,1', '2,1,0'])
  })
})

describe('orders ranked', () => {
  const terms = { trap: 0.9, contamination: 0.02, picking: 0.001, colour: 3 }
  const ranked = (score: number, ...order: number[]): RankedOrder => ({
    order,
    score,
    terms: { ...terms, trap: score },
  })

  it('stand best first, equal ones by the places of their inks', () => {
    const sorted = [ranked(70, 0, 1, 2), ranked(80, 2, 0, 1), ranked(80, 1, 2, 0), ranked(80, 1, 0, 2)].sort(bestFirst)
    expect(sorted.map(({ order }) => order.join(''))).toEqual(['102', '120', '201', '012'])
    expect(bestFirst(sorted[0], { ...sorted[0] })).toBe(0)
  })

  it('come out of a batch as they went in', () => {
    const all = [ranked(80, 2, 0, 1), ranked(70, 0, 1, 2), ranked(NaN, 1, 2, 0)]
    const batch = batchOf(all)
    expect(ordersIn(batch)).toBe(3)
    expect(all.map((_, index) => rankedIn(batch, index))).toEqual(all)
  })
})

describe('the score', () => {
  it('is 100 without any fault, and loses 10 points for each fault that begins to be noticed', () => {
    const good = { trap: 1, contamination: 0, picking: 0, colour: NaN }
    expect(scoreOf(good, usualWeights)).toBe(100)
    for (const fault of [{ trap: 0.9 }, { contamination: 0.1 }, { picking: 0.005 }, { colour: 5 }]) {
      expect(scoreOf({ ...good, ...fault }, usualWeights)).toBeCloseTo(90, 12)
    }
  })

  it.each([
    [0, 1, 2, 3],
    [3, 2, 1, 0],
    [1, 3, 0, 2],
  ])('puts falling tack, the common practice, within 1 %% of the best, loaded %i %i %i %i', (...places) => {
    const falling = checkSetUp([16, 14, 12, 10])
    const setUp = { ...falling, inks: places.map((place) => falling.inks[place]) }
    const { ranked } = rankOrders(setUp, aimFor(setUp))
    const practice = ranked.find(({ order }) =>
      order.every((ink, unit) => setUp.inks[ink].name === falling.inks[unit].name),
    )
    expect(practice?.score).toBeGreaterThan(0.99 * ranked[0].score)
  })
})

describe('the score by position', () => {
  it('names the ink and the unit whose orders lose most', () => {
    // By hand: ink 0 on unit 0 scores 10 and 20, on unit 1 2 and on unit 2 ... a ranking of four made-up orders.
    const ranked = [
      { order: [0, 1, 2], score: 10 },
      { order: [0, 2, 1], score: 20 },
      { order: [1, 0, 2], score: 2 },
      { order: [2, 1, 0], score: 8 },
    ]
    const scores = positionScores(3, ranked)
    expect(scores?.mean[0]).toEqual([15, 2, 8])
    expect(scores?.mean[1]).toEqual([2, 9, 20])
    expect(scores?.worst).toEqual({ ink: 0, unit: 1, loss: 8 })
    expect(positionScores(3, [])).toBeUndefined()
  })
})
