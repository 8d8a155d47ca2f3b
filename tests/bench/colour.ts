/** How long a picture of 512 x 512 cells takes to colour, beside the plain loop over all 36 bands. */
import { inkColour } from '../../src/colour/ink-colour.ts'
import { paintPicture, type PictureFilm } from '../../src/colour/paint-picture.ts'
import { inkSets } from '../../src/colour/paper-optics.ts'
import { pictureTable } from '../../src/colour/picture-table.ts'
import { linearLight } from '../../src/colour/screen-light.ts'
import { bandCount } from '../../src/colour/spectrum.ts'
import { xyzOfReflectance } from '../../src/colour/tristimulus.ts'
import { seededDraws } from '../../src/physics/random.ts'

export interface BenchRow {
  name: string
  value: number
  unit: string
  note: string
}

const side = 512
const cells = side * side
const repeats = 9
const set = inkSets.coated
const inks = Object.values(set.absorbance)
const solidFilms = inks.map(() => 1)

export function benchColour(): Promise<BenchRow[]> {
  const table = pictureTable(set, inks)
  const pixels = new Uint8ClampedArray(cells * 4)
  const overprint = films((draw) => inks.map(() => 0.6 + 0.6 * draw()))
  const cyan = films((draw) => [0.7 + 0.6 * draw(), 0.02 * draw(), 0.02 * draw(), 0.02 * draw()])
  const paintOverprint = timed(() => paintPicture(table, overprint, solidFilms, pixels), repeats)
  const first = timed(() => paintPicture(table, cyan, solidFilms, pixels), 1)
  const paintCyan = timed(() => paintPicture(table, cyan, solidFilms, pixels), repeats)
  const direct = timed(() => paintDirectly(overprint, pixels), 3)
  const prepare = timed(() => pictureTable(set, inks), 3)
  const spot = timed(() => inkColour({ name: 'spot', colour: '#7a1fa2' }, set), repeats)
  const tooVivid = timed(() => inkColour({ name: 'spot', colour: '#00ff00' }, inkSets.newsprint), 3)
  const size = `${side} x ${side} cells, four films`
  return Promise.resolve([
    { name: 'picture of an overprint', value: paintOverprint, unit: 'ms', note: `${size}, one frame is 16 ms` },
    {
      name: 'picture beyond the screen',
      value: paintCyan,
      unit: 'ms',
      note: `${size}, solid cyan, every colour mapped`,
    },
    { name: 'the same, first time', value: first, unit: 'ms', note: 'the screen colours it meets worked out' },
    { name: 'plain loop over 36 bands', value: direct, unit: 'ms', note: `${size}, screen range only clipped` },
    { name: 'plain loop against picture', value: direct / paintOverprint, unit: 'times', note: 'same films' },
    { name: 'table for four inks', value: prepare, unit: 'ms', note: 'once for each set of inks and paper' },
    { name: 'spot ink', value: spot, unit: 'ms', note: 'colour within reach' },
    { name: 'spot ink out of reach', value: tooVivid, unit: 'ms', note: 'nearest colour sought' },
  ])
}

function films(amounts: (draw: () => number) => number[]): PictureFilm[] {
  const draw = seededDraws(1)
  const drawn = inks.map((_, ink) => ({
    thickness: new Float32Array(cells),
    shares: inks.map((_, other) => (other === ink ? 1 : 0)),
  }))
  for (let cell = 0; cell < cells; cell++) {
    amounts(draw).forEach((amount, ink) => {
      drawn[ink].thickness[cell] = amount
    })
  }
  return drawn
}

/** The median of several runs, in ms. */
function timed(work: () => void, times: number): number {
  const taken = Array.from({ length: times }, () => {
    const start = performance.now()
    work()
    return performance.now() - start
  })
  return taken.sort((a, b) => a - b)[times >> 1]
}

/** What the table saves: the whole spectrum of each cell, in typed arrays, clipped to the screen's range. */
function paintDirectly(painted: readonly PictureFilm[], pixels: Uint8ClampedArray): void {
  const absorbance = Float64Array.from(inks.flat())
  const body = Float64Array.from(set.body)
  const light = Float64Array.from(set.body.flatMap((_, band) => lightOfBand(band)))
  const { entryLoss, internalReflection, surfaceReflectance } = set
  const passed = (1 - entryLoss) * (1 - internalReflection)
  const thickness = painted.map((film) => film.thickness)
  const layers = thickness.length
  const bands = bandCount
  const count = cells
  for (let cell = 0; cell < count; cell++) {
    let red = 0
    let green = 0
    let blue = 0
    for (let band = 0; band < bands; band++) {
      let absorbed = 0
      for (let ink = 0; ink < layers; ink++) absorbed += thickness[ink][cell] * absorbance[ink * bands + band]
      const inside = body[band] * Math.exp(-absorbed)
      const seen = surfaceReflectance + (passed * inside) / (1 - internalReflection * inside)
      red += light[band * 3] * seen
      green += light[band * 3 + 1] * seen
      blue += light[band * 3 + 2] * seen
    }
    pixels[cell * 4] = coded(red)
    pixels[cell * 4 + 1] = coded(green)
    pixels[cell * 4 + 2] = coded(blue)
    pixels[cell * 4 + 3] = 255
  }
}

/** Linear screen light of a surface that reflects only in one band. */
function lightOfBand(only: number): readonly number[] {
  return linearLight(xyzOfReflectance(set.body.map((_, band) => (band === only ? 1 : 0))))
}

/** 0 to 255; IEC 61966-2-1. */
function coded(linear: number): number {
  return linear <= 0.0031308 ? linear * 12.92 * 255 : (1.055 * linear ** (1 / 2.4) - 0.055) * 255
}
