import { expect, test } from 'vitest'
import { allAtOnce } from '../../src/colour/in-steps.ts'
import { strengthsInSteps } from '../../src/press/cell-strengths.ts'

const grid = { width: 12, height: 8 }
const strengths = (unit: number, seed = 3, of = grid) => allAtOnce(strengthsInSteps(of, seed, unit))

/** Fields are either one and the same, or differ nearly everywhere. */
const sameCells = (one: Float32Array, other: Float32Array) => one.filter((value, cell) => value === other[cell]).length

test('a unit has a plane for each film below and one for its blanket, and the paper is the same at all', () => {
  const units = Array.from({ length: 8 }, (_, unit) => strengths(unit))
  expect(units.map(({ planes }) => planes.length)).toEqual([1, 2, 3, 4, 5, 6, 7, 8])
  for (const { paper } of units) expect(paper).toBe(units[0].paper)
})

test('no two planes of a press of eight units share their draws, nor does one share them with the paper', () => {
  const units = Array.from({ length: 8 }, (_, unit) => strengths(unit))
  const all = [units[0].paper, ...units.flatMap(({ planes }) => planes)]
  all.forEach((one, at) => all.slice(at + 1).forEach((other) => expect(sameCells(one, other)).toBeLessThan(3)))
})

test('another seed draws anew', () => {
  expect(sameCells(strengths(0, 3).planes[0], strengths(0, 4).planes[0])).toBeLessThan(3)
  expect(sameCells(strengths(0, 3).paper, strengths(0, 4).paper)).toBeLessThan(3)
})

test('what is asked for again is kept; what was least lately asked for goes first, and is drawn the same again', () => {
  // 512 x 512 cells: 64 fields are kept.
  const large = { width: 512, height: 512 }
  const [first] = strengths(0, 1, large).planes
  const [second] = strengths(0, 2, large).planes
  // Three of one unit and its paper at a time.
  for (let seed = 10; seed < 26; seed++) {
    strengths(2, seed, large)
    expect(strengths(0, 1, large).planes[0]).toBe(first)
  }
  const [again] = strengths(0, 2, large).planes
  expect(again).not.toBe(second)
  expect(Buffer.from(again.buffer).equals(Buffer.from(second.buffer))).toBe(true)
})
