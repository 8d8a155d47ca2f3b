/** What a film of the stack is called: by the ink it mostly is, and where another unit's blanket left that, by the unit too. */
import type { FilmAccount } from '../press/account.ts'
import { mainInkOf } from '../press/account.ts'
import { say } from './say.ts'

export type FilmPlace = 'blanket' | 'sheet'

/** `names` and `letters` are those of the inks, by unit. */
export function filmName(
  film: FilmAccount,
  place: FilmPlace,
  names: readonly string[],
  letters: readonly string[],
): string {
  const ink = mainInkOf(film)
  const values = { name: names[ink], letter: letters[ink], unit: film.unit + 1 }
  if (place === 'blanket') return say('bench.onBlanket', values)
  return say(ink === film.unit ? 'bench.onSheet' : 'bench.givenBack', values)
}

/** The same as the index of a formula's letter, as TeX: no two films of a stack have one in common. */
export function filmIndex(film: FilmAccount, place: FilmPlace, letters: readonly string[]): string {
  const ink = mainInkOf(film)
  const letter = String.raw`\mathrm{${letters[ink]}}`
  if (place === 'blanket') return String.raw`${letter},\,\text{${say('picture.blanket')}}`
  return ink === film.unit ? letter : `${letter},${film.unit + 1}`
}
