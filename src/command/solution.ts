/** The answer of `solve`: a run's readings keyed by the inks' names, as plain JSON. */
import { nipAccount } from '../press/account.ts'
import { unitsIn } from '../press/patches.ts'
import { inksIn, readSheet } from '../press/readings.ts'
import type { Run } from '../press/run.ts'

/** Everything read off the sheet; films in um, shares of 1. */
export function solutionOf(run: Run) {
  const readings = readSheet(run)
  const names = run.setUp.inks.map((ink) => ink.name)
  const byName = (values: ArrayLike<number>) =>
    Object.fromEntries(Array.from(values, (value, ink) => [names[ink], value]))
  return {
    massTrap: Object.fromEntries(
      readings.traps.map(({ earlier, later, massTrap }) => [`${names[later]} on ${names[earlier]}`, massTrap]),
    ),
    patches: readings.films.map((films, patch) => ({
      inks: inksIn(run, patch),
      film: byName(films),
      pickShare: readings.torn[patch],
      breaks: names.map((_, unit) => breaksAt(run, unit, patch, names)),
    })),
    lifted: readings.lifted.map(byName),
    contamination: readings.contamination,
    pickShare: readings.worstTorn,
    balance: run.balance,
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
