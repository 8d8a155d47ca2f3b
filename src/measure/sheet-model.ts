import type { DensityStatus } from '../colour/data/density-weights.ts'
import type { Densities } from '../colour/density.ts'
import { densitiesMinusPaper } from '../colour/density.ts'
import { opticsForPaper } from '../colour/paper-optics.ts'
import { reflectance } from '../colour/reflectance.ts'
import { unitsIn } from '../press/patches.ts'
import { runPress } from '../press/run.ts'
import type { SetUp } from '../press/setup.ts'
import { filmByInk } from '../press/sheet.ts'
import { knownColour } from './known-colour.ts'
import { referenceFilm } from './reference-film.ts'

/** The densities minus paper that the model computes, patch by patch, for a set-up. */
export type SheetModel = (setUp: SetUp, patches: readonly number[]) => Densities[]

/** A model for set-ups that differ from this one in anything but the inks' colours and the kind of paper. */
export function sheetModel(like: SetUp, status: DensityStatus): SheetModel {
  const optics = opticsForPaper(like.paper.base)
  const solidFilm = referenceFilm(like.paper)
  const absorbances = like.inks.map((ink) => knownColour(ink, optics).absorbance)
  return (setUp, patches) => {
    const run = runPress({ ...setUp, reading: 'settled' })
    const sheet = run.sheets[setUp.inks.length]
    return patches.map((patch) => {
      const films = filmByInk(sheet, patch)
      const inks = absorbances.flatMap((absorbance, unit) =>
        absorbance ? [{ absorbance, amount: films[unit] / solidFilm }] : [],
      )
      return densitiesMinusPaper(reflectance(optics, inks), optics.paper, status)
    })
  }
}

/** The unit of the first ink in these patches that has no colour, so that no density can be computed; null when all have. */
export function colourless(setUp: SetUp, patches: readonly number[]): number | null {
  const optics = opticsForPaper(setUp.paper.base)
  const none = setUp.inks.map((ink) => knownColour(ink, optics).kind === 'none')
  const found = patches.flatMap((patch) => unitsIn(patch, setUp.inks.length)).find((unit) => none[unit])
  return found ?? null
}
