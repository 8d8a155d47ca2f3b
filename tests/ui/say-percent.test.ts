import { expect, test } from 'vitest'
import { sayPercent } from '../../src/ui/say.ts'

const plain = (text: string) => text.replaceAll('\u00a0', ' ')

test('small shares are told more exactly, down to where it says no more', () => {
  expect([0.83, 0.0526, 0.00082, 0.000004, 0].map((share) => plain(sayPercent(share)))).toEqual([
    '83 %',
    '5.3 %',
    '0.082 %',
    '<0.001 %',
    '0 %',
  ])
})

test('beside shares that make up a whole with it, no share is told more exactly than to a tenth', () => {
  expect([0.9993, 0.00073, 0.0011, 0].map((share) => plain(sayPercent(share, 0.1)))).toEqual([
    '100 %',
    '<0.1 %',
    '0.1 %',
    '0 %',
  ])
})
