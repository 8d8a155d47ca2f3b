/** Trap at every overprint of somebody's own press sheet, from its densities alone. */
import type { DensityFilter } from '../colour/data/density-weights.ts'
import { patchOf, unitsIn } from '../press/patches.ts'
import type { ApparentTrap } from './density-trap.ts'
import { densityTrap } from './density-trap.ts'
import type { PatchReading, PressSheet } from './press-sheet.ts'
import type { Said } from './said.ts'
import { patchName } from './sheet-row.ts'
import type { TrapDensities } from './trap-equations.ts'
import type { FilterChoice } from './trap-filter.ts'
import { cautionFor, trapFilter } from './trap-filter.ts'

export interface SheetTrap {
  readonly patch: number
  readonly later: number
  readonly below: readonly number[]
  /** null when the solid of the last ink was not read */
  readonly rightFilter: FilterChoice | null
  /** through that filter: below, last ink alone, both; null where one of them was not read */
  readonly densities: TrapDensities | null
  readonly apparent: ApparentTrap
  /** that another filter was asked for, and what follows */
  readonly caution: Said | null
}

/** @param isProcess by unit: whether the ink is the process ink of its name (and has no colour of its own) */
export function sheetTraps(sheet: PressSheet, isProcess: readonly boolean[], wanted?: DensityFilter): SheetTrap[] {
  return sheet.patches
    .filter(({ patch }) => unitsIn(patch, sheet.inks.length).length >= 2)
    .map((both) => trapOf(sheet, isProcess, both, wanted))
}

function trapOf(
  sheet: PressSheet,
  isProcess: readonly boolean[],
  both: PatchReading,
  wanted: DensityFilter | undefined,
): SheetTrap {
  const { inks } = sheet
  const units = unitsIn(both.patch, inks.length)
  const later = units[units.length - 1]
  const below = units.slice(0, -1)
  const ink = inks[later]
  const solid = readingAt(sheet, patchOf([later]))
  const lower = readingAt(sheet, patchOf(below))
  const rightFilter = solid ? trapFilter(ink, isProcess[later], solid.densities) : null
  const at = { patch: both.patch, later, below, rightFilter }
  if (!solid || !lower || !rightFilter) {
    const missing = patchName(solid ? below.map((unit) => inks[unit]) : [ink])
    return {
      ...at,
      densities: null,
      apparent: { refused: { message: 'sheet.patchMissing', values: { patch: missing } } },
      caution: null,
    }
  }
  const filter = wanted ?? rightFilter.filter
  const [D1, D2, D3] = [lower, solid, both].map((reading) => reading.densities[filter])
  const densities = { D1, D2, D3 }
  return {
    ...at,
    densities,
    apparent: densityTrap(densities, ink, filter),
    caution: cautionFor(ink, filter, rightFilter),
  }
}

function readingAt(sheet: PressSheet, patch: number): PatchReading | undefined {
  return sheet.patches.find((each) => each.patch === patch)
}
