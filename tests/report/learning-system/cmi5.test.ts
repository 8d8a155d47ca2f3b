/** Whole visits against a record store that keeps to the letter of cmi5 (strict-store.ts), and what goes wrong on the way. */
import { describe, expect, test } from 'vitest'
import { Cmi5 } from '../../../src/report/learning-system/cmi5.ts'
import { readCmi5Launch } from '../../../src/report/learning-system/cmi5-launch.ts'
import { Clock } from './clock.ts'
import { Learner } from './learner.ts'
import type { Fault, LaunchWish } from './strict-store.ts'
import { StrictStore, fetchFrom } from './strict-store.ts'
import { MemoryStorage, visitOf } from './visits.ts'

const parcel = { lessons: ['faulty-job', 'moving-an-ink'], drills: 0, mastery: null }
const endpoint = 'https://lms.example/xapi'

class Room {
  readonly store = new StrictStore()
  readonly clock = new Clock()
  storage: MemoryStorage | null = new MemoryStorage()

  /** The page launched for another visit; it opens as far as it can. */
  async launch(wish: LaunchWish = {}, parcelGiven = parcel) {
    const search = this.store.launch(endpoint, 'https://lms.example/fetch', wish)
    const launch = readCmi5Launch(`?${search}`)
    if (!launch) throw new Error('The launch address cannot be read.')
    const { later, newId } = this.clock
    const ports = { fetch: fetchFrom(this.store), later, newId, now: () => this.clock.now }
    const visit = visitOf(new Cmi5(launch, ports, 'en'), parcelGiven, this.clock, this.storage)
    const opening = visit.open()
    await this.clock.wait(0)
    const learner = new Learner(() => this.clock.now, visit.work)
    const tell = async (ms = 20_000) => {
      visit.note(learner.work)
      await this.clock.wait(ms)
    }
    const leave = async () => {
      visit.leave()
      await this.clock.wait(0)
    }
    return { visit, learner, tell, leave, opening }
  }

  /** Every answer that is there, by question and what was answered. */
  answers(): string[] {
    const answered = this.store.statements.filter(({ verb }) => verb.id.endsWith('/answered'))
    return answered.map(({ object, result }) => `${object.id.split('/').at(-1)} ${String(result?.['response'])}`)
  }
}

const threeAnswers = ['faulty-job--first-thought magenta-fails', 'faulty-job--measure 100058', 'faulty-job--measure 58']

async function answerThrice({ learner, tell }: Awaited<ReturnType<Room['launch']>>, ms?: number) {
  learner.open('faulty-job')
  learner.step()
  learner.step()
  await tell(ms)
  learner.step('wrong')
  await tell(ms)
  learner.step()
  await tell(ms)
}

test('a whole visit keeps every rule: initialized first, terminated last, completed and passed once', async () => {
  const room = new Room()
  const visit = await room.launch({ masteryScore: 0.8 })
  for (const lesson of parcel.lessons) {
    visit.learner.open(lesson)
    visit.learner.finish()
    await visit.tell()
  }
  await visit.leave()
  expect(room.store.problems).toEqual([])
  const verbs = room.store.verbs(1)
  expect(verbs[0]).toBe('initialized')
  expect(verbs.at(-1)).toBe('terminated')
  expect(verbs.filter((verb) => verb === 'passed')).toHaveLength(1)
  // One for each of the two lessons, and one for the whole.
  expect(verbs.filter((verb) => verb === 'completed')).toHaveLength(3)
  const job = room.store.statements.find(({ object }) => object.id.endsWith('/faulty-job--tell'))
  expect(job?.object.definition).toMatchObject({ interactionType: 'sequencing' })
  const read = room.store.statements.find(({ object }) => object.id.endsWith('/faulty-job--measure'))
  expect(read?.object.definition?.['correctResponsesPattern']).toEqual([expect.stringMatching(/^[\d.]+\[:\][\d.]+$/)])
})

test('finished below the pass mark is failed as the visit ends, and passed at a later one', async () => {
  const room = new Room()
  const one = { lessons: ['faulty-job'], drills: 0, mastery: null }
  const visit = await room.launch({ masteryScore: 0.9 }, one)
  visit.learner.open('faulty-job')
  visit.learner.step()
  visit.learner.step()
  visit.learner.step('wrong')
  visit.learner.finish()
  await visit.tell()
  await visit.leave()
  expect(room.store.verbs(1).slice(-2)).toEqual(['failed', 'terminated'])

  const again = await room.launch({ masteryScore: 0.9 }, one)
  const fresh = new Learner(() => room.clock.now)
  fresh.open('faulty-job')
  again.visit.note(fresh.work)
  fresh.finish()
  again.visit.note(fresh.work)
  await room.clock.wait(20_000)
  await again.leave()
  expect(room.store.verbs(2).slice(-2)).toEqual(['passed', 'terminated'])
  expect(room.store.problems).toEqual([])
})

test.each(['Browse', 'Review'] as const)(
  'a visit to %s tells that it began and ended, and nothing else',
  async (launchMode) => {
    const room = new Room()
    const visit = await room.launch({ launchMode, masteryScore: 0.5 })
    visit.learner.open('faulty-job')
    visit.learner.finish()
    await visit.tell()
    await visit.leave()
    expect(room.store.verbs(1)).toEqual(['initialized', 'terminated'])
    expect(room.store.documents.size).toBe(0)
    expect(room.storage?.entries.size).toBe(0)
    expect(room.store.problems).toEqual([])
  },
)

test('the next visit takes the work up, on another computer as well, and tells nothing of it again', async () => {
  const room = new Room()
  const first = await room.launch()
  await answerThrice(first)
  await first.leave()
  room.storage = new MemoryStorage()
  const second = await room.launch()
  expect(second.visit.work).toEqual(JSON.parse(JSON.stringify(first.learner.work)))
  second.learner.step()
  await second.tell()
  await second.leave()
  expect(room.answers().slice(0, 3)).toEqual(threeAnswers)
  expect(room.answers()).toHaveLength(4)
  expect(room.store.problems).toEqual([])
})

describe('whatever goes wrong, nothing is lost and nothing told twice', () => {
  const anywhere: readonly [name: string, on: RegExp][] = [
    ['asking for the token', /fetch/],
    ['reading the launch data', /LMS\.LaunchData/],
    ['reading what the learner prefers', /agents\/profile/],
    ['reading the work', /GET .*stateId=tackstair/],
    ['sending statements', /POST .*statements/],
    ['keeping the work', /PUT .*stateId=tackstair/],
  ]
  const passing: readonly Fault[] = ['down', 'slow', 'lost', 429, 500, 503]

  for (const [name, on] of anywhere) {
    for (const fault of passing) {
      // The address gives its token once: an answer that is lost on the way cannot be had again.
      if (name === 'asking for the token' && fault === 'lost') continue
      test(`${String(fault)} while ${name}`, async () => {
        const room = new Room()
        room.store.faults = [
          { on, fault },
          { on, fault },
        ]
        const visit = await room.launch()
        await answerThrice(visit)
        await room.clock.wait(200_000)
        expect(visit.visit.state.kind).toBe('saved')
        await visit.leave()
        expect(room.answers()).toEqual(threeAnswers)
        expect(room.store.verbs(1).at(0)).toBe('initialized')
        expect(room.store.verbs(1).at(-1)).toBe('terminated')
        expect(room.store.problems).toEqual([])
      })
    }
  }

  test('the connection is lost in mid-lesson and comes back', async () => {
    const room = new Room()
    const visit = await room.launch()
    visit.learner.open('faulty-job')
    await visit.tell()
    const gone = Array.from({ length: 4 }, () => ({ on: /./, fault: 'down' as const }))
    room.store.faults = gone
    await answerThrice(visit, 1000)
    expect(visit.visit.state.kind).toBe('waiting')
    expect(visit.visit.waiting).toBe(3)
    await room.clock.wait(60_000)
    expect(visit.visit.state.kind).toBe('saved')
    await visit.leave()
    expect(room.answers()).toEqual(threeAnswers)
    expect(room.store.problems).toEqual([])
  })

  test('the store is down from beginning to end: the next visit tells it', async () => {
    const room = new Room()
    room.store.faults = Array.from({ length: 100 }, () => ({ on: /./, fault: 'down' as const }))
    const first = await room.launch()
    await answerThrice(first)
    expect(first.visit.state.kind).toBe('waiting')
    await first.leave()
    expect(room.store.statements).toEqual([])
    room.store.faults = []
    const second = await room.launch()
    await room.clock.wait(20_000)
    expect(second.visit.work).toEqual(JSON.parse(JSON.stringify(first.learner.work)))
    await second.leave()
    expect(room.answers()).toEqual(threeAnswers)
    expect(room.store.verbs(2).at(0)).toBe('initialized')
    expect(room.store.problems).toEqual([])
  })

  test.each([401, 403] as const)('%i: the store knows the visit no longer; the next one tells it', async (fault) => {
    const room = new Room()
    const first = await room.launch()
    first.learner.open('faulty-job')
    await first.tell()
    room.store.faults = Array.from({ length: 100 }, () => ({ on: /./, fault }))
    await answerThrice(first)
    await first.leave()
    room.store.faults = []
    const second = await room.launch()
    await room.clock.wait(20_000)
    await second.leave()
    expect(room.answers()).toEqual(threeAnswers)
    expect(second.visit.work).toEqual(JSON.parse(JSON.stringify(first.learner.work)))
    expect(room.store.problems).toEqual([])
  })

  test('a list of which the store has a part already is told one by one', async () => {
    const room = new Room()
    const visit = await room.launch()
    visit.learner.open('faulty-job')
    await visit.tell()
    visit.learner.step()
    visit.learner.step()
    // The first answer arrives, its receipt does not, and before the next try there is a second answer.
    room.store.faults = [{ on: /POST .*statements/, fault: 'lost' }]
    await visit.tell(600)
    visit.learner.step('wrong')
    await visit.tell(100)
    visit.learner.step()
    await visit.tell()
    await visit.leave()
    expect(room.answers()).toEqual(threeAnswers)
    expect(room.store.problems).toEqual([])
  })

  test('a page closed while its statements are on the way sends only the others, and the end', async () => {
    const room = new Room()
    const visit = await room.launch()
    visit.learner.open('faulty-job')
    await visit.tell()
    visit.learner.step()
    visit.learner.step()
    visit.visit.note(visit.learner.work)
    await visit.leave()
    expect(room.answers()).toEqual(threeAnswers.slice(0, 1))
    expect(room.store.verbs(1).at(-1)).toBe('terminated')

    const next = await room.launch()
    await room.clock.wait(20_000)
    await next.leave()
    expect(room.answers()).toEqual(threeAnswers.slice(0, 1))
    expect(room.store.problems).toEqual([])
  })

  test('a page closed without a network leaves its answers for the next visit', async () => {
    const room = new Room()
    const first = await room.launch()
    await answerThrice(first)
    room.store.faults = Array.from({ length: 100 }, () => ({ on: /./, fault: 'down' as const }))
    first.learner.step()
    first.visit.note(first.learner.work)
    await first.leave()
    expect(room.answers()).toHaveLength(3)
    await room.clock.wait(3_600_000)
    room.store.faults = []
    const second = await room.launch()
    await room.clock.wait(20_000)
    await second.leave()
    expect(room.answers()).toHaveLength(4)
    const late = room.store.visit(2).find(({ verb }) => verb.id.endsWith('/answered'))
    expect(Object.keys(late?.context.extensions ?? {})).toContain('urn:tackstair:given-at')
    expect(room.store.problems).toEqual([])
  })

  test('two pages of one learner: each keeps what it did, and neither writes over the other', async () => {
    const room = new Room()
    const one = await room.launch()
    await answerThrice(one)
    // A second page writes the document meanwhile.
    const other = new Learner(() => room.clock.now)
    other.open('moving-an-ink')
    other.finish()
    const elsewhere = new Room()
    const { documents } = room.store
    const second = await elsewhere.launch()
    second.visit.note(other.work)
    await elsewhere.clock.wait(20_000)
    documents.set('tackstair', elsewhere.store.documents.get('tackstair') ?? '')
    one.learner.step()
    await one.tell(60_000)
    expect(one.visit.state.kind).toBe('saved')
    expect(Object.keys(one.visit.work.lessons).sort()).toEqual(['faulty-job', 'moving-an-ink'])
    await one.leave()
    room.storage = new MemoryStorage()
    const next = await room.launch()
    expect(Object.keys(next.visit.work.lessons).sort()).toEqual(['faulty-job', 'moving-an-ink'])
    expect(room.answers()).toHaveLength(4)
    expect(room.store.problems).toEqual([])
  })

  test('a browser that keeps nothing still tells everything it can', async () => {
    const room = new Room()
    room.storage = null
    room.store.faults = [{ on: /POST .*statements/, fault: 'down' }]
    const visit = await room.launch()
    await answerThrice(visit)
    await visit.leave()
    expect(room.answers()).toEqual(threeAnswers)
    expect(room.store.problems).toEqual([])
  })
})

test('a token that was used before is the end of the visit, and the work goes on here', async () => {
  const room = new Room()
  const first = await room.launch()
  await answerThrice(first)
  // The page is loaded again with the same address.
  const address = { endpoint: `${endpoint}/`, fetch: 'https://lms.example/fetch?session=1' }
  const { actor, registration, activityId } = room.store
  const { later, newId } = room.clock
  const ports = { fetch: fetchFrom(room.store), later, newId, now: () => room.clock.now }
  await first.leave()
  const again = visitOf(
    new Cmi5({ ...address, actor, registration, activityId }, ports, 'en'),
    parcel,
    room.clock,
    room.storage,
  )
  await again.open()
  expect(again.state.kind).toBe('closed')
  expect(again.work).toEqual(JSON.parse(JSON.stringify(first.learner.work)))
  expect(room.store.verbs(1).at(-1)).toBe('terminated')
  expect(room.store.problems).toEqual([])
})

test('an address without all that cmi5 wants is no launch', () => {
  const whole = new StrictStore().launch(endpoint, 'https://lms.example/fetch')
  expect(readCmi5Launch(`?${whole}`)).not.toBeNull()
  for (const name of ['endpoint', 'fetch', 'actor', 'registration', 'activityId']) {
    const words = new URLSearchParams(whole)
    words.delete(name)
    expect(readCmi5Launch(`?${words.toString()}`)).toBeNull()
    words.set(name, '{')
    if (name !== 'registration' && name !== 'activityId') expect(readCmi5Launch(`?${words.toString()}`)).toBeNull()
  }
  expect(readCmi5Launch(`?${whole.replace('https', 'javascript')}`)).toBeNull()
})
