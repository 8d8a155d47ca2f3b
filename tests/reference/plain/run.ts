import { add } from 'mathjs'
import { emptyFilm, type Film } from './film.ts'
import { allPatches, balanceGap, emptyPress, inkInPress, type PressState, type Revolution, revolve } from './press.ts'
import type { Setup } from './setup.ts'
import { startingStore } from './store.ts'
import { printingTurn, type Rollers } from './unit.ts'

interface Balance {
  /** um by ink over the whole sheet, summed over the run */
  start: Film
  fresh: Film
  discarded: Film
  carriedOff: Film
  end: Film
  gap: Film
}

/** The last sheet of a run, and what went in and out over the whole run. */
export interface RunResult extends Revolution {
  balance: Balance
}

/** Plain stepping: no acceleration of any kind. */
export function runFrom(start: PressState, revolutions: number, setup: Setup): RunResult {
  if (revolutions < 1) throw new Error(`A run needs at least 1 revolution; ${revolutions} were asked for.`)
  let totals = {
    fresh: emptyFilm(setup.inks.length),
    discarded: emptyFilm(setup.inks.length),
    carriedOff: emptyFilm(setup.inks.length),
  }
  let last = revolve(start, setup)
  for (let count = 1; ; count += 1) {
    totals = {
      fresh: add(totals.fresh, last.fresh),
      discarded: add(totals.discarded, last.discarded),
      carriedOff: add(totals.carriedOff, last.carriedOff),
    }
    if (count === revolutions) break
    last = revolve(last.state, setup)
  }
  const before = inkInPress(start, setup)
  const end = inkInPress(last.state, setup)
  return { ...last, balance: { start: before, ...totals, end, gap: balanceGap(before, totals, end) } }
}

/** The run from an empty press; it nears the settled state as the revolutions grow. */
export function settled(setup: Setup, revolutions: number): RunResult {
  return runFrom(emptyPress(setup), revolutions, setup)
}

/** Plate and blanket of a unit that has long printed alone on bare paper from its starting store, and the film it leaves. */
export function settledAlone(unit: number, setup: Setup, revolutions = 500): Rollers & { film: Film } {
  const store = startingStore(unit, setup)
  let rollers: Rollers = { plate: emptyFilm(setup.inks.length), blanket: emptyFilm(setup.inks.length) }
  let film = emptyFilm(setup.inks.length)
  for (let count = 0; count < revolutions; count += 1) {
    const turn = printingTurn(rollers, store, [], unit, setup)
    rollers = turn.rollers
    film = turn.nip.gain
  }
  return { ...rollers, film }
}

/**
 * The press the first sheet meets: where a unit prints, plate and blanket as if it had printed alone;
 * where it does not, the blanket with the soil it has there once the run has settled; stores as at the start.
 */
export function firstSheetPress(setup: Setup, settledState: PressState): PressState {
  return {
    stores: setup.inks.map((_, unit) => startingStore(unit, setup)),
    rollers: setup.inks.map((_, unit) => {
      const { plate, blanket } = settledAlone(unit, setup)
      return allPatches(setup).map((patch, place) =>
        patch.prints[unit]
          ? { plate, blanket }
          : { plate: emptyFilm(setup.inks.length), blanket: settledState.rollers[unit][place].blanket },
      )
    }),
  }
}

/**
 * Sheet N of a run; sheet 1 is the first sheet.
 * @param settledRevolutions how long to iterate for the settled soil of the blankets that do not print
 */
export function sheet(number: number, setup: Setup, settledRevolutions: number): RunResult {
  return runFrom(firstSheetPress(setup, settled(setup, settledRevolutions).state), number, setup)
}
