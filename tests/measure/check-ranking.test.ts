import { describe, expect, it } from 'vitest'
import { checkRanking } from '../../src/measure/check-ranking.ts'
import { usualWeights } from '../../src/press/order-score.ts'

const inks = [
  { name: 'black', tack: 16 },
  { name: 'cyan', tack: 14 },
  { name: 'yellow', tack: 10 },
]

function problemsOf(input: unknown): string[] {
  const checked = checkRanking(input)
  return 'problems' in checked ? checked.problems.map(({ path, message }) => `${path}: ${message}`) : []
}

describe('a ranking task', () => {
  it('judges every two inks by the usual weights and the usual aim of the paper where nothing is said', () => {
    const checked = checkRanking({ inks })
    expect(checked).toMatchObject({
      task: {
        overprints: [
          [0, 1],
          [0, 2],
          [1, 2],
        ],
        weights: usualWeights,
      },
    })
    expect('task' in checked && 'aim' in checked.task).toBe(false)
  })

  it('takes weights one by one, an aim by name, no aim at all, and overprints by the names of their inks', () => {
    expect(checkRanking({ inks, weights: { picking: 0 }, aim: 'FOGRA29L' })).toMatchObject({
      task: { weights: { ...usualWeights, picking: 0 }, aim: 'FOGRA29L' },
    })
    expect(checkRanking({ inks, aim: null })).toMatchObject({ task: { aim: null } })
    expect(
      checkRanking({
        inks,
        aim: {
          overprints: [
            ['yellow', 'cyan'],
            ['black', 'cyan', 'yellow'],
          ],
        },
      }),
    ).toMatchObject({
      task: {
        overprints: [
          [2, 1],
          [0, 1, 2],
        ],
      },
    })
  })

  it('says what is wrong, where, and what is allowed', () => {
    expect(problemsOf({ inks, aim: 'FOGRA99' })).toEqual([expect.stringMatching(/^aim: .*FOGRA39L/)])
    expect(problemsOf({ inks, weights: { trap: -1 } })).toEqual([
      expect.stringMatching(/^weights\.trap: .*0 to 1000000/),
    ])
    expect(problemsOf({ inks, weights: { traps: 1 } })).toEqual([expect.stringMatching(/^weights/)])
    expect(problemsOf({ inks, aim: { overprints: [['cyan', 'magenta']] } })).toEqual([
      'aim.overprints[0]: names an ink that is not loaded; loaded are black, cyan, yellow',
    ])
    expect(problemsOf({ inks, aim: { overprints: [['cyan', 'cyan']] } })).toEqual([expect.stringMatching(/twice/)])
    expect(problemsOf({ inks, aim: { overprints: [['cyan']] } })).toEqual([expect.stringMatching(/^aim: /)])
    expect(problemsOf({ inks: 3, aim: 1 })).toHaveLength(2)
    for (const weights of [3, null])
      expect(problemsOf({ inks, weights })).toEqual([expect.stringMatching(/^weights: /)])
    // Of a set-up that cannot be read no ink can be looked up.
    expect(problemsOf({ inks: 3, aim: { overprints: [['cyan', 'black']] } })).toHaveLength(1)
    for (const nonsense of [null, 3, 'x', [], undefined]) expect(problemsOf(nonsense).length).toBeGreaterThan(0)
  })

  it('is not loosened: what a set-up refuses is refused here', () => {
    expect(problemsOf({ inks, aims: 'FOGRA39L' })).toEqual([expect.stringMatching(/^aims: not known here/)])
  })
})
