/**
 * One patch of one unit, as settling sees it: what lies below, the film that the blanket brings, and what becomes of
 * it. Whatever the unit does, the film brought is a mixture of three things,
 *
 *     brought = (fromStore * store + carried + fromSheet * off) / divisor
 *
 * the store, what plate and blanket carried along from earlier revolutions, and what comes off the sheet. With w the
 * share by which the past is forgotten (1: settled), R the form roller's film and phi the share of the film taken,
 *
 *                         fromStore   carried                            fromSheet   divisor
 *     where it prints:    R / 4       (1 - w) (plate / 4 + blanket / 2)  w / 2       1 - w + w (1/2 + phi) / 2
 *     where it does not:  0           (1 - w) blanket                    w           1 - w + w phi
 *
 * so at w = 1 it is (R store + 2 off) / (1 + 2 phi) and off / phi. Both phi and what comes off follow from the pull of
 * the film brought, and that from its thickness and tack: one equation for ln of that pull, solved by Newton's method.
 * A few sums over the inks do for it; the inks themselves are told apart only at the end.
 */
import type { Parting, Surface } from '../physics/nip.ts'
import { emptyParting, part } from '../physics/nip.ts'
import type { Paper } from '../physics/paper.ts'
import { paperModulus } from '../physics/paper.ts'
import { referenceThickness, thicknessExponent, thicknessTerm } from '../physics/pull.ts'
import type { Line, Unit } from './line.ts'
import { printsIn } from './patches.ts'
import type { Sheet } from './sheet.ts'
import type { Stack } from './stack.ts'
import { surveyStack } from './stack.ts'
import type { Train } from './train.ts'

/** What the unit was like before, and how much of it is kept: `kept` is 1 - w, and 0 when settling. */
export interface Past {
  kept: number
  train: Train
}

export interface Contact {
  stack: Stack
  parting: Parting
  area: number
  prints: boolean
  /** um on the blanket as it meets the sheet; 0 where nothing can ever get there */
  film: number
  /** ln of its pull (tack units), and the thickness term in it */
  lnPull: number
  thin: number
  /** the last step of the pull, and the size of the last step of pull and film */
  step: number
  change: number
  /** of the equation above; `kept` is 1 - w */
  kept: number
  fromStore: number
  fromSheet: number
  divisor: number
  carried: Float64Array
  carriedFilm: number
  carriedLnTack: number
  /** shares of `stack.lifted` and `stack.torn` that leave with the blanket */
  lifting: number
  tearing: number
  /** how `lnPull` answers to ln of the store's tack, and ln of the film, `lifting`, `tearing` and `divisor` to `lnPull` */
  pullByStore: number
  filmByPull: number
  liftingByPull: number
  tearingByPull: number
  divisorByPull: number
  /** um by ink on the blanket as it meets the sheet; filled in at the end */
  brought: Float64Array
}

export function emptyContact(stack: Stack, inks: number): Contact {
  return {
    stack,
    parting: emptyParting(),
    area: 0,
    prints: false,
    film: 0,
    lnPull: 0,
    thin: 0,
    step: 0,
    change: 0,
    kept: 0,
    fromStore: 0,
    fromSheet: 0,
    divisor: 1,
    carried: new Float64Array(inks),
    carriedFilm: 0,
    carriedLnTack: 0,
    lifting: 0,
    tearing: 0,
    pullByStore: 0,
    filmByPull: 0,
    liftingByPull: 0,
    tearingByPull: 0,
    divisorByPull: 0,
    brought: new Float64Array(inks),
  }
}

const nothing = emptyParting()

/** Readies `contact` for `patch` under the sheet coming in, with a first guess of its film. */
export function meet(
  contact: Contact,
  line: Line,
  unit: Unit,
  before: Sheet,
  patch: number,
  past: Past | undefined,
): void {
  const { stack } = contact
  const kept = past?.kept ?? 0
  const prints = printsIn(patch, unit.index)
  // The patch in which the unit prints comes after the one that differs by that alone, and shares its stack.
  if (!prints) surveyStack(line, unit, before, patch, stack)
  contact.area = unit.areas[patch]
  contact.prints = prints
  contact.kept = kept
  contact.fromStore = prints ? 0.25 * unit.film : 0
  contact.fromSheet = prints ? 0.5 * (1 - kept) : 1 - kept
  contact.carriedFilm = contact.carriedLnTack = contact.step = 0
  if (past) carry(contact, line, past, patch)
  // A start of the right size: twice what comes from the store, or the soil of paper that holds, or what was there before.
  const own = kept > 0 ? contact.fromStore : 2 * contact.fromStore
  const soil = prints || kept > 0 ? 0 : soilFilm(stack, unit, line.paper.evenness)
  const other = kept > 0 ? contact.carriedFilm / kept : soil
  const otherLnTack = kept > 0 ? contact.carriedLnTack / kept : (soil * stack.liftedLnTack) / stack.liftedFilm
  contact.film = own + other
  contact.lifting = contact.tearing = 0
  contact.pullByStore = contact.filmByPull = contact.liftingByPull = contact.tearingByPull = contact.divisorByPull = 0
  // What an empty blanket meets stays whole, whatever this contact was used for before.
  Object.assign(contact.parting, nothing)
  contact.change = contact.film === 0 ? 0 : Infinity
  if (contact.film === 0) return
  const lnTack = (own * line.lnTack[unit.index] + (other > 0 ? otherLnTack : 0)) / contact.film
  contact.thin = thicknessTerm(contact.film)
  contact.lnPull = lnTack + unit.blanketTerm + contact.thin
}

/**
 * um on a blanket that only lifts and gives back, where the paper holds: both in balance, 2 lifted / x = w / W, with W the
 * weight of the films on the sheet and w = e^(-m T') (x / h0)^(beta m) that of the blanket's.
 */
function soilFilm(stack: Stack, unit: Unit, evenness: number): number {
  if (stack.liftedFilm === 0) return 0
  const lnPull = stack.liftedLnTack / stack.liftedFilm + unit.blanketTerm
  const weakening = thicknessExponent * evenness
  const lnBalance = Math.log(2 * stack.liftedFilm * stack.weight) + evenness * lnPull
  return Math.exp((lnBalance + weakening * Math.log(referenceThickness)) / (1 + weakening))
}

function carry(contact: Contact, line: Line, { kept, train }: Past, patch: number): void {
  const { carried, prints } = contact
  for (let ink = 0, at = patch * carried.length; ink < carried.length; ink++, at++) {
    carried[ink] = kept * (prints ? 0.25 * train.plate[at] + 0.5 * train.blanket[at] : train.blanket[at])
    contact.carriedFilm += carried[ink]
    contact.carriedLnTack += carried[ink] * line.lnTack[ink]
  }
}

/** The farthest that ln of a pull or a film moves at once. */
const longestStep = 1

function limited(step: number): number {
  return Math.max(-longestStep, Math.min(longestStep, step))
}

/** A Newton step towards f(x) = x, from f(x) - x and the slope of f; a slope near 1 would throw it far off. */
export function newtonStep(error: number, slope: number): number {
  return error / (1 - Math.min(slope, 0.7))
}

/**
 * Parts the stack under the present pull, works out the film that follows from it, and moves the pull by a step of
 * Newton towards the one that this film would have; `change` is the size of the step. `storeLnTack` is ln of the store's
 * tack, which has moved by `storeMoved` since the last turn.
 */
export function turn(contact: Contact, surface: Surface, unit: Unit, storeLnTack: number, storeMoved: number): void {
  movePull(contact, contact.pullByStore * storeMoved)
  const { parting, stack, prints, fromStore, fromSheet, film, lnPull } = contact
  part(surface, stack, film, lnPull - contact.thin, parting)
  const { contact: touched, torn, taken, blanketBreaks } = parting
  const whole = 1 - torn
  const lifting = touched * whole * (1 - blanketBreaks)
  const tearing = touched * torn
  const divisor = contact.kept + fromSheet * (prints ? 0.5 + taken : taken)
  const off = fromSheet * (lifting * stack.liftedFilm + tearing * stack.tornFilm)
  const amount = fromStore + contact.carriedFilm + off
  contact.lifting = lifting
  contact.tearing = tearing
  contact.divisor = divisor
  if (amount === 0) {
    contact.film = 0
    Object.assign(parting, nothing)
    contact.change = 0
    return
  }
  // How the film answers to itself while its pull stands still: contact grows, and what bare paper holds counts for less.
  const touch = touched > 0 ? (surface.paper.contactRate * film * (1 - touched)) / touched : 1
  const takes = touch + (stack.thickness > 0 ? 0 : holdSlope(surface.paper, film, parting))
  const filmByFilm = (touch * off) / amount - (takes * fromSheet * taken) / divisor
  const filmStep = limited(newtonStep(Math.log(amount / divisor / film), filmByFilm))
  thicken(contact, filmStep)

  const offLnTack = fromSheet * (lifting * stack.liftedLnTack + tearing * stack.tornLnTack)
  const mean = (fromStore * storeLnTack + contact.carriedLnTack + offLnTack) / amount
  const error = mean + unit.blanketTerm + contact.thin - lnPull
  // How all of it answers to ln of the film's pull: a stronger film breaks less often, and loads the paper more.
  const shifts = whole * surface.paper.evenness * blanketBreaks * (1 - blanketBreaks)
  // d ln(chance) / d ln(pull) of picking is the paper's modulus where it is rare, and fades as it becomes certain.
  const tears = torn * paperModulus * whole * blanketBreaks
  const liftingByPull = touched * (shifts - tears * (1 - blanketBreaks))
  const tearingByPull = touched * tears
  const takenByPull =
    stack.thickness > 0 ? -0.5 * touched * (shifts + tears * blanketBreaks) : (-taken * tears) / Math.max(whole, 1e-9)
  const divisorByPull = fromSheet * takenByPull
  const offByPull = fromSheet * (liftingByPull * stack.liftedFilm + tearingByPull * stack.tornFilm)
  const offLnTackByPull = fromSheet * (liftingByPull * stack.liftedLnTack + tearingByPull * stack.tornLnTack)
  const filmByPull = newtonStep(offByPull / amount - divisorByPull / divisor, filmByFilm)
  const pullByPull = (offLnTackByPull - mean * offByPull) / amount - thicknessExponent * filmByPull
  contact.filmByPull = filmByPull
  contact.liftingByPull = liftingByPull
  contact.tearingByPull = tearingByPull
  contact.divisorByPull = divisorByPull
  // The store's tack works through its share of the film.
  contact.pullByStore = newtonStep(fromStore / amount, pullByPull)
  let pullStep = limited(newtonStep(error, pullByPull))
  // A step that all but undoes the last one went too far: the slope of picking is an estimate.
  if (pullStep * contact.step < 0 && Math.abs(pullStep) > 0.8 * Math.abs(contact.step)) pullStep *= 0.5
  contact.step = pullStep
  movePull(contact, pullStep)
  contact.change = Math.max(Math.abs(pullStep), Math.abs(filmStep))
}

/** Moves the pull by a step, and the film with it. */
function movePull(contact: Contact, step: number): void {
  contact.lnPull += step
  thicken(contact, limited(contact.filmByPull * step))
}

/** Moves ln of the film by a step. */
function thicken(contact: Contact, step: number): void {
  contact.film *= Math.exp(step)
  contact.thin -= thicknessExponent * step
}

/** d ln(share taken in contact) / d ln(film) on bare paper: what it holds at once counts for less as the film grows. */
function holdSlope(
  { holdLimit, absorbency, freeSplit }: Paper,
  film: number,
  { contact, torn, held }: Parting,
): number {
  const whole = contact * (1 - torn)
  if (whole === 0) return 0
  const atOnce = held / whole
  const grows = Math.exp(-film / (holdLimit * absorbency)) * (1 - freeSplit) + freeSplit
  return (grows * film) / (atOnce + freeSplit * (film - atOnce)) - 1
}

/** Works out the film brought, ink by ink. */
export function bring(contact: Contact, store: Float64Array): void {
  const { brought, carried, stack, fromStore, fromSheet, lifting, tearing, divisor } = contact
  let film = 0
  if (contact.film === 0) brought.fill(0)
  else {
    for (let ink = 0; ink < brought.length; ink++) {
      const off = lifting * stack.lifted[ink] + tearing * stack.torn[ink]
      film += brought[ink] = (fromStore * store[ink] + carried[ink] + fromSheet * off) / divisor
    }
  }
  contact.film = film
}
