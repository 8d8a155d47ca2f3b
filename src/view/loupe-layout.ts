/** Where the round of the loupe stands, and what lies where in it. */
import { cutOf } from './section-columns.ts'
import { letterSize } from './shapes.ts'

export interface LoupeLayout {
  x: number
  y: number
  radius: number
  /** px of one cell */
  cell: number
  letters: number
}

/** The legend of the marks takes two lines of two below the round. */
const legendLines = 2

export function loupeLayout(
  size: { width: number; height: number },
  cells: { width: number },
  { largeType, face }: { largeType: boolean; face: 'ink' | 'marks' },
): LoupeLayout {
  const letters = letterSize(largeType)
  const legend = face === 'marks' ? legendLines * 1.35 * letters : 0
  const height = size.height - legend
  const radius = Math.max(40, Math.min(size.width, height) / 2 - 6)
  return { x: size.width / 2, y: Math.max(radius + 4, height / 2), radius, cell: (2 * radius) / cells.width, letters }
}

/** The row of cells at `y` px, and the px of a row's middle. */
export function rowAt(y: number, layout: LoupeLayout, rows: number): number {
  return Math.min(rows - 1, Math.max(0, Math.floor((y - layout.y + layout.radius) / layout.cell)))
}

export function middleOfRow(row: number, layout: LoupeLayout): number {
  return layout.y - layout.radius + (row + 0.5) * layout.cell
}

/** px from the left between which the section cuts. */
export function cutEnds(cells: { width: number }, layout: LoupeLayout): [number, number] {
  const { first, count } = cutOf(cells)
  const left = layout.x - layout.radius
  return [left + first * layout.cell, left + (first + count) * layout.cell]
}

/** First column of cells that has left the nip at `phase`: the sheet's leading edge, on the right, leaves first. */
export function leftNip(phase: number, columns: number): number {
  const share = Math.min(1, Math.max(0, (phase - 0.5) / 0.4))
  return Math.round((1 - share) * columns)
}
