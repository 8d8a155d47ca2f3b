import { expect, test } from 'vitest'
import { readNumber } from '../../src/ui/read-number.ts'

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
