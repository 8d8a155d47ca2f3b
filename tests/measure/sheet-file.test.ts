import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readSheetFile, separators, sheetTemplate } from '../../src/measure/sheet-file.ts'
import { patchOf } from '../../src/press/patches.ts'

const inks = ['black', 'cyan', 'magenta', 'yellow']

function read(text: string, names: readonly string[] = inks) {
  const found = readSheetFile(text, names)
  if ('refused' in found) throw new Error(found.refused.message)
  return found
}

describe('a table', () => {
  const wanted = [
    { patch: patchOf([1]), densities: { red: 1.4, green: 0.4, blue: 0.2 } },
    { patch: patchOf([1, 2]), densities: { red: 1.5, green: 1.42, blue: 0.9 } },
  ]

  it.each([
    ['commas and points', 'patch,red,green,blue\ncyan,1.4,0.4,0.2\ncyan+magenta,1.5,1.42,0.9'],
    ['semicolons and decimal commas', 'patch;red;green;blue\r\ncyan;1,4;0,4;0,2\r\ncyan+magenta;1,5;1,42;0,9\r\n'],
    [
      'tabs, any order of columns, capitals, others between',
      'Blue\tnote\tPATCH\tRed\tGreen\n0.2\tx\tcyan\t1.4\t0.4\n0.9\ty\tcyan+magenta\t1.5\t1.42',
    ],
    [
      'quotes, commas inside them',
      'patch,red,green,blue\n"cyan","1,4","0,4","0,2"\n"cyan + magenta","1,5","1,42","0,9"',
    ],
    [
      'a byte order mark, blank lines and a separator note',
      '\ufeffsep=;\n\n patch ; red ; green ; blue\n\ncyan;1.4;0.4;0.2\n;;;\ncyan+magenta;1.5;1.42;0.9\n\n',
    ],
    ['old line ends', 'patch;red;green;blue\rcyan;1.4;0.4;0.2\rcyan+magenta;1.5;1.42;0.9'],
  ])('is read with %s', (_, text) => {
    const { sheet, problems } = read(text)
    expect(problems).toEqual([])
    expect(sheet.patches).toMatchObject(wanted)
  })

  it('lists bad rows by their line in the file, and reads the rest', () => {
    const { sheet, problems } = read(
      [
        'patch,red,green,blue',
        'cyan,1.4,0.4,0.2',
        'cyan,1,4,0,4,0,2',
        '',
        'mauve,1,1,1',
        'magenta,0.1,,0.6',
        'yellow,0,-1,1',
      ].join('\n'),
    )
    expect(sheet.patches).toHaveLength(1)
    expect(problems).toMatchObject([
      { line: 3, said: { message: 'sheet.tooManyCells' } },
      { line: 5, said: { message: 'sheet.unknownInk' } },
      { line: 6, said: { message: 'sheet.missingCell' } },
      { line: 7, said: { message: 'sheet.negative' } },
    ])
  })

  it('counts lines inside quoted cells, and lists a quote that does not close', () => {
    const { problems } = read('patch,red,green,blue,note\ncyan,1.4,0.4,0.2,"two\nlines"\nmauve,1,1,1,')
    expect(problems).toMatchObject([{ line: 4 }])
    expect(readSheetFile('patch,red,green,blue\ncyan,1.4,0.4,"0.2\nmagenta,1,1,1', inks)).toMatchObject({
      refused: { message: 'sheet.nothingToUse' },
      problems: [{ line: 2, said: { message: 'sheet.openQuote' } }],
    })
  })
})

describe('a file of another kind is refused in words', () => {
  it.each([
    ['an empty file', '', 'sheet.empty'],
    ['only blanks', ' \n \n', 'sheet.empty'],
    ['a spreadsheet', 'PK\u0003\u0004\u0014\u0000', 'sheet.otherKind'],
    ['a PDF', '%PDF-1.7', 'sheet.otherKind'],
    ['JSON', '{"inks":[]}', 'sheet.otherKind'],
    ['a web page', '<!doctype html><p>patch,red,green,blue', 'sheet.otherKind'],
    ['bytes', 'a\u0000b\u0001', 'sheet.noText'],
    ['prose', 'Dear colleague,\nplease find the readings below.', 'sheet.missingColumns'],
    ['a CSV of another kind', 'date,amount,payee\n2020-01-01,12.50,someone', 'sheet.missingColumns'],
    ['a table without one filter', 'patch,red,green\ncyan,1.4,0.4', 'sheet.missingColumns'],
    ['a heading twice', 'patch,red,red,green,blue\ncyan,1,1,1,1', 'sheet.columnTwice'],
    ['headings alone', 'patch,red,green,blue', 'sheet.nothingToUse'],
    ['only the paper', 'patch,red,green,blue\npaper,0.1,0.1,0.1', 'sheet.nothingToUse'],
    ['a huge file', 'x'.repeat(2_000_000), 'sheet.tooLarge'],
    ['too many rows', `patch,red,green,blue\n${'c,1,1,1\n'.repeat(20_000)}`, 'sheet.tooManyRows'],
  ])('%s', (_, text, message) => {
    expect(readSheetFile(text, inks)).toMatchObject({ refused: { message } })
  })

  // By the marks that each kind of file begins with.
  it.each([
    ['PK\u0003\u0004', 'spreadsheet'],
    ['\u00d0\u00cf\u0011\u00e0\u00a1\u00b1', 'spreadsheet'],
    ['%PDF-1.7', 'PDF'],
    ['{"inks":[]}', 'JSON'],
    ['[1, 2]', 'JSON'],
    ['<html>', 'web page'],
    ['\ufeff\n  <html>', 'web page'],
    ['CGATS.17', 'CGATS'],
  ])('%j is said to be a %s', (text, kind) => {
    expect(readSheetFile(text, inks)).toMatchObject({ refused: { message: 'sheet.otherKind', values: { kind } } })
  })

  it('with the columns that are missing and those that were found', () => {
    expect(readSheetFile('patch, red ,green\ncyan,1,1', inks)).toMatchObject({
      refused: { values: { missing: 'blue', found: 'patch, red, green' } },
    })
  })

  it('whatever it holds, without an exception', () => {
    const piece = fc.constantFrom(
      'patch',
      'red',
      'green',
      'blue',
      'cyan',
      '+',
      ',',
      ';',
      '\t',
      '\n',
      '\r\n',
      '"',
      '1,4',
      '0.3',
      '-',
      ' ',
      '\u0000',
      '\ufeff',
      '=',
      'é',
    )
    const anyText = fc
      .array(fc.integer({ min: 0, max: 0xffff }), { maxLength: 60 })
      .map((codes) => String.fromCharCode(...codes))
    fc.assert(
      fc.property(
        fc.oneof(
          fc.array(piece, { maxLength: 60 }).map((pieces) => pieces.join('')),
          anyText,
        ),
        (text) => {
          const found = readSheetFile(text, inks)
          if ('refused' in found) expect(found.refused.message).toMatch(/^sheet\./)
          else expect(found.sheet.patches.length).toBeGreaterThan(0)
        },
      ),
      { numRuns: 200 },
    )
  })
})

describe('the template', () => {
  it.each(separators)('separated by %j holds the headings, the paper and every patch of the strip', (separator) => {
    const lines = sheetTemplate(inks, separator).trimEnd().split('\r\n')
    expect(lines[0]).toBe(['patch', 'red', 'green', 'blue', 'sheet'].join(separator))
    expect(lines[1]).toBe(['paper', '', '', '', '1'].join(separator))
    expect(lines).toHaveLength(1 + 16)
  })

  it('is read back patch by patch once it is filled in, whatever the inks are called', () => {
    const name = fc
      .string({ minLength: 1, maxLength: 12, unit: fc.constantFrom(...Array.from('abcXY ;,"\'=-@#')) })
      .filter((text) => text.trim() === text && !text.startsWith("'"))
    fc.assert(
      fc.property(
        fc.uniqueArray(name, { minLength: 2, maxLength: 4, selector: (each) => each.toLowerCase() }),
        fc.constantFrom(...separators),
        (names, separator) => {
          const filled = sheetTemplate(names, separator).replaceAll(
            `${separator}${separator}${separator}${separator}1`,
            `${separator}"1,1"${separator}1.2${separator}1.3${separator}1`,
          )
          const { sheet, problems } = read(filled, names)
          expect(problems).toEqual([])
          expect(sheet.patches).toHaveLength(2 ** names.length - 1)
        },
      ),
    )
  })
})
