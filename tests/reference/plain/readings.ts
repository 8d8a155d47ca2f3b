import { add } from 'mathjs'
import { addUp, thickness, total } from './film.ts'
import type { PrintedPatch, Revolution } from './press.ts'
import type { Setup } from './setup.ts'

/** The patch where exactly these inks print. */
export function patchOf(revolution: Revolution, inks: number[]): PrintedPatch {
  return revolution.patches[total(inks.map((ink) => 2 ** ink))]
}

/** Foreign share of every unit's store. */
export function contamination(revolution: Revolution): number[] {
  return revolution.state.stores.map((store, unit) => 1 - store[unit] / thickness(store))
}

/** Share of the sheet where the paper breaks, by unit. */
export function pickByUnit(revolution: Revolution, setup: Setup): number[] {
  return setup.inks.map((_, unit) =>
    revolution.patches.reduce((share, patch) => share + patch.area * patch.nips[unit].shares[1], 0),
  )
}

/** Share of each earlier ink, as it lay on the sheet before this unit, that leaves with the unit's blanket. */
export function liftedShares(patch: PrintedPatch, unit: number, setup: Setup): number[] {
  const { lifted, sheet } = patch.nips[unit]
  const lost = addUp(lifted, setup.inks.length)
  const stayed = addUp(
    sheet.slice(0, -1).map((layer) => layer.film),
    setup.inks.length,
  )
  const before = add(lost, stayed)
  return setup.inks.slice(0, unit).map((_, ink) => (before[ink] === 0 ? 0 : lost[ink] / before[ink]))
}
