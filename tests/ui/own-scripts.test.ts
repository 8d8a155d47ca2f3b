import { expect, test } from 'vitest'
import { isOwnScript } from '../../src/ui/own-scripts.ts'

const page = 'https://school.example/tackstair/index.html#view=bench'

test.each([
  ['assets/worker-a1B2.js', true],
  ['./sw.js', true],
  ['https://school.example/tackstair/assets/worker-a1.js', true],
  ['https://elsewhere.example/tackstair/assets/worker-a1.js', false],
  ['https://school.example/other/assets/worker-a1.js', false],
  ['../sw.js', false],
  ['assets/../../evil.js', false],
  ['assets/worker.js?from=elsewhere', false],
  ['blob:https://school.example/1', false],
  ['data:text/javascript,1', false],
  ['javascript:1', false],
])('served, %s is its own script: %s', (address, own) => {
  expect(isOwnScript(address, page, false)).toBe(own)
})

test.each([
  ['blob:null/0b6c', true],
  ['assets/worker.js', false],
  ['data:text/javascript,1', false],
])('in one file, %s is its own script: %s', (address, own) => {
  expect(isOwnScript(address, 'file:///stick/tackstair.html', true)).toBe(own)
})
