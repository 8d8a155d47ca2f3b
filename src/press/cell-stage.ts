/**
 * One unit printed cell by cell: each cell parts where its own weakest plane is.
 *
 * Logarithms come out of the bits of the 32-bit film thickness and a table, since this is done for a million films.
 */
import { paperModulus } from '../physics/paper.ts'
import { thicknessExponent, thicknessTerm } from '../physics/pull.ts'
import type { Grid } from '../physics/strength-field.ts'
import { heldFilm, wetSplit } from '../physics/transfer.ts'
import type { CellStrengths } from './cell-strengths.ts'
import { lnOfBits } from './fast-ln.ts'
import type { Run } from './run.ts'
import { lnTackOf } from './stack.ts'

/** What broke in a cell, beside the number of the film (0 lowest; the unit's own number is the blanket's film). */
export const paperTorn = 254
/** Nothing met there: no ink on the blanket and none on the sheet. */
export const nothingMet = 255

/** The cells after one unit. */
export interface CellStage {
  /** by cell: the film that broke there, or one of the two codes above */
  broke: Uint8Array
  /** um by cell, one array a layer (layer j: what unit j left) */
  thickness: Float32Array[]
}

export interface CellPrint extends Grid {
  patch: number
  /** by unit */
  stages: CellStage[]
  /** by layer: share of each ink in it, the same in all cells; zeros where nothing was brought */
  mixture: Float64Array[]
  /** by unit: um on its blanket as it met the patch */
  brought: number[]
  /** the layer that lies on bare paper, and um of it that the paper holds fast, by cell, after the last unit */
  onPaper: { layer: number; held: Float32Array }
}

/** um of wet ink on the patch, in the mean field, as it reaches a unit: it decides for all cells whether paper is bare. */
function wetBefore(run: Run, patch: number, index: number): number {
  const sheet = run.sheets[index]
  const first = (patch & ((1 << index) - 1)) * sheet.units
  let wet = 0
  for (let layer = run.line.units[index].firstWet; layer < index; layer++) wet += sheet.thickness[first + layer]
  return wet
}

/** Prints the first `cells` cells by one more unit; `held` is what the paper holds of them, and is brought up to date. */
export function nextStage(
  run: Run,
  print: CellPrint,
  index: number,
  strengths: CellStrengths,
  cells: number,
  held: Float32Array,
): CellStage {
  const { line } = run
  const { paper } = line
  const unit = line.units[index]
  const before = index > 0 ? print.stages[index - 1].thickness : []
  const after = before.map((film) => film.slice(0, cells))
  const bits = before.map((film) => new Int32Array(film.buffer))
  const top = new Float32Array(cells)
  const broke = new Uint8Array(cells)
  const stage = { broke, thickness: [...after, top] }

  const film = print.brought[index]
  const onBare = film > 0 && wetBefore(run, print.patch, index) === 0
  const heldAtOnce = onBare ? heldFilm(paper, film) : 0
  const gain = onBare ? heldAtOnce + paper.freeSplit * (film - heldAtOnce) : wetSplit * film
  if (onBare) print.onPaper.layer = index
  const lowest = print.onPaper.layer

  // m ln F of each plane, but for what varies from cell to cell.
  const m = paper.evenness
  const lnTack = (layer: number) => lnTackOf(line.lnTack, print.mixture[layer], 0, 1)
  const films = before.map((_, layer) => m * (lnTack(layer) + unit.below[layer].term + thicknessTerm(1)))
  const blanket = film > 0 ? m * (lnTack(index) + unit.blanketTerm + thicknessTerm(film)) : Infinity
  const perLnThickness = -m * thicknessExponent

  for (let cell = 0; cell < cells; cell++) {
    let weakest = blanket + strengths.planes[index][cell]
    let plane = index
    let wet = 0
    for (let layer = unit.firstWet; layer < index; layer++) {
      const thickness = before[layer][cell]
      if (thickness === 0) continue
      const setting = m * lnOnePlus(unit.below[layer].rise / (1 + wet))
      const strength =
        films[layer] + perLnThickness * lnOfBits(bits[layer][cell]) + setting + strengths.planes[layer][cell]
      if (strength < weakest) {
        weakest = strength
        plane = layer
      }
      wet += thickness
    }
    if (weakest === Infinity) {
      broke[cell] = nothingMet
      continue
    }
    const open = Math.exp(-paper.contactRate * (film + wet))
    if (weakest / m > unit.lnSurfaceStrength + strengths.paper[cell] / paperModulus) {
      broke[cell] = paperTorn
      for (let layer = 0; layer < index; layer++) after[layer][cell] *= open
      held[cell] *= open
      continue
    }
    broke[cell] = plane
    if (plane === index) {
      top[cell] = (1 - open) * gain
      if (onBare) held[cell] = (1 - open) * heldAtOnce
      continue
    }
    const thickness = before[plane][cell]
    const free = plane === lowest ? Math.max(0, thickness - held[cell]) : thickness
    after[plane][cell] = thickness - 0.5 * (1 - open) * free
    for (let layer = plane + 1; layer < index; layer++) after[layer][cell] *= open
  }
  return stage
}

/** ln(1 + s) for a setting factor s from 0 to 2: Pade's [3/3], wrong by less than 0.0006 there. */
function lnOnePlus(s: number): number {
  return (s * (60 + s * (60 + 11 * s))) / (60 + s * (90 + s * (36 + 3 * s)))
}
