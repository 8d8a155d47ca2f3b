/**
 * The settled state of one unit: plate, blanket and store such that a revolution changes none of them. It is not found
 * by revolving. The pull of every film is turned round by the equation in contact.ts, and the store's tack along with
 * them by the one in settle-store.ts, each by steps of Newton, until none changes; some six turns do what takes
 * thousands of revolutions (tests hold the two equal).
 *
 * The same turning takes a unit a long stride forward instead of all the way, when it is given a past to remember
 * (stride.ts): with w the share forgotten and c the past, what is sought is y = (1 - w) c + w revolve(y).
 */
import type { Surface } from '../physics/nip.ts'
import type { Contact, Past } from './contact.ts'
import { bring, emptyContact, meet, turn } from './contact.ts'
import type { Line, Unit } from './line.ts'
import { passPatch } from './pass.ts'
import { remainsOf, settleStore, storeStep } from './settle-store.ts'
import type { Sheet } from './sheet.ts'
import { emptyStack } from './stack.ts'
import type { Train } from './train.ts'
import { emptyTrain, patchBefore } from './train.ts'

/** Largest relative change of any film or store share at which a unit counts as settled. */
export const settledWithin = 1e-12
/** The same where the paper is all but certain to be torn, and what is left of a film has lost digits to rounding. */
const roundedWithin = 1e-8
/** Turns after which a store that swings is held back. */
const turnsBeforeDamping = 6
/** Turns after which rounding is taken to be in the way; half of 24,000 random units need 7, one in a thousand 54. */
const manyTurns = 80
/** More turns than any legal set-up needs (tests look for one that does); then the last state is used. */
export const mostTurns = 500

/** What settling one unit works on; kept and used again where millions of units are settled. */
export interface Settled {
  /** by patch */
  contacts: Contact[]
  train: Train
  turns: number
}

export function roomToSettle(unit: number, inks: number): Settled {
  // Whether a unit prints in a patch or only touches it, it finds the same films there: both share one stack.
  const stacks = Array.from({ length: 1 << unit }, () => emptyStack(unit, inks))
  const contacts = [...stacks, ...stacks].map((stack) => emptyContact(stack, inks))
  return { contacts, train: emptyTrain(contacts.length, inks), turns: 0 }
}

/**
 * Settles one unit under a settled sheet `before` coming in; or takes it a stride on from its `past`. Each turn leaves a
 * small part of the error of the last, so films and store end closer to the settled state than `within`.
 */
export function settleUnit(
  line: Line,
  unit: Unit,
  before: Sheet,
  room: Settled = roomToSettle(unit.index, before.inks),
  past?: Past,
  within = settledWithin,
): Settled {
  const { contacts, train } = room
  const surface: Surface = { paper: line.paper, lnStrength: unit.lnSurfaceStrength, pickChance: line.pickChance }
  for (let patch = 0; patch < contacts.length; patch++) meet(contacts[patch], line, unit, before, patch, past)
  let storeLnTack = 0
  const store = past?.train.store ?? unit.startingStore
  for (let ink = 0; ink < store.length; ink++) storeLnTack += store[ink] * line.lnTack[ink]
  const remains = remainsOf(line, unit, past)
  // A step is halved whenever it all but undoes the last, as when a store hovers between full and running over.
  let damping = 1
  let moved = 0
  room.turns = 0
  for (let change = 1; change > (room.turns < manyTurns ? within : roundedWithin); room.turns++) {
    if (room.turns === mostTurns) break
    change = 0
    for (const contact of contacts) {
      // What has come to rest is left alone, unless it prints out of a store that has not.
      if (contact.change > within || (contact.prints && Math.abs(moved) > within)) {
        turn(contact, surface, unit, storeLnTack, moved)
      }
      if (contact.change > change) change = contact.change
    }
    const step = storeStep(line, unit, contacts, remains, storeLnTack)
    const undoes = room.turns >= turnsBeforeDamping && step * moved < 0 && Math.abs(step) > 0.3 * Math.abs(moved)
    damping = undoes ? 0.5 * damping : Math.min(1, 1.3 * damping)
    moved = damping * step
    storeLnTack += moved
    change = Math.max(change, Math.abs(step))
  }
  settleStore(unit, contacts, train.store, past)
  for (const contact of contacts) bring(contact, train.store)
  for (let patch = 0; patch < contacts.length; patch++) leave(contacts[patch], train, patch, past)
  return room
}

/** Lays the settled unit's films on the sheet that it was settled under. */
export function printSettled(unit: Unit, { contacts }: Settled, before: Sheet, after: Sheet): void {
  for (let patch = 0; patch < contacts.length; patch++) {
    const { stack, parting, brought, film } = contacts[patch]
    passPatch(unit, before, patchBefore(patch, unit.index), after, patch, stack, parting, brought, 0, film)
  }
}

/** What plate and blanket keep between revolutions. */
function leave(contact: Contact, train: Train, patch: number, past: Past | undefined): void {
  const { brought, parting, stack, lifting, tearing, prints } = contact
  const kept = past?.kept ?? 0
  for (let ink = 0, at = patch * brought.length; ink < brought.length; ink++, at++) {
    const off = lifting * stack.lifted[ink] + tearing * stack.torn[ink]
    const blanket = brought[ink] * (1 - parting.taken) + off
    train.plate[at] = prints ? kept * (past?.train.plate[at] ?? 0) + (1 - kept) * brought[ink] : 0
    train.blanket[at] = kept * (past?.train.blanket[at] ?? 0) + (1 - kept) * blanket
  }
}
