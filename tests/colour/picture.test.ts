import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { colourDifference } from '../../src/colour/colour-difference.ts'
import { inkColour } from '../../src/colour/ink-colour.ts'
import { labOfReflectance, labOfXYZ } from '../../src/colour/lab.ts'
import { paintPicture } from '../../src/colour/paint-picture.ts'
import { inkSets, type PaperOptics } from '../../src/colour/paper-optics.ts'
import { pictureTable } from '../../src/colour/picture-table.ts'
import { choosePictureBands } from '../../src/colour/picture-bands.ts'
import { reflectance } from '../../src/colour/reflectance.ts'
import { screenColour } from '../../src/colour/screen-colour.ts'
import { insideScreen, codedLight, codedOfLinear, xyzOfCodedLight } from '../../src/colour/screen-light.ts'
import type { Spectrum } from '../../src/colour/spectrum.ts'
import { xyzOfReflectance } from '../../src/colour/tristimulus.ts'

const cells = 2000
const vividSpots = ['#ff0000', '#00aa44', '#0033cc', '#ff69b4']

function inksOf(set: PaperOptics, spots: readonly string[]): Spectrum[] {
  const spotInks = spots.map((colour) => inkColour({ name: 'spot', colour }, set).absorbance)
  return [...Object.values(set.absorbance), ...spotInks.filter((absorbance) => absorbance !== null)]
}

/** Random amounts from 0 to 2, about two or three inks to a cell; the same on every run. */
function randomFilms(inks: number): Float32Array[] {
  const present = Math.min(0.7, 2.5 / inks)
  const amount = fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.integer({ min: 0, max: 2_000_000 }))
  return Array.from({ length: inks }, (_, ink) =>
    Float32Array.from(fc.sample(amount, { numRuns: cells, seed: 17 + ink }), ([chance, millionths]) =>
      chance < present ? millionths / 1e6 : 0,
    ),
  )
}

const pure = (films: readonly Float32Array[]) =>
  films.map((thickness, film) => ({ thickness, shares: films.map((_, ink) => (ink === film ? 1 : 0)) }))

function exactSpectrum(
  set: PaperOptics,
  inks: readonly Spectrum[],
  films: readonly Float32Array[],
  cell: number,
): number[] {
  return reflectance(
    set,
    inks.map((absorbance, ink) => ({ absorbance, amount: films[ink][cell] })),
  )
}

function errors(count: number, errorOf: (index: number) => number) {
  const all = Array.from({ length: count }, (_, index) => errorOf(index))
  return { mean: all.reduce((sum, error) => sum + error) / count, most: Math.max(...all) }
}

describe.each(Object.values(inkSets).map((set) => [set.name, set] as const))('a picture on %s paper', (_, set) => {
  // dE00 1 is about what an eye can just see side by side; 3 is a usual tolerance in print (common practice).
  test.each([
    ['the process inks', [], 1],
    ['process inks and four vivid spots', vividSpots, 3],
  ])('the chosen bands give nearly the colour of all 36: %s', (_, spots, bound) => {
    const inks = inksOf(set, spots)
    const films = randomFilms(inks.length)
    const { bands, weights } = choosePictureBands(set, inks)
    const { mean, most } = errors(cells, (cell) => {
      const spectrum = exactSpectrum(set, inks, films, cell)
      const linear = weights.map((weight) => bands.reduce((sum, band, i) => sum + weight[i] * spectrum[band], 0))
      const [r, g, b] = linear.map((part) => Math.sign(part) * codedOfLinear(Math.abs(part)))
      return colourDifference(labOfReflectance(spectrum), labOfXYZ(xyzOfCodedLight([r, g, b])))
    })
    expect(most).toBeLessThan(bound)
    expect(mean).toBeLessThan(0.25)
  })

  test('cells are painted as the exact colour is shown, to about what an eye can see', () => {
    const inks = inksOf(set, [])
    const films = randomFilms(inks.length)
    const pixels = new Uint8ClampedArray(cells * 4)
    paintPicture(
      pictureTable(set, inks),
      pure(films),
      inks.map(() => 1),
      pixels,
    )
    const { mean, most } = errors(cells, (cell) => {
      const shown = insideScreen(codedLight(xyzOfReflectance(exactSpectrum(set, inks, films, cell))))
      const [r, g, b] = pixels.subarray(cell * 4, cell * 4 + 3)
      return colourDifference(labOfXYZ(xyzOfCodedLight(shown)), labOfXYZ(xyzOfCodedLight([r / 255, g / 255, b / 255])))
    })
    // Half a byte in the darkest colours alone is dE00 0.5.
    expect(mean).toBeLessThan(0.3)
    expect(most).toBeLessThan(1.5)
  })

  test('bare paper and solids are painted as their swatches, within two of 255', () => {
    const inks = inksOf(set, [])
    const films = inks.map((_, ink) => Float32Array.from([0, ...inks.map((_, solid) => (solid === ink ? 1 : 0))]))
    const pixels = new Uint8ClampedArray((inks.length + 1) * 4)
    paintPicture(
      pictureTable(set, inks),
      pure(films),
      inks.map(() => 1),
      pixels,
    )
    for (let cell = 0; cell <= inks.length; cell++) {
      const { bytes } = screenColour(labOfReflectance(exactSpectrum(set, inks, films, cell)))
      bytes.forEach((byte, part) => expect(Math.abs(pixels[cell * 4 + part] - byte)).toBeLessThanOrEqual(2))
      expect(pixels[cell * 4 + 3]).toBe(255)
    }
  })
})

describe('painting', () => {
  const set = inkSets.coated
  const table = pictureTable(set, [set.absorbance.cyan, set.absorbance.yellow])

  test('a film of mixed ink counts as the inks in it, in units of their solids', () => {
    const mixed = new Uint8ClampedArray(4)
    const apart = new Uint8ClampedArray(4)
    paintPicture(table, [{ thickness: Float32Array.of(2), shares: [0.25, 0.75] }], [1, 2], mixed)
    paintPicture(
      table,
      [
        { thickness: Float32Array.of(0.5), shares: [1, 0] },
        { thickness: Float32Array.of(1.5), shares: [0, 1] },
      ],
      [1, 2],
      apart,
    )
    expect(mixed).toEqual(apart)
  })

  test('paints only the cells asked for', () => {
    const pixels = new Uint8ClampedArray(16)
    const films = [{ thickness: new Float32Array(4), shares: [1, 0] }]
    paintPicture(table, films, [1, 1], pixels, 1, 3)
    expect([...pixels].map((byte) => (byte > 0 ? 1 : 0))).toEqual([0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 1, 1, 0, 0, 0, 0])
  })

  test('refuses inks that are not those of the table, and a solid without film', () => {
    const films = [{ thickness: new Float32Array(1), shares: [1, 0, 0] }]
    const pixels = new Uint8ClampedArray(4)
    expect(() => paintPicture(table, films, [1, 1], pixels)).toThrow(
      new RangeError('Numbers for 3 inks were given. The table was made for 2 inks.'),
    )
    expect(() => paintPicture(table, [], [1, 0], pixels)).toThrow(
      new RangeError('The film of a solid is 0. It must be above 0.'),
    )
  })
})
