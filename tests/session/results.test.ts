import { expect, test } from 'vitest'
import type { CellPrint } from '../../src/press/cell-stage.ts'
import { Results } from '../../src/session/results.ts'
import { checkSetUp } from '../press/legal-setups.ts'

const setUp = { ...checkSetUp([16, 14, 12]), seed: 77 }

test('cells printed in steps, as on a slow machine, are the very cells printed at once', () => {
  const slow = Results.of(setUp)
  let turns = 1
  while (!slow.cellsWhile(0b111, () => false)) turns++
  const [one, other] = [slow.cells(0b111), Results.of(setUp).cells(0b111)]
  // Strengths of three, two and one planes, and three units' prints.
  expect(turns).toBeGreaterThan(6)
  expect(one.brought).toEqual(other.brought)
  const bytesOf = ({ stages }: CellPrint) =>
    stages.flatMap(({ broke, thickness }) => [broke, ...thickness]).map(({ buffer }) => Buffer.from(buffer))
  const printed = bytesOf(other)
  expect(bytesOf(one).every((bytes, at) => bytes.equals(printed[at]))).toBe(true)
})

test('another patch is begun anew, and the one begun before is forgotten', () => {
  const results = Results.of(setUp)
  expect(results.cellsWhile(0b111, () => false)).toBeUndefined()
  expect(results.cells(0b011).patch).toBe(0b011)
  expect(results.cellsWhile(0b111, () => true)?.patch).toBe(0b111)
})
