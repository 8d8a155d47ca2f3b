/** A press sheet's table as a file: reading it, whatever it turns out to be, and the template to fill in. */
import Papa from 'papaparse'
import { unitsIn } from '../press/patches.ts'
import type { PressSheet, SheetProblem } from './press-sheet.ts'
import { gatherSheet } from './press-sheet.ts'
import type { Refused } from './said.ts'
import { isRefused, refuse } from './said.ts'
import type { SheetColumn, TypedRow } from './sheet-row.ts'
import { patchName, sheetColumns } from './sheet-row.ts'
import { stripPatches } from './strip.ts'

/** Characters; a thousand times what a strip needs. */
const largestFile = 1_000_000
/** Rows; a hundred sheets of the largest strip are fewer. */
const mostRows = 10_000

export const separators = [',', ';', '\t'] as const
export type Separator = (typeof separators)[number]

/** How well-known other kinds of file begin, so that they can be named. */
const otherKinds: readonly (readonly [start: string, kind: string])[] = [
  ['PK\u0003\u0004', 'spreadsheet'],
  ['\u00d0\u00cf\u0011\u00e0', 'spreadsheet'],
  ['\ufffd\ufffd\u0011\ufffd', 'spreadsheet'],
  ['%PDF', 'PDF'],
  ['{', 'JSON'],
  ['[', 'JSON'],
  ['<', 'web page'],
  ['CGATS', 'CGATS'],
]

/** Reads the text of a file. Refused as a whole when it is no such table or no row of it can be used. */
export function readSheetFile(
  text: string,
  inks: readonly string[],
): { sheet: PressSheet; problems: SheetProblem[] } | (Refused & { problems: SheetProblem[] }) {
  const none = (refused: Refused, problems: SheetProblem[] = []) => ({ ...refused, problems })
  const kind = otherKind(text)
  if (kind) return none(kind)
  const table = rowsOf(text)
  if (isRefused(table)) return none(table)
  const { sheet, problems } = gatherSheet(table.rows, inks)
  const all = [...table.problems, ...problems].sort((a, b) => a.line - b.line)
  return sheet.patches.length > 0 ? { sheet, problems: all } : none(refuse('sheet.nothingToUse'), all)
}

/** A table with a row for the paper and for every patch of the strip, densities left open. */
export function sheetTemplate(inks: readonly string[], separator: Separator = ';'): string {
  const rows = stripPatches(inks.length).map((patch) => [
    patchName(unitsIn(patch, inks.length).map((unit) => inks[unit])),
    '',
    '',
    '',
    '1',
  ])
  return `${Papa.unparse([[...sheetColumns], ...rows], { delimiter: separator, escapeFormulae: true })}\r\n`
}

/** The refusal when this cannot be a text table at all. */
function otherKind(text: string): Refused | null {
  if (text.length > largestFile) return refuse('sheet.tooLarge', { most: largestFile })
  const start = text.replace(/^\ufeff?\s*/, '')
  if (start === '') return refuse('sheet.empty')
  const known = otherKinds.find(([sign]) => start.startsWith(sign))
  if (known) return refuse('sheet.otherKind', { kind: known[1] })
  return text.includes('\u0000') ? refuse('sheet.noText') : null
}

interface Table {
  rows: TypedRow[]
  problems: SheetProblem[]
}

function rowsOf(text: string): Table | Refused {
  const plain = text.replace(/^\ufeff/, '')
  const head = plain.split(/\r\n|\r|\n/).find(isHead) ?? ''
  const separator = separators.reduce((best, each) => (count(head, each) > count(head, best) ? each : best))
  const { data, errors } = Papa.parse<string[]>(plain, { delimiter: separator })
  if (data.length > mostRows) return refuse('sheet.tooManyRows', { most: mostRows })
  let columns: (SheetColumn | null)[] | null = null
  const table: Table = { rows: [], problems: [] }
  let line = 1
  for (const [index, cells] of data.entries()) {
    const filled = cells.some((cell) => cell.trim() !== '')
    if (!columns && filled && !/^sep=/i.test(cells[0])) {
      const found = columnsOf(cells)
      if (isRefused(found)) return found
      columns = found
    } else if (columns && filled) {
      const broken = errors.some(({ row, type }) => row === index && type === 'Quotes')
      const problem: Refused | null = broken
        ? refuse('sheet.openQuote')
        : cells.length > columns.length
          ? refuse('sheet.tooManyCells', { count: cells.length, allowed: columns.length })
          : null
      if (problem) table.problems.push({ line, said: problem.refused })
      else table.rows.push({ line, cells: cellsOf(cells, columns) })
    }
    // A quoted cell may run over several lines.
    line += 1 + cells.reduce((sum, cell) => sum + count(cell, '\n'), 0)
  }
  return columns ? table : refuse('sheet.empty')
}

/** The first line that is not empty and not the separator note some spreadsheets put on top. */
function isHead(line: string): boolean {
  return line.trim() !== '' && !/^sep=/i.test(line)
}

/** Which column each heading is; columns of other names are passed over. */
function columnsOf(headings: readonly string[]): (SheetColumn | null)[] | Refused {
  const columns = headings.map((heading) => {
    const name = heading.trim().toLowerCase()
    return sheetColumns.find((column) => column === name) ?? null
  })
  const missing = sheetColumns.filter((column) => column !== 'sheet' && !columns.includes(column))
  const found = headings.map((heading) => heading.trim().slice(0, 20)).slice(0, 8)
  if (missing.length > 0)
    return refuse('sheet.missingColumns', { missing: missing.join(', '), found: found.join(', ') })
  const twice = sheetColumns.find((column) => columns.filter((each) => each === column).length > 1)
  return twice ? refuse('sheet.columnTwice', { column: twice }) : columns
}

function cellsOf(cells: readonly string[], columns: readonly (SheetColumn | null)[]): TypedRow['cells'] {
  return Object.fromEntries(columns.flatMap((column, index) => (column ? [[column, cells[index] ?? '']] : [])))
}

function count(text: string, sign: string): number {
  return text.split(sign).length - 1
}
