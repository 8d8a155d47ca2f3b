/** For the author's mode: writes what stands on the bench as the lines of a lesson file. */
import { stringify } from 'yaml'
import { papers } from '../physics/paper.ts'
import { usualCoverage, usualFilm, usualPress } from '../press/presets.ts'
import type { ProblemSaid } from '../press/problem.ts'
import type { SetUp } from '../press/setup.ts'
import type { Bench } from './bench.ts'
import type { ReadingRef } from './reading.ts'
import { read, readings } from './reading.ts'

/** The field `start` of a lesson; what stands at its default is left out. */
export function writeStart({ inks, paper, press, reading, seed }: SetUp): string {
  const usual = usualPress(press.kind)
  const { intervalPinned, interval, ...rest } = press
  const pressFields = {
    ...differing(rest, { ...usual, kind: 'sheet-fed' }),
    ...(intervalPinned ? { interval } : {}),
  }
  const supplied = Object.values(papers).find(({ name }) => name === paper.name) ?? papers.coated
  const changed = differing(paper, supplied)
  const written = {
    inks: inks.map(({ film, coverage, ...ink }) => ({
      ...ink,
      ...differing({ film, coverage }, { film: usualFilm, coverage: usualCoverage }),
    })),
    paper: Object.keys(changed).length > 0 ? { base: supplied.name, ...changed } : paper.name,
    ...(Object.keys(pressFields).length > 0 ? { press: pressFields } : {}),
    reading,
    ...(seed === 1 ? {} : { seed }),
  }
  return stringify({ start: written }, { version: '1.2', schema: 'core', lineWidth: 120 })
}

/** One line of `expect`: the reading as the bench has it now, within a tolerance in the reading's unit. */
export function writeExpectation(
  bench: Bench,
  reading: ReadingRef,
  tolerance: number,
): string | { problem: ProblemSaid } {
  const value = read(bench, reading)
  if (typeof value !== 'number') return value
  const rounded = Number(value.toPrecision(3))
  return stringify([{ is: 'within', reading, value: rounded, tolerance, unit: readings[reading.what].unit }], {
    version: '1.2',
    schema: 'core',
    collectionStyle: 'flow',
    lineWidth: 0,
  })
}

/** The fields of `given` that are not as usual. */
function differing<Given extends object>(given: Given, usual: object): Partial<Given> {
  return Object.fromEntries(
    Object.entries(given).filter(([field, value]) => value !== (usual as Record<string, unknown>)[field]),
  ) as Partial<Given>
}
