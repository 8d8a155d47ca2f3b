/** Tables that pictures are coloured by. Making one takes a good part of a second, so the last few are kept. */
import type { PaperOptics } from '../colour/paper-optics.ts'
import type { PictureTable } from '../colour/picture-table.ts'
import { tableInSteps } from '../colour/picture-table.ts'
import type { Spectrum } from '../colour/spectrum.ts'

export interface SharedTable {
  table: PictureTable
  /** by ink as asked for: its place in the table */
  places: number[]
}

const kept = new Map<string, PictureTable>()
const tablesKept = 8

/** The table for these inks on this paper, whatever their order, in steps; `names` tell inks of one colour from another. */
export function* sharedTable(
  optics: PaperOptics,
  inks: readonly { name: string; absorbance: Spectrum }[],
): Generator<undefined, SharedTable> {
  const sorted = inks.toSorted((one, other) => (one.name < other.name ? -1 : 1))
  const key = [optics.name, ...sorted.map(({ name }) => name)].join('\n')
  const table =
    kept.get(key) ??
    (yield* tableInSteps(
      optics,
      sorted.map(({ absorbance }) => absorbance),
    ))
  kept.delete(key)
  kept.set(key, table)
  for (const oldest of kept.keys()) {
    if (kept.size <= tablesKept) break
    kept.delete(oldest)
  }
  return { table, places: inks.map((ink) => sorted.indexOf(ink)) }
}
