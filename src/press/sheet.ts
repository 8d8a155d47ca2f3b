/**
 * The wet films on one sheet, for every patch at once. Layer j is the film left by unit j (layer 0 lies on the paper);
 * each is a well-mixed amount of every ink. Kept in flat arrays because millions of sheets are ranked.
 */
export interface Sheet {
  /** how many units have printed it */
  units: number
  /** how many inks a film may hold */
  inks: number
  /** um of each ink: [patch][layer][ink] */
  amounts: Float64Array
  /** um: [patch][layer] */
  thickness: Float64Array
  /** um of it that the paper holds fast: [patch][layer] */
  held: Float64Array
}

/** A sheet's arrays for `units` units printed with `inks` inks; no ink on it. */
export function emptySheet(units: number, inks: number): Sheet {
  const films = (1 << units) * units
  return {
    units,
    inks,
    amounts: new Float64Array(films * inks),
    thickness: new Float64Array(films),
    held: new Float64Array(films),
  }
}

/** The film (um) of each ink in `patch`, all layers together. */
export function filmByInk(sheet: Sheet, patch: number): Float64Array {
  const film = new Float64Array(sheet.inks)
  const first = patch * sheet.units * sheet.inks
  for (let i = 0; i < sheet.units * sheet.inks; i++) film[i % sheet.inks] += sheet.amounts[first + i]
  return film
}
