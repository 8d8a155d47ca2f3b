/**
 * One unit's ink train over one revolution: form roller with plate, plate with blanket, blanket with sheet; then the
 * store. Each nip between films splits their sum evenly and mixes it. Plate and blanket keep what is left over, patch
 * by patch; where the unit does not print, only its blanket meets the sheet.
 */
import { emptyParting, part } from '../physics/nip.ts'
import type { Line, Unit } from './line.ts'
import { storeFilm } from './line.ts'
import { passPatch } from './pass.ts'
import { printsIn } from './patches.ts'
import type { Sheet } from './sheet.ts'
import { emptyStack, liftedInk, lnTackOf, surveyStack } from './stack.ts'

/** The ink in one unit, um by ink. */
export interface Train {
  /** shares by ink, sum 1, of the well-mixed store */
  store: Float64Array
  /** [patch][ink] left on the plate; zero where the unit does not print */
  plate: Float64Array
  /** [patch][ink] left on the blanket */
  blanket: Float64Array
}

/** What one revolution brought and took, beside the sheet. */
export interface Turn {
  /** [patch][ink] um that the blanket brought to the sheet */
  brought: Float64Array
  /** um of own ink let into the store */
  fresh: number
  /** um by ink let out of a store that overflowed */
  discarded: Float64Array
}

export function emptyTrain(patches: number, inks: number): Train {
  const films = patches * inks
  return { store: new Float64Array(inks), plate: new Float64Array(films), blanket: new Float64Array(films) }
}

export function copyTrain({ store, plate, blanket }: Train): Train {
  return { store: store.slice(), plate: plate.slice(), blanket: blanket.slice() }
}

export function emptyTurn(unit: Unit, inks: number): Turn {
  return { brought: new Float64Array(unit.areas.length * inks), fresh: 0, discarded: new Float64Array(inks) }
}

/** The patch of the sheet before a unit from which the unit's `patch` comes: the same, its own bit left out. */
export function patchBefore(patch: number, unit: number): number {
  return patch & ~(1 << unit)
}

/** Turns the unit once: prints `before` into `after`, moves `train` on by one revolution, and reports it in `turn`. */
export function revolve(line: Line, unit: Unit, train: Train, before: Sheet, after: Sheet, turn: Turn): void {
  const { inks } = before
  const { store, plate, blanket } = train
  const { brought } = turn
  const stack = emptyStack(before.units, inks)
  const parting = emptyParting()
  const returned = new Float64Array(inks)
  let printingArea = 0
  for (let patch = 0; patch < unit.areas.length; patch++) {
    const at = patch * inks
    if (printsIn(patch, unit.index)) {
      printingArea += unit.areas[patch]
      for (let ink = 0; ink < inks; ink++) {
        const half = 0.5 * (unit.film * store[ink] + plate[at + ink])
        returned[ink] += unit.areas[patch] * half
        brought[at + ink] = plate[at + ink] = 0.5 * (half + blanket[at + ink])
      }
    } else {
      for (let ink = 0; ink < inks; ink++) brought[at + ink] = blanket[at + ink]
    }
    let film = 0
    for (let ink = 0; ink < inks; ink++) film += brought[at + ink]
    const from = patchBefore(patch, unit.index)
    surveyStack(line, unit, before, from, stack)
    const lnPull = film > 0 ? lnTackOf(line.lnTack, brought, at, film) + unit.blanketTerm : 0
    part(
      { paper: line.paper, lnStrength: unit.lnSurfaceStrength, pickChance: line.pickChance },
      stack,
      film,
      lnPull,
      parting,
    )
    passPatch(unit, before, from, after, patch, stack, parting, brought, at, film)
    for (let ink = 0; ink < inks; ink++) {
      blanket[at + ink] = brought[at + ink] * (1 - parting.taken) + liftedInk(parting, stack, ink)
    }
  }
  turnStore(unit, store, printingArea, returned, turn)
}

/** Takes one revolution's ink out of the store, puts back what returned, tops it up or lets the surplus out. */
function turnStore(unit: Unit, store: Float64Array, printingArea: number, returned: Float64Array, turn: Turn): void {
  const left = storeFilm - printingArea * unit.film
  let total = 0
  for (let ink = 0; ink < store.length; ink++) total += store[ink] = left * store[ink] + returned[ink]
  turn.fresh = Math.max(0, storeFilm - total)
  store[unit.index] += turn.fresh
  const kept = Math.min(1, storeFilm / total)
  for (let ink = 0; ink < store.length; ink++) {
    turn.discarded[ink] = store[ink] * (1 - kept)
    store[ink] = (store[ink] * kept) / storeFilm
  }
}
