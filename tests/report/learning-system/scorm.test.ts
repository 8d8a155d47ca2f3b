/** Whole visits against SCORM systems that keep to the letter (strict-scorm.ts). */
import { describe, expect, test } from 'vitest'
import { findApi } from '../../../src/report/learning-system/find-api.ts'
import { Scorm } from '../../../src/report/learning-system/scorm.ts'
import { scorm12 } from '../../../src/report/learning-system/scorm-12.ts'
import { scorm2004 } from '../../../src/report/learning-system/scorm-2004.ts'
import { duration, timespan } from '../../../src/report/learning-system/scorm-values.ts'
import { Clock } from './clock.ts'
import { Learner } from './learner.ts'
import type { Edition } from './strict-scorm.ts'
import { StrictScorm } from './strict-scorm.ts'
import { MemoryStorage, visitOf } from './visits.ts'

const parcel = { lessons: ['faulty-job', 'moving-an-ink'], drills: 1, mastery: 0.8 }
const dialects = { '1.2': scorm12, '2004': scorm2004 }
const editions = ['1.2', '2004'] as const

async function begin(strict: StrictScorm, clock = new Clock(), storage = new MemoryStorage()) {
  const visit = visitOf(new Scorm(strict.api, dialects[strict.edition]), parcel, clock, storage)
  await visit.open()
  const learner = new Learner(() => clock.now, visit.work)
  const tell = async (ms = 20_000) => {
    visit.note(learner.work)
    await clock.wait(ms)
  }
  return { visit, learner, clock, storage, tell }
}

const words: Record<Edition, Record<'status' | 'place' | 'given' | 'right' | 'wrong', string>> = {
  '1.2': {
    status: 'cmi.core.lesson_status',
    place: 'cmi.core.lesson_location',
    given: 'student_response',
    right: 'correct',
    wrong: 'wrong',
  },
  '2004': {
    status: 'cmi.completion_status',
    place: 'cmi.location',
    given: 'learner_response',
    right: 'correct',
    wrong: 'incorrect',
  },
}

describe.each(editions)('SCORM %s', (edition) => {
  const { status, place, given, right, wrong } = words[edition]

  test('a whole lesson is told in values that a strict system takes, each answer once', async () => {
    const strict = new StrictScorm(edition)
    const { visit, learner, tell } = await begin(strict)
    learner.open('faulty-job')
    await tell()
    expect(strict.committed.get(place)).toMatch(/^faulty-job--/)
    learner.step()
    learner.step()
    learner.step('wrong')
    await tell()
    learner.finish()
    await tell()
    visit.leave()
    expect(strict.problems).toEqual([])
    expect(strict.state).toBe('over')
    expect(strict.committed.get(status)).toBe('incomplete')
    const told = strict.interactions()
    expect(told.length).toBeGreaterThan(6)
    expect(told.filter(({ id, result }) => id === 'faulty-job--measure' && result === wrong)).toHaveLength(1)
    expect(told.filter(({ id, result }) => id === 'faulty-job--measure' && result === right)).toHaveLength(1)
    expect(told.map(({ type }) => type)).toEqual(expect.arrayContaining(['choice', 'numeric', 'sequencing']))
    const diagnosis = told.find(({ id }) => id === 'faulty-job--look-around')
    expect(diagnosis?.['type']).toBe('choice')
    expect(diagnosis?.[given].split(edition === '1.2' ? ',' : '[,]')).toHaveLength(3)
    const [job] = strict.objectives()
    expect(job['id']).toBe('faulty-job')
    expect(job[edition === '1.2' ? 'status' : 'completion_status']).toBe('completed')
  })

  test('an order of inks on the bench is a sequencing interaction', async () => {
    const strict = new StrictScorm(edition)
    const { visit, learner, tell } = await begin(strict)
    learner.open('moving-an-ink')
    learner.finish()
    await tell()
    visit.leave()
    const move = strict.interactions().find(({ id }) => id === 'moving-an-ink--move')
    expect(move?.['type']).toBe('sequencing')
    expect(strict.problems).toEqual([])
  })

  test('the next visit begins where the last one ended, and tells nothing of it again', async () => {
    const strict = new StrictScorm(edition)
    const first = await begin(strict)
    first.learner.open('faulty-job')
    first.learner.step()
    first.learner.step()
    await first.tell()
    first.visit.leave()
    expect(first.storage.entries.size).toBe(0)

    const again = strict.next()
    const second = await begin(again)
    expect(second.visit.work).toEqual(JSON.parse(JSON.stringify(first.learner.work)))
    const before = again.interactions().length
    second.learner.step()
    await second.tell()
    second.visit.leave()
    expect(again.interactions().length).toBe(before + 1)
    expect(again.problems).toEqual([])
  })

  test.each(['', 'spoilt'])(
    'whoever has passed stays so, should the work handed back be lost: "%s"',
    async (suspended) => {
      const passed: [string, string][] =
        edition === '1.2'
          ? [
              ['cmi.core.lesson_status', 'passed'],
              ['cmi.core.score.raw', '90'],
            ]
          : [
              ['cmi.completion_status', 'completed'],
              ['cmi.success_status', 'passed'],
              ['cmi.score.scaled', '0.9'],
            ]
      const strict = new StrictScorm(edition, new Map([...passed, ['cmi.suspend_data', suspended]]))
      const { visit, learner, tell } = await begin(strict)
      learner.open('faulty-job')
      learner.step()
      await tell()
      visit.leave()
      for (const [element, value] of passed) expect(strict.committed.get(element)).toBe(value)
      expect(strict.committed.get(place)).toMatch(/^faulty-job--/)
      expect(strict.committed.get('cmi.suspend_data')).not.toBe(suspended)
      expect(strict.problems).toEqual([])
    },
  )

  test('a copy kept here goes on where what the system hands back cannot be read', async () => {
    const strict = new StrictScorm(edition)
    const first = await begin(strict)
    first.learner.open('faulty-job')
    first.learner.step()
    first.learner.step()
    await first.tell()
    // The page goes without a word; what it told is committed, and then spoilt.
    expect(first.storage.entries.size).toBeGreaterThan(0)
    const spoilt = new StrictScorm(edition, new Map([...strict.committed, ['cmi.suspend_data', 'spoilt']]))
    const second = await begin(spoilt, new Clock(), first.storage)
    expect(second.visit.work).toEqual(JSON.parse(JSON.stringify(first.learner.work)))
    second.visit.leave()
    expect(spoilt.problems).toEqual([])
  })

  test('a commit that fails is tried again with growing pauses; nothing is lost and nothing told twice', async () => {
    const strict = new StrictScorm(edition)
    const { visit, learner, clock, tell } = await begin(strict)
    learner.open('faulty-job')
    learner.step()
    await tell()
    strict.failing = 3
    learner.step()
    await tell(600)
    expect(visit.state).toMatchObject({ kind: 'waiting', nextAt: expect.any(Number) as number })
    expect(visit.waiting).toBeGreaterThan(0)
    await clock.wait(2000)
    expect(visit.state.kind).toBe('waiting')
    await clock.wait(14_000)
    expect(visit.state.kind).toBe('saved')
    expect(visit.waiting).toBe(0)
    visit.leave()
    const ids = strict.interactions().map(({ id }) => id)
    expect(ids).toEqual([...new Set(ids)])
    expect(strict.problems).toEqual([])
  })

  test('what could not be committed before the page was closed waits in the browser and is told at the next visit', async () => {
    const strict = new StrictScorm(edition)
    const { visit, learner, storage, tell, clock } = await begin(strict)
    learner.open('faulty-job')
    await tell()
    strict.failing = Infinity
    learner.step()
    learner.step()
    await tell()
    visit.leave()
    expect(storage.entries.size).toBe(1)
    expect(strict.interactions()).toEqual([])

    const again = strict.next()
    const second = await begin(again, clock, storage)
    expect(second.visit.work).toEqual(JSON.parse(JSON.stringify(learner.work)))
    await clock.wait(20_000)
    expect(again.interactions().map(({ id }) => id)).toEqual(['faulty-job--first-thought'])
    second.visit.leave()
    expect(storage.entries.size).toBe(0)
    expect(again.problems).toEqual([])
  })

  test('an answer that arrived though the system said no is not told again at the next visit', async () => {
    const strict = new StrictScorm(edition)
    const { visit, learner, storage, tell, clock } = await begin(strict)
    learner.open('faulty-job')
    await tell()
    strict.failing = Infinity
    learner.step()
    learner.step()
    await tell()
    visit.leave()
    // The system kept it all the same.
    strict.committed = new Map(strict.data)
    const again = strict.next()
    const second = await begin(again, clock, storage)
    await clock.wait(20_000)
    second.visit.leave()
    expect(again.interactions().map(({ id }) => id)).toEqual(['faulty-job--first-thought'])
  })

  test('everything done is completed, and passed by the pass mark or failed', async () => {
    for (const answers of ['right', 'wrong'] as const) {
      const strict = new StrictScorm(edition)
      const storage = new MemoryStorage()
      const system = new Scorm(strict.api, dialects[edition])
      const clock = new Clock()
      const visit = visitOf(system, { lessons: ['faulty-job'], drills: 0, mastery: 0.9 }, clock, storage)
      await visit.open()
      const learner = new Learner(() => clock.now)
      learner.open('faulty-job')
      learner.step()
      learner.step()
      learner.step(answers)
      learner.finish()
      visit.note(learner.work)
      await clock.wait(20_000)
      visit.leave()
      const success = answers === 'right' ? 'passed' : 'failed'
      if (edition === '1.2') expect(strict.committed.get(status)).toBe(success)
      else {
        expect(strict.committed.get(status)).toBe('completed')
        expect(strict.committed.get('cmi.success_status')).toBe(success)
      }
      expect(strict.problems).toEqual([])
    }
  })

  test('a visit that only looks round or back tells nothing but its time', async () => {
    const mode = edition === '1.2' ? 'cmi.core.lesson_mode' : 'cmi.mode'
    const strict = new StrictScorm(edition, new Map([[mode, 'browse']]))
    const { visit, learner, tell } = await begin(strict)
    learner.open('faulty-job')
    learner.step()
    learner.step()
    await tell()
    visit.leave()
    expect([...strict.committed.keys()].filter((key) => !/time|exit|mode/.test(key))).toEqual([])
    expect(strict.problems).toEqual([])
  })

  test('more answers than a system has to hold take the places of older ones to the same question', async () => {
    expect(dialects[edition].mostInteractions).toBe(250)
    const strict = new StrictScorm(edition)
    const clock = new Clock()
    const few = new Scorm(strict.api, { ...dialects[edition], mostInteractions: 6 })
    const visit = visitOf(few, parcel, clock, null)
    await visit.open()
    const learner = new Learner(() => clock.now)
    learner.open('faulty-job')
    learner.step()
    learner.step()
    for (let miss = 0; miss < 9; miss++) {
      learner.step('wrong')
      visit.note(learner.work)
      await clock.wait(600)
    }
    learner.step()
    visit.note(learner.work)
    await clock.wait(20_000)
    visit.leave()
    expect(strict.interactions()).toHaveLength(6)
    const answers = strict.interactions().filter(({ id }) => id === 'faulty-job--measure')
    expect(answers.filter(({ result }) => result === right)).toHaveLength(1)
    expect(strict.problems).toEqual([])
  })

  test('a system without objectives and interactions is told the rest', async () => {
    const strict = new StrictScorm(edition)
    const { api } = strict
    const set = edition === '1.2' ? 'LMSSetValue' : 'SetValue'
    const error = edition === '1.2' ? 'LMSGetLastError' : 'GetLastError'
    const plain = api[set] as (element: string, value: string) => string
    let refused = 0
    let code = ''
    const small = {
      ...api,
      [set]: (element: string, value: string) => {
        code = /objectives|interactions/.test(element) ? '401' : ''
        if (code === '') return plain(element, value)
        refused++
        return 'false'
      },
      [error]: () => code || '0',
    }
    const clock = new Clock()
    const visit = visitOf(new Scorm(small, dialects[edition]), parcel, clock, null)
    await visit.open()
    const learner = new Learner(() => clock.now)
    learner.open('faulty-job')
    learner.step()
    learner.step()
    visit.note(learner.work)
    await clock.wait(20_000)
    expect(visit.state.kind).toBe('saved')
    expect(strict.committed.get(place)).toMatch(/^faulty-job--/)
    const once = refused
    learner.step()
    visit.note(learner.work)
    await clock.wait(20_000)
    // The three objectives were refused once; only the new answer is asked about.
    expect(refused - once).toBeLessThan(12)
  })
})

describe('finding the system', () => {
  const api = {}
  const top: Record<string, unknown> = { API: api }
  top['parent'] = top

  function below(frame: object, levels: number): Record<string, unknown> {
    return levels === 0 ? (frame as Record<string, unknown>) : { parent: below(frame, levels - 1) }
  }

  test('looks up to seven windows above, and no further', () => {
    expect(findApi(below(top, 7) as never, 'API', 7)).toBe(api)
    expect(findApi(below(top, 8) as never, 'API', 7)).toBeNull()
    expect(findApi(below(top, 300) as never, 'API', 500)).toBe(api)
  })

  test('looks into the page that opened this one', () => {
    const popup: Record<string, unknown> = { opener: below(top, 2) }
    popup['parent'] = popup
    expect(findApi(popup as never, 'API', 7)).toBe(api)
  })

  test('a window of somebody else that may not be looked into is the end of it', () => {
    const foreign = {
      get API(): unknown {
        throw new DOMException('Blocked a frame', 'SecurityError')
      },
      get parent(): unknown {
        throw new DOMException('Blocked a frame', 'SecurityError')
      },
      get opener(): unknown {
        throw new DOMException('Blocked a frame', 'SecurityError')
      },
    }
    expect(findApi(below(foreign, 1) as never, 'API', 7)).toBeNull()
  })
})

test('times are written as each standard wants them', () => {
  expect(timespan(0)).toBe('0000:00:00.00')
  expect(timespan(3661.239)).toBe('0001:01:01.24')
  expect(timespan(59.999)).toBe('0000:01:00.00')
  expect(timespan(1e9)).toBe('9999:00:00.00')
  expect(duration(0)).toBe('PT0S')
  expect(duration(3661.239)).toBe('PT1H1M1.24S')
  expect(duration(59.999)).toBe('PT1M0S')
})
