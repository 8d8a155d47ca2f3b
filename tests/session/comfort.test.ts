import { expect, test, vi } from 'vitest'
import type { ComfortStorage } from '../../src/session/comfort.ts'
import { Comfort, comfortKey } from '../../src/session/comfort.ts'

function storage(text?: string): ComfortStorage & { text: string | null } {
  return {
    text: text ?? null,
    getItem(key) {
      return key === comfortKey ? this.text : null
    },
    setItem(key, value) {
      if (key === comfortKey) this.text = value
    },
  }
}

test('what was chosen is there the next time', () => {
  const shelf = storage()
  new Comfort(shelf).choose({ theme: 'high contrast' })
  new Comfort(shelf).choose({ motion: 'reduced' })
  expect(new Comfort(shelf).settings).toEqual({ theme: 'high contrast', motion: 'reduced' })
})

test('of two tabs the last choice holds in both, and neither undoes what the other chose', () => {
  const shelf = storage()
  const [one, other] = [new Comfort(shelf), new Comfort(shelf)]
  const heard = vi.fn()
  one.subscribe(heard)
  one.choose({ theme: 'dark' })
  other.choose({ sound: true })
  other.choose({ theme: 'light' })
  one.lookAgain()
  expect(heard).toHaveBeenCalledTimes(2)
  expect(one.settings).toEqual({ theme: 'light', sound: true })
})

test.each([null, { getItem: refuse, setItem: refuse }])(
  'where nothing is kept, a choice still holds and that is told',
  (shelf) => {
    const comfort = new Comfort(shelf)
    comfort.choose({ theme: 'dark' })
    comfort.choose({ motion: 'full' })
    comfort.lookAgain()
    expect(comfort.keeps).toBe(false)
    expect(comfort.settings).toEqual({ theme: 'dark', motion: 'full' })
  },
)

test('a storage that is full keeps the choice for this page', () => {
  const comfort = new Comfort({ getItem: () => '{"theme":"light"}', setItem: refuse })
  comfort.choose({ theme: 'dark' })
  expect(comfort.settings).toEqual({ theme: 'dark' })
  expect(comfort.keeps).toBe(false)
})

test.each([
  '',
  '{',
  'null',
  '[]',
  '"dark"',
  '{"theme":"purple","motion":3,"sound":"yes","measures":["inch"],"language":"<b>"}',
])('nothing of %j can be used, and the page opens as for anybody', (text) => {
  expect(new Comfort(storage(text)).settings).toEqual({})
})

test('what can be used is taken from among what cannot', () => {
  expect(new Comfort(storage('{"theme":"purple","motion":"full","measures":["m/min"]}')).settings).toEqual({
    motion: 'full',
    measures: ['m/min'],
  })
})

function refuse(): never {
  throw new Error('blocked')
}
