/** What an author can take off the bench as it stands: readings of its inks, with the tolerance usual for each. */
import type { Bench } from '../../lesson/bench.ts'
import type { ReadingRef } from '../../lesson/reading.ts'
import { read, readings } from '../../lesson/reading.ts'
import { sayReading } from './reading-words.ts'

interface ReadingToTake {
  reading: ReadingRef
  name: string
  unit: string
}

/** Those that give a value here; films and densities are those of the patch looked at. */
export function readingsToTake(bench: Bench): ReadingToTake[] {
  const names = bench.setUp.inks.map(({ name }) => name)
  const pairs = names.flatMap((on, at) => names.slice(at + 1).map((of) => ({ of, on })))
  const patch = [...bench.patch]
  const all: ReadingRef[] = [
    ...pairs.map((pair) => ({ what: 'mass trap' as const, ...pair })),
    ...pairs.map((pair) => ({ what: 'apparent trap' as const, ...pair })),
    ...patch.map((of) => ({ what: 'film' as const, of, in: patch })),
    ...pairs.map(({ of, on }) => ({ what: 'lifted' as const, of: on, by: of })),
    { what: 'picked' },
    ...names.map((of) => ({ what: 'contamination' as const, of })),
    ...(['red', 'green', 'blue'] as const).map((through) => ({ what: 'density' as const, in: patch, through })),
    ...names.flatMap((of) => (['tack', 'form roller film'] as const).map((what) => ({ what, of }))),
    { what: 'speed' },
    { what: 'interval' },
    { what: 'surface strength' },
  ]
  return all
    .filter((reading) => typeof read(bench, reading) === 'number')
    .map((reading) => ({ reading, name: sayReading(reading), unit: readings[reading.what].unit }))
}
