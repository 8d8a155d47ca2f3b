/** Where everything stands in the section view, for its size and for one run; the same for every unit and phase. */
import type { NipAccount } from '../press/account.ts'
import { letterSize } from './shapes.ts'
import type { SectionScale } from './section-bodies.ts'

export interface SectionLayout extends SectionScale {
  /** px: left and right edge of the cut */
  left: number
  right: number
  /** px of one column */
  column: number
  /** px from the top of the paper's surface */
  floor: number
  /** px from the left at which the pull bars begin; null where there is no room for them */
  bars: number | null
  /** px that the bars may take, names and numbers included */
  barRoom: number
  /** px of letters */
  letters: number
}

/** px: a smaller view shows the picture of this size, scaled down. */
export const leastSection = { width: 300, height: 220 }

/** Below this width the films need all of it, and the pulls are left to what stands beside the picture. */
const widthForBars = 820

/** Share of the height that 1 um may take: beyond this, films look like boards. */
const mostPerMicrometre = 0.12

export function sectionLayout(
  size: { width: number; height: number },
  accounts: readonly NipAccount[],
  columns: number,
  largeType: boolean,
): SectionLayout {
  const { width, height } = size
  const letters = letterSize(largeType)
  const left = letters * 3
  const bars = width >= widthForBars * (largeType ? 1.4 : 1) ? width - Math.min(letters * 17, 0.3 * width) : null
  const right = bars === null ? width - 8 : bars - 16
  const paper = Math.max(letters * 3, 0.19 * height)
  const rubber = Math.max(letters * 2, 0.1 * height)
  const widestGap = 0.26 * height
  const perMicrometre = Math.min(
    mostPerMicrometre * height,
    (height - paper - rubber - widestGap) / tallestStack(accounts),
  )
  return {
    left,
    right,
    column: (right - left) / columns,
    floor: height - paper,
    bars,
    barRoom: bars === null ? 0 : width - bars - 8,
    letters,
    perMicrometre,
    widestGap,
    tear: Math.max(6, 0.03 * height),
  }
}

/** um: the most that any nip of the run brings together, with room for uneven films. */
function tallestStack(accounts: readonly NipAccount[]): number {
  const stacks = accounts.map(
    ({ films, blanket }) => films.reduce((sum, film) => sum + film.thickness, 0) + blanket.thickness,
  )
  return 1.2 * Math.max(1, ...stacks)
}
