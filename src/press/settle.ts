/**
 * The settled state of one unit: plate, blanket and store such that a revolution changes none of them. It is not found
 * by revolving. With the blanket film X, the store's film R s, the share taken phi and the ink lifted l,
 *
 *   where the unit prints:        X = (R s + 2 l) / (1 + 2 phi)
 *   where it does not:            X phi = l
 *   store, for a foreign ink k:   what it lifts equals what it gives back, so
 *                                 s_k = sum(area 2 l_k / (1 + 2 phi)) / sum(area 2 R phi / (1 + 2 phi))
 *
 * and only phi and l depend, through the film's thickness and tack, on X itself. These are turned round until neither
 * films nor store change; some ten turns do what takes thousands of revolutions (tests hold the two equal).
 */
import type { Parting, Surface } from '../physics/nip.ts'
import { emptyParting, part } from '../physics/nip.ts'
import { thicknessExponent } from '../physics/pull.ts'
import type { Line, Unit } from './line.ts'
import { printsIn } from './patches.ts'
import type { Sheet } from './sheet.ts'
import type { Stack } from './stack.ts'
import { emptyStack, liftedInk, lnTackOf, surveyStack } from './stack.ts'
import type { Train } from './train.ts'
import { emptyTrain, patchBefore } from './train.ts'

/** Largest relative change of any film or store share at which a unit counts as settled. */
export const settledWithin = 1e-12
/** More turns than any legal set-up needs (the fuzz tests hold the most seen well below); then the last state is used. */
const mostTurns = 2000

/** A patch as the settling sees it: what lies below, and the blanket film so far. */
interface Contact {
  stack: Stack
  parting: Parting
  area: number
  prints: boolean
  /** um by ink on the blanket as it meets the sheet */
  brought: Float64Array
  film: number
}

export interface Settled {
  train: Train
  turns: number
}

/** Settles one unit under a settled sheet `before` coming in. */
export function settleUnit(line: Line, unit: Unit, before: Sheet): Settled {
  const { inks } = before
  const surface: Surface = { paper: line.paper, lnStrength: unit.lnSurfaceStrength, pickChance: line.pickChance }
  const contacts = Array.from(unit.areas, (area, patch) => contactOf(line, unit, before, patch, area))
  const train = emptyTrain(unit, inks)
  let turns = 0
  for (let change = 1; change > settledWithin && turns < mostTurns; turns++) {
    change = 0
    for (const contact of contacts) {
      const film = contact.film
      if (film === 0) continue
      part(
        surface,
        contact.stack,
        film,
        lnTackOf(line.lnTack, contact.brought, 0, film) + unit.blanketTerm,
        contact.parting,
      )
      if (contact.prints) turnPrinting(unit, contact, train.store)
      else turnIdle(line, contact)
      change = Math.max(change, Math.abs(contact.film / film - 1))
    }
    change = Math.max(change, settleStore(unit, contacts, train.store))
  }
  contacts.forEach((contact, patch) => leave(unit, contact, train, patch))
  return { train, turns }
}

function contactOf(line: Line, unit: Unit, before: Sheet, patch: number, area: number): Contact {
  const stack = emptyStack(before.units, before.inks)
  surveyStack(line, unit, before, patchBefore(patch, unit.index), stack)
  const prints = printsIn(patch, unit.index)
  // A start of the right size: half the form roller's film, or as much soil as one break would lift.
  const brought = prints ? unit.startingStore.map((share) => 0.5 * unit.film * share) : stack.lifted.slice()
  return {
    stack,
    parting: emptyParting(),
    area,
    prints,
    brought,
    film: brought.reduce((sum, amount) => sum + amount, 0),
  }
}

/** X = (R s + 2 l) / (1 + 2 phi) */
function turnPrinting(unit: Unit, contact: Contact, store: Float64Array): void {
  const { parting, stack, brought } = contact
  const scale = 1 / (1 + 2 * parting.taken)
  contact.film = 0
  for (let ink = 0; ink < brought.length; ink++) {
    brought[ink] = scale * (unit.film * store[ink] + 2 * liftedInk(parting, stack, ink))
    contact.film += brought[ink]
  }
}

/**
 * X phi = l, a step of Newton in ln X: the ratio l / (X phi) falls as X^-(1 + beta m), because a thicker film is weaker
 * (beta) and the weaker plane breaks more often (m).
 */
function turnIdle(line: Line, contact: Contact): void {
  const { parting, stack, brought, film } = contact
  let lifted = 0
  for (let ink = 0; ink < brought.length; ink++) lifted += brought[ink] = liftedInk(parting, stack, ink)
  contact.film = film * Math.pow(lifted / (parting.taken * film), 1 / (1 + thicknessExponent * line.paper.evenness))
  for (let ink = 0; ink < brought.length; ink++) brought[ink] *= contact.film / lifted
}

/** Sets the store's shares to what the present films would settle it to; returns the largest change of a share. */
function settleStore(unit: Unit, contacts: readonly Contact[], store: Float64Array): number {
  let given = 0
  const target = new Float64Array(store.length)
  for (const { prints, area, parting, stack } of contacts) {
    if (!prints) continue
    const weight = (2 * area) / (1 + 2 * parting.taken)
    given += weight * parting.taken * unit.film
    for (let ink = 0; ink < store.length; ink++) target[ink] += weight * liftedInk(parting, stack, ink)
  }
  let foreign = 0
  for (let ink = 0; ink < store.length; ink++) {
    target[ink] /= given
    if (ink !== unit.index) foreign += target[ink]
  }
  if (foreign < 1) target[unit.index] = 1 - foreign
  else flooded(contacts, target)
  let change = 0
  for (let ink = 0; ink < store.length; ink++) {
    change = Math.max(change, Math.abs(target[ink] - store[ink]))
    store[ink] = target[ink]
  }
  return change
}

/**
 * A unit that lifts more than it prints overflows: no own ink gets in, and the store turns into what comes back,
 * s_k = sum(area (R s_k + X_k)) / sum(area (R + X)).
 */
function flooded(contacts: readonly Contact[], target: Float64Array): void {
  target.fill(0)
  let total = 0
  for (const { prints, area, brought, film } of contacts) {
    if (!prints) continue
    total += area * film
    for (let ink = 0; ink < target.length; ink++) target[ink] += area * brought[ink]
  }
  for (let ink = 0; ink < target.length; ink++) target[ink] /= total
}

/** What plate and blanket keep between revolutions in the settled state. */
function leave(unit: Unit, contact: Contact, train: Train, patch: number): void {
  const { brought, prints } = contact
  const at = patch * brought.length
  for (let ink = 0; ink < brought.length; ink++) {
    if (prints) train.plate[at + ink] = brought[ink]
    train.blanket[at + ink] = prints ? 1.5 * brought[ink] - 0.5 * unit.film * train.store[ink] : brought[ink]
  }
}
