/** What is read off a printed sheet: trap by mass, films, what was lifted, torn and carried on. */
import type { NipAccount } from './account.ts'
import { nipAccount } from './account.ts'
import { patchOf, unitsIn } from './patches.ts'
import type { Run } from './run.ts'
import { filmAlone } from './run.ts'
import { filmByInk } from './sheet.ts'

/** Mass trap of one ink on one other. */
export interface TrapReading {
  /** units of the two inks, the earlier first */
  earlier: number
  later: number
  /** film of the later ink on the earlier one / film of it on bare paper; can exceed 1 on rough paper */
  massTrap: number
}

export interface Readings {
  traps: TrapReading[]
  /** um of each ink on bare paper: what mass trap is measured against */
  onBare: number[]
  /** by patch: um by ink */
  films: Float64Array[]
  /** by patch: share of the area torn at any unit */
  torn: number[]
  /** worst of them */
  worstTorn: number
  /** by unit: foreign share of its store */
  contamination: number[]
  /** by unit, then by earlier unit: share of that unit's ink lifted off the patch where all print */
  lifted: number[][]
}

/** Reads the printed sheet of a run. */
export function readSheet(run: Run): Readings {
  const units = run.line.units.length
  const sheet = run.sheets[units]
  const films = Array.from({ length: 1 << units }, (_, patch) => filmByInk(sheet, patch))
  const onBare = run.line.units.map((unit, ink) =>
    // The first sheet is printed with films settled on bare paper, so they are what it is measured against.
    run.setUp.reading === 'first' ? filmOnBare(run, unit.index) : films[patchOf([ink])][ink],
  )
  const torn = films.map((_, patch) => tornShare(run, patch))
  const all = films.length - 1
  return {
    traps: pairs(units).map(([earlier, later]) => ({
      earlier,
      later,
      massTrap: films[patchOf([earlier, later])][later] / onBare[later],
    })),
    onBare,
    films,
    torn,
    worstTorn: Math.max(...torn),
    contamination: run.trains.map((train, unit) => 1 - train.store[unit]),
    lifted: Array.from({ length: units }, (_, unit) => liftedShares(nipAccount(run, unit, all))),
  }
}

/** Share of each earlier unit's ink, of what lay on the sheet, that left with the blanket at this nip. */
export function liftedShares(account: NipAccount): number[] {
  return Array.from({ length: account.unit }, (_, ink) => {
    const lay = account.films.reduce((sum, film) => sum + film.amounts[ink], 0)
    return lay > 0 ? account.lifted[ink] / lay : 0
  })
}

/** All pairs of units, the earlier first. */
export function pairs(units: number): [number, number][] {
  return Array.from({ length: units }, (_, later) =>
    Array.from({ length: later }, (_, earlier): [number, number] => [earlier, later]),
  ).flat()
}

/** um of its own ink that a unit leaves on bare paper, settled alone: x = R - 2 y, so y = (R - x) / 2. */
function filmOnBare(run: Run, unit: number): number {
  const constants = run.line.units[unit]
  return 0.5 * (constants.film - filmAlone(run.line, constants)) * constants.startingStore[unit]
}

/** Share of a patch's area torn at one unit or another. */
function tornShare(run: Run, patch: number): number {
  return (
    1 -
    run.line.units.reduce((whole, unit) => {
      const { contact, torn } = nipAccount(run, unit.index, patch)
      return whole * (1 - contact * torn)
    }, 1)
  )
}

/** Names of the units' inks that print in a patch, first to last. */
export function inksIn(run: Run, patch: number): string[] {
  return unitsIn(patch, run.line.units.length).map((unit) => run.setUp.inks[unit].name)
}
