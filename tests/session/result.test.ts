/** The result file: what a learner did is in it, and nothing of unknown origin gets past its reader unchecked. */
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { checkLesson } from '../../src/lesson/check-lesson.ts'
import type { Lesson } from '../../src/lesson/lesson.ts'
import { Learning } from '../../src/session/learning.ts'
import { makeResult, writeResult } from '../../src/session/make-result.ts'
import { largestResult, readResult, readResultData } from '../../src/session/read-result.ts'
import type { Result } from '../../src/session/result-format.ts'
import { resultFormat } from '../../src/session/result-format.ts'
import { Session } from '../../src/session/session.ts'
import { LessonPlay } from '../../src/ui/lessons/lesson-play.ts'

const { lesson } = checkLesson(readFileSync('lessons/two-inks-wrong-order.lesson.yaml', 'utf8'), { everyday: [] })
const wrongOrder = lesson as Lesson

/** ms since 1970: 2026-03-02 08:00 in UTC */
const eight = Date.UTC(2026, 2, 2, 8)

/** A learner who predicts wrongly, swaps, mistakes one reading for another, gets it right, and stops there. */
function halfDone(): Result {
  let now = eight
  const play = new LessonPlay(wrongOrder, new Session(), wrongOrder.id, new Learning(null), () => now)
  play.time.resume()
  const after = (seconds: number, move: () => void) => {
    now += seconds * 1000
    move()
    play.keep()
  }
  after(30, () => play.goOn())
  after(20, () => play.handIn({ choose: 'same' }))
  after(10, () => play.goOn())
  play.jumpTo('read-trap')
  after(40, () => play.handIn({ enter: 78 }))
  after(20, () => play.askHint())
  after(60, () => play.handIn({ enter: 14 }))
  // The page is hidden for an hour, which does not count.
  play.leave()
  now += 3_600_000
  play.time.resume()
  after(5, () => play.goOn())
  play.leave()
  const learner = { id: 'learner-1', name: '  Ada  ', group: '' }
  const lessons = [{ lesson: wrongOrder, own: false, progress: play.progress }]
  return makeResult({ learner, course: { title: 'Order', version: 'abc' }, lessons, drills: [] }, now)
}

test('a lesson half done is told with its times, its wrong answers and what was foreseen of them', () => {
  const { made, learner, lessons } = halfDone()
  expect(made).toBe('2026-03-02T09:03:05.000Z')
  expect(learner).toEqual({ id: 'learner-1', name: 'Ada' })
  const [{ started, finished, done, active, score, steps }] = lessons
  expect(started).toBe('2026-03-02T08:00:00.000Z')
  expect(finished).toBeUndefined()
  expect(done).toBe(false)
  // 30 + 20 + 10 + 40 + 20 + 60 before the pause, 5 after it
  expect(active).toBe(185)
  // of the six steps that ask something none was met at the first go without a hint
  expect(score).toBe(0)
  expect(steps.map(({ id }) => id)).toEqual(wrongOrder.steps.map(({ id }) => id))
  const guess = steps.find(({ id }) => id === 'guess')
  expect(guess).toEqual({
    id: 'guess',
    kind: 'predict',
    done: true,
    misses: 0,
    hints: 0,
    attempts: [{ at: '2026-03-02T08:00:50.000Z', met: false, answer: { form: 'choice', chosen: 'same' } }],
  })
  const trap = steps.find(({ id }) => id === 'read-trap')
  expect(trap).toMatchObject({ done: true, misses: 1, hints: 1 })
  // The lesson foresees numbers from 75 to 81 first: the other order's trap. The bench reads 14 (stated in the lesson).
  expect(trap?.attempts).toMatchObject([
    { met: false, mistakes: [0], answer: { form: 'reading', entered: 78, unit: '%' } },
    { met: true, answer: { form: 'reading', entered: 14 } },
  ])
  const [first] = trap?.attempts ?? []
  expect(first.answer?.form === 'reading' && Math.abs((first.answer.read ?? 0) - 14) <= 0.5).toBe(true)
})

test('a step of the bench tells what was not met and which mistake it was', () => {
  const play = new LessonPlay(wrongOrder, new Session(), wrongOrder.id, new Learning(null), () => eight)
  play.jumpTo('repair')
  play.handIn()
  const [attempt] = play.progress.records['repair'].attempts ?? []
  // The lesson asks for what yellow lifts of cyan; with cyan printed last there is no such reading.
  expect(attempt).toMatchObject({ met: false, mistakes: [0], bench: [{ is: 'at most', met: false, unit: '%' }] })
  expect(attempt.bench?.[0].read).toBeUndefined()
  expect(attempt.answer).toBeUndefined()
})

test('what is written is read back as it was', () => {
  const result = halfDone()
  expect(readResult(writeResult(result))).toEqual({ result })
})

const whole = () => JSON.parse(writeResult(halfDone())) as Record<string, unknown>

test.each([
  ['nothing', '', 'board.refused.noJson'],
  ['a text', 'name;score', 'board.refused.noJson'],
  ['a list', '[]', 'board.refused.format'],
  ['null', 'null', 'board.refused.format'],
  ['a file of another format', '{"format":"tackstair","version":1}', 'board.refused.format'],
  ['no version', JSON.stringify({ ...whole(), version: undefined }), 'board.refused.version'],
  ['version 0', JSON.stringify({ ...whole(), version: 0 }), 'board.refused.version'],
  ['a version that is a text', JSON.stringify({ ...whole(), version: '1' }), 'board.refused.version'],
  ['a newer version', JSON.stringify({ ...whole(), version: 2 }), 'board.refused.newer'],
  ['100,000 lists in one another', '['.repeat(100_000) + ']'.repeat(100_000), 'board.refused.format'],
  ['a file cut off', writeResult(halfDone()).slice(0, 900), 'board.refused.noJson'],
])('%s is refused in words', (_, text, message) => {
  const read = readResult(text)
  expect('refused' in read && read.refused.message).toBe(message)
})

test('a file that is far too long is refused before it is read', () => {
  const read = readResult(' '.repeat(largestResult + 1))
  expect('refused' in read && read.refused.message).toBe('board.refused.long')
})

const lessonWith = (change: Record<string, unknown>) => {
  const { lessons } = halfDone()
  return { lessons: [{ ...lessons[0], ...change }] }
}

test.each([
  ['made', { made: 'yesterday' }],
  ['learner.id', { learner: { id: '' } }],
  ['learner.name', { learner: { id: 'a', name: 'x'.repeat(81) } }],
  ['learner.id', { learner: [] }],
  ['lessons', { lessons: {} }],
  ['lessons[0]', { lessons: [null] }],
  ['lessons[0].score', lessonWith({ score: 1.5 })],
  ['lessons[0].active', lessonWith({ active: -1 })],
  ['lessons[0].steps', lessonWith({ steps: 'all' })],
  ['lessons[0].steps[0].done', lessonWith({ steps: [{ id: 'a', kind: 'do', done: 1 }] })],
  ['drills[0].drill', { drills: [{ drill: 'never-1' }] }],
])('a wrong value is refused with its place: %s', (field, change) => {
  expect(readResultData({ ...whole(), ...change })).toEqual({
    refused: { message: 'board.refused.field', values: { field } },
  })
})

test('fields that would touch the prototype are left out', () => {
  const text = writeResult(halfDone()).replace(
    '"learner": {',
    '"__proto__": {"polluted": 1}, "learner": {"__proto__": {"polluted": 1},',
  )
  const read = readResult(text)
  if (!('result' in read)) throw new Error('The file was refused.')
  expect(Object.getPrototypeOf(read.result.learner)).toBe(Object.prototype)
  expect('polluted' in read.result || 'polluted' in read.result.learner).toBe(false)
  expect('polluted' in {}).toBe(false)
})

test('a file of an older version is brought up to date step by step', () => {
  const { course, ...older } = whole()
  const steps = { 1: (old: Record<string, unknown>) => ({ ...old, course }) }
  expect(readResultData({ ...older, format: resultFormat, version: 1 }, steps, 2)).toEqual({ result: halfDone() })
  expect(readResultData({ ...older, format: resultFormat, version: 1 }, {}, 2)).toMatchObject({
    refused: { message: 'board.refused.version' },
  })
})

test('a result nested 20,000 levels deep is refused in words', () => {
  const deep = `${'['.repeat(20_000)}${']'.repeat(20_000)}`
  expect(readResult(`{"format":"tackstair result","version":1,"made":${deep}}`)).toEqual({
    refused: { message: 'board.refused.field', values: { field: 'made' } },
  })
})
