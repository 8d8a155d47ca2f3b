/** Running the press: the first sheet, the N-th, or the settled one; three readings of the same equations. */
import { emptyParting, part } from '../physics/nip.ts'
import { balanceError } from './balance.ts'
import type { Line, Unit } from './line.ts'
import { lineOf } from './line.ts'
import { printsIn } from './patches.ts'
import type { SetUp } from './setup.ts'
import type { Settled } from './settle.ts'
import { printSettled, settledWithin, settleUnit } from './settle.ts'
import type { Sheet } from './sheet.ts'
import { emptySheet } from './sheet.ts'
import type { Train, Turn } from './train.ts'
import { copyTrain, emptyTrain, emptyTurn, revolve } from './train.ts'

/** One sheet printed, with everything that was on the rollers as it went through. */
export interface Run {
  setUp: SetUp
  line: Line
  /** the sheet before unit i; the last is the printed sheet */
  sheets: Sheet[]
  /** the trains after the sheet has passed */
  trains: Train[]
  /** what each unit's last revolution brought, let in and let out */
  turns: Turn[]
  /** largest relative error of any ink's balance over that last revolution */
  balance: number
}

/** Prints the sheet that the set-up's reading asks for. */
export function runPress(setUp: SetUp): Run {
  const line = lineOf(setUp)
  const settled = settleLine(line)
  if (setUp.reading === 'settled')
    return print(
      setUp,
      line,
      settled.map((unit) => unit.train),
      1,
    )
  const trains = startingTrains(line, settled)
  return print(setUp, line, trains, setUp.reading === 'first' ? 1 : setUp.reading.sheet)
}

/** Every unit settled in turn, each under the settled sheet of those before it. */
export function settleLine(line: Line): Settled[] {
  const inks = line.lnTack.length
  let sheet = emptySheet(0, inks)
  return line.units.map((unit) => {
    const settled = settleUnit(line, unit, sheet)
    const after = emptySheet(unit.index + 1, inks)
    printSettled(unit, settled, sheet, after)
    sheet = after
    return settled
  })
}

/**
 * The state before the first sheet: where a unit prints, the film it settles to when it prints alone on bare paper,
 * out of its starting store; where it does not, its settled soil, as a new clean blanket would lift far too much.
 */
export function startingTrains(line: Line, settled: readonly Settled[]): Train[] {
  const inks = line.lnTack.length
  return line.units.map((unit, index) => {
    const train = emptyTrain(unit.areas.length, inks)
    train.store.set(unit.startingStore)
    const alone = filmAlone(line, unit)
    for (let patch = 0; patch < unit.areas.length; patch++) {
      for (let ink = 0; ink < inks; ink++) {
        const at = patch * inks + ink
        if (printsIn(patch, index)) {
          train.plate[at] = alone * train.store[ink]
          train.blanket[at] = (1.5 * alone - 0.5 * unit.film) * train.store[ink]
        } else {
          train.blanket[at] = settled[index].train.blanket[at]
        }
      }
    }
    return train
  })
}

/** The film (um) a unit's blanket brings once settled alone on bare paper, out of its starting store: x = R - 2 y(x). */
export function filmAlone(line: Line, unit: Unit): number {
  const surface = { paper: line.paper, lnStrength: unit.lnSurfaceStrength, pickChance: line.pickChance }
  const lnPull = unit.startingStore.reduce((sum, share, ink) => sum + share * line.lnTack[ink], unit.blanketTerm)
  const parting = emptyParting()
  let film = 0.5 * unit.film
  for (let change = 1; change > settledWithin;) {
    part(surface, { weight: 0, thickness: 0 }, film, lnPull, parting)
    const next = unit.film / (1 + 2 * parting.taken)
    change = Math.abs(next / film - 1)
    film = next
  }
  return film
}

/** What one sheet passes through: the sheet before each unit and the printed one, and what each unit's turn moved. */
export interface Passage {
  sheets: Sheet[]
  turns: Turn[]
}

export function emptyPassage(line: Line): Passage {
  const inks = line.lnTack.length
  return {
    sheets: [emptySheet(0, inks), ...line.units.map((unit) => emptySheet(unit.index + 1, inks))],
    turns: line.units.map((unit) => emptyTurn(unit, inks)),
  }
}

/** Prints one sheet from `trains`, which move on by one revolution. Writes into `passage`. */
export function printSheet(line: Line, trains: readonly Train[], { sheets, turns }: Passage): void {
  for (const unit of line.units) {
    const { index } = unit
    revolve(line, unit, trains[index], sheets[index], sheets[index + 1], turns[index])
  }
}

/** Turns the press `sheets` times from `trains`, which move on, and keeps the last sheet. */
function print(setUp: SetUp, line: Line, trains: Train[], sheets: number): Run {
  const passage = emptyPassage(line)
  for (let sheet = 1; sheet < sheets; sheet++) printSheet(line, trains, passage)
  return printNext(setUp, line, trains, passage)
}

/** Prints one sheet more from `trains`, which move on, and tells all about it. */
export function printNext(setUp: SetUp, line: Line, trains: Train[], passage = emptyPassage(line)): Run {
  const before = trains.map(copyTrain)
  printSheet(line, trains, passage)
  const { sheets, turns } = passage
  return {
    setUp,
    line,
    sheets,
    trains,
    turns,
    balance: balanceError(line, before, trains, turns, sheets[sheets.length - 1]),
  }
}
