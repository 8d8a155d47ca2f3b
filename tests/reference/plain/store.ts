import { add, subtract } from 'mathjs'
import { type Film, share, thickness } from './film.ts'
import { type Setup, storeVolume } from './setup.ts'
import { formRollerFilm } from './unit.ts'

export interface Topped {
  store: Film
  /** own ink added, um by ink */
  fresh: Film
  /** mixture thrown away, um by ink */
  discarded: Film
}

/** A full store of the unit's own ink, with its share of the neighbour's if it starts soiled. */
export function startingStore(unit: number, setup: Setup): Film {
  const neighbour = unit === 0 ? 1 : unit - 1
  const foreign = neighbour < setup.inks.length ? (setup.inks[unit].soiled ?? 0) : 0
  return setup.inks.map((_, ink) => storeVolume * (ink === unit ? 1 - foreign : ink === neighbour ? foreign : 0))
}

/**
 * The store after one revolution: it gave film R wherever the unit printed, and got back what the form roller kept.
 * @param printedArea share of the sheet
 * @param returned um by ink, over the whole sheet
 */
export function afterRevolution(store: Film, printedArea: number, returned: Film, unit: number, setup: Setup): Topped {
  const given = share(formRollerFilm(store, unit, setup), printedArea)
  const left = add(subtract(store, given), returned)
  const missing = storeVolume - thickness(left)
  const none = share(store, 0)
  if (missing >= 0) {
    const fresh = setup.inks.map((_, ink) => (ink === unit ? missing : 0))
    return { store: add(left, fresh), fresh, discarded: none }
  }
  const discarded = share(left, -missing / thickness(left))
  return { store: subtract(left, discarded), fresh: none, discarded }
}
