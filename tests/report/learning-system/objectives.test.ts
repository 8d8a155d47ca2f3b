/** What SCORM 2004 is told of each lesson and drill, asked of a run-time of others (scorm-again). */
import { Scorm2004API } from 'scorm-again'
import { expect, test } from 'vitest'
import type { Parcel } from '../../../src/report/learning-system/launch.ts'
import { Scorm } from '../../../src/report/learning-system/scorm.ts'
import { scorm2004 } from '../../../src/report/learning-system/scorm-2004.ts'
import type { DrillEntry } from '../../../src/session/drill-record.ts'
import { Clock } from './clock.ts'
import { lessonOf } from './course.ts'
import { Learner } from './learner.ts'
import { StrictScorm } from './strict-scorm.ts'
import { visitOf } from './visits.ts'

const both: Parcel = { lessons: ['faulty-job', 'moving-an-ink'], drills: 1, mastery: 0.8 }

/** Every call is passed on to the run-time, and to the strict one beside it, which notes what is not to the letter. */
class Room {
  readonly real = new Scorm2004API({ autocommit: false, logLevel: 5 })
  readonly strict = new StrictScorm('2004')
  readonly clock = new Clock()
  readonly #api = Object.fromEntries(
    Object.entries(this.strict.api).map(([name, call]) => [
      name,
      (...values: string[]) => {
        ;(call as (...given: string[]) => string)(...values)
        return (this.real as unknown as Record<string, (...given: string[]) => string>)[name](...values)
      },
    ]),
  )

  async open(parcel = both) {
    const visit = visitOf(new Scorm(this.#api, scorm2004), parcel, this.clock, null)
    await visit.open()
    const learner = new Learner(() => this.clock.now)
    const tell = async () => {
      visit.note(learner.work)
      await this.clock.wait(20_000)
    }
    return { visit, learner, tell }
  }

  /** By id: success and how much of it is done. */
  objectives(): Record<string, [success: string, progress: string]> {
    const get = (element: string) => this.real.lmsGetValue(`cmi.objectives.${element}`)
    return Object.fromEntries(
      Array.from({ length: Number(get('_count')) }, (_, at) => [
        get(`${at}.id`),
        [get(`${at}.success_status`), get(`${at}.progress_measure`)],
      ]),
    )
  }
}

const asked = lessonOf('faulty-job').steps.filter(({ kind }) => kind === 'do' || kind === 'expect').length

test('a lesson is passed as soon as its pass mark is met, and unknown before', async () => {
  const room = new Room()
  const { visit, learner, tell } = await room.open()
  learner.open('faulty-job')
  await tell()
  expect(room.objectives()).toMatchObject({ 'faulty-job': ['unknown', '0'], 'moving-an-ink': ['unknown', '0'] })
  const seen: string[] = []
  for (const { kind } of lessonOf('faulty-job').steps) {
    learner.step()
    await tell()
    if (kind === 'do' || kind === 'expect') seen.push(room.objectives()['faulty-job'][0])
  }
  // From the first whole number of tasks that is 80 % of them.
  const enough = Math.ceil(0.8 * asked)
  expect(seen).toEqual(Array.from({ length: asked }, (_, at) => (at + 1 >= enough ? 'passed' : 'unknown')))
  expect(room.objectives()).toMatchObject({ 'faulty-job': ['passed', '1'], 'moving-an-ink': ['unknown', '0'] })
  visit.leave()
  expect(room.strict.problems).toEqual([])
})

test('a lesson finished below its pass mark is failed, and passed once it is done better', async () => {
  const room = new Room()
  const high = { ...both, mastery: 1 }
  const { visit, learner, tell } = await room.open(high)
  learner.open('faulty-job')
  learner.step()
  learner.step()
  learner.step('wrong')
  await tell()
  expect(room.objectives()['faulty-job'][0]).toBe('unknown')
  learner.finish()
  await tell()
  expect(room.objectives()['faulty-job']).toEqual(['failed', '1'])
  const better = new Learner(() => room.clock.now)
  better.open('faulty-job')
  better.finish()
  visit.note(better.work)
  await room.clock.wait(20_000)
  expect(room.objectives()['faulty-job']).toEqual(['passed', '1'])
  visit.leave()
  expect(room.strict.problems).toEqual([])
})

test('what was passed stays so, though the lesson is begun again, and though the next visit knows nothing of it', async () => {
  const room = new Room()
  const first = await room.open()
  first.learner.open('faulty-job')
  first.learner.finish()
  await first.tell()
  const again = new Learner(() => room.clock.now)
  again.open('faulty-job')
  first.visit.note(again.work)
  await room.clock.wait(20_000)
  expect(room.objectives()['faulty-job']).toEqual(['passed', '0'])
  first.visit.leave()

  // The next visit of the same attempt, whose suspended text is lost.
  const kept = JSON.parse(JSON.stringify(room.real.cmi)) as { objectives: object }
  const next = new Room()
  next.real.loadFromJSON({ objectives: kept.objectives }, 'cmi')
  const second = await next.open()
  second.learner.open('faulty-job')
  second.learner.step()
  await second.tell()
  expect(next.objectives()['faulty-job'][0]).toBe('passed')
})

test('without a pass mark nothing is judged', async () => {
  const room = new Room()
  const { learner, tell } = await room.open({ ...both, mastery: null })
  learner.open('faulty-job')
  learner.finish()
  await tell()
  expect(room.objectives()['faulty-job']).toEqual(['unknown', '1'])
})

const drill: DrillEntry = {
  drill: 'easy-3',
  job: 'seed leaflet',
  kind: 'unit too warm',
  first: 'proven',
  tries: 1,
  taken: 3,
  cured: true,
}

test.each([
  ['proven', 0.8, 'passed'],
  ['found', 0.8, 'failed'],
  // half of it is given for the cause alone
  ['found', 0.5, 'passed'],
] as const)('a drill whose cause is %s, with a pass mark of %f, is %s', async (first, mastery, success) => {
  const room = new Room()
  const { visit, learner } = await room.open({ ...both, mastery })
  visit.note(learner.work)
  await room.clock.wait(20_000)
  expect(room.objectives()['drill-1'][0]).toBe('unknown')
  visit.note({ ...learner.work, drills: [{ ...drill, first }] })
  await room.clock.wait(20_000)
  expect(room.objectives()['drill-1']).toEqual([success, '1'])
  visit.leave()
  expect(room.strict.problems).toEqual([])
})
