/**
 * How much ink a surface takes. On bare, strong paper this is the equation of Walker and Fetsko (1955),
 *
 *     y = (1 - e^(-k x)) { b (1 - e^(-x/b)) + f [x - b (1 - e^(-x/b))] }
 *
 * with x the film brought and y the film left on the paper, both um.
 */
import type { Paper } from './paper.ts'

/** Share of the blanket's film that stays when that film itself splits on wet ink: an even split. */
export const wetSplit = 0.5

/** Share of the area in real contact, with `film` (um) brought onto `wetBelow` (um) of wet ink. */
export function contactShare(paper: Paper, film: number, wetBelow: number): number {
  return -Math.expm1(-paper.contactRate * (film + wetBelow))
}

/** The part (um) of a film `film` (um) that a bare surface holds at once. */
export function heldFilm(paper: Paper, film: number): number {
  const limit = paper.holdLimit * paper.absorbency
  return -limit * Math.expm1(-film / limit)
}

/** The film (um) that bare, strong paper takes from `film` (um) on the blanket. */
export function takenByBarePaper(paper: Paper, film: number): number {
  const held = heldFilm(paper, film)
  return contactShare(paper, film, 0) * (held + paper.freeSplit * (film - held))
}
