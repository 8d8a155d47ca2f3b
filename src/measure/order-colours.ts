/** The colour term of a ranking: how far each order's overprints come out from published ones. */
import { colourDifference } from '../colour/colour-difference.ts'
import type { PublishedAims } from '../colour/data/published-aims.ts'
import type { ProcessInkName } from '../colour/ink-set.ts'
import { processInkNames } from '../colour/ink-set.ts'
import type { Lab } from '../colour/lab.ts'
import { labOfReflectance } from '../colour/lab.ts'
import { opticsForPaper } from '../colour/paper-optics.ts'
import { aimOfOverprint, aimsNamed } from '../colour/published-aim.ts'
import { reflectance } from '../colour/reflectance.ts'
import type { Spectrum } from '../colour/spectrum.ts'
import type { PaperName } from '../physics/paper.ts'
import type { ColourJudge } from '../press/order-score.ts'
import { filmOf } from '../press/order-score.ts'
import { patchOf } from '../press/patches.ts'
import type { SetUp } from '../press/setup.ts'
import type { Sheet } from '../press/sheet.ts'
import { knownColour } from './known-colour.ts'
import { referenceFilm } from './reference-film.ts'

/** The published aim that belongs to a paper: offset on coated, on uncoated, and newspaper printing. */
export const usualAim: Record<PaperName, string> = {
  coated: 'FOGRA39L',
  'light-weight coated': 'FOGRA39L',
  uncoated: 'FOGRA29L',
  'weak uncoated': 'FOGRA29L',
  newsprint: 'IFRA26S',
}

/** A patch with a published colour; inks by their places in the set-up. */
export interface AimedPatch {
  inks: number[]
  Lab: Lab
}

/** The solids and overprints of the loaded process inks that are printed by their usual colour. */
export function aimedPatches(setUp: SetUp, aims: PublishedAims): AimedPatch[] {
  const process = setUp.inks.flatMap((ink, place) =>
    isProcessName(ink.name) && ink.colour === undefined ? [{ name: ink.name, place }] : [],
  )
  return Array.from({ length: (1 << process.length) - 1 }, (_, set) => {
    const inks = process.filter((_, index) => ((set + 1) >> index) % 2 === 1)
    return {
      inks: inks.map(({ place }) => place),
      Lab: aimOfOverprint(
        aims,
        inks.map(({ name }) => name),
      ),
    }
  })
}

function isProcessName(name: string): name is ProcessInkName {
  return (processInkNames as readonly string[]).includes(name)
}

/** Reads the patches that have an aim off printed sheets of one set of inks, in whatever order these stand. */
export interface AimedColours {
  patches: AimedPatch[]
  /** dE00 by patch; `order` names the ink on each unit by its place in the set-up */
  differences: (sheet: Sheet, order: ArrayLike<number>) => number[]
}

/**
 * Undefined where the aim is unknown or no loaded ink has a published colour. Inks of no known colour carried into a
 * patch as soil are left out of its colour.
 */
export function aimedColours(setUp: SetUp, aimName = usualAim[setUp.paper.base]): AimedColours | undefined {
  const aims = aimsNamed(aimName)
  if (!aims) return undefined
  const patches = aimedPatches(setUp, aims)
  if (patches.length === 0) return undefined
  const optics = opticsForPaper(setUp.paper.base)
  const solid = referenceFilm(setUp.paper)
  const absorbances = setUp.inks.map((ink): Spectrum | null => knownColour(ink, optics).absorbance)
  const differences = (sheet: Sheet, order: ArrayLike<number>) => {
    const unitOfInk = new Array<number>(order.length)
    for (let unit = 0; unit < order.length; unit++) unitOfInk[order[unit]] = unit
    return patches.map(({ inks, Lab }) => {
      const patch = patchOf(inks.map((ink) => unitOfInk[ink]))
      const stack = absorbances.flatMap((absorbance, ink) =>
        absorbance ? [{ absorbance, amount: filmOf(sheet, patch, unitOfInk[ink]) / solid }] : [],
      )
      return colourDifference(labOfReflectance(reflectance(optics, stack)), Lab)
    })
  }
  return { patches, differences }
}

/** The mean dE00 of all patches that have an aim, solids and overprints alike. */
export function colourJudge(setUp: SetUp, aimName?: string): ColourJudge | undefined {
  const colours = aimedColours(setUp, aimName)
  if (!colours) return undefined
  const { patches, differences } = colours
  return (sheet, order) => differences(sheet, order).reduce((sum, each) => sum + each, 0) / patches.length
}
