/**
 * The wet-on-wet proof of the laboratory: two inks, each on a forme of its own, are printed on a strip one after the
 * other, and everything is weighed. What the second ink leaves on the first, against what it leaves on dry paper, is
 * the mass trap ratio (R. Chung and F. Hsu, A Study of Ink Trapping and Ink Trapping Ratio, Test Targets 8).
 *
 * The nips are the press model's own. The strip is dry and so is the proof: no dampening.
 */
import { emptyParting, part } from '../physics/nip.ts'
import type { Paper } from '../physics/paper.ts'
import { readingNoise, repeatability } from '../physics/repeatability.ts'
import type { Line } from './line.ts'
import { lineOf } from './line.ts'
import { passPatch } from './pass.ts'
import { usualInk } from './presets.ts'
import type { Sheet } from './sheet.ts'
import { emptySheet, filmByInk } from './sheet.ts'
import { emptyStack, surveyStack } from './stack.ts'

interface ProofInk {
  name: string
  /** tack units */
  tack: number
  /** um on its forme */
  film: number
}

export interface Proof {
  /** in the order of printing */
  inks: readonly [ProofInk, ProofInk]
  paper: Paper
  /** m/s */
  speed: number
  /** s between the two */
  interval: number
  /** degC of formes and inks */
  temperature: number
}

/** What can be dialled in. Interval: the published 0.03 to 3 s between two inks on presses; films as blankets bring them. */
export const proofRanges = {
  film: { least: 0.5, most: 6, step: 0.1 },
  speed: { least: 0.3, most: 5, step: 0.1 },
  interval: { least: 0.03, most: 3, step: 0.01 },
  temperature: { least: 15, most: 40, step: 0.5 },
} as const

/** cm2 of strip printed: chosen so that 1 um of ink weighs 10 mg and a usual balance is good enough. */
const proofArea = 100
/** g/cm3: chosen so that 1 um weighs 1 g/m2; real inks lie a little to either side. */
const inkDensity = 1

/** mg of `film` (um) on the strip. */
export function weightOfFilm(film: number): number {
  return film * 1e-4 * proofArea * inkDensity * 1000
}

/** What the proof left, um over the whole strip. */
export interface ProofFilms {
  /** the first ink on paper, before the second came */
  first: number
  /** each ink after both */
  firstAfter: number
  secondAfter: number
  /** the second ink printed alone on dry paper */
  secondAlone: number
}

/** Prints both inks, and the second once more on a dry strip. */
export function printProof(proof: Proof): ProofFilms {
  const line = lineOf({
    inks: proof.inks.map(({ name, tack }) => usualInk(name, tack)),
    paper: proof.paper,
    press: {
      kind: 'sheet-fed',
      speed: proof.speed,
      interval: proof.interval,
      intervalPinned: true,
      temperature: proof.temperature,
      dampening: 0,
      waterless: true,
    },
    reading: 'first',
    seed: 0,
  })
  const [{ film: one }, { film: two }] = proof.inks
  const bare = emptySheet(1, 2)
  const first = pass(line, 0, emptySheet(0, 2), [one, 0])
  const both = pass(line, 1, first, [0, two])
  const alone = pass(line, 1, bare, [0, two])
  const everywhere = 3
  return {
    first: filmByInk(first, 1)[0],
    firstAfter: filmByInk(both, everywhere)[0],
    secondAfter: filmByInk(both, everywhere)[1],
    secondAlone: filmByInk(alone, everywhere)[1],
  }
}

/** The strip after one forme with these inks (um) on it. */
function pass(line: Line, index: number, before: Sheet, forme: [number, number]): Sheet {
  const unit = line.units[index]
  const after = emptySheet(index + 1, 2)
  const patch = (2 << index) - 1
  const from = patch >> 1
  const stack = emptyStack(index, 2)
  surveyStack(line, unit, before, from, stack)
  const surface = { paper: line.paper, lnStrength: unit.lnSurfaceStrength, pickChance: line.pickChance }
  const film = forme[0] + forme[1]
  const parting = part(surface, stack, film, line.lnTack[index] + unit.blanketTerm, emptyParting())
  passPatch(unit, before, from, after, patch, stack, parting, Float64Array.from(forme), 0, film)
  return after
}

/** Both the strip's weighings and what they make of trap. All mg. */
export interface Weighings {
  /** the strip before anything, after the first ink, after the second */
  strip: readonly [number, number, number]
  /** a dry strip before and after the second ink alone */
  dry: readonly [number, number]
  /** weight gained on wet ink / weight gained on dry paper, a share of 1 */
  ratio: number
}

/** mg of a bare strip: 100 cm2 of 115 g/m2 (a usual weight of coated paper). */
const stripWeight = 1150

/** Weighs once; `index` tells repeated weighings of one seed apart. */
export function weighProof(films: ProofFilms, seed: number, index = 0): Weighings {
  const weigh = (film: number, place: number) =>
    stripWeight + weightOfFilm(film) + repeatability.weighing * readingNoise(seed, weighingStream, 5 * index + place)
  const strip = [weigh(0, 0), weigh(films.first, 1), weigh(films.firstAfter + films.secondAfter, 2)] as const
  const dry = [weigh(0, 3), weigh(films.secondAlone, 4)] as const
  return { strip, dry, ratio: (strip[2] - strip[1]) / (dry[1] - dry[0]) }
}

const weighingStream = 73

/**
 * The ratio that perfect weighing finds. A balance cannot tell whose ink it weighs: first ink that the second forme
 * lifts off counts against the second, so this lies below {@link massTrapOf} as soon as anything is lifted.
 */
export function weighedRatio({ first, firstAfter, secondAfter, secondAlone }: ProofFilms): number {
  return (firstAfter + secondAfter - first) / secondAlone
}

/** Mass trap of the second ink, a share of 1: its own film on the wet ink / its film on dry paper. */
export function massTrapOf({ secondAfter, secondAlone }: ProofFilms): number {
  return secondAfter / secondAlone
}
