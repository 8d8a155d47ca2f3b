import fc from 'fast-check'
import { expect, test } from 'vitest'
import { processNames } from '../../src/press/presets.ts'
import { inkLetters } from '../../src/session/letters.ts'
import { spotInks } from '../../src/session/spot-inks.ts'

test('the process inks have the letters of the trade', () => {
  expect(inkLetters(processNames)).toEqual(['K', 'C', 'M', 'Y'])
})

test('all inks that come with the program, and any eight names, are told apart', () => {
  const supplied = inkLetters([...processNames, ...spotInks.map(({ name }) => name)])
  expect(new Set(supplied).size).toBe(supplied.length)
  fc.assert(
    fc.property(fc.uniqueArray(fc.string({ minLength: 1, maxLength: 8 }), { maxLength: 8 }), (names) => {
      expect(new Set(inkLetters(names)).size).toBe(names.length)
    }),
  )
})
