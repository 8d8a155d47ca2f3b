/** Texts of unknown origin: legal ones with pieces taken out, put in and copied from elsewhere, and any text at all. */
import fc from 'fast-check'

/** What parsers, spreadsheets, browsers and people's keyboards trip over. */
export const oddTexts = [
  '',
  ' ',
  '\n',
  '\r',
  '\t',
  '\u0000',
  '\u0085',
  '\u2028',
  '\ufeff',
  '\ud800',
  '\u202e',
  '%',
  '%00',
  '%E0%A4%A',
  '%ud800',
  '&',
  '=',
  '#',
  ',',
  ':',
  ';',
  '~',
  '+',
  '-',
  '.',
  '"',
  "'",
  '`',
  '\\',
  '/*',
  '[',
  ']',
  '{',
  '}',
  '(',
  ')',
  '<',
  '*a',
  '&a ',
  '!!js/function ',
  '<<: ',
  '- ',
  '? ',
  '|',
  '0',
  '-0',
  '-1',
  '1e999',
  '-1e999',
  '1e-320',
  '0x10',
  '1_000',
  '9'.repeat(400),
  'NaN',
  'Infinity',
  'null',
  'true',
  'undefined',
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'hasOwnProperty',
  'then',
  '=1+1',
  '@SUM(1)',
  '<script>alert(1)</script>',
  '${1}',
  '{0}',
  '[[tack]]',
  'Grün',
  '墨',
  '(',
  '['.repeat(3000),
  '('.repeat(190),
  'a'.repeat(5000),
]

interface Edit {
  /** where, as a share of the text in millionths */
  at: number
  take: number
  put: string | { from: number; length: number }
}

const share = fc.nat(1_000_000)
const edit: fc.Arbitrary<Edit> = fc.record({
  at: share,
  take: fc.oneof(fc.constant(0), fc.nat(4), fc.nat(60), fc.nat(2000)),
  put: fc.oneof(
    { weight: 3, arbitrary: fc.constantFrom(...oddTexts) },
    { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 6 }) },
    { weight: 1, arbitrary: fc.record({ from: share, length: fc.nat(80) }) },
  ),
})
export const textEdits = fc.array(edit, { minLength: 1, maxLength: 5 })

export function spoiltText(text: string, edits: readonly Edit[]): string {
  return edits.reduce((spoilt, { at, take, put }) => {
    const place = (millionths: number) => Math.floor((millionths / 1_000_000) * spoilt.length)
    const piece = typeof put === 'string' ? put : spoilt.slice(place(put.from), place(put.from) + put.length)
    return spoilt.slice(0, place(at)) + piece + spoilt.slice(place(at) + take)
  }, text)
}

/** Any text at all, with what parsers trip over in it. */
export const anyText = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 200 }),
  fc
    .array(fc.oneof(fc.constantFrom(...oddTexts), fc.string({ maxLength: 5 })), { maxLength: 40 })
    .map((pieces) => pieces.join('')),
)
