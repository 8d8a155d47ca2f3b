/** Trap at one overprint: the last ink on all that lies below it, by mass and as a densitometer sees it. */
import type { DensityFilter, DensityStatus } from '../colour/data/density-weights.ts'
import type { Densities } from '../colour/density.ts'
import { patchOf } from '../press/patches.ts'
import type { Said } from './said.ts'
import type { ColourReading, Strip, StripPatch } from './strip.ts'
import { readPatch, seen } from './strip.ts'
import type { ApparentTrap } from './density-trap.ts'
import { densityTrap } from './density-trap.ts'
import type { FilterChoice } from './trap-filter.ts'
import { cautionFor, trapFilter } from './trap-filter.ts'
import type { TrapDensities } from './trap-equations.ts'
import { apparentTrap, massTrap as massTrapOf } from './trap-equations.ts'
import { isRefused, refuse } from './said.ts'
import { whyTrapsDiffer } from './why-traps-differ.ts'

export interface PatchTrap {
  /** the unit printed last, and those below it */
  readonly later: number
  readonly below: readonly number[]
  /** film of the last ink here / film of it on bare paper, a share of 1; null where bare paper has none left to measure against */
  readonly massTrap: number | null
  /** the right filter for the last ink; null when that ink has no colour */
  readonly rightFilter: FilterChoice | null
  /** the filter read through */
  readonly filter: DensityFilter | null
  readonly status: DensityStatus
  /** through that filter: below, last ink alone, both; null where an ink has no colour */
  readonly densities: TrapDensities | null
  /** what the densities say, or why they say nothing */
  readonly apparent: ApparentTrap
  /** that the filter is the wrong one and what follows, when it is */
  readonly caution: Said | null
  /** why the densities (Preucil) and the mass say different things; null where there is nothing to compare */
  readonly why: Said | null
}

/**
 * Trap at `patch`, which needs two inks or more (else null), read in `status` through the right filter, or through
 * another to see what comes of it.
 */
export function trapAt(strip: Strip, patch: number, status: DensityStatus, wanted?: DensityFilter): PatchTrap | null {
  const both = readPatch(strip, patch)
  if (both.units.length < 2) return null
  const later = both.units[both.units.length - 1]
  const below = both.units.slice(0, -1)
  const solid = readPatch(strip, patchOf([later]))
  const lower = readPatch(strip, patchOf(below))
  const byMass = massTrapOf(both.films[later], strip.sheet.onBare[later])
  const massTrap = isRefused(byMass) ? null : byMass.share
  if (isRefused(solid.colour)) {
    const apparent = solid.colour
    return {
      later,
      below,
      massTrap,
      status,
      rightFilter: null,
      filter: wanted ?? null,
      densities: null,
      apparent,
      caution: null,
      why: null,
    }
  }
  const rightFilter = filterFor(strip, later, solid.colour.densitiesMinusPaper[status])
  const filter = wanted ?? rightFilter.filter
  const ink = strip.run.setUp.inks[later].name
  const trap = { later, below, massTrap, status, rightFilter, filter, caution: cautionFor(ink, filter, rightFilter) }
  if (isRefused(lower.colour)) return { ...trap, densities: null, apparent: lower.colour, why: null }
  if (isRefused(both.colour)) return { ...trap, densities: null, apparent: both.colour, why: null }
  const density = (reading: ColourReading) => Math.max(0, reading.densitiesMinusPaper[status][filter])
  const densities = { D1: density(lower.colour), D2: density(solid.colour), D3: density(both.colour) }
  const apparent = isDry(strip, later, below) ? refuse('trap.dryBefore', { ink }) : densityTrap(densities, ink, filter)
  if (isRefused(apparent) || massTrap === null) return { ...trap, densities, apparent, why: null }
  const amounts = lower.amounts.map((amount, unit) => amount + (unit === later ? solid.amounts[unit] : 0))
  const full = apparentTrap('preucil', { ...densities, D3: density(seen(strip, amounts)) })
  const why = whyTrapsDiffer({
    massTrap: 100 * massTrap,
    apparent: apparent.percent.preucil,
    full: isRefused(full) ? null : full.percent,
    lost: lostBelow(lower, both),
  })
  return { ...trap, densities, apparent, why }
}

function filterFor(strip: Strip, unit: number, solid: Densities): FilterChoice {
  return trapFilter(strip.run.setUp.inks[unit].name, strip.colours[unit].kind === 'process', solid)
}

/** Whether everything below is dry when it reaches the later unit. */
function isDry(strip: Strip, later: number, below: readonly number[]): boolean {
  return strip.run.line.units[later].firstWet > Math.max(...below)
}

/** Percent of the ink below that is missing in the overprint. */
function lostBelow(lower: StripPatch, both: StripPatch): number {
  const sum = (films: readonly number[]) => lower.units.reduce((total, unit) => total + films[unit], 0)
  return 100 * Math.max(0, 1 - sum(both.films) / sum(lower.films))
}
