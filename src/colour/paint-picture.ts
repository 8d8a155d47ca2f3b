import { pictureBandCount } from './picture-bands.ts'
import { tableSteps, type PictureTable } from './picture-table.ts'
import { bringInsideScreen } from './screen-grid.ts'
import { codedOfLinear } from './screen-light.ts'

/** Linear screen light, 0 to 2, is coded by table: steps of less than half a byte where coding is steepest. */
const stepsPerLight = 8192
const coded = Float64Array.from({ length: 2 * stepsPerLight + 1 }, (_, step) => codedOfLinear(step / stepsPerLight))

/** A film in every cell of a picture: its thickness differs from cell to cell, what it is made of does not. */
export interface PictureFilm {
  /** in each cell, any unit */
  readonly thickness: Float32Array
  /** share of each ink of the table in it, 0 to 1 */
  readonly shares: ArrayLike<number>
}

/**
 * Colours cells `from` up to, not including, `to` of a picture. Nothing is checked cell by cell: the films must be
 * numbers of 0 or more.
 *
 * Against the full spectrum the colour of process inks is off by dE00 0.1 on average and 0.6 at most, before it is
 * rounded to whole bytes; with vivid spot inks among eight it can reach 2 (tests/colour/picture.test.ts).
 *
 * @param films every film on the paper, in whatever order
 * @param solidFilms thickness of each ink that makes its solid, in the unit of the films
 * @param pixels red, green, blue and opacity of each cell, as in ImageData
 * @throws RangeError when the inks are not those of the table, or a solid's film is not above 0
 */
export function paintPicture(
  table: PictureTable,
  films: readonly PictureFilm[],
  solidFilms: readonly number[],
  pixels: Uint8ClampedArray,
  from = 0,
  to = pixels.length / 4,
): void {
  checkInks(table, films, solidFilms)
  // R reflectance, W weights, A steps of absorbance per thickness, T steps and B bands of the table, C coded light.
  const { reflectance: R, weights: W } = table
  const A = absorbancePerThickness(table, films, solidFilms)
  const thickness = films.map((film) => film.thickness)
  const bytes = new Uint8Array(pixels.buffer, pixels.byteOffset, pixels.length)
  const layers = films.length
  const T = tableSteps
  const B = pictureBandCount
  const C = coded
  const end = T - 1

  for (let cell = from; cell < to; cell++) {
    // Band by band, written out: a loop over the bands takes two to three times as long.
    // prettier-ignore
    let a0 = 0.5, a1 = 0.5, a2 = 0.5, a3 = 0.5, a4 = 0.5, a5 = 0.5, a6 = 0.5, a7 = 0.5, a8 = 0.5, a9 = 0.5
    for (let layer = 0, at = 0; layer < layers; layer++, at += B) {
      const film = thickness[layer][cell]
      a0 += film * A[at]
      a1 += film * A[at + 1]
      a2 += film * A[at + 2]
      a3 += film * A[at + 3]
      a4 += film * A[at + 4]
      a5 += film * A[at + 5]
      a6 += film * A[at + 6]
      a7 += film * A[at + 7]
      a8 += film * A[at + 8]
      a9 += film * A[at + 9]
    }
    const r0 = R[a0 < end ? a0 | 0 : end]
    const r1 = R[T + (a1 < end ? a1 | 0 : end)]
    const r2 = R[2 * T + (a2 < end ? a2 | 0 : end)]
    const r3 = R[3 * T + (a3 < end ? a3 | 0 : end)]
    const r4 = R[4 * T + (a4 < end ? a4 | 0 : end)]
    const r5 = R[5 * T + (a5 < end ? a5 | 0 : end)]
    const r6 = R[6 * T + (a6 < end ? a6 | 0 : end)]
    const r7 = R[7 * T + (a7 < end ? a7 | 0 : end)]
    const r8 = R[8 * T + (a8 < end ? a8 | 0 : end)]
    const r9 = R[9 * T + (a9 < end ? a9 | 0 : end)]

    // prettier-ignore
    const redLight =
      r0 * W[0] + r1 * W[3] + r2 * W[6] + r3 * W[9] + r4 * W[12] +
      r5 * W[15] + r6 * W[18] + r7 * W[21] + r8 * W[24] + r9 * W[27]
    // prettier-ignore
    const greenLight =
      r0 * W[1] + r1 * W[4] + r2 * W[7] + r3 * W[10] + r4 * W[13] +
      r5 * W[16] + r6 * W[19] + r7 * W[22] + r8 * W[25] + r9 * W[28]
    // prettier-ignore
    const blueLight =
      r0 * W[2] + r1 * W[5] + r2 * W[8] + r3 * W[11] + r4 * W[14] +
      r5 * W[17] + r6 * W[20] + r7 * W[23] + r8 * W[26] + r9 * W[29]
    const red = redLight < 0 ? -C[(0.5 - redLight * stepsPerLight) | 0] : C[(0.5 + redLight * stepsPerLight) | 0]
    const green =
      greenLight < 0 ? -C[(0.5 - greenLight * stepsPerLight) | 0] : C[(0.5 + greenLight * stepsPerLight) | 0]
    const blue = blueLight < 0 ? -C[(0.5 - blueLight * stepsPerLight) | 0] : C[(0.5 + blueLight * stepsPerLight) | 0]
    const pixel = cell * 4
    if (red < 0 || green < 0 || blue < 0 || red > 1 || green > 1 || blue > 1) {
      const shown = bringInsideScreen(red, green, blue)
      bytes[pixel] = shown >> 16
      bytes[pixel + 1] = shown >> 8
      bytes[pixel + 2] = shown
    } else {
      bytes[pixel] = (red * 255 + 0.5) | 0
      bytes[pixel + 1] = (green * 255 + 0.5) | 0
      bytes[pixel + 2] = (blue * 255 + 0.5) | 0
    }
    bytes[pixel + 3] = 255
  }
}

/** Steps of absorbance that a film adds in each band for every unit of its thickness: [film][band]. */
function absorbancePerThickness(
  table: PictureTable,
  films: readonly PictureFilm[],
  solidFilms: readonly number[],
): Float64Array {
  const perThickness = new Float64Array(films.length * pictureBandCount)
  films.forEach(({ shares }, film) => {
    for (let place = 0; place < table.absorbance.length; place++) {
      const ink = Math.floor(place / pictureBandCount)
      perThickness[film * pictureBandCount + (place % pictureBandCount)] +=
        (table.absorbance[place] * shares[ink]) / solidFilms[ink]
    }
  })
  return perThickness
}

function checkInks(table: PictureTable, films: readonly PictureFilm[], solidFilms: readonly number[]): void {
  const inks = table.absorbance.length / pictureBandCount
  for (const count of [solidFilms.length, ...films.map((film) => film.shares.length)]) {
    if (count !== inks)
      throw new RangeError(`Numbers for ${count} inks were given. The table was made for ${inks} inks.`)
  }
  for (const film of solidFilms) {
    if (!(film > 0)) throw new RangeError(`The film of a solid is ${film}. It must be above 0.`)
  }
}
