/** About how many inks lie on one spot in the spread: most places carry two or three. */
const inksPerSpot = 2.5

/**
 * Ink amounts spread evenly over all overprints, the same every time: from 0 to `largest`, an ink being absent often
 * enough that two or three lie together.
 *
 * Source: additive recurrence with the generalised golden ratio, Roberts, The unreasonable effectiveness of
 * quasirandom sequences, 2018 (from memory).
 */
export function spreadOfAmounts(inks: number, count: number, largest: number): number[][] {
  const ratio = generalisedGoldenRatio(inks)
  const absent = Math.max(0.25, 1 - inksPerSpot / inks)
  return Array.from({ length: count }, (_, index) =>
    Array.from({ length: inks }, (_, ink) => {
      const place = (0.5 + (index + 1) * ratio ** -(ink + 1)) % 1
      return Math.max(0, (place - absent) / (1 - absent)) * largest
    }),
  )
}

/** The number above 1 whose power of (dimensions + 1) is itself plus 1. */
function generalisedGoldenRatio(dimensions: number): number {
  let ratio = 2
  for (let step = 0; step < 40; step++) ratio = (1 + ratio) ** (1 / (dimensions + 1))
  return ratio
}
