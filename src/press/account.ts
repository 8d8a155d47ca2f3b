/** What happened at one nip of one patch, told in full: every film, its pull, which planes broke, what moved where. */
import { emptyParting, part } from '../physics/nip.ts'
import { thicknessTerm } from '../physics/pull.ts'
import { heldFilm } from '../physics/transfer.ts'
import { pullOfWeakest } from '../physics/weakest.ts'
import type { Run } from './run.ts'
import type { Sheet } from './sheet.ts'
import { emptyStack, liftedInk, lnTackOf, surveyStack } from './stack.ts'
import { patchBefore } from './train.ts'

/** One film, on the sheet or on a blanket. */
export interface FilmAccount {
  /** the unit that laid it */
  unit: number
  /** um by ink */
  amounts: number[]
  /** um */
  thickness: number
  /** um held fast by the paper */
  held: number
  /** tack units; null where nothing can break: no film, or a dry one */
  pull: number | null
  /** of the area in contact: share in which this film broke */
  broke: number
}

export interface NipAccount {
  unit: number
  patch: number
  /** films on the sheet as it arrives, lowest first, empty ones included */
  films: FilmAccount[]
  /** the film the blanket brings */
  blanket: FilmAccount
  /** share of the area in contact */
  contact: number
  /** of the area in contact: share in which the paper is torn */
  torn: number
  /** tack units: surface strength here, and the pull that reaches it */
  strength: number
  pullOnPaper: number
  /** um by ink that leave with the blanket, and that it leaves on the sheet, over the whole area */
  lifted: number[]
  laid: number[]
  /** um of the laid film that would be held fast by the paper, 0 on wet ink */
  heldAtOnce: number
  /** whether the film met bare (or dry) paper */
  onBare: boolean
  /** films on the sheet as it leaves, lowest first, the new one included */
  after: { unit: number; amounts: number[]; thickness: number; held: number }[]
}

/**
 * The ink that makes up most of a film, by its unit. Where a unit prints nothing its blanket still leaves a film: of what
 * it took up before.
 */
export function mainInkOf({ unit, amounts, thickness }: Pick<FilmAccount, 'unit' | 'amounts' | 'thickness'>): number {
  return thickness > 0 ? amounts.indexOf(Math.max(...amounts)) : unit
}

/** Tells the nip of unit `unit` in `patch` (later units' bits are left out of account). */
export function nipAccount(run: Run, unit: number, patch: number): NipAccount {
  const { line, sheets, turns } = run
  const inks = line.lnTack.length
  const constants = line.units[unit]
  const here = patch & ((2 << unit) - 1)
  const before = sheets[unit]
  const from = patchBefore(here, unit)
  const stack = emptyStack(unit, inks)
  surveyStack(line, constants, before, from, stack)
  const brought = Array.from(turns[unit].brought.subarray(here * inks, (here + 1) * inks))
  const film = brought.reduce((sum, amount) => sum + amount, 0)
  const lnPull = film > 0 ? lnTackOf(line.lnTack, turns[unit].brought, here * inks, film) + constants.blanketTerm : 0
  const surface = { paper: line.paper, lnStrength: constants.lnSurfaceStrength, pickChance: line.pickChance }
  const parting = part(surface, stack, film, lnPull, emptyParting())
  const whole = 1 - parting.torn
  const { evenness } = line.paper
  const weight = stack.weight + (film > 0 ? Math.exp(-evenness * (lnPull + thicknessTerm(film))) : 0)
  const onBare = film > 0 && stack.thickness === 0
  return {
    unit,
    patch: here,
    films: filmsOf(before, from).map((each, layer) => ({
      ...each,
      pull: stack.weights[layer] > 0 ? pullOfWeakest(stack.weights[layer], evenness) : null,
      broke: stack.weight > 0 ? (whole * (1 - parting.blanketBreaks) * stack.weights[layer]) / stack.weight : 0,
    })),
    blanket: {
      unit,
      amounts: brought,
      thickness: film,
      held: 0,
      pull: film > 0 ? Math.exp(lnPull + thicknessTerm(film)) : null,
      broke: whole * parting.blanketBreaks,
    },
    contact: parting.contact,
    torn: parting.torn,
    strength: Math.exp(constants.lnSurfaceStrength),
    pullOnPaper: weight > 0 ? pullOfWeakest(weight, evenness) : 0,
    lifted: brought.map((_, ink) => liftedInk(parting, stack, ink)),
    laid: brought.map((amount) => amount * parting.taken),
    heldAtOnce: onBare ? heldFilm(line.paper, film) : 0,
    onBare,
    after: filmsOf(sheets[unit + 1], here),
  }
}

function filmsOf(sheet: Sheet, patch: number): { unit: number; amounts: number[]; thickness: number; held: number }[] {
  return Array.from({ length: sheet.units }, (_, layer) => {
    const film = patch * sheet.units + layer
    return {
      unit: layer,
      amounts: Array.from(sheet.amounts.subarray(film * sheet.inks, (film + 1) * sheet.inks)),
      thickness: sheet.thickness[film],
      held: sheet.held[film],
    }
  })
}
