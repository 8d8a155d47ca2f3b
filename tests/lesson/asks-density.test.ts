import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { asksDensity } from '../../src/lesson/asks-density.ts'
import { checkLesson } from '../../src/lesson/check-lesson.ts'

test.each([
  ['reading-trap', true],
  ['spot-inks', false],
])('whether %s asks for a density', (id, asks) => {
  const { lesson } = checkLesson(readFileSync(`lessons/${id}.lesson.yaml`, 'utf8'), { everyday: [] })
  expect(lesson && asksDensity(lesson)).toBe(asks)
})
