/**
 * The control strip of a printed sheet: solids, all overprints of two and of three inks, and the patch where all inks
 * print, each read as an instrument would. Colours are reconstructed, not measured (see src/colour).
 */
import type { InkColour } from '../colour/ink-colour.ts'
import type { PaperOptics } from '../colour/paper-optics.ts'
import { opticsForPaper } from '../colour/paper-optics.ts'
import type { StackReading } from '../colour/stack-reading.ts'
import { readStack } from '../colour/stack-reading.ts'
import { amountOfFilm } from '../colour/film-amount.ts'
import { printsIn, unitsIn } from '../press/patches.ts'
import type { Readings } from '../press/readings.ts'
import { readSheet } from '../press/readings.ts'
import type { Run } from '../press/run.ts'
import { knownColour } from './known-colour.ts'
import { referenceFilm } from './reference-film.ts'
import type { Refused } from './said.ts'
import { refuse } from './said.ts'

export interface Strip {
  readonly run: Run
  readonly sheet: Readings
  readonly optics: PaperOptics
  /** um that make an ink's solid on this paper */
  readonly solidFilm: number
  /** by unit */
  readonly colours: readonly InkColour[]
  /** the strip's patches, as sets of units (see src/press/patches.ts), the bare paper first */
  readonly patches: readonly number[]
  /** what has been read so far; ask {@link readPatch} */
  readonly read: Map<number, StripPatch>
}

/** What an instrument says of a patch, minus paper and absolute; the wordings of readStack without its refusal. */
export type ColourReading = Extract<StackReading, { reflectance: unknown }>

export interface StripPatch {
  readonly patch: number
  /** the units that print here, first to last */
  readonly units: readonly number[]
  /** um by ink */
  readonly films: readonly number[]
  /** the same in units of the solid's film */
  readonly amounts: readonly number[]
  /** refused where an ink printing here has no colour */
  readonly colour: ColourReading | Refused
  /** inks without a colour that came here with other inks, or off a soiled blanket: left out of the colour */
  readonly leftOut: readonly { readonly unit: number; readonly film: number }[]
}

/** The strip of a run; patches are read when they are asked for. */
export function stripOf(run: Run): Strip {
  const { inks, paper } = run.setUp
  const optics = opticsForPaper(paper.base)
  return {
    run,
    sheet: readSheet(run),
    optics,
    solidFilm: referenceFilm(paper),
    colours: inks.map((ink) => knownColour(ink, optics)),
    patches: stripPatches(inks.length),
    read: new Map(),
  }
}

/** The bare paper, then all patches of one, two and three inks, then that of all inks; of one size in unit order. */
export function stripPatches(units: number): number[] {
  const all = (1 << units) - 1
  const size = (patch: number) => unitsIn(patch, units).length
  return Array.from({ length: all + 1 }, (_, patch) => patch)
    .filter((patch) => size(patch) <= 3 || patch === all)
    .sort((a, b) => size(a) - size(b))
}

/** Reads one patch, be it on the strip or not. */
export function readPatch(strip: Strip, patch: number): StripPatch {
  const known = strip.read.get(patch)
  if (known) return known
  const films = Array.from(strip.sheet.films[patch])
  const amounts = films.map((film) => amountOfFilm(film, strip.solidFilm))
  const uncoloured = strip.colours.flatMap((colour, unit) => (colour.kind === 'none' ? [unit] : []))
  const blind = uncoloured.find((unit) => printsIn(patch, unit))
  const read: StripPatch = {
    patch,
    units: unitsIn(patch, films.length),
    films,
    amounts,
    colour:
      blind === undefined
        ? seen(strip, amounts)
        : refuse('strip.inkWithoutColour', { ink: strip.run.setUp.inks[blind].name }),
    leftOut: uncoloured
      .filter((unit) => !printsIn(patch, unit) && films[unit] > 0)
      .map((unit) => ({ unit, film: films[unit] })),
  }
  strip.read.set(patch, read)
  return read
}

/** What an instrument reads of these amounts (in units of the solid's film, by unit); inks without a colour are left out. */
export function seen(strip: Strip, amounts: readonly number[]): ColourReading {
  const inks = strip.colours.map((ink, unit) => ({ ink, amount: ink.kind === 'none' ? 0 : amounts[unit] }))
  const reading = readStack(strip.optics, inks)
  if (reading.Lab === null) throw new Error(`A stack without uncoloured inks was refused: ${reading.reason}`)
  return reading
}
