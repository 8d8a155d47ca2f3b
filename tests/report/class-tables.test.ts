/** A class's tables: every expected cell is worked out by hand from the results written above it. */
import { expect, test } from 'vitest'
import { countCauses } from '../../src/class/count-drills.ts'
import { countLearners } from '../../src/class/count-learners.ts'
import { countLesson } from '../../src/class/count-lessons.ts'
import { Roll } from '../../src/class/roll.ts'
import {
  causesTable,
  confusionTable,
  learnersTable,
  lessonsTable,
  refusedTable,
  stepsTable,
} from '../../src/report/class-tables.ts'
import { writeCsv, plainManner } from '../../src/report/csv.ts'
import { madeDrill, madeLesson, madeResult } from '../class/made-results.ts'

/** Messages stand for themselves, with their values behind them. */
const say = (key: string, values: Record<string, string | number> = {}) => [key, ...Object.values(values)].join(' ')

const roll = new Roll()
for (const result of [
  madeResult('0123456789', { name: 'Ada', group: '=1+1', lessons: [madeLesson('tack', { score: 0.5, active: 120 })] }),
  madeResult('abcdefghij', {
    name: 'Ada',
    lessons: [madeLesson('tack', { done: false, active: 60 }), madeLesson('trap')],
  }),
  madeResult('nobody-at-all', {
    drills: [
      madeDrill(['tack too low 2'], ['unit too warm 2'], {}, 300),
      madeDrill(['tack too low 1'], ['tack too low 1'], { first: 'proven' }, 60),
    ],
  }),
]) {
  roll.add(result, 'file')
}
const { learners, lessons } = roll

test('lessons: who began and finished, scores in percent, times in minutes; empty where nobody finished with a score', () => {
  const counts = ['tack', 'trap'].map((key) => {
    const entry = lessons.get(key)
    if (!entry) throw new Error(`There is no lesson ${key}.`)
    return countLesson(key, entry, learners)
  })
  const { columns, rows } = lessonsTable(counts, (key) => `the lesson ${key}`, say)
  expect(rows).toEqual([
    ['the lesson tack', 2, 1, 50, 50, 50, 2, 2],
    ['the lesson trap', 1, 1, null, null, null, null, null],
  ])
  expect(columns.map(({ unit }) => unit)).toEqual([null, null, null, '%', '%', '%', 'board.minutes', 'board.minutes'])
})

test('steps: the share met at the first go of those done, and none for what is only read or never done', () => {
  const step = { id: 'a', reached: 4, done: 4, firstGo: 3, wrong: [] }
  const steps = [
    { ...step, kind: 'expect' as const },
    { ...step, kind: 'say' as const },
    { ...step, kind: 'do' as const, done: 0, firstGo: 0 },
  ]
  expect(stepsTable(steps, ({ kind }) => kind, say).rows).toEqual([
    ['expect', 4, 4, 75],
    ['say', 4, 4, null],
    ['do', 4, 0, null],
  ])
})

test('causes and what they were taken for', () => {
  const counts = countCauses(learners)
  // Two drills hid it: hit and proven in one, of 300 s and 60 s; in the other a warm unit was named.
  expect(causesTable(counts, say).rows).toEqual([['board.cause.tack too low', 2, 50, 50, 3, 5]])
  const { columns, rows } = confusionTable(counts, say)
  expect(columns.map(({ heading }) => heading)).toEqual(['board.hidden', 'board.cause.unit too warm'])
  expect(rows).toEqual([['board.cause.tack too low', 1]])
})

test('learners: namesakes told apart, the nameless by their id, and no name or group is a formula in a spreadsheet', () => {
  const counts = countLearners(learners, ['tack', 'trap'])
  const table = learnersTable(
    counts,
    (keys) => keys.join(' and '),
    (moment) => moment.slice(0, 10),
    say,
  )
  const made = '2026-03-02'
  expect(table.rows.toSorted(([one], [other]) => String(one).localeCompare(String(other)))).toEqual([
    ['board.nameless nobody-a', '', 0, 'tack and trap', null, 2, 1, 6, made],
    ['board.namesake Ada 01234567', '=1+1', 1, 'trap', 50, 0, 0, 2, made],
    ['board.namesake Ada abcdefgh', '', 1, 'tack', null, 0, 0, 1, made],
  ])
  const text = writeCsv(table, plainManner)
  expect(text).toContain("'=1+1")
  expect(text).not.toMatch(/[,\n]=/)
})

test('files that could not be read, with the reason', () => {
  const refused = [{ file: 'huge.json', message: 'board.refused.large' as const, values: { size: 200, most: 64 } }]
  expect(refusedTable(refused, say).rows).toEqual([['huge.json', 'board.refused.large 200 64']])
})
