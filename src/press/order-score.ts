/**
 * One number for an order, 100 for a sheet without fault, and the four terms it is made of. Each term is a shortfall
 * times a weight; the default weights make a fault of each kind cost 10 points where it begins to be noticed:
 *
 * - trap: overprint faults are noticed from about 10 % off (trade handbook), so a tenth of trap missing costs 10;
 * - contamination: no published figure; a tenth of foreign ink is held as bad as a tenth of trap missing, as both
 *   change the colour by about as much ink;
 * - picking: half a percent of the area torn is plainly seen (common practice), so it costs 10;
 * - colour: 5 dE00 on average is the usual tolerance of a solid (ISO 12647-2, from memory), so it costs 10.
 */
import type { OrderPath } from './order-path.ts'
import { worstTorn } from './order-path.ts'
import type { Sheet } from './sheet.ts'

/** What is read off the settled sheet of one order. */
export interface OrderTerms {
  /** 0 to 1: mean, over the chosen overprints, of the film each later ink keeps on wet ink / on bare paper, never counted above 1 */
  trap: number
  /** 0 to 1: foreign share of the worst store */
  contamination: number
  /** 0 to 1: share of the worst patch's area torn */
  picking: number
  /** mean dE00 of the patches that have an aim and a colour; NaN where none has */
  colour: number
}

/** Points a term costs: per unit of trap missing, contamination and picking, and per dE00. */
export type OrderWeights = Record<keyof OrderTerms, number>

export const termNames = ['trap', 'contamination', 'picking', 'colour'] as const satisfies (keyof OrderTerms)[]

export const usualWeights: OrderWeights = { trap: 100, contamination: 100, picking: 2000, colour: 2 }

/** Mean dE00 of a printed sheet to its aim, `order` naming the ink on each unit by its place in the set-up; NaN: none known. */
export type ColourJudge = (sheet: Sheet, order: Uint8Array) => number

/** What orders are judged by; inks are meant by their places in the set-up. */
export interface OrderAim {
  /** sets of two or more inks printing on one spot */
  overprints: readonly (readonly number[])[]
  weights: OrderWeights
  judgeColour?: ColourJudge
}

/** Every two inks: what counts where nothing else is chosen. */
export function allPairs(inks: number): number[][] {
  return Array.from({ length: inks }, (_, later) =>
    Array.from({ length: later }, (_, earlier) => [earlier, later]),
  ).flat()
}

/** Points: scores that agree so far are equal, and orders of inks that are alike do not stand in the order of rounding errors. */
const scoreDigit = 1e-8

export function scoreOf(terms: OrderTerms, weights: OrderWeights): number {
  const colour = Number.isNaN(terms.colour) ? 0 : weights.colour * terms.colour
  const score =
    100 -
    weights.trap * (1 - terms.trap) -
    weights.contamination * terms.contamination -
    weights.picking * terms.picking -
    colour
  return Math.round(score / scoreDigit) * scoreDigit
}

/** The terms of the inks now on the press; overprints of inks that are not yet on it are left out. */
export function termsOf(path: OrderPath, aim: OrderAim): OrderTerms {
  const { depth, order } = path
  const sheet = path.sheets[depth]
  return {
    trap: meanTrap(path, aim.overprints),
    contamination: path.contamination[depth],
    picking: worstTorn(path),
    colour: depth === path.inks && aim.judgeColour ? aim.judgeColour(sheet, order) : NaN,
  }
}

function meanTrap({ depth, inks, order, sheets }: OrderPath, overprints: OrderAim['overprints']): number {
  const sheet = sheets[depth]
  const unitOfInk = new Int8Array(inks).fill(-1)
  const alone = new Float64Array(depth)
  for (let unit = 0; unit < depth; unit++) {
    unitOfInk[order[unit]] = unit
    alone[unit] = filmOf(sheet, 1 << unit, unit)
  }
  let sum = 0
  let counted = 0
  for (const overprint of overprints) {
    let patch = 0
    let first = depth
    for (const ink of overprint) {
      const unit = unitOfInk[ink]
      first = Math.min(first, unit)
      patch |= 1 << unit
    }
    if (first < 0) continue
    let kept = 0
    for (const ink of overprint) {
      const unit = unitOfInk[ink]
      if (unit !== first) kept += Math.min(1, filmOf(sheet, patch, unit) / alone[unit])
    }
    sum += kept / (overprint.length - 1)
    counted++
  }
  return counted > 0 ? sum / counted : 1
}

/** um of one unit's ink in a patch, all layers together. */
export function filmOf(sheet: Sheet, patch: number, ink: number): number {
  const { units, inks, amounts } = sheet
  let film = 0
  for (let layer = 0, at = patch * units * inks + ink; layer < units; layer++, at += inks) film += amounts[at]
  return film
}
