/** What the measurements of a drill show without noise, the misleading one included. */
import { casebookOf } from './casebook.ts'
import type { Drill } from './drill.ts'
import type { QuantityName } from './evidence.ts'
import { offScale } from './evidence.ts'

/** Looks a reading up by its name and, for one taken at a unit, by the unit (by the order of the ticket). */
export function readingsByName(drill: Drill): (name: QuantityName, unit: number | null) => number {
  const { quantities } = casebookOf(drill.job)
  return (name, unit) => {
    const index = quantities.findIndex((each) => each.name === name && (each.unit ?? null) === unit)
    if (index < 0)
      throw new Error(`This job has no reading "${name}" at ${unit === null ? 'the press' : `unit ${unit + 1}`}.`)
    return offScale(quantities[index].scale, drill.readings[index])
  }
}
