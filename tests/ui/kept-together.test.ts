import { expect, test } from 'vitest'
import { closing, opening, unitsKept, withoutMarks } from '../../src/ui/kept-together.ts'
import { readMessage } from '../../src/ui/message.ts'
import { texNumbers } from '../../src/ui/tex-numbers.ts'

const noBreak = '\u00a0'
const itself = (name: string) => name

test.each(['14 %', '0.25 µm', '2.5 m/s', '60 s', '23 °C', '1,000 g/m²', '12 rpm', '40 mm'])(
  '"%s" stays on one line',
  (text) => {
    expect(unitsKept(`about ${text}, so`)).toBe(`about ${text.replace(' ', noBreak)}, so`)
  },
)

test.each(['2 more', '3 states', '4 hours', '5 µmol', 'units h'])('"%s" may be parted', (text) => {
  expect(unitsKept(text)).toBe(text)
})

test.each([
  ['en', '{value} %', { value: '14' }, `14${noBreak}%`],
  ['en', '{share, number, ::percent} of it', { share: 0 }, `0${noBreak}% of it`],
  ['es', '{share, number, ::percent}', { share: -0.5 }, `-50${noBreak}%`],
  ['es', '{value, number, ::.0} {unit}', { value: 1.5, unit: 'm/s' }, `1,5${noBreak}m/s`],
])('in %s "%s" keeps its unit, and a percent sign is written in one way', (tag, text, values, said) => {
  expect(readMessage(text, tag, itself).fill(values)).toBe(said)
})

test('a word takes the marks that stand close to it, and the text between two words loses each once', () => {
  expect(closing('), and')).toBe('),')
  expect(closing(' and')).toBe('')
  expect(opening('it (“')).toBe('(“')
  expect(opening('it leaves 0.73 ')).toBe('0.73 ')
  expect(opening('of tack 12. ')).toBe('')
  expect(withoutMarks(', which is 1,76 ', true, true)).toBe(' which is ')
  // The lessons' own marks, which are the same on both sides of a word.
  expect(opening('press "')).toBe('"')
  expect(closing('", then')).toBe('",')
  expect(withoutMarks('" and "', true, true)).toBe(' and ')
  expect(withoutMarks(', as (', true, true)).toBe(' as ')
  expect(withoutMarks(', as (', false, false)).toBe(', as (')
  expect(withoutMarks('(', true, true)).toBe('')
})

test('equations have the decimal sign of the language', () => {
  expect(texNumbers(String.raw`y = 0.85 \cdot 1.2 \,\%`, 'es')).toBe(String.raw`y = 0{,}85 \cdot 1{,}2 \,\%`)
  expect(texNumbers('y = 0.85', 'en')).toBe('y = 0.85')
})
