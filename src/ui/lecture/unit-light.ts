/** Where the light falls on one unit of the press line: on its cylinders, and on its name below the sheet. */
import type { LineLayout } from '../../view/line-layout.ts'
import { nameWidth, unitReach } from '../../view/line-layout.ts'

/** In px of the drawing: the unit above the sheet, and what stands below it, which reaches elsewhere to the sides. */
export interface UnitLight {
  readonly above: readonly [from: number, to: number]
  readonly below: readonly [from: number, to: number]
  /** where the one begins and the other ends */
  readonly bed: number
}

/** px between a name and the edge of its light */
const margin = 5

export function unitLight(layout: LineLayout, unit: number, name: string): UnitLight {
  const { first, spacing, radius, letters, beside, track, paper } = layout
  const nip = first + unit * spacing
  const side = 1.1 * radius
  const wide = nameWidth([name], letters)
  // Where units stand close, not into the cylinders of the one before; names are cut to what is free there (line-labels.ts).
  const reach = Math.min((unitReach + 0.1) * radius, spacing - side)
  const half = Math.max(side, Math.min(wide / 2 + margin, spacing / 2))
  return {
    above: [nip - reach, nip + side],
    below: beside ? [nip - side, nip + Math.min(radius + 6 + wide + margin, spacing - side)] : [nip - half, nip + half],
    bed: track + paper,
  }
}

export function lightHolds({ above, below, bed }: UnitLight, x: number, y: number): boolean {
  const [from, to] = y < bed ? above : below
  return x >= from && x < to
}
