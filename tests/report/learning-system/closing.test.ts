/** Closing the page: when it would lose work, and when not. */
import { expect, test } from 'vitest'
import { Scorm } from '../../../src/report/learning-system/scorm.ts'
import { scorm2004 } from '../../../src/report/learning-system/scorm-2004.ts'
import { Clock } from './clock.ts'
import { Learner } from './learner.ts'
import { StrictScorm } from './strict-scorm.ts'
import { MemoryStorage, visitOf } from './visits.ts'

const parcel = { lessons: ['faulty-job'], drills: 0, mastery: null }

/** A lesson whose first question is open. */
async function atFirstQuestion(storage: MemoryStorage | null, before: readonly [string, string][] = []) {
  const clock = new Clock()
  const strict = new StrictScorm('2004', new Map(before))
  const visit = visitOf(new Scorm(strict.api, scorm2004), parcel, clock, storage)
  await visit.open()
  const learner = new Learner(() => clock.now)
  const step = async (ms = 20_000) => {
    learner.step()
    visit.note(learner.work)
    await clock.wait(ms)
  }
  learner.open('faulty-job')
  await step()
  return { clock, strict, visit, step }
}

test('while the browser keeps the work nothing is lost, whatever the system does', async () => {
  const { strict, visit, step } = await atFirstQuestion(new MemoryStorage())
  strict.failing = Infinity
  await step()
  expect([visit.waiting, visit.keeps, visit.wouldLose]).toEqual([1, true, false])
})

test('with a full browser, work would be lost until the system has it', async () => {
  const storage = new MemoryStorage()
  const { clock, strict, visit, step } = await atFirstQuestion(storage)
  storage.full = true
  strict.failing = Infinity
  await step()
  expect([visit.waiting, visit.keeps, visit.wouldLose]).toEqual([1, false, true])
  strict.failing = 0
  await clock.wait(60_000)
  expect([visit.waiting, visit.wouldLose]).toEqual([0, false])
})

test('once the browser has room again it keeps the work again, and says so', async () => {
  const storage = new MemoryStorage()
  const { strict, visit, step } = await atFirstQuestion(storage)
  const told: boolean[] = []
  visit.subscribe(() => told.push(visit.keeps))
  storage.full = true
  strict.failing = Infinity
  await step(0)
  expect(told).toContain(false)
  storage.full = false
  told.length = 0
  await step(0)
  expect(told.at(-1)).toBe(true)
  expect([visit.keeps, visit.wouldLose]).toEqual([true, false])
  visit.leave()
  expect([...storage.entries.values()].join()).toContain('faulty-job--first-thought')
})

test('where the browser keeps nothing at all, only what has not arrived would be lost', async () => {
  const { strict, visit, step } = await atFirstQuestion(null)
  expect([visit.keeps, visit.wouldLose]).toEqual([false, false])
  strict.failing = Infinity
  await step()
  expect(visit.wouldLose).toBe(true)
  // As the visit is ended the system takes it after all.
  strict.failing = 0
  visit.leave()
  expect(visit.wouldLose).toBe(false)
})

test('a step that is only read is work too, where the system does not listen', async () => {
  const clock = new Clock()
  const strict = new StrictScorm('2004')
  const visit = visitOf(new Scorm(strict.api, scorm2004), parcel, clock, null)
  await visit.open()
  await clock.wait(0)
  strict.failing = Infinity
  const learner = new Learner(() => clock.now)
  learner.open('faulty-job')
  learner.step()
  visit.note(learner.work)
  expect(visit.wouldLose).toBe(false)
  await clock.wait(20_000)
  expect([visit.waiting, visit.wouldLose]).toEqual([0, true])
})

test('a visit that only looks round has nothing to lose', async () => {
  const { visit, step } = await atFirstQuestion(null, [['cmi.mode', 'browse']])
  await step()
  expect(visit.wouldLose).toBe(false)
})
