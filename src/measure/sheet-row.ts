/** One row of a press sheet's table: which patch, and its three densities, or what is wrong with it. */
import { closest } from 'fastest-levenshtein'
import type { DensityFilter } from '../colour/data/density-weights.ts'
import type { Densities } from '../colour/density.ts'
import { densityFilters } from '../colour/density.ts'
import { patchOf } from '../press/patches.ts'
import { longestName } from '../press/ranges.ts'
import type { Refused } from './said.ts'
import { refuse } from './said.ts'
import { highestDensity } from './trap-equations.ts'

export const sheetColumns = ['patch', ...densityFilters, 'sheet'] as const
export type SheetColumn = (typeof sheetColumns)[number]

/** One row of the table as typed; a column that is left out is empty. */
export interface TypedRow {
  /** its line in the file or its place in the typed table, from 1 */
  readonly line: number
  readonly cells: Partial<Readonly<Record<SheetColumn, string>>>
}

export interface RowReading {
  readonly line: number
  /** 0 for the bare paper */
  readonly patch: number
  readonly densities: Densities
}

/** The name of the bare paper in the column patch. */
const paperPatch = 'paper'

/** Null for a row without any density, as a template has them. */
export function readRow({ line, cells }: TypedRow, inks: readonly string[]): RowReading | Refused | null {
  const text = (column: keyof typeof cells) => (cells[column] ?? '').trim()
  if (densityFilters.every((filter) => text(filter) === '')) return null
  const patch = patchNamed(text('patch'), inks)
  if (typeof patch !== 'number') return patch
  const red = density(text('red'), 'red')
  const green = density(text('green'), 'green')
  const blue = density(text('blue'), 'blue')
  if (typeof red !== 'number') return red
  if (typeof green !== 'number') return green
  if (typeof blue !== 'number') return blue
  return { line, patch, densities: { red, green, blue } }
}

/** The inks of a patch, joined as the template writes them. */
export function patchName(inks: readonly string[]): string {
  return inks.length === 0 ? paperPatch : inks.join(' + ')
}

function patchNamed(text: string, inks: readonly string[]): number | Refused {
  if (text === '') return refuse('sheet.noPatch')
  // Spreadsheets are handed names that start like a formula behind an apostrophe.
  const named = text.replace(/^'/, '')
  const known = (name: string) => inks.findIndex((ink) => ink.toLowerCase() === name.trim().toLowerCase())
  if (named.toLowerCase() === paperPatch && known(named) < 0) return 0
  // With spaces first, so that an ink may have a plus in its name.
  const [units] = [named.split(' + '), named.split('+')]
    .map((names) => names.map(known))
    .sort((a, b) => Number(a.includes(-1)) - Number(b.includes(-1)))
  if (units.includes(-1)) return unknownInk(named.split('+'), known, inks)
  if (new Set(units).size < units.length) return refuse('sheet.inkTwice', { patch: shown(named) })
  return patchOf(units)
}

function unknownInk(names: readonly string[], known: (name: string) => number, inks: readonly string[]): Refused {
  const name = (names.find((each) => known(each) < 0) ?? names[0]).trim()
  const near = name.length <= longestName ? closest(name.toLowerCase(), [...inks]) : inks[0]
  return refuse('sheet.unknownInk', { ink: shown(name), near, known: inks.join(', ') })
}

function density(text: string, filter: DensityFilter): number | Refused {
  if (text === '') return refuse('sheet.missingCell', { filter })
  if (!/^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/.test(text)) return refuse('sheet.notANumber', { filter, text: shown(text) })
  const value = Number(text.replace(',', '.'))
  if (value < 0) return refuse('sheet.negative', { filter, value })
  return value > highestDensity ? refuse('sheet.tooHigh', { filter, value, most: highestDensity }) : value
}

/** A cell's text, short enough for a message. */
function shown(text: string): string {
  return text.length > longestName ? `${text.slice(0, longestName)}...` : text
}
