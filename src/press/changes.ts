/**
 * What to change: every single change of a press, tried and compared with the press as it stands. A change is worth the
 * points of score it gains (order-score.ts: trap, contamination and picking by their weights) for each unit of effort:
 * 1 for a control turned while the press runs, 2 for an ink altered in its duct, 3 for another paper, 4 for two units
 * washed up and exchanged, 8 for units moved apart. Efforts are chosen, in the order in which a crew would try them.
 */
import type { orders } from '../words/en/orders.ts'
import type { CautionKey } from './cautions.ts'
import { atDesk, atPress, withSolvents } from './cautions.ts'
import { orderPath, takeTo } from './order-path.ts'
import type { OrderAim, OrderTerms } from './order-score.ts'
import { scoreOf, termsOf } from './order-score.ts'
import { intervalAt } from './presets.ts'
import type { RangeName } from './ranges.ts'
import { ranges } from './ranges.ts'
import type { Ink, SetUp } from './setup.ts'
import { dampeningAt } from './setup.ts'

type OrdersKey = keyof typeof orders

type ChangeKind = 'tack' | 'film' | 'speed' | 'interval' | 'dampening' | 'surfaceStrength' | 'swap'

export interface Change {
  kind: ChangeKind
  /** the unit changed, or the first of two that are exchanged; null for the whole press */
  unit: number | null
  /** the new value less the old one, in the unit of its range (ranges.ts); 0 for a swap */
  by: number
  setUp: SetUp
  effort: number
  /** what it costs beside what is computed, as a key of the catalogue */
  cost: OrdersKey
  /** told first; the last is always that this is a teaching model */
  cautions: readonly CautionKey[]
}

export interface TriedChange extends Change {
  /** the new terms less the old ones */
  differences: Pick<OrderTerms, 'trap' | 'contamination' | 'picking'>
  /** points of score */
  gain: number
  /** gain for each unit of effort */
  worth: number
}

/** How far each change goes, in the unit of its range. All chosen, as steps a crew would try. */
const changeSteps = {
  tack: 1,
  film: 0.4,
  speed: 0.5,
  interval: 0.1,
  dampening: 0.25,
  surfaceStrength: 10,
} as const

const efforts: Record<ChangeKind, number> = {
  film: 1,
  speed: 1,
  dampening: 1,
  tack: 2,
  surfaceStrength: 3,
  swap: 4,
  interval: 8,
}

const cautionsOf: Record<ChangeKind, readonly CautionKey[]> = {
  film: atDesk,
  speed: atDesk,
  dampening: atDesk,
  tack: withSolvents,
  surfaceStrength: atDesk,
  swap: withSolvents,
  interval: atPress,
}

/** Every single change that stays legal, none of them tried yet. */
export function possibleChanges(setUp: SetUp): Change[] {
  const { inks, paper, press } = setUp
  const ways = [1, -1]
  const ofInks = inks.flatMap((ink, unit) =>
    (['tack', 'film'] as const).flatMap((kind) =>
      ways.map((way) => change(kind, unit, way, ink[kind], (value) => withInk(setUp, unit, { [kind]: value }))),
    ),
  )
  const ofPress = ways.flatMap((way) => [
    change('speed', null, way, press.speed, (speed) => {
      const interval = press.intervalPinned ? press.interval : intervalAt(press.kind, speed)
      return { ...setUp, press: { ...press, speed, interval } }
    }),
    change('interval', null, way, press.interval, (interval) => ({
      ...setUp,
      press: { ...press, interval, intervalPinned: true },
    })),
    press.waterless
      ? null
      : change('dampening', null, way, press.dampening, (value) => dampened(setUp, value - press.dampening)),
    change('surfaceStrength', null, way, paper.surfaceStrength, (surfaceStrength) => ({
      ...setUp,
      paper: { ...paper, surfaceStrength },
    })),
  ])
  const swaps = inks.slice(1).map((_, unit): Change => {
    const exchanged = inks.with(unit, inks[unit + 1]).with(unit + 1, inks[unit])
    return { kind: 'swap', unit, by: 0, setUp: { ...setUp, inks: exchanged }, ...rule('swap', 'change.swap.cost') }
  })
  return [...ofInks, ...ofPress, ...swaps].filter((each) => each !== null)
}

function rule(kind: ChangeKind, cost: OrdersKey) {
  return { effort: efforts[kind], cost, cautions: cautionsOf[kind] }
}

/** A change by one step up or down; null where that leads out of the legal range. */
function change(
  kind: Exclude<ChangeKind, 'swap'>,
  unit: number | null,
  way: number,
  now: number,
  apply: (value: number) => SetUp,
): Change | null {
  const by = way * changeSteps[kind]
  const { least, most } = ranges[kind satisfies RangeName]
  if (now + by < least || now + by > most) return null
  const setUp = apply(now + by)
  const { interval } = setUp.press
  if (interval < ranges.interval.least || interval > ranges.interval.most) return null
  return { kind, unit, by, setUp, ...rule(kind, `change.${kind}.${way > 0 ? 'up' : 'down'}.cost`) }
}

function withInk(setUp: SetUp, unit: number, altered: Partial<Ink>): SetUp {
  return { ...setUp, inks: setUp.inks.with(unit, { ...setUp.inks[unit], ...altered }) }
}

/** Dampening of the press and of every unit that has its own, all altered alike as far as is legal. */
function dampened(setUp: SetUp, by: number): SetUp {
  const { inks, press } = setUp
  const altered = (value: number) => Math.min(ranges.dampening.most, Math.max(ranges.dampening.least, value + by))
  return {
    ...setUp,
    inks: inks.map((ink) =>
      ink.dampening === undefined ? ink : { ...ink, dampening: altered(dampeningAt(press, ink)) },
    ),
    press: { ...press, dampening: altered(press.dampening) },
  }
}

/** Tries every single change on the settled press; the worthiest first. */
export function whatToChange(setUp: SetUp, aim: OrderAim): TriedChange[] {
  const now = settledTerms(setUp, aim)
  return possibleChanges(setUp)
    .map((each): TriedChange => {
      const overprints = each.kind === 'swap' ? swapped(aim.overprints, each.unit ?? 0) : aim.overprints
      const then = settledTerms(each.setUp, { ...aim, overprints })
      const gain = scoreOf(then, aim.weights) - scoreOf(now, aim.weights)
      const differences = {
        trap: then.trap - now.trap,
        contamination: then.contamination - now.contamination,
        picking: then.picking - now.picking,
      }
      return { ...each, differences, gain, worth: gain / each.effort }
    })
    .sort((a, b) => b.worth - a.worth)
}

/** Overprints name inks by their places, and two of these have been exchanged. */
function swapped(overprints: OrderAim['overprints'], unit: number): number[][] {
  return overprints.map((inks) => inks.map((ink) => (ink === unit ? unit + 1 : ink === unit + 1 ? unit : ink)))
}

/** The terms of a set-up in the order in which it stands, colour left out. */
export function settledTerms(setUp: SetUp, { overprints, weights }: OrderAim): OrderTerms {
  const path = orderPath(setUp)
  takeTo(
    path,
    setUp.inks.map((_, ink) => ink),
  )
  return termsOf(path, { overprints, weights })
}
