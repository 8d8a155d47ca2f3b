/** The board from the statements of a visit, beside the board from the result file of the same learner. */
import { expect, test } from 'vitest'
import { countCauses } from '../../../src/class/count-drills.ts'
import { countLearners } from '../../../src/class/count-learners.ts'
import { countLesson, countSteps } from '../../../src/class/count-lessons.ts'
import { readHanded } from '../../../src/class/read-handed.ts'
import type { HandedResult } from '../../../src/class/roll.ts'
import { Roll } from '../../../src/class/roll.ts'
import { spend } from '../../../src/lesson/progress.ts'
import { Cmi5 } from '../../../src/report/learning-system/cmi5.ts'
import { readCmi5Launch } from '../../../src/report/learning-system/cmi5-launch.ts'
import type { DrillEntry } from '../../../src/session/drill-record.ts'
import { makeResult } from '../../../src/session/make-result.ts'
import { extensionIds } from '../../../src/session/statement-extensions.ts'
import { Clock } from './clock.ts'
import { lessonOf } from './course.ts'
import { Learner } from './learner.ts'
import { StrictStore, fetchFrom } from './strict-store.ts'
import { MemoryStorage, visitOf } from './visits.ts'

const lessons = ['faulty-job', 'moving-an-ink', 'tack']

const drills: DrillEntry[] = [
  {
    drill: 'easy-3',
    job: 'seed leaflet',
    kind: 'unit too warm',
    first: 'proven',
    tries: 1,
    taken: 2,
    cured: false,
    way: {
      active: 130,
      hidden: ['unit too warm 2'],
      offered: ['unit too warm 2', 'paper weak'],
      named: [
        {
          at: '2026-03-02T08:31:00.000Z',
          causes: ['unit too warm 2'],
          evidence: ['thermometer 2'],
          worth: 'proven',
        },
      ],
      measured: [
        { evidence: 'thermometer 2', readings: 3 },
        { evidence: 'pick test', readings: 1 },
      ],
      cures: [],
    },
  },
  {
    drill: 'medium-7',
    job: 'seed leaflet',
    kind: 'paper weak',
    first: 'missed',
    tries: 2,
    taken: 1,
    cured: false,
    way: {
      active: 240,
      hidden: ['paper weak'],
      offered: ['paper weak', 'tack too high 1'],
      named: [
        { at: '2026-03-02T08:31:10.000Z', causes: ['tack too high 1'], evidence: [], worth: 'missed' },
        { at: '2026-03-02T08:31:15.000Z', causes: ['paper weak'], evidence: ['eye'], worth: 'found' },
      ],
      measured: [{ evidence: 'eye', readings: 1 }],
      cures: [],
    },
  },
]

/** One learner with a miss, a hint, a lesson still open, and two drills; told to a store, and handed in as a file. */
async function both(): Promise<{ statements: object[]; result: HandedResult }> {
  const clock = new Clock()
  const store = new StrictStore()
  const launch = readCmi5Launch(`?${store.launch('https://lms.example/xapi', 'https://lms.example/fetch', {})}`)
  if (!launch) throw new Error('The launch address cannot be read.')
  const { later, newId } = clock
  const ports = { fetch: fetchFrom(store), later, newId, now: () => clock.now }
  const parcel = { lessons, drills: 2, mastery: null }
  const visit = visitOf(new Cmi5(launch, ports, 'en'), parcel, clock, new MemoryStorage())
  const opening = visit.open()
  await clock.wait(0)
  await opening
  const learner = new Learner(() => clock.now)
  const tell = async () => {
    visit.note(learner.work)
    await clock.wait(20_000)
  }
  const change = (id: string, seconds: number, hinted?: string) => {
    const kept = learner.work.lessons[id]
    const records = hinted === undefined ? {} : { [hinted]: { done: false, misses: 0, hints: 2 } }
    const progress = spend({ ...kept.progress, records: { ...kept.progress.records, ...records } }, seconds)
    learner.work = { ...learner.work, lessons: { ...learner.work.lessons, [id]: { ...kept, progress } } }
  }
  learner.open('faulty-job')
  learner.step()
  learner.step()
  change('faulty-job', 90)
  learner.step('wrong')
  await tell()
  learner.step()
  change('faulty-job', 60, learner.work.lessons['faulty-job'].progress.step)
  learner.finish()
  await tell()
  learner.open('moving-an-ink')
  change('moving-an-ink', 45)
  learner.finish()
  await tell()
  learner.open('tack')
  change('tack', 20)
  const firstAsked = lessonOf('tack').steps.findIndex(({ kind }) => kind !== 'say')
  for (let step = 0; step <= firstAsked; step++) learner.step()
  await tell()
  for (const drill of drills) {
    learner.work = { ...learner.work, drills: [...learner.work.drills, drill] }
    await tell()
  }
  visit.leave()
  await clock.wait(0)
  expect(store.problems).toEqual([])
  const done = Object.entries(learner.work.lessons).map(([id, { progress }]) => ({
    lesson: lessonOf(id),
    own: false,
    progress,
  }))
  const result = makeResult(
    { learner: { id: 'a' }, course: { title: 'Order', version: '1' }, lessons: done, drills },
    clock.now,
  )
  return { statements: store.statements, result }
}

function boardOf(results: readonly HandedResult[]) {
  const roll = new Roll()
  for (const result of results) roll.add(result, 'file')
  const { learners } = roll
  const entries = [...roll.lessons]
  const finished = entries.filter(([key]) => key !== 'tack')
  return {
    lessons: entries.map(([key, entry]) => {
      const { began, finished: ended, score, time } = countLesson(key, entry, learners)
      return { key, began, ended, score, time }
    }),
    steps: Object.fromEntries(finished.map(([key, entry]) => [key, countSteps(key, entry, learners)])),
    openSteps: entries.flatMap(([key, entry]) => (key === 'tack' ? countSteps(key, entry, learners) : [])),
    causes: countCauses(learners),
    learners: countLearners(learners, lessons).map(({ finished: ended, underway, score, time, proven }) => {
      return { ended, underway, score, time, proven }
    }),
  }
}

async function boardFrom(text: string) {
  const handed = await readHanded(text)
  if ('refused' in handed) throw new Error(handed.refused.message)
  return { board: boardOf(handed.results), results: handed.results }
}

test('statements show what the result file shows: steps, units, hints, mistakes, times, and what proved a drill', async () => {
  const { statements, result } = await both()
  const { openSteps, ...fromFile } = boardOf([result])
  const { board, results } = await boardFrom(JSON.stringify(statements))
  const { openSteps: stated, ...fromStatements } = board
  expect(fromStatements).toEqual(fromFile)
  // It is not empty on both sides.
  expect(fromFile.steps['faulty-job'].flatMap(({ wrong }) => wrong)[0].answer).toMatchObject({ form: 'reading' })
  expect(fromFile.steps['faulty-job'].filter(({ kind, firstGo }) => kind === 'expect' && firstGo === 0)).toHaveLength(2)
  expect(fromFile.causes.map(({ proven }) => proven)).toEqual([1, 0])
  expect(fromFile.learners[0].time).toBe(90 + 60 + 45 + 20 + 130 + 240)
  // Of a lesson that is open, steps without an answer are not told.
  expect(stated).toEqual(openSteps.filter(({ kind, reached }) => kind !== 'say' && reached > 0))
  expect(results[0].drills.map(({ way }) => way?.measured)).toEqual(drills.map(({ way }) => way?.measured))
  expect(results[0].drills.map(({ way }) => way?.named)).toEqual(drills.map(({ way }) => way?.named))
})

test('a store that leaves our extensions out, or spoils them, loses only what they say', async () => {
  const { statements, result } = await both()
  const bare = (value: unknown) => (key: string, given: unknown) =>
    key.startsWith('urn:tackstair:') && key !== extensionIds.givenAt ? value : given
  for (const value of [undefined, null, 'spoilt', [{ id: 3 }], { at: -1 }]) {
    const { board } = await boardFrom(
      JSON.stringify(statements.map((each) => JSON.parse(JSON.stringify(each, bare(value))) as object)),
    )
    expect(board.lessons.map(({ key, ended, score }) => [key, ended, score])).toEqual(
      boardOf([result]).lessons.map(({ key, ended, score }) => [key, ended, score]),
    )
    expect(board.causes.map(({ kind, hit, proven }) => [kind, hit, proven])).toEqual([
      ['unit too warm', 1, 0],
      ['paper weak', 0, 0],
    ])
  }
})

test('a table carries the extensions in columns of their own, or all in one', async () => {
  const { statements } = await both()
  const whole = await boardFrom(JSON.stringify(statements))
  const field = (value: unknown) => {
    const text = typeof value === 'string' ? value : value === undefined ? '' : JSON.stringify(value)
    return `"${text.replaceAll('"', '""')}"`
  }
  type Told = Record<string, Record<string, Record<string, unknown>>>
  const names = ['actor.name', 'verb.id', 'object.id', 'object.definition.type', 'object.definition.interactionType']
  const more = [
    'object.definition.correctResponsesPattern',
    'result.response',
    'result.success',
    'result.duration',
    'result.score.scaled',
    'actor.account.homePage',
    'actor.account.name',
  ]
  const at = (statement: object, path: string): unknown =>
    path.split('.').reduce<unknown>((value, name) => (value as Record<string, unknown> | undefined)?.[name], statement)
  const ids = Object.values(extensionIds)
  const inOne = ['result.extensions', 'context.extensions']
  for (const apart of [true, false]) {
    const paths = ['timestamp', ...names, ...more]
    const own = apart ? inOne.flatMap((path) => ids.map((id) => `${path}.${id}`)) : inOne
    const rows = (statements as unknown as Told[]).map((statement) => [
      ...paths.map((path) => at(statement, path)),
      ...(apart
        ? inOne.flatMap((path) => ids.map((id) => (at(statement, path) as Record<string, unknown> | undefined)?.[id]))
        : inOne.map((path) => at(statement, path))),
    ])
    const csv = [[...paths, ...own], ...rows].map((row) => row.map(field).join(',')).join('\n')
    expect((await boardFrom(csv)).board).toEqual(whole.board)
  }
})
