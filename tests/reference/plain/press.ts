import { add, prod, subtract } from 'mathjs'
import { addUp, emptyFilm, type Film, share } from './film.ts'
import type { Layer, Nip } from './nip.ts'
import type { Setup } from './setup.ts'
import { afterRevolution, startingStore } from './store.ts'
import { printingTurn, type Rollers, touchingTurn } from './unit.ts'

/** A part of the sheet where the same inks print. Its number has bit i set when ink i prints there. */
export interface Patch {
  prints: boolean[]
  /** share of the sheet */
  area: number
}

/** Everything that lasts from one revolution to the next. */
export interface PressState {
  /** by unit */
  stores: Film[]
  /** by unit, then by patch */
  rollers: Rollers[][]
}

export interface PrintedPatch extends Patch {
  /** what stays on the sheet, um by ink */
  film: Film
  layers: Layer[]
  /** one for every unit */
  nips: Nip[]
}

export interface Revolution {
  patches: PrintedPatch[]
  state: PressState
  /** um by ink over the whole sheet: added to all stores, thrown away from all stores, carried off by the sheet */
  fresh: Film
  discarded: Film
  carriedOff: Film
}

/** Every set of inks, with its area when the inks are laid out independently of each other. */
export function allPatches(setup: Setup): Patch[] {
  return Array.from({ length: 2 ** setup.inks.length }, (_, set) => {
    const prints = setup.inks.map((_, ink) => Math.floor(set / 2 ** ink) % 2 === 1)
    const shares = setup.inks.map(({ coverage = 0.5 }, ink) => (prints[ink] ? coverage : 1 - coverage))
    return { prints, area: prod(shares) }
  })
}

/** Full stores, empty plates and blankets. */
export function emptyPress(setup: Setup): PressState {
  const inks = setup.inks.length
  return {
    stores: setup.inks.map((_, unit) => startingStore(unit, setup)),
    rollers: setup.inks.map(() => allPatches(setup).map(() => ({ plate: emptyFilm(inks), blanket: emptyFilm(inks) }))),
  }
}

/** One sheet through all units, patch by patch, then every store is topped up. */
export function revolve(state: PressState, setup: Setup): Revolution {
  const patches = allPatches(setup)
  const inks = setup.inks.length
  const turns = patches.map((patch, place) => {
    let sheet: Layer[] = []
    return setup.inks.map((ink, unit) => {
      if (ink.dryBefore === true) sheet = sheet.map((layer) => ({ ...layer, dry: true }))
      const rollers = state.rollers[unit][place]
      const turn = patch.prints[unit]
        ? printingTurn(rollers, state.stores[unit], sheet, unit, setup)
        : touchingTurn(rollers, sheet, unit, setup)
      sheet = turn.nip.sheet
      return turn
    })
  })

  const printed = patches.map((patch, place) => {
    const nips = turns[place].map((turn) => turn.nip)
    const layers = nips[nips.length - 1].sheet
    const film = addUp(
      layers.map((layer) => layer.film),
      inks,
    )
    return { ...patch, film, layers, nips }
  })

  const topped = setup.inks.map((_, unit) => {
    const printedArea = patches.reduce((area, patch) => area + (patch.prints[unit] ? patch.area : 0), 0)
    const returned = addUp(
      patches.map((patch, place) => share(turns[place][unit].formReturn, patch.area)),
      inks,
    )
    return afterRevolution(state.stores[unit], printedArea, returned, unit, setup)
  })

  return {
    patches: printed,
    state: {
      stores: topped.map((unit) => unit.store),
      rollers: setup.inks.map((_, unit) => patches.map((_, place) => turns[place][unit].rollers)),
    },
    fresh: addUp(
      topped.map((unit) => unit.fresh),
      inks,
    ),
    discarded: addUp(
      topped.map((unit) => unit.discarded),
      inks,
    ),
    carriedOff: addUp(
      printed.map((patch) => share(patch.film, patch.area)),
      inks,
    ),
  }
}

/** All the ink in the press, um by ink over the whole sheet. */
export function inkInPress(state: PressState, setup: Setup): Film {
  const onRollers = allPatches(setup).flatMap((patch, place) =>
    state.rollers.map((unit) => share(add(unit[place].plate, unit[place].blanket), patch.area)),
  )
  return addUp([...state.stores, ...onRollers], setup.inks.length)
}

/** Start + fresh - discarded - carried off - end, um by ink: nothing but rounding when the program is right. */
export function balanceGap(start: Film, totals: { fresh: Film; discarded: Film; carriedOff: Film }, end: Film): Film {
  return subtract(subtract(subtract(add(start, totals.fresh), totals.discarded), totals.carriedOff), end)
}
