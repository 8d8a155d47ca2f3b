/** The draws behind the cells: for every nip, the strength of each plane; for the paper, one lasting field. */
import type { Grid } from '../physics/strength-field.ts'
import { lnExponentialField } from '../physics/strength-field.ts'

export interface CellStrengths {
  /** ln E of each plane: films 0 to unit - 1, then the blanket's film */
  planes: Float32Array[]
  /** ln E of the paper's surface, the same at every unit */
  paper: Float32Array
}

/** Streams of one seed: the paper, then 16 for each unit's nip. */
const paperStream = 0
const streamsPerUnit = 16

/** Fields kept, by grid, seed and stream; the least lately used go first, so that memory stays bounded. */
const fields = new Map<string, Float32Array>()
/** 64 MiB of 32-bit values: all fields of eight units at 512 x 512 cells. */
const mostValues = 16 * 1024 * 1024

/**
 * The draws for unit `unit` (from 0) of a press, a field in each step; they depend on the seed and the grid alone, never
 * on the set-up.
 */
export function* strengthsInSteps(grid: Grid, seed: number, unit: number): Generator<undefined, CellStrengths> {
  const first = 1 + unit * streamsPerUnit
  const planes: Float32Array[] = []
  for (let plane = 0; plane <= unit; plane++) {
    planes.push(field(grid, seed, first + plane))
    yield
  }
  return { planes, paper: field(grid, seed, paperStream) }
}

function field(grid: Grid, seed: number, stream: number): Float32Array {
  const key = `${grid.width} ${grid.height} ${seed} ${stream}`
  let values = fields.get(key)
  if (!values) {
    values = lnExponentialField(grid, seed, stream)
  }
  fields.delete(key)
  fields.set(key, values)
  dropOld()
  return values
}

function dropOld(): void {
  let total = 0
  for (const values of fields.values()) total += values.length
  for (const [key, values] of fields) {
    if (total <= mostValues) return
    total -= values.length
    fields.delete(key)
  }
}
