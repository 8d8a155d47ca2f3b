import { expect, test } from 'vitest'
import { opticsForPaper } from '../../src/colour/paper-optics.ts'
import { knownColour } from '../../src/measure/known-colour.ts'

const coated = opticsForPaper('coated')

test('a colour is worked out once for each ink, colour and paper', () => {
  const cyan = knownColour({ name: 'cyan' }, coated)
  expect(cyan.kind).toBe('process')
  expect(knownColour({ name: 'cyan' }, coated)).toBe(cyan)
  expect(knownColour({ name: 'cyan' }, opticsForPaper('newsprint'))).not.toBe(cyan)
  expect(knownColour({ name: 'cyan', colour: '#808080' }, coated).kind).toBe('spot')
})

test('a hundred are kept, and the oldest goes first', () => {
  const first = knownColour({ name: 'kept first' }, coated)
  const draw = (from: number, to: number) => {
    for (let at = from; at <= to; at++) knownColour({ name: `kept ${at}` }, coated)
  }
  draw(1, 99)
  expect(knownColour({ name: 'kept first' }, coated)).toBe(first)
  draw(100, 100)
  const anew = knownColour({ name: 'kept first' }, coated)
  expect(anew).not.toBe(first)
  expect(anew).toEqual(first)
})
