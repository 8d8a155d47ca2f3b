/** What the loaded inks look like on the chosen paper: each solid, any amount of ink, and whole pictures. */
import { InSteps } from '../colour/in-steps.ts'
import type { InkColour } from '../colour/ink-colour.ts'
import { paintPicture } from '../colour/paint-picture.ts'
import type { PaperOptics } from '../colour/paper-optics.ts'
import { opticsForPaper } from '../colour/paper-optics.ts'
import { screenColour } from '../colour/screen-colour.ts'
import type { Spectrum } from '../colour/spectrum.ts'
import { readStack } from '../colour/stack-reading.ts'
import { knownColour } from '../measure/known-colour.ts'
import { referenceFilm } from '../measure/reference-film.ts'
import type { Ink, SetUp } from '../press/setup.ts'
import type { SharedTable } from './picture-tables.ts'
import { sharedTable } from './picture-tables.ts'

/** An ink without a colour is drawn as this even grey. */
const greyAbsorbance = 0.8

export class Colours {
  readonly #optics: PaperOptics
  readonly #inks: readonly InkColour[]
  readonly #absorbances: readonly Spectrum[]
  readonly #solidFilms: number[]
  #solids: readonly string[] | undefined
  readonly #mixed = new Map<string, string>()
  readonly #table: InSteps<SharedTable>

  constructor({ inks, paper }: SetUp) {
    this.#optics = opticsForPaper(paper.base)
    this.#inks = inks.map((ink) => knownColour(ink, this.#optics))
    this.#absorbances = this.#inks.map(({ absorbance }) => absorbance ?? this.#optics.paper.map(() => greyAbsorbance))
    this.#solidFilms = inks.map(() => referenceFilm(paper))
    const named = this.#absorbances.map((absorbance, ink) => ({ name: colourKey(inks[ink]), absorbance }))
    this.#table = new InSteps(sharedTable(this.#optics, named))
  }

  /** #rrggbb of each ink's solid on this paper */
  get solids(): readonly string[] {
    return (this.#solids ??= this.#inks.map(({ solid }) => (solid ? screenColour(solid).hex : noColour)))
  }

  /** #rrggbb of um by ink, to a hundredth of a um; kept, since pictures ask for the same films again and again. */
  of(amounts: ArrayLike<number>): string {
    const key = Array.from(amounts, (amount) => Math.round(100 * amount)).join(' ')
    let colour = this.#mixed.get(key)
    if (colour === undefined) {
      if (this.#mixed.size >= mixturesKept) this.#mixed.clear()
      this.#mixed.set(key, (colour = this.#mix(amounts)))
    }
    return colour
  }

  #mix(amounts: ArrayLike<number>): string {
    const stack = this.#inks.map((ink, index) => ({
      ink: this.#coloured(ink, index),
      amount: this.#amount(amounts, index),
    }))
    const reading = readStack(this.#optics, stack)
    return reading.Lab ? reading.screen.hex : noColour
  }

  /** Gets ready to paint, as far as it may go on for now; whether it is ready. Painting itself waits for nothing. */
  readyWhile(mayGoOn: () => boolean): boolean {
    return this.#table.makeWhile(mayGoOn) !== undefined
  }

  /** Colours a picture: um of each ink in each cell. */
  paint(films: readonly Float32Array[], pixels: Uint8ClampedArray): void {
    const { table, places } = this.#table.make()
    const shares = (ink: number) => films.map((_, place) => (place === places[ink] ? 1 : 0))
    const layers = films.map((thickness, ink) => ({ thickness, shares: shares(ink) }))
    paintPicture(table, layers, this.#solidFilms, pixels)
  }

  #coloured(ink: InkColour, index: number): InkColour {
    if (ink.kind !== 'none') return ink
    return { kind: 'process', absorbance: this.#absorbances[index], solid: [60, 0, 0] }
  }

  #amount(amounts: ArrayLike<number>, index: number): number {
    return amounts[index] / this.#solidFilms[index]
  }
}

const mixturesKept = 5000
const noColour = '#8c8c8c'

/** What an ink's colour depends on, beside the paper. */
function colourKey({ name, colour }: Ink): string {
  return `${name} ${String(colour)}`
}

/** Whether two set-ups look alike: the same inks in the same order on the same kind of paper. */
export function sameColours(one: SetUp, other: SetUp): boolean {
  const key = ({ inks, paper }: SetUp) => [paper.base, ...inks.map(colourKey)].join('\n')
  return key(one) === key(other)
}
