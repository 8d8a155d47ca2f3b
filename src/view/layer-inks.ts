/** The inks of the layers in a picture: their colour, letter and mark, of what each layer mostly is. */
import { latest } from './latest.ts'
import type { BenchPicture } from './picture.ts'
import { between, outlineOf } from './tone.ts'

export interface LayerInk {
  /** 0xRRGGBB as a solid of that mixture */
  fill: number
  outline: number
  /** the ink that makes up most of it: its letter, and its number for the mark */
  letter: string
  ink: number
}

/** um of a mixture whose colour stands for it: about what one unit leaves on bare paper. */
const solid = 1.1

/** The inks of a picture's layers, by unit. */
export const layerInks = latest(inksOf, ({ cells }) => [cells])

function inksOf({ cells, colourOf, inkLetters }: BenchPicture): LayerInk[] {
  return cells.mixture.map((shares, layer) => {
    const most = Math.max(...shares)
    const ink = most > 0 ? shares.indexOf(most) : layer
    const fill = colourOf(shares.map((share) => share * solid))
    return { fill, outline: outlineOf(fill), letter: inkLetters[ink], ink }
  })
}

/** A film on its way to the next unit: as it sets, its outline grows darker, however light or dark its fill. */
export function settingInk(ink: LayerInk, passed: number): LayerInk {
  return { ...ink, outline: between(ink.outline, 0x000000, 0.5 * passed) }
}
