/** The press line made ready for computing: every constant of every unit worked out once from the set-up. */
import type { Paper } from '../physics/paper.ts'
import { wetSurfaceStrength } from '../physics/paper.ts'
import { pickChance } from '../physics/pick.ts'
import { settingRise, speedTerm, temperatureTerm, waterLoss, waterTerm } from '../physics/pull.ts'
import { splitAreas, wholeSheet } from './patches.ts'
import type { SetUp } from './setup.ts'
import { dampeningAt, temperatureAt } from './setup.ts'

/** um: ink held in one unit's roller train, as a film on the form roller; chosen so that drift takes hundreds of sheets. */
export const storeFilm = 80

/** A film lying on the sheet, as one later unit meets it: all of its pull that does not depend on thickness. */
interface FilmOnSheet {
  /** ln of speed, temperature and water factors */
  term: number
  /** how far suction has raised its pull, before the films below slow that down */
  rise: number
}

export interface Unit {
  /** its place in the line, from 0 */
  index: number
  /** um on the form roller */
  film: number
  /** ln of speed, temperature and water factors of the film on its blanket */
  blanketTerm: number
  /** the films of the units before it, as this unit meets them */
  below: FilmOnSheet[]
  /** films of the units before this one are dry here (0: none are) */
  firstWet: number
  /** normal dampenings laid on the sheet by this unit and those before it */
  water: number
  /** ln of the surface strength (tack units) here, weakened by the water laid so far */
  lnSurfaceStrength: number
  /** share of the sheet taken by each patch at this unit (later units left out of account) */
  areas: Float64Array
  /** composition of its store at the start, shares by ink, sum 1 */
  startingStore: Float64Array
}

export interface Line {
  paper: Paper
  units: Unit[]
  /** ln of each ink's tack */
  lnTack: Float64Array
  /** chance of picking by ln(pull / strength) */
  pickChance: (lnRatio: number) => number
}

/** Works out the line; the set-up must be legal (see check-setup.ts). */
export function lineOf(setUp: SetUp): Line {
  const units: Unit[] = []
  for (let index = 0; index < setUp.inks.length; index++) units.push(unitOf(setUp, index, units.at(-1)))
  return {
    paper: setUp.paper,
    units,
    lnTack: Float64Array.from(setUp.inks, (ink) => Math.log(ink.tack)),
    pickChance: pickChance(setUp.paper.evenness),
  }
}

/** Works out unit `index` from the unit before it; what prints after it makes no difference. */
export function unitOf(setUp: SetUp, index: number, before: Unit | undefined): Unit {
  const { inks, paper, press } = setUp
  const ink = inks[index]
  const water = (before?.water ?? 0) + dampeningAt(press, ink)
  return {
    index,
    film: ink.film,
    blanketTerm: filmTerm(setUp, index, 0),
    below: inks.slice(0, index).map((_, earlier) => {
      const seconds = (index - earlier) * press.interval
      return { term: filmTerm(setUp, earlier, seconds), rise: settingRise(paper, seconds) }
    }),
    firstWet: ink.dryBefore ? index : (before?.firstWet ?? 0),
    water,
    lnSurfaceStrength: Math.log(wetSurfaceStrength(paper, water)),
    areas: splitAreas(before?.areas ?? wholeSheet, ink.coverage),
    startingStore: startingStore(setUp, index),
  }
}

/** ln of the factors of the film of unit `index`, `seconds` after it left its blanket, but for tack, thickness and setting. */
function filmTerm({ inks, press }: SetUp, index: number, seconds: number): number {
  const ink = inks[index]
  const loss = waterLoss(dampeningAt(press, ink))
  return speedTerm(press.speed) + temperatureTerm(temperatureAt(press, ink)) + waterTerm(loss, seconds)
}

/** A soiled store holds the ink of the unit before; the first unit, which has none before it, that of the second. */
function startingStore({ inks }: SetUp, index: number): Float64Array {
  const shares = new Float64Array(inks.length)
  const soiled = inks[index].soiled ?? 0
  shares[index] = 1 - soiled
  shares[index === 0 ? 1 : index - 1] += soiled
  return shares
}
