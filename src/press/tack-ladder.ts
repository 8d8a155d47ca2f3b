/**
 * Planning tacks: which tack for each ink, in the order in which they print, keeps picking below one limit and the mass
 * trap of every two inks above another. Ladders that rise anywhere are not tried, as the trade never runs them, nor those
 * that fall by more than a stated step.
 */
import type { OrderPath } from './order-path.ts'
import { orderPath, putOn, takeOff, worstTorn } from './order-path.ts'
import { filmOf } from './order-score.ts'
import { pairs } from './readings.ts'
import type { SetUp } from './setup.ts'

export interface LadderWish {
  /** share of the worst patch's area that may be torn */
  mostPicking: number
  /** mass trap that every two inks must reach */
  leastTrap: number
  /** tack units: what the ink maker supplies */
  lowest: number
  highest: number
  step: number
  /** tack units: how far the tack may fall from one unit to the next */
  mostFall: number
}

/**
 * 4 to 24 by 1: what ink makers supply (common practice); falls of at most 4 (2 to 4 points between units: handbook).
 * Limits chosen: half a percent torn is plainly seen, and a trap 20 % off too.
 */
export const usualWish: LadderWish = {
  mostPicking: 0.005,
  leastTrap: 0.8,
  lowest: 4,
  highest: 24,
  step: 1,
  mostFall: 4,
}

export interface Ladder {
  /** by unit */
  tacks: number[]
  /** the least mass trap of any two inks, and which: the earlier unit first */
  trap: number
  pair: [number, number]
  /** share of the worst patch's area torn */
  picking: number
}

export interface LadderPlan {
  /** the ladder that does it with most trap to spare; null where none does */
  best: Ladder | null
  /** how many do it, of how many tried */
  fitting: number
  tried: number
  /** whether every falling ladder was tried, or only those of equal steps, as there are too many */
  every: boolean
  /** where none does, what stops it: one of the limits alone, or each of them the other */
  stoppedBy: null | 'picking' | 'trap' | 'both'
  /** where none does: the ladder with most trap of those that do not pick too much, and the one that picks least of those that trap enough */
  mostTrap: Ladder | null
  leastPicking: Ladder | null
}

/** Ladders tried at most: above, only those of equal steps are. Chosen so that four inks are searched in full in a second. */
const mostLadders = 12_000

/** Plans the tacks of the inks of `setUp` in their present order; their own tacks play no part. */
export function planTacks(setUp: SetUp, wish: LadderWish = usualWish): LadderPlan {
  const levels = levelsOf(wish)
  const inks = setUp.inks.length
  // A hair more than the fall, so that steps of a tenth count as what they are.
  const reach = Math.floor(wish.mostFall / wish.step + 1e-9)
  const every = countFalling(levels.length, inks, reach) <= mostLadders
  const path = orderPath(setUp)
  const plan: LadderPlan = {
    best: null,
    fitting: 0,
    tried: 0,
    every,
    stoppedBy: null,
    mostTrap: null,
    leastPicking: null,
  }
  for (const ladder of every
    ? fallingLadders(path, levels, 0, levels.length - 1, reach)
    : equalLadders(path, levels, reach))
    weigh(plan, ladder, wish)
  if (plan.fitting === 0) {
    plan.stoppedBy = plan.mostTrap && plan.leastPicking ? 'both' : plan.mostTrap ? 'trap' : 'picking'
  }
  return plan
}

function weigh(plan: LadderPlan, ladder: Ladder, { mostPicking, leastTrap }: LadderWish): void {
  plan.tried++
  const holds = ladder.picking <= mostPicking
  const traps = ladder.trap >= leastTrap
  if (holds && traps) plan.fitting++
  if (holds && traps && (!plan.best || ladder.trap > plan.best.trap)) plan.best = ladder
  if (holds && (!plan.mostTrap || ladder.trap > plan.mostTrap.trap)) plan.mostTrap = ladder
  if (traps && (!plan.leastPicking || ladder.picking < plan.leastPicking.picking)) plan.leastPicking = ladder
}

/** The tacks supplied, highest first. */
function levelsOf({ lowest, highest, step }: LadderWish): number[] {
  const count = Math.floor((highest - lowest) / step + 1e-9) + 1
  return Array.from({ length: count }, (_, index) => lowest + (count - 1 - index) * step)
}

/** How many ladders never rise, and never fall by more than `reach` levels. */
function countFalling(levels: number, inks: number, reach: number): number {
  let endingAt = new Array<number>(levels).fill(1)
  for (let ink = 1; ink < inks; ink++) {
    endingAt = endingAt.map((_, level) => sum(endingAt.slice(Math.max(0, level - reach), level + 1)))
  }
  return sum(endingAt)
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, each) => total + each, 0)
}

/** Every ladder that never rises, its next tack one of `levels` from `from` to `to`. */
function* fallingLadders(
  path: OrderPath,
  levels: readonly number[],
  from: number,
  to: number,
  reach: number,
): Generator<Ladder, void, undefined> {
  if (path.depth === path.inks) {
    yield ladderOf(path)
    return
  }
  for (let level = from; level <= Math.min(to, levels.length - 1); level++) {
    putOn(path, path.depth, { ...path.loaded[path.depth], tack: levels[level] })
    yield* fallingLadders(path, levels, level, level + reach, reach)
    takeOff(path)
  }
}

/** Every ladder whose steps are all alike, from none to the largest that fits. */
function* equalLadders(path: OrderPath, levels: readonly number[], reach: number): Generator<Ladder, void, undefined> {
  for (let first = 0; first < levels.length; first++) {
    for (let down = 0; down <= reach && first + down * (path.inks - 1) < levels.length; down++) {
      while (path.depth > 0) takeOff(path)
      for (let unit = 0; unit < path.inks; unit++) {
        putOn(path, unit, { ...path.loaded[unit], tack: levels[first + down * unit] })
      }
      yield ladderOf(path)
    }
  }
}

function ladderOf(path: OrderPath): Ladder {
  const sheet = path.sheets[path.inks]
  const ladder: Ladder = {
    tacks: path.setUp.inks.map(({ tack }) => tack),
    trap: Infinity,
    pair: [0, 1],
    picking: worstTorn(path),
  }
  for (const pair of pairs(path.inks)) {
    const [earlier, later] = pair
    const trap = filmOf(sheet, (1 << earlier) | (1 << later), later) / filmOf(sheet, 1 << later, later)
    if (trap < ladder.trap) Object.assign(ladder, { trap, pair })
  }
  return ladder
}
