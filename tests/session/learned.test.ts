import { expect, test } from 'vitest'
import { benchOf } from '../../src/lesson/bench.ts'
import type { Progress } from '../../src/lesson/progress.ts'
import { readFile, writeFile } from '../../src/session/file.ts'
import { learnedIn, takeUpLearned } from '../../src/session/learned.ts'
import { Learning, ownKey } from '../../src/session/learning.ts'
import type { KeptProgress } from '../../src/session/saved.ts'
import { Session } from '../../src/session/session.ts'
import { snapshot } from '../../src/session/snapshot.ts'

const done = { done: true, misses: 0, hints: 0 }
const further: Progress = { lesson: 'two', step: 'why', records: { look: done, guess: done } }
const behind: Progress = { lesson: 'two', step: 'guess', records: { look: { done: true, misses: 2, hints: 1 } } }

const session = new Session()
const bench = { setUp: session.setUp, patch: [session.setUp.inks[0].name] }

/** As a file carries it from one computer to another. */
function carried(learning: Learning): readonly KeptProgress[] {
  const opened = readFile(writeFile(snapshot(session, { progress: learnedIn(learning) })))
  if (!('saved' in opened)) throw new Error(opened.refused.message)
  expect(opened.problems).toEqual([])
  return opened.saved.progress
}

test('a file takes every lesson along, with the bench it was left on', () => {
  const [school, home] = [new Learning(null), new Learning(null)]
  school.keep('two', further, bench)
  school.keep(ownKey('two'), behind, benchOf(session.setUp))
  takeUpLearned(home, carried(school))
  expect(home.lessons.toSorted()).toEqual(school.lessons.toSorted())
  for (const key of ['two', ownKey('two')]) expect(home.lesson(key)).toEqual(school.lesson(key))
})

test('an older file takes back nothing that has been done since', () => {
  const [school, home] = [new Learning(null), new Learning(null)]
  school.keep('two', behind, benchOf(session.setUp))
  home.keep('two', further, bench)
  takeUpLearned(home, carried(school))
  const { progress, bench: left } = home.lesson('two') ?? {}
  expect(progress).toMatchObject({ step: 'why', records: { look: { done: true }, guess: { done: true } } })
  expect(left).toEqual(bench)
})

test('where the file is further on, the lesson goes on from its bench, and that can be taken back', () => {
  const [school, home] = [new Learning(null), new Learning(null)]
  school.keep('two', further, bench)
  school.keep('three', { ...further, lesson: 'three' }, bench)
  home.keep('two', behind, benchOf(session.setUp))
  const takeBack = takeUpLearned(home, carried(school))
  expect(home.lesson('two')).toMatchObject({ progress: { step: 'why' }, bench })
  expect(home.lesson('three')?.progress).toEqual({ ...further, lesson: 'three' })
  takeBack()
  expect(home.lesson('two')?.progress).toEqual(behind)
  expect(home.lesson('three')).toBeUndefined()
})

test('an open lesson hears of it only when it has to open anew', () => {
  const learning = new Learning(null)
  learning.keep('two', further, bench)
  takeUpLearned(learning, [{ ...behind }])
  expect(learning.taken).toBe(1)
  takeUpLearned(learning, [{ ...behind }])
  expect(learning.taken).toBe(1)
})

test('what makes no sense is left out, and a bench that makes none leaves the progress', () => {
  const learning = new Learning(null)
  takeUpLearned(learning, [{ lesson: 'one' }, { ...further, bench: { setUp: 3, patch: 'all' } }])
  expect(learning.lessons).toEqual(['two'])
  expect(learning.lesson('two')).toEqual({ progress: further, bench: undefined })
})
