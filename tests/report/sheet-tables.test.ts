import { IntlMessageFormat } from 'intl-messageformat'
import Papa from 'papaparse'
import { describe, expect, test } from 'vitest'
import { readPatch, stripOf } from '../../src/measure/strip.ts'
import { checkSetUp } from '../../src/press/check-setup.ts'
import { readSheet } from '../../src/press/readings.ts'
import { runPress } from '../../src/press/run.ts'
import type { Table } from '../../src/report/csv.ts'
import { writeCsv } from '../../src/report/csv.ts'
import { filmsTable, inksTable, stripTable, trapsTable } from '../../src/report/sheet-tables.ts'
import type { TableKey } from '../../src/words/en/tables.ts'
import { tables } from '../../src/words/en/tables.ts'

const say = (key: TableKey, values: Record<string, string> = {}) =>
  String(new IntlMessageFormat(tables[key], 'en').format<string>(values))

const checked = checkSetUp({
  inks: [
    { name: 'black', tack: 16, temperature: 31 },
    { name: '=cyan', tack: 14, coverage: 0.25, soiled: 0.1, colour: '#0099cc' },
    { name: 'clear', tack: 12 },
  ],
  reading: 'first',
})
if ('problems' in checked) throw new Error(checked.problems[0].message)
const { setUp } = checked
const run = runPress(setUp)
const sheet = readSheet(run)

function saved(table: Table): string[][] {
  return Papa.parse<string[]>(writeCsv(table).slice(1)).data.slice(0, -1)
}

describe('tables of a sheet', () => {
  test('have a row and a cell for each thing, as many as headings, and name the unit of every number that has one', () => {
    for (const table of [
      inksTable(setUp, sheet, say),
      trapsTable(setUp, sheet, say),
      filmsTable(setUp, sheet, say),
      stripTable(stripOf(run), 'E', say),
    ]) {
      for (const row of table.rows) expect(row).toHaveLength(table.columns.length)
      for (const { heading } of table.columns) expect(heading).toMatch(/\S/)
    }
  })

  test('give the set-up as it stands, shares in percent, guarded against formulas', () => {
    const [head, , cyan] = saved(inksTable(setUp, sheet, say))
    expect(head.slice(0, 6)).toEqual([
      'unit',
      'ink',
      'tack (tack units)',
      'film on the form roller (um)',
      'coverage (%)',
      'temperature (degC)',
    ])
    expect(cyan.slice(0, 8)).toEqual(['2', "'=cyan", '14', '4', '25', '25', '1', '10'])
  })

  test('give every trap and film that is read off the sheet', () => {
    const traps = saved(trapsTable(setUp, sheet, say)).slice(1)
    expect(traps.map(([earlier, later]) => `${later} on ${earlier}`)).toEqual([
      "'=cyan on black",
      'clear on black',
      "clear on '=cyan",
    ])
    sheet.traps.forEach(({ massTrap }, index) => expect(Number(traps[index][2])).toBe(100 * massTrap))
    const films = saved(filmsTable(setUp, sheet, say)).slice(1)
    expect(films.map(([patch]) => patch)).toEqual([
      'paper',
      'black',
      "'=cyan",
      'black + =cyan',
      'clear',
      'black + clear',
      "'=cyan + clear",
      'black + =cyan + clear',
    ])
    films.forEach((row, patch) => expect(row.slice(1, 4).map(Number)).toEqual(Array.from(sheet.films[patch])))
  })

  test('leave the colour open where an ink has none', () => {
    const strip = stripOf(run)
    const rows = saved(stripTable(strip, 'T', say)).slice(1)
    const [black, clear] = ['black', 'clear'].map((name) => rows.find(([patch]) => patch === name) ?? [])
    const { colour } = readPatch(strip, 1)
    if ('refused' in colour) throw new Error('Black has no colour.')
    const { red, green, blue } = colour.densitiesMinusPaper.T
    expect(black.slice(1, 4).map(Number)).toEqual([red, green, blue])
    expect(black.slice(4).map(Number)).toEqual([...colour.Lab])
    expect(clear.slice(1)).toEqual(['', '', '', '', '', ''])
  })
})
