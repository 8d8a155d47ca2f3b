/**
 * What a store settles to under given films. With A the printing area, V the store, R the form roller's film and p the
 * films left on the plate, a revolution turns the store's shares s into
 *
 *     (s (V - A R / 2) + sum(area p) / 2) / V,   topped up with own ink;
 *
 * where that is more than V, no own ink gets in and it is divided by its own sum instead. p itself holds some of s,
 * which is taken to the other side of the equation. The films depend on the store through its tack alone, so one
 * number stands for the store until they have settled.
 */
import type { Contact, Past } from './contact.ts'
import { newtonStep } from './contact.ts'
import type { Line, Unit } from './line.ts'
import { storeFilm } from './line.ts'

/** A mixture as far as a store's tack asks: um, um of foreign ink, um times ln of tack. */
interface Mixture {
  film: number
  foreign: number
  lnTack: number
}

/** What the store of before and the plates of before still hold: nothing when settling. */
interface Remains {
  kept: number
  store: Mixture
  plates: Mixture
}

const nothing: Mixture = { film: 0, foreign: 0, lnTack: 0 }
const noRemains: Remains = { kept: 0, store: nothing, plates: nothing }

export function remainsOf(line: Line, unit: Unit, past: Past | undefined): Remains {
  if (!past) return noRemains
  const { kept, train } = past
  const plates = new Float64Array(line.lnTack.length)
  sumPlates(unit, past, plates)
  return { kept, store: mixtureOf(line, unit, train.store), plates: mixtureOf(line, unit, plates) }
}

function mixtureOf(line: Line, unit: Unit, amounts: Float64Array): Mixture {
  const mixture = { ...nothing }
  amounts.forEach((amount, ink) => {
    mixture.film += amount
    mixture.lnTack += amount * line.lnTack[ink]
    if (ink !== unit.index) mixture.foreign += amount
  })
  return mixture
}

/** Adds the kept part of the plates, weighted by area, to `sum`. */
function sumPlates(unit: Unit, { kept, train }: Past, sum: Float64Array): void {
  for (let patch = 1 << unit.index; patch < unit.areas.length; patch++) {
    for (let ink = 0; ink < sum.length; ink++)
      sum[ink] += kept * unit.areas[patch] * train.plate[patch * sum.length + ink]
  }
}

/**
 * A step of Newton towards ln of the tack that the store would settle to under the present films; it may be a little
 * off only while a store changes between taking own ink in and running over.
 */
export function storeStep(
  line: Line,
  unit: Unit,
  contacts: readonly Contact[],
  { kept, store, plates }: Remains,
  storeLnTack: number,
): number {
  const forgotten = 1 - kept
  const ownLnTack = line.lnTack[unit.index]
  // What reaches the plates from the store, and what else does.
  let own = 0
  let film = 0
  let foreign = 0
  let lnTack = 0
  let printing = 0
  let onPlates = 0
  // How the excess of its tack over the own ink's, and the store's own part, answer to the store's tack.
  let excessByStore = 0
  let ownByStore = 0
  for (let patch = 1 << unit.index; patch < contacts.length; patch++) {
    const contact = contacts[patch]
    const { area, divisor, fromStore, fromSheet, lifting, tearing, stack } = contact
    const weight = area / divisor
    const off = fromSheet * (lifting * stack.liftedFilm + tearing * stack.tornFilm)
    const offLnTack = fromSheet * (lifting * stack.liftedLnTack + tearing * stack.tornLnTack)
    const offOwn = fromSheet * (lifting * stack.lifted[unit.index] + tearing * stack.torn[unit.index])
    const other = contact.carriedFilm + off
    const otherLnTack = contact.carriedLnTack + offLnTack
    printing += area
    onPlates += area * contact.film
    own += weight * fromStore
    film += weight * other
    foreign += weight * (other - offOwn - contact.carried[unit.index])
    lnTack += weight * otherLnTack
    const liftedExcess = stack.liftedLnTack - ownLnTack * stack.liftedFilm
    const tornExcess = stack.tornLnTack - ownLnTack * stack.tornFilm
    const fading = contact.divisorByPull / divisor
    const changes = fromSheet * (contact.liftingByPull * liftedExcess + contact.tearingByPull * tornExcess)
    const byStore = weight * contact.pullByStore
    excessByStore += byStore * (changes - (otherLnTack - ownLnTack * other) * fading)
    ownByStore -= byStore * fromStore * fading
  }
  const feed = 0.5 * forgotten * forgotten
  const left = storeFilm - 0.5 * printing * unit.film
  const settled = kept * storeFilm + forgotten * (storeFilm - left) - feed * own
  const soil = kept * storeFilm * store.foreign + 0.5 * forgotten * plates.foreign + feed * foreign
  if (soil <= settled) {
    const excess =
      kept * storeFilm * (store.lnTack - ownLnTack * store.film) +
      0.5 * forgotten * (plates.lnTack - ownLnTack * plates.film) +
      feed * (lnTack - ownLnTack * film)
    const slope = (feed * (excessByStore + (excess / settled) * ownByStore)) / settled
    return newtonStep(ownLnTack + excess / settled - storeLnTack, slope)
  }
  const full = Math.max(storeFilm, left + 0.5 * (plates.film + forgotten * onPlates))
  const all = kept * full * store.film + 0.5 * forgotten * plates.film + feed * film
  return (kept * full * store.lnTack + 0.5 * forgotten * plates.lnTack + feed * lnTack) / all - storeLnTack
}

/** Works out the store, ink by ink, from films that have settled. */
export function settleStore(
  unit: Unit,
  contacts: readonly Contact[],
  store: Float64Array,
  past: Past | undefined,
): void {
  const kept = past?.kept ?? 0
  const forgotten = 1 - kept
  const feed = 0.5 * forgotten * forgotten
  store.fill(0)
  if (past) {
    sumPlates(unit, past, store)
    for (let ink = 0; ink < store.length; ink++) store[ink] *= 0.5 * forgotten
  }
  let onPlates = 0
  for (let ink = 0; ink < store.length; ink++) onPlates += store[ink]
  let printing = 0
  let own = 0
  for (let patch = 1 << unit.index; patch < contacts.length; patch++) {
    const { area, film, fromStore, fromSheet, carried, divisor, lifting, tearing, stack } = contacts[patch]
    const weight = (feed * area) / divisor
    printing += area
    onPlates += feed * area * film
    own += weight * fromStore
    const lifted = weight * fromSheet * lifting
    const torn = weight * fromSheet * tearing
    for (let ink = 0; ink < store.length; ink++) {
      store[ink] += weight * carried[ink] + lifted * stack.lifted[ink] + torn * stack.torn[ink]
    }
  }
  const left = storeFilm - 0.5 * printing * unit.film
  const keptShare = (ink: number) => kept * (past?.train.store[ink] ?? 0)
  const settled = kept * storeFilm + forgotten * (storeFilm - left) - own
  let foreign = 0
  for (let ink = 0; ink < store.length; ink++)
    if (ink !== unit.index) foreign += storeFilm * keptShare(ink) + store[ink]
  const overfull = foreign > settled
  const full = overfull ? Math.max(storeFilm, left + onPlates / forgotten) : storeFilm
  let sum = 0
  for (let ink = 0; ink < store.length; ink++) {
    store[ink] += full * keptShare(ink)
    if (overfull || ink !== unit.index) sum += store[ink]
  }
  if (!overfull) store[unit.index] = settled - sum
  const divisor = overfull ? sum : settled
  for (let ink = 0; ink < store.length; ink++) store[ink] /= divisor
  if (overfull) store[unit.index] = Math.max(store[unit.index], trace)
}

/** Own ink dwindles in a store that runs over, yet never quite ends; this much keeps the ratio of any two films of it. */
const trace = 1e-12
