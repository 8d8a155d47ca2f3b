/** Where the ink went: over one revolution, ink let in = ink on the sheet + ink let out + what the trains gained. */
import type { Line } from './line.ts'
import { storeFilm } from './line.ts'
import type { Sheet } from './sheet.ts'
import { filmByInk } from './sheet.ts'
import type { Train, Turn } from './train.ts'

/** um by ink in all trains together, per area of sheet. */
function inventory(line: Line, trains: readonly Train[]): Float64Array {
  const inks = line.lnTack.length
  const sum = new Float64Array(inks)
  line.units.forEach((unit, index) => {
    const { store, plate, blanket } = trains[index]
    for (let ink = 0; ink < inks; ink++) sum[ink] += storeFilm * store[ink]
    unit.areas.forEach((area, patch) => {
      for (let ink = 0; ink < inks; ink++) sum[ink] += area * (plate[patch * inks + ink] + blanket[patch * inks + ink])
    })
  })
  return sum
}

/** The largest error of any ink's balance over one revolution, relative to all of that ink on the press. */
export function balanceError(
  line: Line,
  before: readonly Train[],
  after: readonly Train[],
  turns: readonly Turn[],
  printed: Sheet,
): number {
  const start = inventory(line, before)
  const end = inventory(line, after)
  const areas = line.units[line.units.length - 1].areas
  const onSheet = new Float64Array(start.length)
  areas.forEach((area, patch) => {
    filmByInk(printed, patch).forEach((film, ink) => (onSheet[ink] += area * film))
  })
  return Math.max(
    ...Array.from(start, (amount, ink) => {
      const letOut = turns.reduce((sum, turn) => sum + turn.discarded[ink], 0)
      const error = amount + turns[ink].fresh - onSheet[ink] - letOut - end[ink]
      return Math.abs(error) / (amount + turns[ink].fresh)
    }),
  )
}
