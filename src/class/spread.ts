/** How a number is spread over a class: least, quartiles and most. */

export interface Spread {
  readonly count: number
  readonly least: number
  readonly lower: number
  readonly middle: number
  readonly upper: number
  readonly most: number
}

/** Null where there is none. Quartiles lie between the two nearest values where they fall between them. */
export function spreadOf(values: readonly number[]): Spread | null {
  if (values.length === 0) return null
  const sorted = Float64Array.from(values).sort()
  const at = (share: number) => {
    const place = share * (sorted.length - 1)
    const below = Math.floor(place)
    const above = Math.min(sorted.length - 1, below + 1)
    return sorted[below] + (sorted[above] - sorted[below]) * (place - below)
  }
  return { count: sorted.length, least: at(0), lower: at(0.25), middle: at(0.5), upper: at(0.75), most: at(1) }
}
