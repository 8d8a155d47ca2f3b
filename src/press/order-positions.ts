/** Which position does most harm: the mean score of all orders that put an ink on a unit. */
import type { RankedOrder } from './orders.ts'

export interface PositionScores {
  /** [ink][unit]: mean score of the orders with that ink there; ink by its place in the set-up */
  mean: number[][]
  /** the ink and unit whose orders score lowest on average, and by how much below the mean of all */
  worst: { ink: number; unit: number; loss: number }
}

/** Reads a whole ranking; half a ranking gives means of half of the orders. Undefined for none. */
export function positionScores(
  inks: number,
  ranked: Iterable<Pick<RankedOrder, 'order' | 'score'>>,
): PositionScores | undefined {
  const sum = Array.from({ length: inks }, () => new Array<number>(inks).fill(0))
  const count = Array.from({ length: inks }, () => new Array<number>(inks).fill(0))
  let all = 0
  let orders = 0
  for (const { order, score } of ranked) {
    orders++
    all += score
    order.forEach((ink, unit) => {
      sum[ink][unit] += score
      count[ink][unit]++
    })
  }
  if (orders === 0) return undefined
  const mean = sum.map((row, ink) => row.map((total, unit) => (count[ink][unit] > 0 ? total / count[ink][unit] : NaN)))
  const worst = { ink: 0, unit: 0, loss: -Infinity }
  mean.forEach((row, ink) =>
    row.forEach((score, unit) => {
      const loss = all / orders - score
      if (loss > worst.loss) Object.assign(worst, { ink, unit, loss })
    }),
  )
  return { mean, worst }
}
