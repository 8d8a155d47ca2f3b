/** The ink on the press line as the run has it: on every roller of every unit, and on the sheet after every unit. */
import { filmByInk } from '../press/sheet.ts'
import { printsIn } from '../press/patches.ts'
import type { Run } from '../press/run.ts'
import { latest } from './latest.ts'
import type { BenchPicture } from './picture.ts'

export interface RollerFilm {
  /** um */
  thickness: number
  /** 0xRRGGBB of its mixture as a solid */
  fill: number
}

/** One unit's films, each before and after the nip that changes it. */
export interface UnitFilms {
  rollerBefore: RollerFilm
  rollerAfter: RollerFilm
  plateBefore: RollerFilm
  plateAfter: RollerFilm
  blanketBefore: RollerFilm
  blanketAfter: RollerFilm
}

/** The sheet in one stretch of the line. */
interface SheetFilms {
  /** um of each layer, lowest first */
  layers: number[]
  /** 0xRRGGBB of the sheet's face */
  face: number
}

export interface LineFilms {
  /** by unit */
  units: UnitFilms[]
  /** by number of units passed, 0 first */
  sheet: SheetFilms[]
}

/** um whose colour stands for a mixture on a roller. */
const solid = 1.1

export const lineFilms = latest(filmsOf, ({ run, patch }) => [run, patch])

function filmsOf({ run, patch, colourOf }: BenchPicture): LineFilms {
  return {
    units: run.line.units.map((_, unit) => unitFilms(run, patch, unit, colourOf)),
    sheet: run.sheets.map((sheet, passed) => {
      const here = patch & ((1 << passed) - 1)
      const first = here * sheet.units
      return {
        layers: Array.from(sheet.thickness.subarray(first, first + sheet.units)),
        face: colourOf(filmByInk(sheet, here)),
      }
    }),
  }
}

function unitFilms(run: Run, patch: number, unit: number, colourOf: BenchPicture['colourOf']): UnitFilms {
  const inks = run.line.lnTack.length
  const at = (patch & ((2 << unit) - 1)) * inks
  const { store, plate, blanket } = run.trains[unit]
  const of = (films: Float64Array) => Array.from(films.subarray(at, at + inks))
  const film = (amounts: number[]): RollerFilm => {
    const thickness = amounts.reduce((sum, um) => sum + um, 0)
    const fill = thickness > 0 ? colourOf(amounts.map((um) => (um / thickness) * solid)) : 0
    return { thickness, fill }
  }
  const fresh = Array.from(store, (share) => share * run.line.units[unit].film)
  const left = of(plate)
  // What roller and plate share after their nip. The plate came there with what it now has left again: exact once the
  // press has settled, and near it on the sheets before.
  const shared = printsIn(patch, unit) ? fresh.map((um, ink) => 0.5 * (um + left[ink])) : null
  return {
    rollerBefore: film(fresh),
    rollerAfter: film(shared ?? fresh),
    plateBefore: film(shared ?? left),
    plateAfter: film(left),
    blanketBefore: film(of(run.turns[unit].brought)),
    blanketAfter: film(of(blanket)),
  }
}
