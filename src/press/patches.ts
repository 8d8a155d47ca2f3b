/**
 * Patches: the areas of a sheet told apart by which inks print there. A patch is a number whose bit i says that unit i
 * prints. A unit depends only on those before it, so at unit i only the first i + 1 bits matter.
 */

/** Whether unit `unit` prints in `patch`. */
export function printsIn(patch: number, unit: number): boolean {
  return (patch >> unit) % 2 === 1
}

/** The patch in which just these units print. */
export function patchOf(units: readonly number[]): number {
  return units.reduce((patch, unit) => patch | (1 << unit), 0)
}

/** The units that print in `patch`, first to last. */
export function unitsIn(patch: number, units: number): number[] {
  return Array.from({ length: units }, (_, unit) => unit).filter((unit) => printsIn(patch, unit))
}

/** One patch, all of the sheet: before the first unit. */
export const wholeSheet = Float64Array.of(1)

/**
 * The share of the sheet each patch takes after one more unit of this `coverage` (0 to 1), the inks being laid
 * independently of one another (Demichel, 1924). Coverage 0.5 throughout gives all patches the same area.
 */
export function splitAreas(before: Float64Array, coverage: number): Float64Array {
  const areas = new Float64Array(2 * before.length)
  before.forEach((area, patch) => {
    areas[patch] = area * (1 - coverage)
    areas[before.length + patch] = area * coverage
  })
  return areas
}
