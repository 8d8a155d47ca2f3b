/** Many files of unknown origin in one drop: the sound ones count, the others are named, and the page gets its turn. */
import { expect, test } from 'vitest'
import { ClassBoard } from '../../src/class/board.ts'
import type { HandedFile } from '../../src/class/read-files.ts'
import { largestHanded } from '../../src/class/read-files.ts'
import { writeResult } from '../../src/session/make-result.ts'
import { madeLesson, madeResult, madeStep } from './made-results.ts'

function file(name: string, text: string): HandedFile {
  return { name, size: text.length, text: () => Promise.resolve(text) }
}

const sound = (id: string) => file(`${id}.json`, writeResult(madeResult(id, { lessons: [madeLesson('tack')] })))

/** A clock by which every look takes 10 ms, and pauses that are counted. */
function ports() {
  let now = 0
  const counted = { pauses: 0 }
  const pause = () => {
    counted.pauses++
    return Promise.resolve()
  }
  return { counted, now: () => (now += 10), pause }
}

test('broken files are named with the reason, and the rest counts', async () => {
  const board = new ClassBoard()
  const readTo = { value: 0 }
  const never = { name: 'gone.json', size: 10, text: () => Promise.reject(new DOMException('gone', 'NotFoundError')) }
  // 200 MB, which is never even opened
  const huge = {
    name: 'huge.json',
    size: 200_000_000,
    text: () => {
      readTo.value++
      return Promise.resolve('')
    },
  }
  await board.read(
    [sound('a'), file('notes.json', 'hello'), never, huge, file('other.json', '{}'), sound('b')],
    ports(),
  )
  const { roll, refused, files, reading, stopped } = board.state
  expect(roll.learners.map(({ id }) => id)).toEqual(['a', 'b'])
  expect(refused.map(({ file: name, message }) => [name, message])).toEqual([
    ['notes.json', 'board.refused.noJson'],
    ['gone.json', 'board.refused.unreadable'],
    ['huge.json', 'board.refused.large'],
    ['other.json', 'board.refused.format'],
  ])
  expect(refused[2].values).toEqual({ size: 200, most: largestHanded / 1e6 })
  expect(readTo.value).toBe(0)
  expect([files, reading, stopped]).toEqual([2, null, null])
})

test('the page gets its turn again and again, and is told how far the reading is', async () => {
  const board = new ClassBoard()
  const told: number[] = []
  board.subscribe(() => told.push(board.state.reading?.read ?? -1))
  const given = ports()
  await board.read(
    Array.from({ length: 60 }, (_, n) => sound(`learner ${n}`)),
    given,
  )
  // Every file costs one look of 10 ms, so that 24 ms are over after every third.
  expect(given.counted.pauses).toBe(20)
  expect(told).toEqual(
    [...told]
      .sort((a, b) => a - b)
      .filter((each) => each >= 0)
      .concat(-1),
  )
  expect(board.state.files).toBe(60)
})

test('a reading that is stopped keeps what was read and says how far it came', async () => {
  const board = new ClassBoard()
  const files = Array.from({ length: 100 }, (_, n) => sound(`learner ${n}`))
  let pauses = 0
  const pause = () => {
    if (++pauses === 2) board.cancel()
    return Promise.resolve()
  }
  await board.read(files, { ...ports(), pause })
  const { stopped, reading, roll } = board.state
  expect(reading).toBeNull()
  expect(stopped?.all).toBe(100)
  expect(stopped?.read).toBe(roll.learners.length)
  expect(roll.learners.length).toBeLessThan(20)
})

test('putting all away while files are read leaves nothing', async () => {
  const board = new ClassBoard()
  const pause = () => {
    board.clear()
    return Promise.resolve()
  }
  await board.read(
    Array.from({ length: 50 }, (_, n) => sound(`learner ${n}`)),
    { ...ports(), pause },
  )
  expect(board.state).toMatchObject({ files: 0, refused: [], reading: null, stopped: null })
  expect(board.state.roll.learners).toEqual([])
})

test('names of fields that every object has are names like others', async () => {
  const names = ['__proto__', 'constructor', 'toString', 'hasOwnProperty']
  const step = madeStep('__proto__', { attempts: [{ met: false, answer: { form: 'choice', chosen: 'constructor' } }] })
  const board = new ClassBoard()
  await board.read(
    names.map((name) =>
      file(name, writeResult(madeResult(name, { name, lessons: [madeLesson(name, { steps: [step] })] }))),
    ),
    ports(),
  )
  expect(board.state.roll.learners.map(({ name }) => name)).toEqual(names)
  expect([...board.state.roll.lessons.keys()]).toEqual(names)
  expect(Object.keys(Object.prototype)).toEqual([])
})
