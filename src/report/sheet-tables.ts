/** What a set-up is and what its sheet reads, as tables to be saved. Headings come from the catalogue by way of `say`. */
import type { DensityStatus } from '../colour/data/density-weights.ts'
import { densityFilters } from '../colour/density.ts'
import { isRefused } from '../measure/said.ts'
import { patchName } from '../measure/sheet-row.ts'
import type { Strip } from '../measure/strip.ts'
import { readPatch } from '../measure/strip.ts'
import { unitsIn } from '../press/patches.ts'
import type { Readings } from '../press/readings.ts'
import type { SetUp } from '../press/setup.ts'
import { dampeningAt, temperatureAt } from '../press/setup.ts'
import type { TableKey } from '../words/en/tables.ts'
import type { Table } from './csv.ts'

type SayHeading = (key: TableKey, values?: Record<string, string>) => string

/** The inks, unit by unit, with what each unit runs at and how far its store is soiled on the sheet read. */
export function inksTable({ inks, press }: SetUp, { contamination }: Readings, say: SayHeading): Table {
  return {
    columns: [
      { heading: say('tables.unit'), unit: null },
      { heading: say('tables.ink'), unit: null },
      { heading: say('tables.tack'), unit: say('tables.tackUnits') },
      { heading: say('tables.film'), unit: 'um' },
      { heading: say('tables.coverage'), unit: '%' },
      { heading: say('tables.temperature'), unit: 'degC' },
      { heading: say('tables.dampening'), unit: null },
      { heading: say('tables.soiled'), unit: '%' },
      { heading: say('tables.foreign'), unit: '%' },
    ],
    rows: inks.map((ink, unit) => [
      unit + 1,
      ink.name,
      ink.tack,
      ink.film,
      100 * ink.coverage,
      temperatureAt(press, ink),
      dampeningAt(press, ink),
      100 * (ink.soiled ?? 0),
      100 * contamination[unit],
    ]),
  }
}

/** Mass trap of every ink on every one before it. */
export function trapsTable({ inks }: SetUp, { traps }: Readings, say: SayHeading): Table {
  return {
    columns: [
      { heading: say('tables.earlier'), unit: null },
      { heading: say('tables.later'), unit: null },
      { heading: say('tables.massTrap'), unit: '%' },
    ],
    rows: traps.map(({ earlier, later, massTrap }) => [inks[earlier].name, inks[later].name, percent(massTrap)]),
  }
}

/** Every ink's film in every patch, and how much of the paper is torn there. */
export function filmsTable({ inks }: SetUp, { films, torn }: Readings, say: SayHeading): Table {
  const names = inks.map(({ name }) => name)
  return {
    columns: [
      { heading: say('tables.patch'), unit: null },
      ...names.map((ink) => ({ heading: say('tables.filmOf', { ink }), unit: 'um' })),
      { heading: say('tables.torn'), unit: '%' },
    ],
    rows: films.map((byInk, patch) => [
      nameOf(patch, names, say),
      ...names.map((_, ink) => byInk[ink]),
      percent(torn[patch]),
    ]),
  }
}

/** Densities and CIELAB of every patch of the strip; empty where an ink has no colour. */
export function stripTable(strip: Strip, status: DensityStatus, say: SayHeading): Table {
  const names = strip.run.setUp.inks.map(({ name }) => name)
  return {
    columns: [
      { heading: say('tables.patch'), unit: null },
      ...densityFilters.map((filter) => ({ heading: say('tables.density', { status, filter }), unit: null })),
      { heading: say('tables.lightness'), unit: 'CIELAB' },
      { heading: say('tables.a'), unit: 'CIELAB' },
      { heading: say('tables.b'), unit: 'CIELAB' },
    ],
    rows: strip.patches.map((patch) => {
      const { colour } = readPatch(strip, patch)
      if (isRefused(colour)) return [nameOf(patch, names, say), ...densityFilters.map(() => null), null, null, null]
      const densities = colour.densitiesMinusPaper[status]
      return [nameOf(patch, names, say), ...densityFilters.map((filter) => densities[filter]), ...colour.Lab]
    }),
  }
}

function nameOf(patch: number, inks: readonly string[], say: SayHeading): string {
  return patch === 0 ? say('tables.paper') : patchName(unitsIn(patch, inks.length).map((unit) => inks[unit]))
}

function percent(share: number | null): number | null {
  return share === null ? null : 100 * share
}
