import { createHash } from 'node:crypto'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import type { SetUp } from '../../src/press/setup.ts'
import { checkSetUp } from './legal-setups.ts'

const grid = { width: 64, height: 48 }
const setUp: SetUp = { ...checkSetUp([10, 12, 14, 16]), seed: 7 }

/** A fresh copy of the program, with nothing kept from earlier work: no pick tables, no strength fields. */
async function freshProgram() {
  vi.resetModules()
  const { runPress } = await import('../../src/press/run.ts')
  const { printCells } = await import('../../src/press/cells.ts')
  const { readSheet } = await import('../../src/press/readings.ts')
  return { runPress, printCells, readSheet }
}

type Program = Awaited<ReturnType<typeof freshProgram>>

/** Fingerprint of every number read off a sheet and of every cell of its four-film patch. */
function fingerprint({ runPress, printCells, readSheet }: Program, of: SetUp): string {
  const run = runPress(of)
  const hash = createHash('sha256').update(JSON.stringify(readSheet(run)))
  for (const { broke, thickness } of printCells(run, 0b1111, grid).stages) {
    hash.update(broke)
    thickness.forEach((film) => hash.update(film))
  }
  return hash.digest('hex')
}

describe('the same set-up', () => {
  let alone = ''
  beforeEach(async () => {
    alone = fingerprint(await freshProgram(), setUp)
  })

  it('gives the same sheet and picture, bit for bit, whatever was computed before', async () => {
    const program = await freshProgram()
    for (const evenness of [3, 5, 7]) {
      fingerprint(program, { ...setUp, seed: 8, paper: { ...setUp.paper, evenness } })
      fingerprint(program, { ...setUp, reading: { sheet: evenness } })
    }
    expect(fingerprint(program, setUp)).toBe(alone)
    expect(fingerprint(program, setUp)).toBe(alone)
  })

  it('does not depend on how its fields are written down, and leaves the set-up as it was', async () => {
    const before = structuredClone(setUp)
    const { inks, seed, reading, press, paper } = structuredClone(setUp)
    expect(fingerprint(await freshProgram(), { seed, reading, press, paper, inks })).toBe(alone)
    expect(setUp).toEqual(before)
  })

  it('gives another picture with another seed or another tack', async () => {
    const program = await freshProgram()
    expect(fingerprint(program, { ...setUp, seed: 6 })).not.toBe(alone)
    expect(fingerprint(program, checkSetUp([10, 12, 14, 16.01]))).not.toBe(alone)
  })

  it('has readings that the seed does not touch: it decides the cells alone', async () => {
    const { runPress, readSheet } = await freshProgram()
    expect(readSheet(runPress({ ...setUp, seed: 99 }))).toEqual(readSheet(runPress(setUp)))
  })
})
