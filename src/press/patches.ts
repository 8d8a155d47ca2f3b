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

/**
 * The share of the sheet each patch takes, by `coverage` (0 to 1) of each unit, the inks being laid independently of one
 * another (Demichel, 1924). Coverage 0.5 throughout gives all patches the same area.
 */
export function patchAreas(coverage: readonly number[]): Float64Array {
  const areas = new Float64Array(1 << coverage.length)
  for (let patch = 0; patch < areas.length; patch++) {
    areas[patch] = coverage.reduce((area, share, unit) => area * (printsIn(patch, unit) ? share : 1 - share), 1)
  }
  return areas
}
