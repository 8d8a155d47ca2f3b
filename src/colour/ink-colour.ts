import { processInkNames, type ProcessInkName } from './ink-set.ts'
import { labOfReflectance, type Lab } from './lab.ts'
import type { PaperOptics } from './paper-optics.ts'
import { reflectance } from './reflectance.ts'
import { labOfScreenColour } from './screen-colour.ts'
import type { Spectrum } from './spectrum.ts'
import { spotInk, type SpotInk } from './spot-ink.ts'

/** The colour of one ink on one paper, or why it has none. */
export type InkColour =
  | {
      readonly kind: 'process'
      readonly absorbance: Spectrum
      readonly solid: Lab
    }
  | ({ readonly kind: 'spot' } & SpotInk)
  | { readonly kind: 'none'; readonly absorbance: null; readonly solid: null; readonly reason: string }

/** What is needed of an ink to find its colour. */
export interface ColouredInk {
  readonly name: string
  /** #rrggbb or L*, a*, b* of the solid; a process ink needs none */
  readonly colour?: string | Lab
}

/**
 * The colour of an ink on this paper: its own colour when it has one, else that of the process ink of its name.
 * Never throws: an ink without a colour, or with one that cannot be read, comes back with the reason.
 */
export function inkColour(ink: ColouredInk, optics: PaperOptics): InkColour {
  const { name, colour } = ink
  if (colour === undefined) {
    return isProcessInk(name)
      ? processInk(name, optics)
      : noColour(`The ink "${name}" has no colour. Give it one, such as #d4006a, or L*, a*, b*.`)
  }
  const wanted = typeof colour === 'string' ? labOfScreenColour(colour) : colour
  if (wanted === null) {
    return noColour(`The ink "${name}" has the colour "${String(colour)}", which cannot be read. Write it as #rrggbb.`)
  }
  if (!isLab(wanted)) {
    return noColour(
      `The ink "${name}" has the Lab colour ${wanted.join(', ')}. L* must lie between 0 and 100, a* and b* between -200 and 200.`,
    )
  }
  return { kind: 'spot', ...spotInk(optics, wanted) }
}

function processInk(name: ProcessInkName, optics: PaperOptics): InkColour {
  const absorbance = optics.absorbance[name]
  return { kind: 'process', absorbance, solid: labOfReflectance(reflectance(optics, [{ absorbance, amount: 1 }])) }
}

function noColour(reason: string): InkColour {
  return { kind: 'none', absorbance: null, solid: null, reason }
}

function isProcessInk(name: string): name is ProcessInkName {
  return (processInkNames as readonly string[]).includes(name)
}

function isLab(lab: readonly number[]): boolean {
  const [L, a, b] = lab
  return lab.length === 3 && L >= 0 && L <= 100 && Math.abs(a) <= 200 && Math.abs(b) <= 200
}
