/** From a published aim to the patch as printed: the arrow drawn in the a*, b* plane, and its size in words' numbers. */
import { colourDifference } from '../colour/colour-difference.ts'
import type { PublishedAims } from '../colour/data/published-aims.ts'
import { publishedAims } from '../colour/data/published-aims.ts'
import type { ProcessInkName } from '../colour/ink-set.ts'
import { processInkNames } from '../colour/ink-set.ts'
import type { Lab } from '../colour/lab.ts'
import { chroma, hueTurn } from '../colour/lab.ts'
import { aimOfOverprint, aimsNamed } from '../colour/published-aim.ts'
import type { Refused } from './said.ts'
import { isRefused, refuse } from './said.ts'
import type { Strip, StripPatch } from './strip.ts'

export interface HueArrow {
  /** name of the published set */
  readonly set: string
  readonly aim: Lab
  readonly sample: Lab
  /** dE00 */
  readonly difference: number
  /** degrees from the aim's hue to the sample's, the short way round, above 0 from red towards yellow; null near grey */
  readonly hueTurn: number | null
  /** of the sample against the aim */
  readonly chromaChange: number
  readonly lightnessChange: number
}

/** Chroma below which a colour is called grey and a turn of its hue means nothing; chosen to cover the published three-ink greys. */
const grey = 10

/** Names of the published sets, for a choice. */
export const aimNames: readonly string[] = publishedAims.map((aims) => aims.name)

/** Compares a patch with the published set of this name; refused for spot inks, inks without a colour, unknown sets. */
export function arrowToAim(strip: Strip, { units, colour }: StripPatch, set: string): HueArrow | Refused {
  const aims = aimsNamed(set)
  if (!aims) return refuse('aim.unknown', { set, known: aimNames.join(', ') })
  if (isRefused(colour)) return colour
  const inks = processInks(strip, units)
  return isRefused(inks) ? inks : arrow(aims, inks, colour.Lab)
}

function arrow(aims: PublishedAims, inks: readonly ProcessInkName[], sample: Lab): HueArrow {
  const aim = aimOfOverprint(aims, inks)
  return {
    set: aims.name,
    aim,
    sample,
    difference: colourDifference(aim, sample),
    hueTurn: Math.min(chroma(aim), chroma(sample)) < grey ? null : hueTurn(aim, sample),
    chromaChange: chroma(sample) - chroma(aim),
    lightnessChange: sample[0] - aim[0],
  }
}

/** The process inks of these units; published sets hold no others. */
function processInks(strip: Strip, units: readonly number[]): ProcessInkName[] | Refused {
  const found: ProcessInkName[] = []
  for (const unit of units) {
    const { name } = strip.run.setUp.inks[unit]
    const process = processInkNames.find((each) => each === name)
    if (!process || strip.colours[unit].kind !== 'process') return refuse('aim.spotInk', { ink: name })
    found.push(process)
  }
  return found
}
