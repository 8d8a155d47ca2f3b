import type { Paper, PaperName } from '../physics/paper.ts'
import { papers } from '../physics/paper.ts'
import { takenByBarePaper } from '../physics/transfer.ts'
import { usualFilm } from '../press/presets.ts'
import { settledWithin } from '../press/settle.ts'

const known = new Map<PaperName, number>()

/**
 * The film (um) that makes the solid of the ink sets on this kind of paper: what a unit with the usual film on its form
 * roller leaves on the bare paper once it has settled. An own paper counts as the one it was made
 * from, so that a surface that takes more ink also prints darker.
 */
export function referenceFilm(paper: Paper): number {
  const { base } = paper
  const film = known.get(base) ?? settledOnBarePaper(papers[base], usualFilm)
  known.set(base, film)
  return film
}

/**
 * The film (um) left on bare paper that stays whole, settled: a form roller with R brings x = R - 2 y(x), y what the
 * paper takes of x; turned round until it stands still.
 */
export function settledOnBarePaper(paper: Paper, formRollerFilm: number): number {
  let brought = 0.5 * formRollerFilm
  for (let change = 1; change > settledWithin;) {
    const next = formRollerFilm / (1 + (2 * takenByBarePaper(paper, brought)) / brought)
    change = Math.abs(next / brought - 1)
    brought = next
  }
  return takenByBarePaper(paper, brought)
}
