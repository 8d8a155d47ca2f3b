/** The sheet's face, one pixel a cell: as the ink looks, or as marks for what broke there. */
import type { CellPrint, CellStage } from '../press/cell-stage.ts'
import { nothingMet, paperTorn } from '../press/cell-stage.ts'
import type { PictureTheme } from './picture.ts'
import { between, darkOf } from './tone.ts'

/** um of each ink in each cell after `unit`; -1 is the bare sheet before the first. */
export function inkInCells(cells: CellPrint, unit: number): Float32Array[] {
  const inks = cells.mixture[0].length
  const films = Array.from({ length: inks }, () => new Float32Array(cells.width * cells.height))
  if (unit < 0) return films
  cells.stages[unit].thickness.forEach((film, layer) => {
    cells.mixture[layer].forEach((share, ink) => {
      if (share === 0) return
      const sum = films[ink]
      for (let cell = 0; cell < film.length; cell++) sum[cell] += share * film[cell]
    })
  })
  return films
}

/** What became of a spot. */
export type Fate = 'split' | 'lifted' | 'torn' | 'untouched'

export function fateOf(broke: number, unit: number): Fate {
  if (broke === paperTorn) return 'torn'
  if (broke === nothingMet) return 'untouched'
  return broke === unit ? 'split' : 'lifted'
}

/** Whether a fate's pattern is dark at a cell: plain, stripes, full, dots. */
export function isDark(fate: Fate, x: number, y: number): boolean {
  if (fate === 'lifted') return (x + y) % 4 < 2
  if (fate === 'untouched') return x % 4 === 0 && y % 4 === 0
  return fate === 'torn'
}

/** The two tones of each fate's pattern, light and dark; none of them an ink's. */
export function fateTones(theme: PictureTheme): Record<Fate, readonly [number, number]> {
  const dark = darkOf(theme)
  const tone = (share: number) => between(theme.paper, dark, share)
  return {
    split: [tone(0.06), tone(0.06)],
    lifted: [tone(0.3), tone(0.6)],
    torn: [tone(1), tone(1)],
    untouched: [tone(0), tone(0.4)],
  }
}

/** Marks for every cell of one unit's nip. */
export function paintMarks(
  { broke }: CellStage,
  { unit, width }: { unit: number; width: number },
  theme: PictureTheme,
  pixels: Uint8ClampedArray,
): void {
  const tones = fateTones(theme)
  for (let cell = 0; cell < broke.length; cell++) {
    const fate = fateOf(broke[cell], unit)
    const tone = tones[fate][isDark(fate, cell % width, Math.floor(cell / width)) ? 1 : 0]
    const pixel = cell * 4
    pixels[pixel] = tone >> 16
    pixels[pixel + 1] = (tone >> 8) & 255
    pixels[pixel + 2] = tone & 255
    pixels[pixel + 3] = 255
  }
}

/** Makes everything outside the round of a loupe clear. */
export function cutRound(pixels: Uint8ClampedArray, width: number, height: number): void {
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const dx = (2 * x + 1) / width - 1
      const dy = (2 * y + 1) / height - 1
      if (dx * dx + dy * dy > 1) pixels[4 * (y * width + x) + 3] = 0
    }
  }
}
