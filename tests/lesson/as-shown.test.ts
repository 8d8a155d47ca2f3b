/** What a learner reads off the bench is what is judged: no number that is shown is told to be something else. */
import { describe, expect, test } from 'vitest'
import { asShown } from '../../src/lesson/as-shown.ts'
import { benchOf } from '../../src/lesson/bench.ts'
import { judgeBench, judgeStep } from '../../src/lesson/judge.ts'
import type { ReadingRef } from '../../src/lesson/reading.ts'
import { read, readings } from '../../src/lesson/reading.ts'
import { sayFinding } from '../../src/lesson/said.ts'
import { checkSetUp } from '../../src/press/check-setup.ts'

test.each([
  ['film', 1.4496, 1.45],
  ['mass trap', 71.6, 72],
  ['coverage', 70.6, 71],
  ['lifted', 8.36, 8.4],
  ['lifted', 12.4, 12],
  ['picked', 0.0444, 0.044],
  ['contamination', 0.34, 0.3],
] as const)('a %s of %d is shown as %d', (what, value, shown) => {
  expect(asShown(value, what)).toBe(shown)
})

const asked: [reading: ReadingRef, digit: number][] = [
  [{ what: 'film', of: 'yellow', in: ['cyan', 'yellow'] }, 0.01],
  [{ what: 'mass trap', of: 'yellow', on: 'cyan' }, 1],
  [{ what: 'contamination', of: 'yellow' }, 0.1],
  [{ what: 'density', in: ['cyan'], through: 'red' }, 0.01],
]

describe.each([9, 11.3, 13, 14.7, 17])('with a second ink of tack %d', (tack) => {
  const inks = [
    { name: 'cyan', tack: 14 },
    { name: 'yellow', tack, film: 3.7 },
  ]
  const checked = checkSetUp({ inks, reading: 'first' })
  if ('problems' in checked) throw new Error('the set-up of this test is refused')
  const bench = benchOf(checked.setUp)

  test.each(asked)('%j is judged as it is shown', (reading, digit) => {
    const value = read(bench, reading)
    if (typeof value !== 'number') throw new Error('there is no such reading')
    const shown = Math.round(value / digit) * digit
    const { unit } = readings[reading.what]
    for (const is of ['at least', 'at most'] as const) {
      const at = (aim: number) => judgeBench({ is, reading, value: Number(aim.toFixed(3)), unit }, bench)
      expect(at(shown).met, is).toBe(true)
      const missed = at(shown + (is === 'at least' ? digit : -digit))
      expect(missed.met, is).toBe(false)
      expect(sayFinding(missed, bench).values['value']).toBeCloseTo(shown, 6)
    }
    const question = { is: 'number', reading, tolerance: 0.001, unit } as const
    const step = { id: 'read', kind: 'expect', text: 'Read it.', expect: [question] } as const
    const verdict = judgeStep({ ...step, expect: [...step.expect] }, bench, { enter: Number(shown.toFixed(2)) })
    expect(verdict.met).toBe(true)
  })
})
