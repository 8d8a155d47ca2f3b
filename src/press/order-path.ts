/**
 * Inks put on the press one after another and taken off again. A unit depends only on the units before it, so orders
 * that begin alike share the settled units of their common beginning: all n! orders of n inks need n!/(n-1)! + ... +
 * n!/0! units settled instead of n * n!. Only the sheets along the present order are kept.
 */
import { pickChance } from '../physics/pick.ts'
import type { Line, Unit } from './line.ts'
import { unitOf } from './line.ts'
import type { Settled } from './settle.ts'
import { printSettled, roomToSettle, settleUnit } from './settle.ts'
import type { Ink, SetUp } from './setup.ts'
import type { Sheet } from './sheet.ts'
import { emptySheet } from './sheet.ts'

/** Largest relative change of a film in the last turn of a unit that is only ranked: far below any digit shown. */
const rankedWithin = 1e-8

export interface OrderPath {
  /** how many inks there are to order */
  inks: number
  /** the inks on the press, first unit first, as places in the set-up; those from `depth` on mean nothing */
  order: Uint8Array
  depth: number
  /** by depth: the settled sheet after so many units */
  sheets: Sheet[]
  /** by depth: the worst foreign share of any store so far */
  contamination: Float64Array
  /** by depth, then by patch: share of the area still whole */
  whole: Float64Array[]
  /** units settled so far */
  solved: number
  /** how the next unit is worked out: the set-up's inks in present order */
  setUp: SetUp
  loaded: readonly Ink[]
  line: Line
  rooms: Settled[]
}

/** A press with no ink on it yet, for the inks of `setUp`; everything an ink states goes with it from unit to unit. */
export function orderPath(setUp: SetUp): OrderPath {
  const inks = setUp.inks.length
  return {
    inks,
    order: new Uint8Array(inks),
    depth: 0,
    sheets: Array.from({ length: inks + 1 }, (_, units) => emptySheet(units, inks)),
    contamination: new Float64Array(inks + 1),
    whole: Array.from({ length: inks + 1 }, (_, units) => new Float64Array(1 << units).fill(1)),
    solved: 0,
    setUp: { ...setUp, inks: setUp.inks.slice() },
    loaded: setUp.inks,
    line: {
      paper: setUp.paper,
      units: [],
      lnTack: Float64Array.from(setUp.inks, (ink) => Math.log(ink.tack)),
      pickChance: pickChance(setUp.paper.evenness),
    },
    rooms: Array.from({ length: inks }, (_, unit) => roomToSettle(unit, inks)),
  }
}

/** Puts ink `place` of the set-up on the next unit and settles it; with other properties than loaded, where `ink` says so. */
export function putOn(path: OrderPath, place: number, ink: Ink = path.loaded[place]): void {
  const { depth, line, sheets, rooms } = path
  path.order[depth] = place
  path.setUp.inks[depth] = ink
  line.lnTack[depth] = Math.log(ink.tack)
  line.units.length = depth
  const unit = unitOf(path.setUp, depth, line.units.at(-1))
  line.units.push(unit)
  const room = settleUnit(line, unit, sheets[depth], rooms[depth], undefined, rankedWithin)
  printSettled(unit, room, sheets[depth], sheets[depth + 1])
  path.contamination[depth + 1] = Math.max(path.contamination[depth], 1 - room.train.store[depth])
  tear(unit, room, path.whole[depth], path.whole[depth + 1])
  path.depth++
  path.solved++
}

function tear(unit: Unit, { contacts }: Settled, before: Float64Array, after: Float64Array): void {
  const same = (1 << unit.index) - 1
  for (let patch = 0; patch < contacts.length; patch++) {
    const { contact, torn } = contacts[patch].parting
    after[patch] = before[patch & same] * (1 - contact * torn)
  }
}

/** Takes the last ink off again. */
export function takeOff(path: OrderPath): void {
  path.depth--
}

/** Brings the press to this beginning, keeping the units that already agree with it. */
export function takeTo(path: OrderPath, beginning: readonly number[]): void {
  let agreed = 0
  while (agreed < path.depth && agreed < beginning.length && path.order[agreed] === beginning[agreed]) agreed++
  path.depth = agreed
  for (const ink of beginning.slice(agreed)) putOn(path, ink)
}

/** Share of the worst patch's area torn at one unit or another, so far. */
export function worstTorn({ whole, depth }: OrderPath): number {
  let least = 1
  for (const share of whole[depth]) if (share < least) least = share
  return 1 - least
}
