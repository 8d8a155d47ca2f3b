/**
 * The sheet cell by cell: one patch, a grid of small spots, each with its own drawn strengths, each parting where its
 * own weakest plane is. The equations are those of the mean field; only chance is drawn instead of averaged. Blankets
 * bring the film that the mean field found, settled to these cells where the reading is settled (cell-blanket.ts). For
 * one nip from even films the cells' mean is the mean field's result; over a whole press it differs by a few points of
 * share, because films grow uneven.
 */
import { allAtOnce } from '../colour/in-steps.ts'
import type { Grid } from '../physics/strength-field.ts'
import { settleBlanket } from './cell-blanket.ts'
import type { CellPrint } from './cell-stage.ts'
import { nextStage } from './cell-stage.ts'
import { strengthsInSteps } from './cell-strengths.ts'
import type { Run } from './run.ts'

/** Prints `patch` of a run cell by cell, with the set-up's own seed. */
export function printCells(run: Run, patch: number, grid: Grid): CellPrint {
  return allAtOnce(cellsInSteps(run, patch, grid))
}

/** The same in small steps, the largest of them one unit's print, for a page that has to answer in between. */
export function* cellsInSteps(run: Run, patch: number, grid: Grid): Generator<undefined, CellPrint> {
  const { line, setUp } = run
  const inks = line.lnTack.length
  const onPaper = { layer: -1, held: new Float32Array(grid.width * grid.height) }
  const print: CellPrint = { ...grid, patch, stages: [], mixture: [], brought: [], onPaper }
  for (const { index } of line.units) {
    const at = (patch & ((2 << index) - 1)) * inks
    const amounts = run.turns[index].brought.subarray(at, at + inks)
    const film = amounts.reduce((sum, amount) => sum + amount, 0)
    print.brought.push(film)
    print.mixture.push(Float64Array.from(amounts, (amount) => (film > 0 ? amount / film : 0)))
    const strengths = yield* strengthsInSteps(grid, setUp.seed, index)
    if (setUp.reading === 'settled') settleBlanket(run, print, index, strengths)
    print.stages.push(nextStage(run, print, index, strengths, grid.width * grid.height, onPaper.held))
    yield
  }
  return print
}

/** The film (um) of each ink over all cells on average, after the last unit. */
export function meanFilmByInk(print: CellPrint): Float64Array {
  const last = print.stages[print.stages.length - 1]
  const cells = print.width * print.height
  const mean = new Float64Array(print.mixture[0].length)
  last.thickness.forEach((film, layer) => {
    let sum = 0
    for (let cell = 0; cell < cells; cell++) sum += film[cell]
    print.mixture[layer].forEach((share, ink) => (mean[ink] += (share * sum) / cells))
  })
  return mean
}
