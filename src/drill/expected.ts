/** What every piece of evidence would read without any noise, for a set-up: the press is run, the strip read. */
import { isRefused } from '../measure/said.ts'
import type { ColourReading, Strip } from '../measure/strip.ts'
import { readPatch, stripOf } from '../measure/strip.ts'
import { oilViscosity, pickResistance } from '../physics/pick-test.ts'
import { nipAccount } from '../press/account.ts'
import { patchOf, unitsIn } from '../press/patches.ts'
import { runPress } from '../press/run.ts'
import type { SetUp } from '../press/setup.ts'
import { temperatureAt } from '../press/setup.ts'
import type { Quantity } from './evidence.ts'
import { onScale } from './evidence.ts'

/** The sheet on the table and the one after the run has settled. */
interface Prints {
  setUp: SetUp
  first: Strip
  settled: Strip
  /** by ink of the ticket: the unit it sits in */
  unitOf: number[]
  /** by patch of the ticket: the patch of the loaded press with the same inks */
  loaded: number[]
}

/** The reading of each quantity on its own scale, in the order of `quantities`. */
export function expectedReadings(ticket: SetUp, setUp: SetUp, quantities: readonly Quantity[]): Float64Array {
  const unitOf = ticket.inks.map(({ name }) => setUp.inks.findIndex((ink) => ink.name === name))
  const prints: Prints = {
    setUp,
    first: stripOf(runPress({ ...setUp, reading: 'first' })),
    settled: stripOf(runPress({ ...setUp, reading: 'settled' })),
    unitOf,
    loaded: Array.from({ length: 1 << unitOf.length }, (_, patch) =>
      patchOf(unitsIn(patch, unitOf.length).map((ink) => unitOf[ink])),
    ),
  }
  return Float64Array.from(quantities, (quantity) => onScale(quantity.scale, valueOf(prints, quantity)))
}

function valueOf(prints: Prints, { name, patch = 0, filter = 'red', unit = 0 }: Quantity): number {
  const { setUp, first, settled, unitOf } = prints
  const loaded = prints.loaded[patch]
  const place = unitOf[unit]
  const ink = setUp.inks[place]
  switch (name) {
    case 'lightness':
      return colourOf(first, loaded).Lab[0]
    case 'red-green':
      return colourOf(first, loaded).Lab[1]
    case 'yellow-blue':
      return colourOf(first, loaded).Lab[2]
    case 'density':
      return colourOf(first, loaded).densitiesMinusPaper.T[filter]
    case 'drift':
      return (
        colourOf(settled, loaded).densitiesMinusPaper.T[filter] - colourOf(first, loaded).densitiesMinusPaper.T[filter]
      )
    case 'missing': {
      const top = unitsIn(loaded, unitOf.length).at(-1) ?? 0
      const { contact, blanket } = nipAccount(first.run, top, loaded)
      return 1 - contact * blanket.broke
    }
    case 'torn':
      return first.sheet.torn[loaded]
    case 'tack':
      return ink.tack
    case 'temperature':
      return temperatureAt(setUp.press, ink)
    case 'film':
      return ink.film
    case 'water':
      return setUp.press.dampening
    case 'place':
      return place
    case 'speed':
      return setUp.press.speed
    case 'interval':
      return setUp.press.interval
    case 'pick velocity':
      return pickResistance(setUp.paper.surfaceStrength) / oilViscosity.medium
    case 'absorbency':
      return setUp.paper.absorbency
  }
}

/** Jobs carry process inks only, and these have a colour on every paper. */
function colourOf(strip: Strip, patch: number): ColourReading {
  const { colour } = readPatch(strip, patch)
  if (isRefused(colour)) throw new Error(`Patch ${patch} of a drill has no colour; every ink of a job needs one.`)
  return colour
}
