import { expect, test } from 'vitest'
import { phaseIndex, shownPhase } from '../../src/view/phases.ts'

test('a nip has five parts, in order, from 0 to 1', () => {
  const parts = Array.from({ length: 101 }, (_, i) => phaseIndex(i / 100))
  expect(parts).toEqual([...parts].sort())
  expect(new Set(parts)).toEqual(new Set([0, 1, 2, 3, 4]))
})

test('each still picture lies in its own part', () => {
  for (let i = 0; i <= 100; i++) {
    expect(phaseIndex(shownPhase({ phase: i / 100, motion: false }))).toBe(phaseIndex(i / 100))
  }
})

test('with motion the phase itself is shown, kept within the nip', () => {
  expect([-1, 0.3, 2].map((phase) => shownPhase({ phase, motion: true }))).toEqual([0, 0.3, 1])
})
