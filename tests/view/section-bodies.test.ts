import { expect, test } from 'vitest'
import type { Neck } from '../../src/view/filament.ts'
import type { Bodies } from '../../src/view/section-bodies.ts'
import { bodiesAt } from '../../src/view/section-bodies.ts'
import { columnsOf, inPaper } from '../../src/view/section-columns.ts'
import { pictureOf, setUpOf, tearing } from './a-picture.ts'

const scale = { perMicrometre: 25, widestGap: 90, tear: 8 }
const moments = Array.from({ length: 41 }, (_, i) => i / 40)

const pictures = {
  descending: pictureOf(setUpOf([16, 14, 12, 10])),
  reversed: pictureOf(setUpOf([10, 12, 14, 16])),
  tearing: pictureOf(tearing()),
}

function cut(name: keyof typeof pictures, unit: number, row: number) {
  const { run, accounts, cells } = pictures[name]
  return columnsOf(run, accounts, cells, unit, row)
}

function neckArea({ heights, widths }: Neck): number {
  let area = 0
  for (let i = 1; i < heights.length; i++) {
    area += 0.5 * (widths[i] + widths[i - 1]) * Math.abs(heights[i] - heights[i - 1])
  }
  return area
}

/** um of ink in one column, wherever it is. */
function inkIn(bodies: Bodies, i: number): number {
  const films = [...bodies.sheet, ...bodies.blanket, bodies.soaked].reduce((sum, film) => sum + film[i], 0)
  const threads = bodies.threads
    .filter(({ column, layer }) => column === i && layer !== inPaper)
    .flatMap(({ pulled }) => pulled.necks)
    .reduce((sum, neck) => sum + neckArea(neck), 0)
  return (films + threads) / scale.perMicrometre
}

const cases = (['descending', 'reversed', 'tearing'] as const).flatMap((name) =>
  [0, 1, 2, 3].map((unit) => [name, unit] as const),
)

test.each(cases)('%s, unit %i: no ink appears or vanishes at any moment', (name, unit) => {
  for (const row of [3, 40]) {
    const columns = cut(name, unit, row)
    for (const phase of moments) {
      const bodies = bodiesAt(columns, phase, scale)
      for (let i = 0; i < columns.count; i++) {
        const brought = columns.before.reduce((sum, film) => sum + film[i], 0)
        expect(inkIn(bodies, i)).toBeCloseTo(brought, 5)
      }
    }
  }
})

test.each(cases)('%s, unit %i: the ink ends where the cells say', (name, unit) => {
  const columns = cut(name, unit, 11)
  const bodies = bodiesAt(columns, 1, scale)
  columns.left.forEach((film, layer) => {
    for (let i = 0; i < columns.count; i++) {
      const held = layer === columns.lowest ? bodies.soaked[i] : 0
      expect((bodies.sheet[layer][i] + held) / scale.perMicrometre).toBeCloseTo(film[i], 5)
      expect(bodies.blanket[layer][i] / scale.perMicrometre).toBeCloseTo(columns.before[layer][i] - film[i], 5)
    }
  })
})

test.each(cases)(
  '%s, unit %i: every thread is of the film that broke there, and all have snapped in the end',
  (name, unit) => {
    const columns = cut(name, unit, 25)
    const seen = new Set<number>()
    for (const phase of moments) {
      for (const { column, layer } of bodiesAt(columns, phase, scale).threads) {
        expect(layer).toBe(columns.plane[column])
        seen.add(column)
      }
    }
    expect(seen.size).toBe(columns.count)
    expect(bodiesAt(columns, 1, scale).threads.every(({ pulled }) => pulled.snapped)).toBe(true)
  },
)

test('torn columns, and only they, leave a pit and take a tuft along', () => {
  let tufts = 0
  for (let row = 0; row < 64; row++) {
    const columns = cut('tearing', 1, row)
    const bodies = bodiesAt(columns, 1, scale)
    for (let i = 0; i < columns.count; i++) {
      const torn = columns.plane[i] === inPaper
      expect(bodies.tuft[i]).toBe(torn ? scale.tear : 0)
      expect(bodies.surface[i]).toBe(-scale.tear * ((torn ? 1 : 0) + columns.pitted[i]))
      if (torn) tufts++
    }
  }
  expect(tufts).toBeGreaterThan(0)
})

test('the plane is marked where the film parts: below it lies what stays', () => {
  const columns = cut('descending', 1, 20)
  const bodies = bodiesAt(columns, 0.45, scale)
  for (let i = 0; i < columns.count; i++) {
    const plane = columns.plane[i]
    expect(plane).toBeGreaterThanOrEqual(0)
    const below = columns.before.slice(0, plane).reduce((sum, film) => sum + film[i], 0)
    const stays = below + columns.left[plane][i] - columns.heldBefore[i]
    expect(bodies.plane[i] / scale.perMicrometre).toBeCloseTo(stays, 5)
  }
})

test('sheet and blanket never pass through each other', () => {
  for (const [name, unit] of cases) {
    const columns = cut(name, unit, 7)
    for (const phase of moments) {
      const bodies = bodiesAt(columns, phase, scale)
      for (let i = 0; i < columns.count; i++) {
        const top = bodies.sheet.reduce((sum, film) => sum + film[i], bodies.surface[i])
        const bottom = bodies.blanket.reduce((sum, film) => sum - film[i], bodies.blanketSurface[i])
        expect(bottom).toBeGreaterThanOrEqual(top - 1e-6)
      }
    }
  }
})

test('contact spreads from the leading edge and parts from it again', () => {
  const columns = cut('descending', 1, 20)
  const { count } = columns
  const at = (phase: number) => bodiesAt(columns, phase, scale).meeting
  expect(new Set(at(0))).toEqual(new Set(['apart']))
  expect(at(0.12)[0]).toBe('apart')
  expect(at(0.12)[count - 1]).toBe('closed')
  expect(new Set(at(0.4))).toEqual(new Set(['closed']))
  expect(at(0.65)[0]).toBe('closed')
  expect(at(0.65)[count - 1]).toBe('parting')
  expect(new Set(at(1))).toEqual(new Set(['parting']))
})
