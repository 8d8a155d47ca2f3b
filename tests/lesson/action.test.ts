/** What a learner does to the bench changes just that, and only within what the bench allows. */
import { describe, expect, test } from 'vitest'
import { inEnglish } from '../../src/press/problem.ts'
import type { Action } from '../../src/lesson/action.ts'
import { act } from '../../src/lesson/action.ts'
import type { Bench } from '../../src/lesson/bench.ts'
import { benchOf } from '../../src/lesson/bench.ts'
import { checkSetUp } from '../../src/press/check-setup.ts'
import type { SetUp } from '../../src/press/setup.ts'

const inks = [
  { name: 'black', tack: 16 },
  { name: 'cyan', tack: 14, temperature: 30 },
  { name: 'magenta', tack: 12 },
]

function setUpOf(given: object): SetUp {
  const checked = checkSetUp(given)
  if ('problems' in checked) throw new Error(checked.problems.map(({ message }) => message).join())
  return checked.setUp
}

const bench = benchOf(setUpOf({ inks, paper: { base: 'uncoated', absorbency: 2 }, seed: 9 }))

function after(action: Action, from: Bench = bench): Bench {
  const next = act(from, action)
  if ('problem' in next) throw new Error(inEnglish(next.problem))
  return next
}

const expected: [string, Action, object][] = [
  ['order', { change: 'order', of: 'black', to: 3 }, { inks: [inks[1], inks[2], inks[0]] }],
  ['tack', { change: 'tack', of: 'cyan', to: 9 }, { inks: [inks[0], { ...inks[1], tack: 9 }, inks[2]] }],
  ['film', { change: 'film', of: 'black', to: 2 }, { inks: [{ ...inks[0], film: 2 }, inks[1], inks[2]] }],
  [
    'coverage',
    { change: 'coverage', of: 'black', to: 0.1 },
    { inks: [{ ...inks[0], coverage: 0.1 }, inks[1], inks[2]] },
  ],
  [
    'unit temperature',
    { change: 'unit temperature', of: 'magenta', to: 12 },
    { inks: [inks[0], inks[1], { ...inks[2], temperature: 12 }] },
  ],
  [
    'unit dampening',
    { change: 'unit dampening', of: 'magenta', to: 0.5 },
    { inks: [inks[0], inks[1], { ...inks[2], dampening: 0.5 }] },
  ],
  ['speed, and the interval with it', { change: 'speed', to: 5 }, { press: { speed: 5 } }],
  ['interval', { change: 'interval', to: 1 }, { press: { interval: 1 } }],
  ['waterless', { change: 'waterless', to: true }, { press: { waterless: true } }],
  ['kind, at its usual speed', { change: 'kind', to: 'web' }, { press: { kind: 'web' } }],
  ['paper, as supplied', { change: 'paper', to: 'newsprint' }, { paper: 'newsprint' }],
  [
    'surface strength',
    { change: 'surface strength', to: 20 },
    { paper: { base: 'uncoated', absorbency: 2, surfaceStrength: 20 } },
  ],
  ['sheet by number', { change: 'sheet', to: 50 }, { reading: { sheet: 50 } }],
  ['first sheet', { change: 'sheet', to: 'first' }, { reading: 'first' }],
]

describe('a change leads to the set-up that a file would give', () => {
  test.each(expected)('%s', (_, action, difference) => {
    const before = structuredClone(bench)
    const file = { inks, paper: { base: 'uncoated', absorbency: 2 }, seed: 9, ...difference }
    expect(after(action).setUp).toEqual(setUpOf(file))
    expect(bench).toEqual(before)
  })

  test('an interval once stated stays when the speed changes', () => {
    const stated = after({ change: 'interval', to: 1 })
    expect(after({ change: 'speed', to: 5 }, stated).setUp.press).toMatchObject({ interval: 1, speed: 5 })
  })
})

test('the patch looked at is part of the bench and not of the set-up', () => {
  const next = after({ change: 'patch', to: ['cyan'] })
  expect(next.patch).toEqual(['cyan'])
  expect(next.setUp).toBe(bench.setUp)
})

describe('refused in words', () => {
  test.each<[Action, RegExp]>([
    [{ change: 'tack', of: 'gold', to: 9 }, /no ink is called gold; on the press are black, cyan, magenta/],
    [{ change: 'patch', to: ['gold'] }, /no ink is called gold/],
    [{ change: 'speed', to: 99 }, /press\.speed 99 is not allowed; allowed are numbers from 0.3 to 20 m\/s/],
  ])('%j', (action, message) => {
    const refused = act(bench, action)
    expect('problem' in refused && inEnglish(refused.problem)).toMatch(message)
  })
})
