import { describe, expect, it } from 'vitest'
import { papers } from '../../src/physics/paper.ts'
import { usualPress } from '../../src/press/presets.ts'
import { readSheet } from '../../src/press/readings.ts'
import { runPress } from '../../src/press/run.ts'
import type { Ladder } from '../../src/press/tack-ladder.ts'
import { planTacks, usualWish } from '../../src/press/tack-ladder.ts'
import type { SetUp } from '../../src/press/setup.ts'
import { checkSetUp } from './legal-setups.ts'

const three = checkSetUp([10, 10, 10])
const coarse = { ...usualWish, lowest: 6, highest: 18, step: 3, mostFall: 6 }

/** What a ladder comes to on the press itself. */
function printed(setUp: SetUp, { tacks }: Ladder) {
  const inks = setUp.inks.map((ink, unit) => ({ ...ink, tack: tacks[unit] }))
  const { traps, worstTorn } = readSheet(runPress({ ...setUp, inks }))
  return { trap: Math.min(...traps.map(({ massTrap }) => massTrap)), picking: worstTorn }
}

describe('planning tacks', () => {
  it('tries every ladder that never rises and never falls too far', () => {
    // By hand, falls of 0, 3 or 6 among 18 15 12 9 6: a second tack follows these in 3 3 3 2 1 ways, so two in 9 8 6 3 1.
    const { tried, every } = planTacks(three, coarse)
    expect(every).toBe(true)
    expect(tried).toBe(9 + 8 + 6 + 3 + 1)
  })

  it('finds the ladder with most trap to spare, and what it says of it is what the press prints', () => {
    const { best, fitting, tried } = planTacks(three, coarse)
    expect(fitting).toBeGreaterThan(0)
    expect(fitting).toBeLessThanOrEqual(tried)
    if (!best) throw new Error('A ladder was to be found.')
    const { trap, picking } = printed(three, best)
    expect(best.trap).toBeCloseTo(trap, 7)
    expect(best.picking).toBeCloseTo(picking, 7)
    expect(best.picking).toBeLessThanOrEqual(coarse.mostPicking)
    for (let unit = 1; unit < 3; unit++) {
      expect(best.tacks[unit]).toBeLessThanOrEqual(best.tacks[unit - 1])
      expect(best.tacks[unit - 1] - best.tacks[unit]).toBeLessThanOrEqual(coarse.mostFall)
    }
  })

  it('says what stops it: trap, picking, or each of them the other', () => {
    expect(planTacks(three, { ...coarse, leastTrap: 0.99 })).toMatchObject({ best: null, stoppedBy: 'trap' })
    const tearing = { ...three, paper: { ...papers.coated, surfaceStrength: 5 } }
    expect(planTacks(tearing, { ...coarse, leastTrap: 0.1 })).toMatchObject({ best: null, stoppedBy: 'picking' })
    const web = { ...checkSetUp([10, 10, 10, 10]), paper: papers['weak uncoated'], press: usualPress('web') }
    const plan = planTacks(web)
    expect(plan).toMatchObject({ best: null, fitting: 0, stoppedBy: 'both' })
    expect(plan.mostTrap?.picking).toBeLessThanOrEqual(usualWish.mostPicking)
    expect(plan.mostTrap?.trap).toBeLessThan(usualWish.leastTrap)
    expect(plan.leastPicking?.trap).toBeGreaterThanOrEqual(usualWish.leastTrap)
    expect(plan.leastPicking?.picking).toBeGreaterThan(usualWish.mostPicking)
  })

  it('tries ladders of equal steps alone where there are too many, and says so', () => {
    const eight = {
      ...three,
      inks: Array.from({ length: 8 }, (_, unit) => ({ ...three.inks[0], name: `ink ${unit}` })),
    }
    const { best, every, tried } = planTacks(eight)
    expect(every).toBe(false)
    // By hand: 21 tacks to begin with at no fall, 14 at a fall of 1 and 7 at 2; at 3 the eighth would lie below 4.
    expect(tried).toBe(21 + 14 + 7)
    const falls = best?.tacks.slice(1).map((tack, unit) => best.tacks[unit] - tack)
    expect(new Set(falls).size).toBe(1)
  })
})
