/**
 * Tables as CSV text (RFC 4180): one heading line with the unit of every column, then the rows. Spreadsheets take a cell
 * that begins like a formula for one, also when it is a name somebody typed; such a text gets an apostrophe before it.
 */
import Papa from 'papaparse'

interface Column {
  readonly heading: string
  /** as written behind the heading, such as um or %; null for texts and plain counts */
  readonly unit: string | null
}

export interface Table {
  readonly columns: readonly Column[]
  /** one cell a column; null where there is no value */
  readonly rows: readonly (readonly (string | number | null)[])[]
}

export interface CsvManner {
  /** between cells: a semicolon where the decimal sign is a comma */
  readonly separator: ',' | ';' | '\t'
  readonly decimal: '.' | ','
}

export const plainManner: CsvManner = { separator: ',', decimal: '.' }

/** How spreadsheets of a language expect it: where numbers have a decimal comma, cells are parted by semicolons. */
export function mannerOf(language: string): CsvManner {
  const parts = new Intl.NumberFormat(language).formatToParts(1.5)
  const comma = parts.some(({ type, value }) => type === 'decimal' && value === ',')
  return comma ? { separator: ';', decimal: ',' } : plainManner
}

/** Whatever some spreadsheet takes for the beginning of a formula, full width signs and white space before it included. */
const formulaStart = /^\s*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r\n]/

/** The table as the text of a file, marked as UTF-8 so that spreadsheets read every letter. */
export function writeCsv({ columns, rows }: Table, { separator, decimal }: CsvManner = plainManner): string {
  const head = columns.map(({ heading, unit }) => guarded(unit === null ? heading : `${heading} (${unit})`))
  const body = rows.map((row) =>
    row.map((cell) => (typeof cell === 'number' ? number(cell, decimal) : guarded(cell ?? ''))),
  )
  return `\ufeff${Papa.unparse([head, ...body], { delimiter: separator, newline: '\r\n' })}\r\n`
}

/** Empty for what is no number, since a spreadsheet would take the word for a text. */
function number(value: number, decimal: CsvManner['decimal']): string {
  return Number.isFinite(value) ? String(value).replace('.', decimal) : ''
}

function guarded(text: string): string {
  return formulaStart.test(text) ? `'${text}` : text
}
