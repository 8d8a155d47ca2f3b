/** The scale on which pulls are drawn as bars: the same for all units of a set-up, and for most set-ups. */
import type { NipAccount } from '../press/account.ts'

/**
 * tack units at the end of the scale, and between its marks. Chosen so that the inks of a usual press, whose pulls come to
 * 4 to 22, share one scale whatever their order, and so that every legal pull has one.
 */
const scales = [
  { end: 25, step: 10 },
  { end: 50, step: 20 },
  { end: 100, step: 50 },
  { end: 250, step: 100 },
] as const

export interface PullScale {
  /** tack units */
  readonly end: number
  /** tack units, the first of them 0 */
  readonly marks: readonly number[]
}

/** For the films of all nips of a run; the paper, which mostly bears far more, may lie beyond its end. */
export function pullScale(accounts: readonly NipAccount[]): PullScale {
  const pulls = accounts.flatMap(({ blanket, films }) =>
    [blanket, ...films].map(({ thickness, pull }) => (thickness > 0 ? (pull ?? 0) : 0)),
  )
  const most = Math.max(...pulls)
  const { end, step } = scales.find((scale) => scale.end >= most) ?? { end: most, step: most / 2 }
  return { end, marks: Array.from({ length: Math.floor(end / step) + 1 }, (_, place) => place * step) }
}
