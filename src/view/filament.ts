/**
 * One filament: a film pulled apart in one column. Its ink neither swells nor shrinks on the way: slabs and neck hold
 * exactly the film's amount, and where the neck snaps is where the computed shares of it meet.
 *
 * Lengths are px; the column's width is 1.
 */

/** How the neck widens towards its slabs: half-widths at even steps, 0 in the middle, 1 at the ends. */
const flare = Array.from({ length: 17 }, (_, i) => Math.abs(i / 8 - 1) ** 5)
/** Share of its length by width that the flare alone takes up, as the drawn straight pieces have it. */
const flareArea = areaOf(flare)
/** Mean width at which a neck snaps: chosen so that its waist is 4 % of the column by then. */
const snapWidth = flareArea + 0.04 * (1 - flareArea)
/** Most of a film that is drawn into the neck. */
const mostInNeck = 0.6

export interface Film {
  /** px of the film that stay on the sheet, and that leave with the blanket */
  stays: number
  leaves: number
}

/** px from the lower slab up, and the width there */
export interface Neck {
  heights: number[]
  widths: number[]
}

export interface Pulled {
  /** px of slab on the sheet and below the blanket */
  lowerSlab: number
  upperSlab: number
  /** what stands between the slabs: one neck, or two tails once it has snapped */
  necks: Neck[]
  snapped: boolean
}

/** The film drawn `opening` px apart; `widest` px is the opening at which its tails have gone back. */
export function pull({ stays, leaves }: Film, opening: number, widest: number): Pulled {
  const film = stays + leaves
  // Thick films draw longer threads, but every thread must snap in view.
  const wanted = Math.min(0.6 * widest, widest * (0.25 + 0.012 * film))
  const share = Math.min(mostInNeck, (snapWidth * wanted) / (film * (1 - snapWidth)))
  const neck = share * film
  const snap = neck * (1 / snapWidth - 1)
  if (opening <= snap) {
    const length = opening + neck
    const waist = (neck / length - flareArea) / (1 - flareArea)
    const heights = flare.map((_, i) => (length * i) / (flare.length - 1))
    const widths = flare.map((width) => waist + (1 - waist) * width)
    return {
      lowerSlab: (1 - share) * stays,
      upperSlab: (1 - share) * leaves,
      necks: [{ heights, widths }],
      snapped: false,
    }
  }
  const back = Math.min(1, (opening - snap) / Math.max(1e-9, widest - snap))
  const kept = share * (1 - back) * (1 - back)
  const lowerSlab = stays - kept * stays
  const upperSlab = leaves - kept * leaves
  const length = opening + kept * film
  const full = snap + neck
  const lower = tail(kept * stays, full * (stays / film) * (1 - back))
  const upper = tail(kept * leaves, full * (leaves / film) * (1 - back))
  upper.heights = upper.heights.map((height) => length - height)
  return { lowerSlab, upperSlab, necks: back < 1 ? [lower, upper] : [], snapped: true }
}

/** A tail of `area`, `height` px long: a spike whose width falls off with the square. */
function tail(area: number, height: number): Neck {
  const shape = Array.from({ length: 7 }, (_, i) => (1 - i / 6) ** 2)
  const base = height > 0 ? area / (height * areaOf(shape)) : 0
  return { heights: shape.map((_, i) => (height * i) / 6), widths: shape.map((width) => base * width) }
}

/** Mean of values at even steps, joined by straight lines. */
function areaOf(values: readonly number[]): number {
  const ends = 0.5 * (values[0] + values[values.length - 1])
  return (values.reduce((sum, value) => sum + value, 0) - ends) / (values.length - 1)
}
