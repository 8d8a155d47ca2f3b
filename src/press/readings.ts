/** What is read off a printed sheet: trap by mass, films, what was lifted, torn and carried on. */
import { emptyParting, part } from '../physics/nip.ts'
import type { NipAccount } from './account.ts'
import { nipAccount } from './account.ts'
import { patchOf, unitsIn } from './patches.ts'
import type { Run } from './run.ts'
import { filmAlone } from './run.ts'
import { filmByInk } from './sheet.ts'
import { emptyStack, lnTackOf, surveyStack } from './stack.ts'
import { patchBefore } from './train.ts'

/** Mass trap of one ink on one other. */
interface TrapReading {
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
  const torn = tornShares(run)
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

/** By patch: share of the area torn at one unit or another. */
export function tornShares({ line, sheets, turns }: Pick<Run, 'line' | 'sheets' | 'turns'>): number[] {
  const inks = line.lnTack.length
  const parting = emptyParting()
  const patches = 1 << line.units.length
  const whole = new Array<number>(patches).fill(1)
  for (const unit of line.units) {
    const stack = emptyStack(unit.index, inks)
    const surface = { paper: line.paper, lnStrength: unit.lnSurfaceStrength, pickChance: line.pickChance }
    const { brought } = turns[unit.index]
    const parted = unit.areas.length
    for (let patch = 0; patch < parted; patch++) {
      surveyStack(line, unit, sheets[unit.index], patchBefore(patch, unit.index), stack)
      let film = 0
      for (let at = patch * inks; at < (patch + 1) * inks; at++) film += brought[at]
      const lnPull = film > 0 ? lnTackOf(line.lnTack, brought, patch * inks, film) + unit.blanketTerm : 0
      part(surface, stack, film, lnPull, parting)
      const left = 1 - parting.contact * parting.torn
      // Every patch told apart by later units alone has fared the same here.
      for (let each = patch; each < patches; each += parted) whole[each] *= left
    }
  }
  return whole.map((share) => 1 - share)
}

/** Names of the units' inks that print in a patch, first to last. */
export function inksIn(run: Run, patch: number): string[] {
  return unitsIn(patch, run.line.units.length).map((unit) => run.setUp.inks[unit].name)
}
