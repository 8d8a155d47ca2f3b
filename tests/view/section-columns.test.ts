import { expect, test } from 'vitest'
import { nothingMet, paperTorn } from '../../src/press/cell-stage.ts'
import type { BenchPicture } from '../../src/view/picture.ts'
import { columnsOf, cutOf, inPaper, nowhere } from '../../src/view/section-columns.ts'
import { pictureOf, setUpOf, tearing } from './a-picture.ts'

function everyCut({ run, accounts, cells }: BenchPicture) {
  return accounts.flatMap(({ unit }) =>
    [0, 17, 63].map((row) => ({ unit, row, columns: columnsOf(run, accounts, cells, unit, row) })),
  )
}

test.each([
  ['a reversed order', setUpOf([10, 12, 14, 16])],
  ['paper that tears', tearing()],
])('on %s, each column breaks where its cell broke', (_, setUp) => {
  const picture = pictureOf(setUp)
  const { cells } = picture
  const { first, count } = cutOf(cells)
  for (const { unit, row, columns } of everyCut(picture)) {
    for (let i = 0; i < count; i++) {
      const code = cells.stages[unit].broke[row * cells.width + first + i]
      const expected = code === paperTorn ? inPaper : code === nothingMet ? nowhere : code
      expect(columns.plane[i]).toBe(expected)
    }
  }
})

test('what the paper holds, followed from unit to unit, is what the cells hold in the end', () => {
  const picture = pictureOf(tearing())
  const { run, accounts, cells } = picture
  const { first, count } = cutOf(cells)
  let torn = 0
  for (let row = 0; row < cells.height; row++) {
    const columns = columnsOf(run, accounts, cells, 3, row)
    expect(columns.lowest).toBe(cells.onPaper.layer)
    for (let i = 0; i < count; i++) {
      expect(columns.heldAfter[i]).toBeCloseTo(cells.onPaper.held[row * cells.width + first + i], 5)
      torn += columns.pitted[i]
    }
  }
  expect(torn).toBeGreaterThan(0)
})

test('a sheet that is dry before a unit takes that unit like bare paper', () => {
  const setUp = setUpOf([16, 14, 12])
  setUp.inks[2].dryBefore = true
  const { run, accounts, cells } = pictureOf(setUp)
  expect(columnsOf(run, accounts, cells, 1, 0).lowest).toBe(0)
  expect(columnsOf(run, accounts, cells, 2, 0).lowest).toBe(2)
})

test('a grid narrower than the section is cut whole', () => {
  expect(cutOf({ width: 20 })).toEqual({ first: 0, count: 20 })
  expect(cutOf({ width: 192 })).toEqual({ first: 72, count: 48 })
})
