/** A class counted: every expected number is worked out by hand from the results written above it. */
import { expect, test } from 'vitest'
import { countCauses } from '../../src/class/count-drills.ts'
import { countLearners, leastFirst } from '../../src/class/count-learners.ts'
import { countLesson, countSteps } from '../../src/class/count-lessons.ts'
import type { LessonEntry } from '../../src/class/lesson-entry.ts'
import { Roll } from '../../src/class/roll.ts'
import { spreadOf } from '../../src/class/spread.ts'
import type { Result } from '../../src/session/result-format.ts'
import { madeDrill, madeLesson, madeResult, madeStep } from './made-results.ts'

function rollOf(...results: Result[]): Roll {
  const roll = new Roll()
  results.forEach((result, at) => roll.add(result, `file ${at + 1}`))
  return roll
}

function entryOf(roll: Roll, key: string): LessonEntry {
  const entry = roll.lessons.get(key)
  if (!entry) throw new Error(`There is no lesson ${key}.`)
  return entry
}

test('a spread has its quartiles between the nearest values', () => {
  expect(spreadOf([])).toBeNull()
  expect(spreadOf([3])).toEqual({ count: 1, least: 3, lower: 3, middle: 3, upper: 3, most: 3 })
  // sorted 1 2 4 8: places 0.75, 1.5 and 2.25 of 0 to 3
  expect(spreadOf([8, 1, 4, 2])).toEqual({ count: 4, least: 1, lower: 1.75, middle: 3, upper: 5, most: 8 })
})

test('a lesson is counted by who began and who finished it; scores and times are of those who finished', () => {
  const roll = rollOf(
    madeResult('a', { lessons: [madeLesson('tack', { score: 1, active: 600 })] }),
    madeResult('b', { lessons: [madeLesson('tack', { score: 0.5, active: 1200 })] }),
    madeResult('c', { lessons: [madeLesson('tack', { done: false, score: 0, active: 60 })] }),
    madeResult('d'),
  )
  const { began, finished, score, time } = countLesson('tack', entryOf(roll, 'tack'), roll.learners)
  expect([began, finished]).toEqual([3, 2])
  expect([score?.least, score?.middle, score?.most]).toEqual([0.5, 0.75, 1])
  expect([time?.least, time?.middle, time?.most]).toEqual([600, 900, 1200])
})

const chose = (chosen: string, met = false) => ({ met, answer: { form: 'choice' as const, chosen } })
const read = (entered: number, mistakes?: number[]) => ({
  met: false,
  answer: { form: 'reading' as const, entered, tolerance: 1, unit: '%' },
  ...(mistakes ? { mistakes } : {}),
})

test('wrong answers of a step are counted by learner, the commonest first', () => {
  const asked = (...attempts: ReturnType<typeof chose>[]) =>
    madeLesson('tack', { steps: [madeStep('which', { attempts, misses: attempts.filter(({ met }) => !met).length })] })
  const roll = rollOf(
    // the same wrong answer twice counts once
    madeResult('a', { lessons: [asked(chose('more'), chose('more'), chose('less', true))] }),
    madeResult('b', { lessons: [asked(chose('same'), chose('more'), chose('less', true))] }),
    madeResult('c', { lessons: [asked(chose('less', true))] }),
  )
  const [step] = countSteps('tack', entryOf(roll, 'tack'), roll.learners)
  expect(step).toMatchObject({ id: 'which', reached: 3, done: 3, firstGo: 1 })
  expect(step.wrong.map(({ answer, learners }) => [answer?.form === 'choice' && answer.chosen, learners])).toEqual([
    ['more', 2],
    ['same', 1],
  ])
})

test('numbers that the lesson foresaw count as one mistake, others by two digits', () => {
  const typed = (...attempts: ReturnType<typeof read>[]) =>
    madeLesson('trap', { steps: [madeStep('read', { attempts, misses: attempts.length })] })
  const roll = rollOf(
    madeResult('a', { lessons: [typed(read(75, [0]))] }),
    madeResult('b', { lessons: [typed(read(74.2, [0]))] }),
    madeResult('c', { lessons: [typed(read(33.1))] }),
    madeResult('d', { lessons: [typed(read(32.9), read(12))] }),
  )
  const [step] = countSteps('trap', entryOf(roll, 'trap'), roll.learners)
  // 75 and 74.2 are the foreseen mistake; 33.1 and 32.9 both are 33 in two digits; 12 stands alone
  expect(step.wrong.map(({ mistakes, learners }) => [mistakes, learners])).toEqual([
    [[0], 2],
    [[], 2],
    [[], 1],
  ])
})

test('orders and diagnoses are told apart by what was answered, whatever the order of the proof', () => {
  const of = (attempts: Parameters<typeof madeStep>[1]) => madeLesson('x', { steps: [madeStep('s', attempts)] })
  const order = (...ids: string[]) => ({ met: false, answer: { form: 'order' as const, order: ids } })
  const because = (...ids: string[]) => ({
    met: false,
    answer: { form: 'diagnosis' as const, cause: 'warm', because: ids },
  })
  const roll = rollOf(
    madeResult('a', { lessons: [of({ attempts: [order('p', 'q', 'r'), because('one', 'two')] })] }),
    madeResult('b', { lessons: [of({ attempts: [order('q', 'p', 'r'), because('two', 'one')] })] }),
  )
  const [step] = countSteps('x', entryOf(roll, 'x'), roll.learners)
  expect(step.wrong.map(({ learners }) => learners)).toEqual([2, 1, 1])
})

test('a step of another version of the lesson is counted on its own', () => {
  const roll = rollOf(
    madeResult('a', { lessons: [madeLesson('x', { steps: [madeStep('one'), madeStep('two')] })] }),
    madeResult('b', { lessons: [madeLesson('x', { steps: [madeStep('two'), madeStep('new')] })] }),
  )
  const steps = countSteps('x', entryOf(roll, 'x'), roll.learners)
  expect(steps.map(({ id, done }) => [id, done])).toEqual([
    ['one', 1],
    ['two', 2],
    ['new', 1],
  ])
})

test('causes are counted by hit and by what they were taken for; the same kind at another unit is no hit', () => {
  const roll = rollOf(
    madeResult('a', {
      drills: [
        madeDrill(['unit too warm 2'], ['unit too warm 2'], { first: 'proven' }, 100),
        madeDrill(['unit too warm 1'], ['tack too low 1'], {}, 300),
        madeDrill(['unit too warm 3'], ['unit too warm 2']),
      ],
    }),
    madeResult('b', {
      drills: [
        // two faults: the paper was found, the warm unit was taken for too low a tack
        madeDrill(['unit too warm 1', 'paper weak'], ['tack too low 1', 'paper weak'], {}, 200),
      ],
    }),
  )
  const causes = countCauses(roll.learners)
  expect(causes.map(({ kind }) => kind)).toEqual(['unit too warm', 'paper weak'])
  const [warm, paper] = causes
  expect([warm.hidden, warm.hit, warm.proven]).toEqual([4, 1, 1])
  expect(warm.confused).toEqual([
    { kind: 'tack too low', drills: 2 },
    { kind: 'unit too warm', drills: 1 },
  ])
  // times 0, 100, 200, 300
  expect(warm.time?.middle).toBe(150)
  expect([paper.hidden, paper.hit]).toEqual([1, 1])
})

test('a learner handed in twice counts once, by the newest, whatever the order of the files', () => {
  const early = madeResult('a', {
    name: 'Ada',
    made: '2026-03-02T09:00:00.000Z',
    lessons: [madeLesson('x', { done: false })],
  })
  const late = madeResult('a', { name: ' ada ', made: '2026-03-03T09:00:00.000Z', lessons: [madeLesson('x')] })
  for (const files of [
    [early, late],
    [late, early],
    [late, late, early],
  ]) {
    const { learners } = rollOf(...files)
    expect(learners).toHaveLength(1)
    expect(learners[0]).toMatchObject({ files: files.length, made: late.made })
    expect(learners[0].lessons.get('x')?.done).toBe(true)
  }
})

test('the newest is so by the moment, not by the letters of it', () => {
  // 10:30 at two hours east of UTC is 08:30 in UTC
  const east = madeResult('a', { made: '2026-03-02T10:30:00.000+02:00' })
  const utc = madeResult('a', { made: '2026-03-02T09:00:00.000Z' })
  expect(rollOf(utc, east).learners[0].made).toBe(utc.made)
})

test('two learners of one name stay apart, and two names at one computer too', () => {
  const roll = rollOf(
    madeResult('a', { name: 'Ada' }),
    madeResult('b', { name: 'Ada' }),
    madeResult('b', { name: 'Grace' }),
  )
  const rows = countLearners(roll.learners, [])
  expect(rows.map(({ learner, nameShared }) => [learner.id, learner.name, nameShared])).toEqual([
    ['a', 'Ada', true],
    ['b', 'Ada', true],
    ['b', 'Grace', false],
  ])
})

test('a learner’s row says what is left, with the mean of the scores there are', () => {
  const lessons = [
    madeLesson('one', { score: 1, active: 60 }),
    madeLesson('two', { score: 0.5, active: 30 }),
    madeLesson('three', { score: null, active: 10 }),
    madeLesson('four', { done: false, score: 0, active: 20 }),
    madeLesson('one', { own: true, done: false, active: 1000 }),
  ]
  const drills = [madeDrill(['paper weak'], ['paper weak'], { first: 'proven' }, 300), madeDrill(['paper weak'], [])]
  const { learners } = rollOf(madeResult('a', { lessons, drills }))
  const [row] = countLearners(learners, ['one', 'two', 'three', 'four', 'five'])
  expect(row.finished).toEqual(['one', 'two', 'three'])
  expect(row.underway).toEqual(['four'])
  expect(row.left).toEqual(['four', 'five'])
  expect(row.score).toBe(0.75)
  // 60 + 30 + 10 + 20 in the lessons asked about, 300 in drills
  expect(row.time).toBe(420)
  expect([row.drills, row.proven]).toEqual([2, 1])
})

test('whoever has finished least stands first, and then whoever has the lowest score, or none', () => {
  const both = (score: number | null) => [madeLesson('one', { score }), madeLesson('two', { score })]
  const { learners } = rollOf(
    madeResult('best', { name: 'best', lessons: both(0.9) }),
    madeResult('low', { name: 'low', lessons: both(0.2) }),
    madeResult('begun', { name: 'begun', lessons: [madeLesson('one', { done: false, score: 0 })] }),
    madeResult('unscored', { name: 'unscored', lessons: both(null) }),
    madeResult('half', { name: 'half', lessons: [madeLesson('one', { score: 1 })] }),
  )
  const names = leastFirst(countLearners(learners, ['one', 'two'])).map(({ learner }) => learner.name)
  expect(names).toEqual(['begun', 'half', 'unscored', 'low', 'best'])
})
