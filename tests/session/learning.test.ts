import { expect, test } from 'vitest'
import { benchOf } from '../../src/lesson/bench.ts'
import type { LearningStorage } from '../../src/session/learning.ts'
import { Learning, ownKey } from '../../src/session/learning.ts'
import { benchNow, putOnBench } from '../../src/session/lesson-bench.ts'
import { Session } from '../../src/session/session.ts'

const progress = { lesson: 'two', step: 'look', records: { look: { done: true, misses: 2, hints: 1 } } }

function storage(taken: Record<string, string> = {}): LearningStorage & { taken: Record<string, string> } {
  return {
    taken,
    getItem: (key) => taken[key] ?? null,
    setItem: (key, value) => void (taken[key] = value),
    removeItem: (key) => void Reflect.deleteProperty(taken, key),
    key: (at) => Object.keys(taken)[at] ?? null,
    get length() {
      return Object.keys(taken).length
    },
  }
}

const blocked: LearningStorage = {
  getItem: refuse,
  setItem: refuse,
  removeItem: refuse,
  key: refuse,
  get length(): number {
    return refuse()
  },
}

function refuse(): never {
  throw new Error('blocked')
}

test('a lesson is found again by the next page, its bench and patch too', () => {
  const shelf = storage()
  const { setUp } = new Session()
  new Learning(shelf).keep('two', progress, { setUp, patch: [setUp.inks[0].name] })
  const found = new Learning(shelf).lesson('two')
  expect(found?.progress).toEqual(progress)
  expect(found?.bench).toEqual({ setUp, patch: [setUp.inks[0].name] })
})

test('two pages with two lessons keep both', () => {
  const shelf = storage()
  const [one, other] = [new Learning(shelf), new Learning(shelf)]
  const bench = benchOf(new Session().setUp)
  one.keep('one', { ...progress, lesson: 'one' }, bench)
  other.keep('two', progress, bench)
  one.keep('one', { ...progress, lesson: 'one', step: 'why' }, bench)
  const next = new Learning(shelf)
  expect(next.lesson('one')?.progress).toMatchObject({ step: 'why' })
  expect(next.lesson('two')?.progress).toEqual(progress)
})

test.each([blocked, null])('where nothing is kept the page still knows it, and says so', (shelf) => {
  const learning = new Learning(shelf)
  learning.keep('two', progress, benchOf(new Session().setUp))
  learning.keepOwn('mine', 'format: 1')
  learning.name = 'Kim'
  expect(learning.keeps).toBe(false)
  expect(learning.lesson('two')?.progress).toEqual(progress)
  expect(learning.own).toEqual({ mine: 'format: 1' })
  expect(learning.name).toBe('Kim')
})

test('a damaged entry is as good as none, and a damaged bench leaves the progress', () => {
  expect(new Learning(storage({ 'tackstair lesson two': '{"progress":' })).lesson('two')).toBeUndefined()
  const learning = new Learning(
    storage({ 'tackstair lesson two': JSON.stringify({ progress, setUp: { inks: 'none' }, patch: [] }) }),
  )
  expect(learning.lesson('two')).toEqual({ progress, bench: undefined })
})

test('a lesson of one’s own goes with what was done in it', () => {
  const shelf = storage()
  const learning = new Learning(shelf)
  learning.keepOwn('mine', 'format: 1')
  learning.keep(ownKey('mine'), progress, benchOf(new Session().setUp))
  learning.forgetOwn('mine')
  expect(learning.own).toEqual({})
  expect(shelf.taken).toEqual({})
})

test('a bench put on the session is the bench the session has', () => {
  const [session, other] = [new Session(), new Session()]
  other.change({ kind: 'move ink', from: 0, to: 1 })
  const bench = { setUp: other.setUp, patch: [other.setUp.inks[1].name] }
  putOnBench(session, bench)
  expect(benchNow(session)).toEqual(bench)
  const { setUp } = session
  putOnBench(session, benchNow(session))
  expect(session.setUp).toBe(setUp)
})
