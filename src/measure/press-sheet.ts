/**
 * Readings of somebody's own press sheet. A table of five columns, typed or from a file:
 *
 *   patch   the inks that print there, joined by +, such as magenta+yellow; or paper
 *   red, green, blue   density through that filter, decimal point or comma
 *   sheet   optional: a number or text that tells sheets apart; readings of one patch are averaged over all sheets
 *
 * Inks are named as they are loaded and count as printed in the order they are loaded, whatever order they are named
 * in. With a row for the paper all densities are absolute and its own are taken off; without one they are minus paper
 * already. Columns may be separated by comma, semicolon or tab.
 */
import type { DensityFilter } from '../colour/data/density-weights.ts'
import type { Densities } from '../colour/density.ts'
import { densityFilters } from '../colour/density.ts'
import type { Said } from './said.ts'
import { isRefused } from './said.ts'
import type { TypedRow } from './sheet-row.ts'
import { readRow } from './sheet-row.ts'

/** One patch, averaged over all its readings. */
export interface PatchReading {
  /** as a set of units (see src/press/patches.ts) */
  readonly patch: number
  /** how many readings it was averaged from */
  readonly count: number
  /** minus paper */
  readonly densities: Densities
  /** standard deviation of one reading, by filter; null from a single one */
  readonly spread: Densities | null
}

export interface SheetProblem {
  readonly line: number
  readonly said: Said
}

export interface PressSheet {
  /** the loaded inks, in unit order */
  readonly inks: readonly string[]
  /** in ascending order of patch; without the paper */
  readonly patches: readonly PatchReading[]
  /** absolute densities of the paper, when it was read */
  readonly paper: Densities | null
}

/** Gathers the rows of a table for these inks; rows that cannot be read are left out and listed, empty ones passed over. */
export function gatherSheet(
  rows: readonly TypedRow[],
  inks: readonly string[],
): { sheet: PressSheet; problems: SheetProblem[] } {
  const problems: SheetProblem[] = []
  const readings = new Map<number, { line: number; densities: Densities }[]>()
  for (const row of rows) {
    const reading = readRow(row, inks)
    if (reading === null) continue
    if (isRefused(reading)) problems.push({ line: row.line, said: reading.refused })
    else readings.set(reading.patch, [...(readings.get(reading.patch) ?? []), reading])
  }
  const paperReadings = readings.get(0)
  readings.delete(0)
  const paper = paperReadings ? mean(paperReadings) : null
  const patches: PatchReading[] = []
  for (const [patch, all] of [...readings].sort(([a], [b]) => a - b)) {
    const kept = all.flatMap(({ line, densities }) => {
      const minus = minusPaper(densities, paper)
      if (minus) return [{ line, densities: minus }]
      problems.push({ line, said: { message: 'sheet.belowPaper' } })
      return []
    })
    if (kept.length > 0)
      patches.push({ patch, count: kept.length, densities: mean(kept), spread: deviation(kept, mean(kept)) })
  }
  return { sheet: { inks, patches, paper }, problems: problems.sort((a, b) => a.line - b.line) }
}

/** Scatter of a reading that may put an ink's far filter below the paper; less counts as 0, more as a mistake. */
const scatter = 0.03

/** Null when it reads clearly below the paper. */
function minusPaper(densities: Densities, paper: Densities | null): Densities | null {
  if (!paper) return densities
  const minus = byFilter((filter) => densities[filter] - paper[filter])
  if (densityFilters.some((filter) => minus[filter] < -scatter)) return null
  return byFilter((filter) => Math.max(0, minus[filter]))
}

function mean(readings: readonly { densities: Densities }[]): Densities {
  return byFilter((filter) => readings.reduce((sum, { densities }) => sum + densities[filter], 0) / readings.length)
}

function deviation(readings: readonly { densities: Densities }[], middle: Densities): Densities | null {
  if (readings.length < 2) return null
  return byFilter((filter) =>
    Math.sqrt(
      readings.reduce((sum, { densities }) => sum + (densities[filter] - middle[filter]) ** 2, 0) /
        (readings.length - 1),
    ),
  )
}

function byFilter(value: (filter: DensityFilter) => number): Densities {
  return { red: value('red'), green: value('green'), blue: value('blue') }
}
