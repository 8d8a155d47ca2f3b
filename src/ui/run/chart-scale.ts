/** How lines over the sheets of a run are told apart, and the scales they are drawn on, on the page and on paper. */

/** px: on, off, on, off ... of each line. */
export const dashes = [[], [8, 4], [2, 3], [12, 3, 2, 3], [5, 5], [16, 4], [2, 6], [8, 3, 2, 3, 2, 3]]
/** Powers of ten up to the longest run. */
export const tenfolds = [0, 1, 2, 3, 4, 5]

export function finite(value: number): number | null {
  return Number.isFinite(value) ? value : null
}

/** A scale with some air above and below; never narrower than what can be told apart. */
export function room(least: number, most: number, leastSpan: number): [number, number] {
  const span = Math.max(most - least, leastSpan)
  return [least >= 0 ? Math.max(0, least - 0.1 * span) : least - 0.1 * span, most + 0.1 * span]
}
