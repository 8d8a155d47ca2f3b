import fc from 'fast-check'
import Papa from 'papaparse'
import { describe, expect, test, vi } from 'vitest'
import type { Table } from '../../src/report/csv.ts'
import { mannerOf, plainManner, writeCsv } from '../../src/report/csv.ts'

/** ms: enough for a poor machine with other things to do. */
vi.setConfig({ testTimeout: 60_000 })

const traps: Table = {
  columns: [
    { heading: 'ink', unit: null },
    { heading: 'film', unit: 'um' },
    { heading: 'change', unit: '%' },
  ],
  rows: [
    ['cyan', 1.25, -3.5],
    ['black, warm', 0.5, null],
  ],
}

describe('a table as CSV', () => {
  test('has a heading with units, a line a row, and quotes where they are needed', () => {
    expect(writeCsv(traps)).toBe('\ufeffink,film (um),change (%)\r\ncyan,1.25,-3.5\r\n"black, warm",0.5,\r\n')
  })

  test('has decimal commas and semicolons where the language writes them', () => {
    expect(mannerOf('en')).toEqual(plainManner)
    expect(writeCsv(traps, mannerOf('es'))).toBe(
      '\ufeffink;film (um);change (%)\r\ncyan;1,25;-3,5\r\nblack, warm;0,5;\r\n',
    )
  })

  test('leaves a cell empty for what is no number', () => {
    const rows = [['x', NaN, Infinity]]
    expect(writeCsv({ ...traps, rows }).split('\r\n')[1]).toBe('x,,')
  })

  test.each(['=1+1', '+1', '-1+cmd', '@SUM(A1)', '\t=1', '  =1', '\r=1', '\n=1', '＝1', '=HYPERLINK("x","y")'])(
    'puts an apostrophe before %j, which a spreadsheet would run',
    (name) => {
      const { data } = Papa.parse<string[]>(writeCsv({ columns: [{ heading: name, unit: null }], rows: [[name]] }))
      expect(data[0][0].replace('\ufeff', '')).toBe(`'${name}`)
      expect(data[1][0]).toBe(`'${name}`)
    },
  )

  test('comes back cell by cell, whatever was typed, and none of its texts begins like a formula', () => {
    const cell = fc.oneof(fc.string({ unit: 'binary' }), fc.constantFrom('a\nb', 'a"b', 'a;b', "'x", ' = '))
    fc.assert(
      fc.property(
        fc.array(fc.tuple(cell, cell, cell), { minLength: 1 }),
        fc.constantFrom(plainManner, mannerOf('de')),
        (rows, manner) => {
          const { data } = Papa.parse<string[]>(writeCsv({ ...traps, rows }, manner).slice(1), {
            delimiter: manner.separator,
            newline: '\r\n',
          })
          const read = data.slice(1, -1)
          expect(read.map((row) => row.map((text) => text.replace(/^'(?=\s*[=+\-@＝＋－＠]|[\t\r\n])/, '')))).toEqual(
            rows,
          )
          for (const text of read.flat()) expect(text).not.toMatch(/^[=+\-@\t\r\n]/)
        },
      ),
      { endOnFailure: true },
    )
  })
})
