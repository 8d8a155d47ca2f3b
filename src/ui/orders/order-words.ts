/** How an order of inks is named and drawn, and how shares are written in a table whose heading has the unit. */
import type { Ink } from '../../press/setup.ts'
import { inkLetters } from '../../session/letters.ts'
import { sayName, sayNumber } from '../say.ts'
import type { MiniTread } from '../mini-stair.ts'

/** "black, cyan, magenta, yellow", from places in `inks`. */
export function orderNames(order: readonly number[], inks: readonly Ink[]): string {
  return order.map((place) => sayName(inks[place].name)).join(', ')
}

/** The order's treads; `colours` by place. */
export function orderTreads(
  order: readonly number[],
  inks: readonly Ink[],
  colours: ReadonlyMap<string, string>,
): MiniTread[] {
  const letters = inkLetters(inks.map(({ name }) => name))
  return order.map((place) => {
    const { name, tack } = inks[place]
    return { letter: letters[place], tack, colour: colours.get(name) ?? '#808080' }
  })
}

/** A share of 1 in percent, two decimals where it is small. */
export function inPercent(share: number): string {
  return Number.isNaN(share) ? '' : sayNumber(100 * share, Math.abs(share) < 0.0995 ? 2 : 1)
}

/** "+1.2" or "−0.3". */
export function signed(value: number, decimals: number): string {
  const text = sayNumber(Math.abs(value), decimals)
  return Number(Math.abs(value).toFixed(decimals)) === 0 ? text : `${value < 0 ? '−' : '+'}${text}`
}
