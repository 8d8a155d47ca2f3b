/**
 * The cells that the section cuts through, column by column: what lay there, what was brought, where it broke and what
 * stayed. All of it is read off the computed cells; nothing is made up for the picture.
 */
import { contactShare, heldFilm } from '../physics/transfer.ts'
import type { NipAccount } from '../press/account.ts'
import type { CellPrint } from '../press/cell-stage.ts'
import { nothingMet, paperTorn } from '../press/cell-stage.ts'
import type { Run } from '../press/run.ts'
import { latest } from './latest.ts'

/** Columns in a section: chosen so that one is still 5 px wide in the smallest view. */
const sectionColumns = 48

/** The plane that broke was the paper's surface. */
export const inPaper = -1
/** No plane broke, as nothing met. */
export const nowhere = -2

export interface Columns {
  count: number
  /** the layer that broke, or one of the two codes above */
  plane: Int16Array
  /** [layer][column] um before the stack parted; the last layer is the film on the blanket */
  before: Float64Array[]
  /** [layer][column] um left on the sheet */
  left: Float64Array[]
  /** the layer that lies on bare paper, -1 if none does */
  lowest: number
  /** um of the lowest layer held fast by the paper, as the sheet arrives and as it leaves */
  heldBefore: Float64Array
  heldAfter: Float64Array
  /** share of each column in real contact */
  contact: Float64Array
  /** 1 where the paper was torn by a unit before this one */
  pitted: Uint8Array
}

/** The cells of `cells` that a section cuts: the middle columns of a row. */
export function cutOf(cells: { width: number }): { first: number; count: number } {
  const count = Math.min(sectionColumns, cells.width)
  return { first: (cells.width - count) >> 1, count }
}

/** Reads the columns of one row at one unit's nip. */
export const columnsOf = latest(readColumns)

function readColumns(run: Run, accounts: readonly NipAccount[], cells: CellPrint, unit: number, row: number): Columns {
  const { first, count } = cutOf(cells)
  const start = Math.min(cells.height - 1, Math.max(0, row)) * cells.width + first
  const cut = (field: Float32Array) => Float64Array.from(field.subarray(start, start + count))
  const { broke, thickness } = cells.stages[unit]
  const before = unit > 0 ? cells.stages[unit - 1].thickness.map(cut) : []
  const wet = new Float64Array(count)
  before.slice(run.line.units[unit].firstWet).forEach((film) => film.forEach((um, i) => (wet[i] += um)))
  const brought = cells.brought[unit]
  const lowest = accounts.findLastIndex((account) => account.unit <= unit && account.onBare)
  const held = heldBy(run, cells, lowest, start, count)
  return {
    count,
    plane: Int16Array.from(broke.subarray(start, start + count), planeOf),
    before: [...before, new Float64Array(count).fill(brought)],
    left: thickness.map(cut),
    lowest,
    heldBefore: held(unit - 1),
    heldAfter: held(unit),
    contact: wet.map((um) => contactShare(run.line.paper, brought, um)),
    pitted: Uint8Array.from(wet, (_, i) =>
      cells.stages.slice(0, unit).some((stage) => stage.broke[start + i] === paperTorn) ? 1 : 0,
    ),
  }
}

function planeOf(code: number): number {
  return code === paperTorn ? inPaper : code === nothingMet ? nowhere : code
}

/**
 * um held fast by the paper in each column once a unit has passed. All of it was taken up at once by bare paper, so it
 * is the same share of the fresh film everywhere; later only tearing removes it, as the film itself is removed there.
 */
function heldBy({ line: { paper } }: Run, cells: CellPrint, lowest: number, start: number, count: number) {
  return (unit: number): Float64Array => {
    if (lowest < 0 || unit < lowest) return new Float64Array(count)
    const brought = cells.brought[lowest]
    const held = heldFilm(paper, brought)
    const share = held / (held + paper.freeSplit * (brought - held))
    return Float64Array.from({ length: count }, (_, i) => {
      const film = (stage: number) => cells.stages[stage].thickness[lowest][start + i]
      let um = share * film(lowest)
      for (let stage = lowest + 1; stage <= unit; stage++) {
        if (cells.stages[stage].broke[start + i] === paperTorn && film(stage - 1) > 0)
          um *= film(stage) / film(stage - 1)
      }
      return um
    })
  }
}
