/** The answer of `solve`: a run's readings keyed by the inks' names, as plain JSON. */
import type { DensityStatus } from '../colour/data/density-weights.ts'
import type { Densities } from '../colour/density.ts'
import type { PatchTrap } from '../measure/patch-trap.ts'
import { trapAt } from '../measure/patch-trap.ts'
import { isRefused } from '../measure/said.ts'
import type { StripPatch } from '../measure/strip.ts'
import { readPatch, stripOf } from '../measure/strip.ts'
import type { TrapEquation } from '../measure/trap-equations.ts'
import { nipAccount } from '../press/account.ts'
import { patchOf, unitsIn } from '../press/patches.ts'
import { inksIn, pairs } from '../press/readings.ts'
import type { Run } from '../press/run.ts'
import { sentence } from './sentence.ts'

/** Status of the densities that apparent trap is computed from: that of the published mean it is held against. */
const trapStatus = 'T'

/** Everything read off the sheet; films in um, shares of 1, apparent trap in percent, densities minus paper unless named absolute. */
export function solutionOf(run: Run) {
  const strip = stripOf(run)
  const readings = strip.sheet
  const names = run.setUp.inks.map((ink) => ink.name)
  const byName = (values: ArrayLike<number>) =>
    Object.fromEntries(Array.from(values, (value, ink) => [names[ink], value]))
  return {
    massTrap: Object.fromEntries(
      readings.traps.map(({ earlier, later, massTrap }) => [`${names[later]} on ${names[earlier]}`, massTrap]),
    ),
    apparentTrap: apparentTrapOf(
      pairs(names.length).flatMap((pair) => trapAt(strip, patchOf(pair), trapStatus) ?? []),
      ({ below: [earlier], later }) => `${names[later]} on ${names[earlier]}`,
    ),
    patches: readings.films.map((films, patch) => ({
      inks: inksIn(run, patch),
      film: byName(films),
      ...colourOf(readPatch(strip, patch), names),
      pickShare: readings.torn[patch],
      breaks: names.map((_, unit) => breaksAt(run, unit, patch, names)),
    })),
    lifted: readings.lifted.map(byName),
    contamination: readings.contamination,
    pickShare: readings.worstTorn,
    balance: run.balance,
  }
}

/** What an eye and a densitometer see; an ink without a colour leaves its patches without, and says why. */
function colourOf({ colour, leftOut }: StripPatch, names: readonly string[]) {
  const traces = leftOut.length > 0 ? { colourLeavesOut: leftOut.map(({ unit }) => names[unit]) } : {}
  if (isRefused(colour))
    return { Lab: null, densities: null, absoluteDensities: null, reason: sentence(colour.refused) }
  return {
    Lab: colour.Lab,
    densities: rounded(colour.densitiesMinusPaper),
    absoluteDensities: rounded(colour.absoluteDensities),
    ...traces,
  }
}

/** Six places: far beyond any instrument, and free of the last bits (and the minus before a 0) of a bare paper read against itself. */
function rounded(densities: Readonly<Record<DensityStatus, Densities>>): Record<DensityStatus, Densities> {
  const six = (density: number) => Math.round(1e6 * density) / 1e6 + 0
  const each = ({ red, green, blue }: Densities) => ({ red: six(red), green: six(green), blue: six(blue) })
  return { E: each(densities.E), T: each(densities.T) }
}

/** Percent by equation and pair, the filter read through, and a reason wherever densities tell no trap (null there). */
function apparentTrapOf(traps: readonly PatchTrap[], pairName: (trap: PatchTrap) => string) {
  const by = <Value>(value: (trap: PatchTrap) => Value) =>
    Object.fromEntries(traps.map((trap) => [pairName(trap), value(trap)]))
  const percent = (equation: TrapEquation) =>
    by(({ apparent }) => (isRefused(apparent) ? null : apparent.percent[equation]))
  const untold = traps.flatMap((trap) =>
    isRefused(trap.apparent) ? [[pairName(trap), sentence(trap.apparent.refused)] as const] : [],
  )
  return {
    unit: 'percent',
    status: trapStatus,
    filter: by(({ filter }) => filter),
    preucil: percent('preucil'),
    ritz: percent('ritz'),
    brunner: percent('brunner'),
    reason: Object.fromEntries(untold),
  }
}

/** Where the stack parted at one nip: shares of the patch's area that add up to 1, or to 0 where nothing met. */
function breaksAt(run: Run, unit: number, patch: number, names: readonly string[]) {
  const { contact, torn, films, blanket } = nipAccount(run, unit, patch)
  return {
    unit: unit + 1,
    prints: unitsIn(patch, names.length).includes(unit),
    untouched: contact > 0 ? 1 - contact : 1,
    paper: contact * torn,
    films: Object.fromEntries(films.map((film) => [names[film.unit], contact * film.broke])),
    blanket: contact * blanket.broke,
  }
}
