import { expect, test } from 'vitest'
import { stairSentence } from '../../src/ui/stair-sentence.ts'

function stair(...tacks: number[]): string {
  const names = ['black', 'cyan', 'magenta', 'yellow']
  return stairSentence(tacks.map((tack, unit) => ({ name: names[unit], tack })))
}

test('a stair that leads down, also with a level step, is told as such', () => {
  expect(stair(16, 14, 12, 10)).toContain('down')
  expect(stair(16, 14, 14, 10)).toContain('down')
})

test('a level stair is told as such', () => {
  expect(stair(13, 13, 13, 13)).toContain('level')
})

test('the first step up is told with its unit, its inks and by how much', () => {
  const sentence = stair(14, 16, 12, 13.5)
  expect(sentence).toContain('2 steps up')
  expect(sentence).toContain('unit 2')
  expect(sentence).toContain('2 more')
  expect(sentence).toContain('than black')
  expect(stair(16, 14, 12, 13.5)).toMatch(/^A step up at unit 4: 1.5 more .* than magenta/)
})
