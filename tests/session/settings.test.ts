import { expect, test } from 'vitest'
import { offeredSettings } from '../../src/session/settings.ts'

test('a file offers only what would change something', () => {
  const own = { theme: 'high contrast', sound: true } as const
  expect(offeredSettings(own, { theme: 'high contrast', motion: 'auto', sound: false })).toEqual({ sound: false })
  expect(offeredSettings({}, { theme: 'auto', sound: false, motion: 'auto' })).toEqual({})
  expect(offeredSettings({}, { theme: 'dark', language: 'es' })).toEqual({ theme: 'dark', language: 'es' })
  expect(offeredSettings(own, {})).toEqual({})
})

test('units of measure are no matter of comfort: they come with the view of the file', () => {
  expect(offeredSettings({}, { measures: ['m/min'] })).toEqual({})
})
