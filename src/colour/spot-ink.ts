import { colourDifference } from './colour-difference.ts'
import { labOfReflectance, labOfXYZ, xyzOfLab, type Lab } from './lab.ts'
import type { PaperOptics } from './paper-optics.ts'
import { reflectance } from './reflectance.ts'
import { coarseAbsorbance, mostAbsorbed, smoothAbsorbance } from './smooth-absorbance.ts'
import { bandCount, type Spectrum } from './spectrum.ts'
import { xyzOfReflectance, type XYZ } from './tristimulus.ts'

/** Why no clear ink gives a colour on a paper. */
type OutOfReach = 'lighter than the paper' | 'darker than the paper allows' | 'more vivid than an ink can be'

/** An ink made from a wanted colour. */
export interface SpotInk {
  /** reconstructed absorbance of the solid, per band */
  readonly absorbance: Spectrum
  /** Lab of the solid on this paper */
  readonly solid: Lab
  /** dE00 between the wanted colour and the solid */
  readonly difference: number
  /** null: the solid has the wanted colour; else why it cannot, and the solid is the nearest colour found */
  readonly outOfReach: { readonly why: OutOfReach; readonly sentence: string } | null
}

/** A solid this close (dE00) to the wanted colour counts as that colour. */
const reached = 0.1

/** Lightness, as a share of the paper's, of the greys tried as the end of the way back from a colour out of reach. */
const greys = [0.1, 0.3, 0.5, 0.7, 0.9]

/** Halvings of that way: to a 256th of it. */
const halvings = 8

/** Share of the way to the edge that is used: at the very edge lie only spectra with steps that no ink has. */
const shortOfEdge = 0.95

/**
 * The ink whose solid has the wanted colour on this paper. Where no clear ink can, the colour is moved straight towards
 * each of several greys until one can, and the nearest of these is taken.
 * The same wanted colour on another paper makes another ink.
 */
export function spotInk(optics: PaperOptics, wanted: Lab): SpotInk {
  const direct = solidOf(optics, wanted, smoothAbsorbance)
  if (direct.difference < reached) return { ...direct, outOfReach: null }

  const within = [
    labOfReflectance(optics.paper),
    ...greys.map((share) => edgeTowards(optics, greyOfPaper(optics, share), wanted)),
  ]
  const away = within.map((lab) => colourDifference(wanted, lab))
  const nearest = solidOf(optics, within[away.indexOf(Math.min(...away))], smoothAbsorbance)
  const difference = colourDifference(wanted, nearest.solid)
  return { ...nearest, difference, outOfReach: difference < reached ? null : explain(optics, wanted, difference) }
}

function solidOf(optics: PaperOptics, wanted: Lab, find: typeof smoothAbsorbance) {
  const absorbance = find(optics, xyzOfLab(wanted))
  const solid = labOfReflectance(reflectance(optics, [{ absorbance, amount: 1 }]))
  return { absorbance, solid, difference: colourDifference(wanted, solid) }
}

/** About the last colour on the way from a grey to the wanted colour that an ink can have. */
function edgeTowards(optics: PaperOptics, grey: Lab, wanted: Lab): Lab {
  let inside = 0
  let outside = 1
  for (let i = 0; i < halvings; i++) {
    const middle = (inside + outside) / 2
    const can = solidOf(optics, between(grey, wanted, middle), coarseAbsorbance).difference < reached
    if (can) inside = middle
    else outside = middle
  }
  return between(grey, wanted, shortOfEdge * inside)
}

/** What an even grey film gives, at about this share (0 to 1) of the paper's lightness: light goes as its cube. */
function greyOfPaper(optics: PaperOptics, share: number): Lab {
  const dark = darkest(optics)
  const paper = xyzOfReflectance(optics.paper)
  const mix = (axis: 0 | 1 | 2) => dark[axis] + share ** 3 * (paper[axis] - dark[axis])
  return labOfXYZ([mix(0), mix(1), mix(2)])
}

/** The colour of the darkest solid: little more than the surface is seen. */
function darkest(optics: PaperOptics): XYZ {
  const absorbance = new Array<number>(bandCount).fill(mostAbsorbed)
  return xyzOfReflectance(reflectance(optics, [{ absorbance, amount: 1 }]))
}

function between(from: Lab, to: Lab, share: number): Lab {
  const mix = (axis: 0 | 1 | 2) => from[axis] + share * (to[axis] - from[axis])
  return [mix(0), mix(1), mix(2)]
}

function explain(optics: PaperOptics, wanted: Lab, difference: number): SpotInk['outOfReach'] {
  const why = reasonFor(optics, wanted)
  return {
    why,
    sentence: `No clear ink gives this colour on ${optics.name} paper: it is ${why}. The nearest colour found is used, dE00 ${difference.toFixed(1)} away.`,
  }
}

function reasonFor(optics: PaperOptics, wanted: Lab): OutOfReach {
  if (wanted[0] > labOfReflectance(optics.paper)[0]) return 'lighter than the paper'
  if (wanted[0] < labOfXYZ(darkest(optics))[0]) return 'darker than the paper allows'
  return 'more vivid than an ink can be'
}
