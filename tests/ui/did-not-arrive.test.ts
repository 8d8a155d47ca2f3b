import { expect, test } from 'vitest'
import { didNotArrive } from '../../src/ui/did-not-arrive.ts'

test.each([
  'Failed to fetch dynamically imported module: https://press.example/assets/strip-view-1a2b.js',
  'error loading dynamically imported module: https://press.example/assets/strip-view-1a2b.js',
  'Importing a module script failed.',
])('a module that did not come is told by what browsers say of it: %s', (message) => {
  expect(didNotArrive(new TypeError(message))).toBe(true)
})

test('a fault in the code, or any other, is no missing code', () => {
  expect(didNotArrive(new TypeError("Cannot read properties of undefined (reading 'module')"))).toBe(false)
  expect(didNotArrive(new RangeError('Failed to fetch dynamically imported module'))).toBe(false)
  expect(didNotArrive('Importing a module script failed.')).toBe(false)
})
