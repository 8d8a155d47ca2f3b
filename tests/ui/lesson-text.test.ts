import { expect, test } from 'vitest'
import { offsetOf, withExpectation, withStart } from '../../src/ui/lessons/lesson-text.ts'

const text = `format: 1
start:
  inks:
    - { name: cyan, tack: 14 }
  reading: first

# the steps
steps:
  - id: one
    kind: expect
    expect:
      - { is: waterless, value: true }
    hints: [Look.]
`

test('only the start is replaced; comments and blank lines around it stay', () => {
  expect(withStart(text, 'start:\n  reading: settled\n')).toBe(
    text.replace(/start:[^]*first\n/, 'start:\n  reading: settled\n'),
  )
})

test('a text without a start gets one before its steps', () => {
  const without = 'format: 1\nsteps:\n  - id: one\n'
  expect(withStart(without, 'start:\n  reading: first\n')).toBe(
    'format: 1\nstart:\n  reading: first\nsteps:\n  - id: one\n',
  )
})

test('an expectation goes below the line of the caret, as an entry of the expect above', () => {
  const caret = text.indexOf('waterless')
  const { text: after, line } = withExpectation(text, caret, '- { is: sheet, value: first }\n')
  expect(after.split('\n')[line - 1]).toBe('      - { is: sheet, value: first }')
  expect(
    after
      .split('\n')
      .toSpliced(line - 1, 1)
      .join('\n'),
  ).toBe(text)
})

test('a place in lines and columns is a place in characters', () => {
  expect(text.slice(offsetOf(text, 4, 7)).startsWith('{ name: cyan')).toBe(true)
  expect(offsetOf(text, 1, 1)).toBe(0)
})
