/** Which reading a learner took by mistake: the one of this bench that has the number entered. */
import type { Bench } from './bench.ts'
import type { ReadingName, ReadingRef } from './reading.ts'
import { read, readings } from './reading.ts'

/**
 * The same kind of reading at other places; for a film that of the form roller, which is told with it, and for a mass trap
 * the films it is worked out from, whose numbers no trap has. No other kind, since a lesson may not have come to its name,
 * and a number can be that of another kind by chance.
 */
function readingsAlike({ setUp: { inks }, patch }: Bench, asked: ReadingRef): ReadingRef[] {
  const all = inks.map(({ name }) => name)
  const names = [...all.filter((name) => name === asked.of), ...all.filter((name) => name !== asked.of)]
  const patches = [...names.map((name) => [name]), [...patch]]
  const alike = (what: ReadingName): ReadingRef[] => {
    if (what === 'film') return names.flatMap((of) => patches.map((inks): ReadingRef => ({ what, of, in: inks })))
    if (what === 'picked') return patches.map((inks): ReadingRef => ({ what, in: inks }))
    if (asked.by !== undefined && asked.in !== undefined)
      return names.flatMap((by) => names.map((of): ReadingRef => ({ ...asked, what, by, ...(asked.of && { of }) })))
    if (what === 'density') return patches.map((inks): ReadingRef => ({ ...asked, what, in: inks }))
    const { needs }: { needs: readonly string[] } = readings[what]
    if (needs.length === 0) return [{ what }]
    if (needs.length === 1) return names.map((of): ReadingRef => ({ what, of }))
    return names.flatMap((of) => names.map((other): ReadingRef => ({ what, of, [needs[1]]: other })))
  }
  const told: ReadingName[] = asked.what === 'film' ? ['form roller film'] : asked.what === 'mass trap' ? ['film'] : []
  return [asked.what, ...told].flatMap(alike)
}

/** Half of the last digit that the bench shows of a film, um. */
const filmRounding = 0.005 + 1e-9

/**
 * The other reading of the bench that shows `entered`, give or take `tolerance` (both in the unit of the reading asked
 * for); undefined if there is none, and if nothing lies there: every ink has a reading of 0 somewhere.
 */
export function otherReading(
  bench: Bench,
  asked: ReadingRef,
  entered: number,
  tolerance: number,
): ReadingRef | undefined {
  const same = JSON.stringify(read(bench, asked))
  return readingsAlike(bench, asked).find((reading) => {
    const value = read(bench, reading)
    const within = reading.what === asked.what || asked.what === 'film' ? tolerance : filmRounding
    if (entered <= within || typeof value !== 'number') return false
    return JSON.stringify(value) !== same && Math.abs(value - entered) <= within
  })
}
