import { expect, test } from 'vitest'
import { dropWorkSetAside, setUnreadableAside, workSetAside } from '../../src/session/set-aside.ts'
import { drillEntry as drill } from './a-drill-entry.ts'
import { FakeBrowser } from './fake-browser.ts'

const lesson = JSON.stringify({ progress: { lesson: 'tack' }, setUp: null, patch: [] })

function storageWith(entries: Readonly<Record<string, string>>) {
  const { storage } = new FakeBrowser()
  for (const [key, text] of Object.entries(entries)) storage.setItem(key, text)
  return storage
}

test('what can be read stays as it is, and nothing is set aside', () => {
  const whole = {
    'tackstair drills': JSON.stringify([drill]),
    'tackstair drills at work': '[]',
    'tackstair lesson tack': lesson,
    'tackstair lesson being written': 'title: not JSON',
    'tackstair own lesson mine': 'title: not JSON',
  }
  const storage = storageWith(whole)
  expect(setUnreadableAside(storage)).toBe(false)
  expect(Object.fromEntries(storage.entries)).toEqual(whole)
  expect(workSetAside(storage)).toBeNull()
})

test('damaged texts are moved aside whole, and can be had and thrown away', () => {
  const storage = storageWith({
    'tackstair drills': '[{"drill":"ea',
    'tackstair drills at work': '{"__proto__":{}}',
    'tackstair lesson tack': 'null',
    'tackstair lesson splitting': lesson,
  })
  expect(setUnreadableAside(storage)).toBe(true)
  expect([...storage.entries.keys()].sort()).toEqual(['tackstair lesson splitting', 'tackstair unreadable work'])
  const text = workSetAside(storage) ?? ''
  for (const part of [
    'tackstair drills\n[{"drill":"ea',
    'tackstair drills at work\n{"__proto__":{}}',
    'lesson tack\nnull',
  ])
    expect(text).toContain(part)
  dropWorkSetAside(storage)
  expect(workSetAside(storage)).toBeNull()
})

test('of a list, only the entries that cannot be read leave it; a second damage is put to the first', () => {
  const storage = storageWith({ 'tackstair drills': JSON.stringify([drill, { drill: 'easy-3' }]) })
  setUnreadableAside(storage)
  expect(JSON.parse(storage.entries.get('tackstair drills') ?? '')).toEqual([drill])
  storage.setItem('tackstair lesson tack', '{')
  setUnreadableAside(storage)
  expect(workSetAside(storage)).toContain('{"drill":"easy-3"}')
  expect(workSetAside(storage)).toContain('lesson tack\n{')
})

test('a full storage loses nothing, and a blocked one is no fault', () => {
  const storage = storageWith({ 'tackstair drills': 'damaged' })
  storage.room = 30
  expect(setUnreadableAside(storage)).toBe(false)
  expect(storage.entries.get('tackstair drills')).toBe('damaged')
  storage.blocked = true
  expect(setUnreadableAside(storage)).toBe(false)
  expect(workSetAside(storage)).toBeNull()
})
