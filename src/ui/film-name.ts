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
