import { describe, expect, it } from 'vitest'
import type { FaultKind } from '../../src/drill/cause.ts'
import { faultKinds } from '../../src/drill/cause.ts'
import type { Attempt } from '../../src/drill/practice.ts'
import { nextKind, waitFor } from '../../src/drill/practice.ts'

const miss = (kind: FaultKind): Attempt => ({ kind, found: false })
const find = (kind: FaultKind): Attempt => ({ kind, found: true })

describe('spaced repetition', () => {
  it('doubles the wait with every find in a row, and starts again after a miss', () => {
    expect(waitFor('paper weak', [])).toBeNull()
    expect(waitFor('paper weak', [miss('paper weak')])).toBe(2)
    expect(waitFor('paper weak', [find('paper weak')])).toBe(4)
    expect(waitFor('paper weak', [find('paper weak'), find('paper weak')])).toBe(8)
    expect(waitFor('paper weak', [find('paper weak'), miss('paper weak')])).toBe(2)
    expect(
      waitFor(
        'paper weak',
        Array.from({ length: 9 }, () => find('paper weak')),
      ),
    ).toBe(32)
  })

  it('brings a missed kind back after one other drill', () => {
    const history = [miss('unit too warm')]
    const second = nextKind(history, 1)
    expect(second).not.toBe('unit too warm')
    expect(nextKind([...history, find(second)], 1)).toBe('unit too warm')
  })

  it('never gives one kind twice running, and comes to every kind', () => {
    const history: Attempt[] = []
    for (let drill = 0; drill < 60; drill++) {
      const kind = nextKind(history, drill)
      expect(kind).not.toBe(history.at(-1)?.kind)
      history.push({ kind, found: drill % 3 !== 0 })
    }
    expect(new Set(history.map(({ kind }) => kind))).toEqual(new Set(faultKinds))
  })

  it('gives a kind that is always missed more often than one that is always found', () => {
    const history: Attempt[] = []
    for (let drill = 0; drill < 200; drill++) {
      const kind = nextKind(history, drill)
      history.push({ kind, found: kind !== 'soiled unit' })
    }
    const times = (wanted: FaultKind) => history.filter(({ kind }) => kind === wanted).length
    expect(times('soiled unit')).toBeGreaterThan(2 * times('order swapped'))
  })

  it('keeps to the kinds asked for, even to one', () => {
    expect(nextKind([miss('paper weak')], 1, ['paper weak'])).toBe('paper weak')
    expect(nextKind([], 3)).toBe(nextKind([], 3))
  })
})
