/**
 * A good order at once, for seven and eight inks: of all beginnings of each length only the best are kept and built on;
 * the best order so found, and that of falling tack (common practice), are then bettered by moving one ink at a time as
 * long as that helps. The answer is bounded, not exact. What the dropped beginnings could at most have become is known and told: a store
 * and a spot of paper only get worse as more units print, so no order scores above what its beginning has already lost
 * by these two. Trap and colour may still be perfect for all that is known, so that bound is wide.
 */
import type { OrderPath } from './order-path.ts'
import { orderPath, putOn, takeOff, takeTo } from './order-path.ts'
import type { OrderAim } from './order-score.ts'
import { scoreOf, termsOf } from './order-score.ts'
import type { RankedOrder } from './orders.ts'
import { bestFirst, compareOrders, inksLeft } from './orders.ts'
import type { SetUp } from './setup.ts'

export interface BoundedAnswer {
  /** the best orders found, best first */
  found: RankedOrder[]
  /** whether no beginning was dropped, and the answer therefore exact */
  exact: boolean
  /** no order at all scores above this */
  mostPossible: number
  /** units settled */
  solved: number
}

/** Beginnings of each length that are built on: chosen so that eight inks take under a second. */
const usualBreadth = 12

/** Searches by breadth: the best `breadth` beginnings of each length, judged as if the press ended there. */
export function searchOrders(setUp: SetUp, aim: OrderAim, breadth = usualBreadth): BoundedAnswer {
  const path = orderPath(setUp)
  let kept: RankedOrder[] = [{ order: [], score: 100, terms: { trap: 1, contamination: 0, picking: 0, colour: NaN } }]
  let mostDropped = -Infinity
  let exact = true
  for (let length = 1; length <= path.inks; length++) {
    const longer: RankedOrder[] = []
    for (const { order } of kept.sort((a, b) => compareOrders(a.order, b.order))) {
      takeTo(path, order)
      for (const ink of inksLeft(path)) {
        putOn(path, ink)
        const terms = termsOf(path, aim)
        longer.push({ order: [...order, ink], score: scoreOf(terms, aim.weights), terms })
        takeOff(path)
      }
    }
    longer.sort(bestFirst)
    kept = length === path.inks ? longer : longer.slice(0, breadth)
    for (const { terms } of longer.slice(kept.length)) {
      exact = false
      mostDropped = Math.max(mostDropped, scoreOf({ ...terms, trap: 1, colour: NaN }, aim.weights))
    }
  }
  if (!exact) {
    const falling = setUp.inks.map((_, ink) => ink).sort((a, b) => setUp.inks[b].tack - setUp.inks[a].tack)
    for (const start of [falling, kept[0].order]) kept.push(bettered(path, aim, start))
    kept.sort(bestFirst)
  }
  return { found: kept, exact, mostPossible: Math.max(kept[0].score, mostDropped), solved: path.solved }
}

/** Moves single inks to other units, from the last on, until no such move raises the score. */
function bettered(path: OrderPath, aim: OrderAim, start: readonly number[]): RankedOrder {
  const judge = (order: number[]): RankedOrder => {
    takeTo(path, order)
    const terms = termsOf(path, aim)
    return { order, score: scoreOf(terms, aim.weights), terms }
  }
  let best = judge([...start])
  for (let before: RankedOrder | undefined; before !== best;) {
    before = best
    for (let from = path.inks - 1; from >= 0; from--) {
      for (let to = path.inks - 1; to >= 0; to--) {
        // Exchanging neighbours either way is one move.
        if (to === from || to === from - 1) continue
        const moved = best.order.toSpliced(from, 1).toSpliced(to, 0, best.order[from])
        const tried = judge(moved)
        if (tried.score > best.score) best = tried
      }
    }
  }
  return best
}
