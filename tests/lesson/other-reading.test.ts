/** A number that was entered in place of the one asked for is told by what it is. */
import { expect, test } from 'vitest'
import { benchOf } from '../../src/lesson/bench.ts'
import { judgeStep } from '../../src/lesson/judge.ts'
import { otherReading } from '../../src/lesson/other-reading.ts'
import type { ReadingRef } from '../../src/lesson/reading.ts'
import { read } from '../../src/lesson/reading.ts'
import type { AskedStep } from '../../src/lesson/step.ts'
import { checkSetUp } from '../../src/press/check-setup.ts'
import { inEnglish } from '../../src/press/problem.ts'

const inks = [
  { name: 'cyan', tack: 14 },
  { name: 'yellow', tack: 12 },
]
const checked = checkSetUp({ inks, reading: 'first' })
if ('problems' in checked) throw new Error('the set-up of this test is refused')
const bench = benchOf(checked.setUp)

const trap: ReadingRef = { what: 'mass trap', of: 'yellow', on: 'cyan' }
const film: ReadingRef = { what: 'film', of: 'yellow', in: ['cyan', 'yellow'] }

/** As a learner reads it off the bench. */
function shown(reading: ReadingRef, digits: number): number {
  const value = read(bench, reading)
  if (typeof value !== 'number') throw new Error(inEnglish(value.problem))
  return Number(value.toFixed(digits))
}

function handIn(reading: ReadingRef, tolerance: number, enter: number) {
  const step: AskedStep = {
    id: 'asked',
    kind: 'expect',
    text: 'Read it.',
    expect: [{ is: 'number', reading, tolerance, unit: reading.what === 'film' ? 'um' : '%' }],
  }
  return judgeStep(step, bench, { enter }).findings[0]
}

test('a film entered as a mass trap is known as that film', () => {
  expect(otherReading(bench, trap, shown(film, 2), 1)).toEqual(film)
})

test('a number near no film is not taken for one, however wide the trap may be missed', () => {
  expect(otherReading(bench, trap, shown(film, 2) + 0.05, 1)).toBeUndefined()
})

test('the pull of the other film in a nip, entered in place of the one asked for, is known as that', () => {
  const asked: ReadingRef = { what: 'pull', of: 'cyan', by: 'yellow', in: ['cyan', 'yellow'] }
  const other: ReadingRef = { ...asked, of: 'yellow' }
  expect(otherReading(bench, asked, shown(other, 1), 0.05)).toEqual(other)
  expect(otherReading(bench, asked, shown(asked, 1), 0.05)).toBeUndefined()
})

test('what another blanket gives back, entered in place of the one asked for, is known as that', () => {
  const asked: ReadingRef = { what: 'given back', by: 'yellow', in: ['cyan'] }
  const other: ReadingRef = { ...asked, by: 'cyan' }
  expect(otherReading(bench, asked, shown(other, 2), 0.01)).toEqual(other)
})

test('a mass trap entered as a share of one is told to be that, and is not right', () => {
  expect(handIn(trap, 1, shown(trap, 0) / 100)).toMatchObject({ met: false, asShare: true })
  expect(handIn(trap, 1, shown(trap, 0))).toMatchObject({ met: true })
})

test('a hundredth of a film is no share', () => {
  expect(handIn(film, 0.02, shown(film, 2) / 100)).not.toHaveProperty('asShare')
})
