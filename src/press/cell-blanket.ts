/**
 * The blanket of a settled press, settled to the cells: a printing unit's film is X = R s - 2 N, with R the form roller's
 * film, s its store and N what the sheet takes away on balance (see settle.ts). In cells N is a little more than in the
 * mean field, so X is a little less. Stores, and blankets of units that do not print here, stay as the mean field has
 * them.
 */
import type { CellStrengths } from './cell-strengths.ts'
import type { CellPrint } from './cell-stage.ts'
import { nextStage } from './cell-stage.ts'
import { printsIn } from './patches.ts'
import type { Run } from './run.ts'

/** Cells that are enough to tell N within a percent or so. */
const cellsAsked = 16_384
/** Turns, and the share of each step taken: N falls as X grows, and full steps would swing to and fro. */
const turns = 3
const stepShare = 0.75

/** Settles the film that unit `index` brings to the cells of `print`, in place. */
export function settleBlanket(run: Run, print: CellPrint, index: number, strengths: CellStrengths): void {
  if (!printsIn(print.patch, index) || print.brought[index] === 0) return
  const { film: formFilm } = run.line.units[index]
  const { store } = run.trains[index]
  const cells = Math.min(print.width * print.height, cellsAsked)
  for (let turn = 0; turn < turns; turn++) {
    const stage = nextStage(run, print, index, strengths, cells, print.onPaper.held.slice(0, cells))
    const taken = takenByCells(print, index, stage.thickness, cells)
    const film = print.brought[index]
    const next = Array.from(taken, (amount, ink) => {
      const now = film * print.mixture[index][ink]
      return Math.max(0, now + stepShare * (formFilm * store[ink] - 2 * amount - now))
    })
    const sum = next.reduce((total, amount) => total + amount, 0)
    if (sum === 0) return
    print.brought[index] = sum
    print.mixture[index] = Float64Array.from(next, (amount) => amount / sum)
  }
}

/** um of each ink that the sheet takes away on balance, over the first `cells` cells on average. */
function takenByCells(print: CellPrint, index: number, after: readonly Float32Array[], cells: number): Float64Array {
  const before = index > 0 ? print.stages[index - 1].thickness : []
  const taken = new Float64Array(print.mixture[index].length)
  after.forEach((film, layer) => {
    let sum = 0
    for (let cell = 0; cell < cells; cell++) sum += film[cell] - (layer < index ? before[layer][cell] : 0)
    print.mixture[layer].forEach((share, ink) => (taken[ink] += (share * sum) / cells))
  })
  return taken
}
