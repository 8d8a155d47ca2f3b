/** Attempts that a system no longer knows, and learners who share a computer. */
import { expect, test } from 'vitest'
import { daysAside, mostAside } from '../../../src/report/learning-system/aside-shelf.ts'
import { Scorm } from '../../../src/report/learning-system/scorm.ts'
import { scorm2004 } from '../../../src/report/learning-system/scorm-2004.ts'
import { noWork } from '../../../src/report/learning-system/work.ts'
import { Clock } from './clock.ts'
import { Learner } from './learner.ts'
import { StrictScorm } from './strict-scorm.ts'
import { MemoryStorage, visitOf } from './visits.ts'

const parcel = { lessons: ['faulty-job'], drills: 0, mastery: null }
const day = 24 * 60 * 60 * 1000

/** A computer in a classroom. */
class Room {
  readonly clock = new Clock()
  readonly storage = new MemoryStorage()

  async open(strict: StrictScorm) {
    const visit = visitOf(new Scorm(strict.api, scorm2004), parcel, this.clock, this.storage)
    await visit.open()
    return visit
  }

  /** A new attempt of which the system hears the beginning and not the answer that follows; what was done. */
  async attemptCutOff(who: ReadonlyMap<string, string> = kim) {
    const strict = new StrictScorm('2004', new Map(who))
    const visit = await this.open(strict)
    const learner = new Learner(() => this.clock.now)
    learner.open('faulty-job')
    visit.note(learner.work)
    await this.clock.wait(20_000)
    strict.failing = Infinity
    learner.step()
    learner.step()
    visit.note(learner.work)
    await this.clock.wait(20_000)
    visit.leave()
    return { strict, work: JSON.parse(JSON.stringify(learner.work)) as typeof learner.work }
  }

  /** The system has begun a new attempt. */
  openNew(who: ReadonlyMap<string, string> = kim) {
    return this.open(new StrictScorm('2004', new Map(who)))
  }
}

const kim = new Map([['cmi.learner_name', 'Kim']])
const lee = new Map([['cmi.learner_name', 'Lee']])
const nobody = new Map([['cmi.learner_id', '']])

test('every attempt set aside is kept beside those before, and can be read', async () => {
  const room = new Room()
  const works = [await room.attemptCutOff(), await room.attemptCutOff(), await room.attemptCutOff()].map(
    ({ work }) => work,
  )
  const visit = await room.openNew()
  const list = visit.aside?.list ?? []
  expect(list.map((each) => visit.aside?.workIn(each))).toEqual(works)
  expect(list.map(({ entries }) => entries.length)).toEqual([1, 1, 1])
  // The new attempt begins with nothing, and the next one sets none of them aside again.
  expect(visit.work).toEqual(noWork)
  visit.leave()
  expect((await room.openNew()).aside?.list).toHaveLength(3)
})

test('where there are too many, the oldest is named, and gone with the page', async () => {
  const room = new Room()
  for (let count = 0; count <= mostAside; count++) await room.attemptCutOff()
  const visit = await room.openNew()
  const { list = [], crowdedOut = [] } = visit.aside ?? {}
  expect(list).toHaveLength(mostAside + 1)
  expect(crowdedOut).toEqual(list.slice(0, 1))
  expect(visit.aside?.workIn(crowdedOut[0])).not.toBeNull()
  visit.leave()
  const next = await room.openNew()
  expect(next.aside?.list).toEqual(list.slice(1))
  expect(next.aside?.crowdedOut).toEqual([])
})

test('one that is removed leaves nothing in the browser, and can be put back', async () => {
  const room = new Room()
  await room.attemptCutOff()
  const visit = await room.openNew()
  const [only] = visit.aside?.list ?? []
  const kept = () => [...room.storage.entries.keys()].filter((key) => key.startsWith('tackstair aside'))
  expect(kept()).toHaveLength(1)
  visit.aside?.remove(only)
  expect([visit.aside?.list, kept()]).toEqual([[], []])
  visit.aside?.putBack(only)
  expect([visit.aside?.list, kept()]).toEqual([[only], [expect.any(String)]])
})

test('a learner of another name gets nothing of it, though the system gives both one id', async () => {
  const room = new Room()
  // one attempt is set aside, another waits
  await room.attemptCutOff()
  const { strict, work } = await room.attemptCutOff()
  const other = await room.openNew(lee)
  expect(other.work).toEqual(noWork)
  expect(other.aside?.list).toEqual([])
  const learner = new Learner(() => room.clock.now)
  learner.open('faulty-job')
  other.note(learner.work)
  await room.clock.wait(20_000)
  other.leave()
  // Whose it is finds both.
  const back = await room.open(strict.next())
  expect(back.work).toEqual(work)
  expect(back.aside?.list).toHaveLength(1)
  for (const name of ['Kim', 'Lee']) expect([...room.storage.entries].flat().join()).not.toContain(name)
})

test('for a learner whom the system does not name nothing stays in the browser', async () => {
  const room = new Room()
  await room.attemptCutOff(nobody)
  expect(room.storage.entries.size).toBe(0)
  expect((await room.openNew(nobody)).keeps).toBe(false)
})

test('what nobody came back for goes after a time, whoever opens the page', async () => {
  const room = new Room()
  await room.attemptCutOff()
  ;(await room.openNew()).leave()
  room.clock.now += (daysAside - 1) * day
  ;(await room.openNew(lee)).leave()
  expect((await room.openNew()).aside?.list).toHaveLength(1)
  room.clock.now += 2 * day
  ;(await room.openNew(lee)).leave()
  expect([...room.storage.entries.keys()].filter((key) => key.startsWith('tackstair aside'))).toEqual([])
  expect((await room.openNew()).aside?.list).toEqual([])
})

test('where the browser is full it is kept in the page, which says so', async () => {
  const room = new Room()
  await room.attemptCutOff()
  room.storage.full = true
  const visit = await room.openNew()
  expect(visit.aside?.list).toHaveLength(1)
  expect(visit.aside?.keeps).toBe(false)
  expect(visit.keeps).toBe(false)
})

test('spoilt text in its place is no attempt', async () => {
  const room = new Room()
  await room.attemptCutOff()
  ;(await room.openNew()).leave()
  for (const key of room.storage.entries.keys()) {
    if (key.startsWith('tackstair aside')) room.storage.entries.set(key, '{"since": 3}')
  }
  expect((await room.openNew()).aside?.list).toEqual([])
})
