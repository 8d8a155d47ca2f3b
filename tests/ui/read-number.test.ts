import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readNumber } from '../../src/ui/read-number.ts'
import { decimalSign, numberWriter } from '../../src/ui/write-number.ts'

test.each([
  ['16', 16],
  [' 4.05 ', 4.05],
  ['.5', 0.5],
  ['4,5', 4.5],
  ['0,25', 0.25],
  ['10,000', 10_000],
  ['12,500.5', 12_500.5],
  ['−3', -3],
])('"%s" is %d', (typed, value) => {
  expect(readNumber(typed)).toBe(value)
})

test.each(['', 'abc', '1e9', '1.2.3', '12 14', '0x10', 'Infinity', '--2', '5 m/s'])('"%s" is no number', (typed) => {
  expect(readNumber(typed)).toBeNull()
})

test.each([
  ['1,25', 1.25],
  ['1.25', 1.25],
  ['1.250', 1.25],
  ['1.250,5', 1250.5],
  ['12\u202f500', 12_500],
  ['−0,5', -0.5],
])('"%s" is %d where the decimal sign is a comma', (typed, value) => {
  expect(readNumber(typed, ',')).toBe(value)
})

test.each(['1,2,3', '1.2.3', '1,234.5', '12 14', ','])('"%s" is no number there', (typed) => {
  expect(readNumber(typed, ',')).toBeNull()
})

test.each(['en', 'es'])('what the page writes in %s it reads again as the same number', (tag) => {
  const decimals = fc.integer({ min: 0, max: 4 })
  fc.assert(
    fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), decimals, (value, digits) => {
      const format = { minimumFractionDigits: digits, maximumFractionDigits: digits, signDisplay: 'negative' } as const
      const read = readNumber(numberWriter(tag, format).format(value), decimalSign(tag))
      expect(read).toBeCloseTo(value, digits)
    }),
  )
})
