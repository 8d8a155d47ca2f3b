/**
 * Many revolutions at once. Over H revolutions every film and store y gains the sum of what each revolution adds, g(y).
 * Where y changes smoothly, that sum is all but
 *
 *     y(H) = y + H [ (1/2 + 1/(2H)) g(y) + (1/2 - 1/(2H)) g(y(H)) ],
 *
 * the trapezoid rule for a sum instead of an integral: exact for H = 1, and for any H where g changes in a straight line.
 * With g(y) = revolve(y) - y and w = (H - 1) / (H + 1) this reads y(H) = (1 - w) c + w revolve(y(H)), which settle.ts
 * solves unit by unit. It stays stable however long the stride, so fast films need no short one.
 */
import type { Line } from './line.ts'
import { printSettled, roomToSettle, settleUnit } from './settle.ts'
import type { Settled } from './settle.ts'
import type { Sheet } from './sheet.ts'
import { emptySheet } from './sheet.ts'
import type { Train } from './train.ts'
import { copyTrain } from './train.ts'

/** Working space for strides of one press. */
export interface StrideRoom {
  rooms: Settled[]
  sheets: Sheet[]
}

export function roomToStride(line: Line): StrideRoom {
  const inks = line.lnTack.length
  return {
    rooms: line.units.map((unit) => roomToSettle(unit.index, inks)),
    sheets: [emptySheet(0, inks), ...line.units.map((unit) => emptySheet(unit.index + 1, inks))],
  }
}

/** The trains `revolutions` (2 or more) after `trains`, of which `next` are those after the first revolution. */
export function stride(
  line: Line,
  trains: readonly Train[],
  next: readonly Train[],
  revolutions: number,
  { rooms, sheets }: StrideRoom,
): Train[] {
  const kept = 2 / (revolutions + 1)
  return line.units.map((unit, index) => {
    // No film can be less than nothing, however fast it was thinning.
    const past = mixTrains(trains[index], next[index], (now, after) => Math.max(0, now + (after - now) / kept))
    const room = settleUnit(line, unit, sheets[index], rooms[index], { kept, train: past })
    printSettled(unit, room, sheets[index], sheets[index + 1])
    return copyTrain(room.train)
  })
}

/** A train made number by number from two. */
export function mixTrains(a: Train, b: Train, mix: (a: number, b: number) => number): Train {
  const mixed = (x: Float64Array, y: Float64Array) => x.map((value, at) => mix(value, y[at]))
  return { store: mixed(a.store, b.store), plate: mixed(a.plate, b.plate), blanket: mixed(a.blanket, b.blanket) }
}

/** The largest difference between any two films (um) or store shares of two states of the press. */
export function farthest(a: readonly Train[], b: readonly Train[]): number {
  let most = 0
  a.forEach((train, unit) => {
    for (const part of ['store', 'plate', 'blanket'] as const) {
      train[part].forEach((value, at) => (most = Math.max(most, Math.abs(value - b[unit][part][at]))))
    }
  })
  return most
}
