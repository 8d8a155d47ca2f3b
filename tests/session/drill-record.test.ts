import { expect, test } from 'vitest'
import type { RecordStorage } from '../../src/session/drill-record.ts'
import { attemptsIn, readRecord, writeRecord } from '../../src/session/drill-record.ts'
import { drillEntry as entry } from './a-drill-entry.ts'

function memory(): RecordStorage {
  const kept = new Map<string, string>()
  return { getItem: (key) => kept.get(key) ?? null, setItem: (key, text) => void kept.set(key, text) }
}

/** As a browser that blocks its storage does. */
const blocked: RecordStorage = {
  getItem: () => {
    throw new DOMException('blocked', 'SecurityError')
  },
  setItem: () => {
    throw new DOMException('full', 'QuotaExceededError')
  },
}

test('what is written is read back', () => {
  const storage = memory()
  expect(writeRecord(storage, [entry])).toBe(true)
  expect(readRecord(storage)).toEqual([entry])
})

test('a blocked, full or missing storage is no fault, and it is told that nothing is kept', () => {
  expect(readRecord(blocked)).toEqual([])
  expect(writeRecord(blocked, [entry])).toBe(false)
  expect(readRecord(null)).toEqual([])
  expect(writeRecord(null, [entry])).toBe(false)
})

test.each(['', 'not json', '{}', '[1, null]', '[{"drill": "easy-3"}]'])('a damaged record "%s" is none', (text) => {
  expect(readRecord({ getItem: () => text, setItem: () => undefined })).toEqual([])
})

test('damaged entries are left out, and the others stay', () => {
  const kept = JSON.stringify([{ ...entry, drill: 'never-x' }, entry, { ...entry, kind: 'sabotage' }])
  expect(readRecord({ getItem: () => kept, setItem: () => undefined })).toEqual([entry])
})

test('practice counts a cause as found once it is proven at the first answer', () => {
  expect(attemptsIn([entry, { ...entry, first: 'proven' }]).map(({ found }) => found)).toEqual([false, true])
})
