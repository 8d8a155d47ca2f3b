/**
 * One nip: a blanket film meets the wet films on the sheet, and when the nip opens the stack breaks at its weakest
 * plane. This is the mean field: shares of the area, and expected amounts. Amounts themselves move elsewhere; here
 * stands only what share goes which way.
 */
import type { Paper } from './paper.ts'
import { thicknessTerm } from './pull.ts'
import { contactShare, heldFilm, wetSplit } from './transfer.ts'
import { planeWeight } from './weakest.ts'

/** A surface as one nip finds it. */
export interface Surface {
  paper: Paper
  /** ln of its strength (tack units) at this nip */
  lnStrength: number
  /** chance that a spot is torn, by ln(pull / strength) */
  pickChance: (lnRatio: number) => number
}

/** What the nip finds on the sheet: the wet films' weights F^-m summed, and their thickness (um) together. */
export interface WetFilms {
  weight: number
  thickness: number
}

/** How the stack parted. Shares are of 1. */
export interface Parting {
  /** share of the area in contact */
  contact: number
  /** of the area in contact: where the paper's surface is torn */
  torn: number
  /** of the area in contact with the surface whole: where the blanket's film is the weakest plane */
  blanketBreaks: number
  /** share of the blanket's film left on the sheet, over the whole area */
  taken: number
  /** um of it that bare paper holds fast, over the whole area; 0 on wet ink */
  held: number
}

export function emptyParting(): Parting {
  return { contact: 0, torn: 0, blanketBreaks: 0, taken: 0, held: 0 }
}

/**
 * Parts a stack. `film` is the blanket's film (um, 0 or more), `lnBlanketPull` the ln of its pull (tack units) but for
 * its thickness. An empty blanket has no plane that can break, so it can only lift. Writes into `parting` and returns it.
 */
export function part(surface: Surface, wet: WetFilms, film: number, lnBlanketPull: number, parting: Parting): Parting {
  const { paper } = surface
  const blanketWeight = film > 0 ? planeWeight(lnBlanketPull + thicknessTerm(film), paper.evenness) : 0
  const weight = blanketWeight + wet.weight
  if (weight === 0) return Object.assign(parting, nothing)
  // Scale of the pull that reaches the paper: weight^(-1/m), in logarithms.
  const lnPullOnPaper = -Math.log(weight) / paper.evenness
  parting.contact = contactShare(paper, film, wet.thickness)
  parting.torn = surface.pickChance(lnPullOnPaper - surface.lnStrength)
  parting.blanketBreaks = blanketWeight / weight
  const whole = parting.contact * (1 - parting.torn)
  if (wet.thickness > 0) {
    parting.taken = whole * parting.blanketBreaks * wetSplit
    parting.held = 0
  } else {
    const held = heldFilm(paper, film)
    parting.taken = (whole * (held + paper.freeSplit * (film - held))) / film
    parting.held = whole * held
  }
  return parting
}

const nothing = emptyParting()
