/**
 * The amount of an ink in units of the film that makes its solid.
 *
 * An ink set's solid is taken to be the settled film that a standard set-up (4 um on the form roller) leaves on the
 * bare paper of that kind. The press works that film out; here it is only divided by.
 *
 * @param film um of the ink on the sheet, all layers together
 * @param referenceFilm um of the ink that makes the solid on this paper
 * @throws RangeError when the film is negative or the reference film is not above 0
 */
export function amountOfFilm(film: number, referenceFilm: number): number {
  if (!(Number.isFinite(film) && film >= 0)) {
    throw new RangeError(`The ink film is ${film} um. It must be a number, 0 or more.`)
  }
  if (!(Number.isFinite(referenceFilm) && referenceFilm > 0)) {
    throw new RangeError(`The film of the solid is ${referenceFilm} um. It must be a number above 0.`)
  }
  return film / referenceFilm
}
