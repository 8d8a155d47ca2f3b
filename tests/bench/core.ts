/** How fast the press settles and prints, as ratios taken in one run; and how far the cells stray from the mean field. */
import { seededDraws } from '../../src/physics/random.ts'
import type { CellPrint } from '../../src/press/cell-stage.ts'
import { meanFilmByInk, printCells } from '../../src/press/cells.ts'
import { lineOf } from '../../src/press/line.ts'
import { readSheet } from '../../src/press/readings.ts'
import { runPress, settleLine } from '../../src/press/run.ts'
import type { SetUp } from '../../src/press/setup.ts'
import { checkSetUp } from '../press/legal-setups.ts'
import { checkSetup as plainSetUp } from '../reference/plain/check-rows.ts'
import { settled as plainlySettled } from '../reference/plain/run.ts'
import type { BenchRow } from './bench-row.ts'
import { medianTime } from './median-time.ts'

const tacks = [16, 14, 12, 10]
const four = 0b1111
const frame = 1000 / 60
/** Revolutions that the plain reference takes to the trial table's settled state, and how many of them are timed. */
const [plainRevolutions, plainTimed] = [400, 20]

export function benchCore(): Promise<BenchRow[]> {
  return Promise.resolve([...settling(), ...cells(), ...straying()])
}

function settling(): BenchRow[] {
  const line = lineOf(checkSetUp(tacks))
  const eight: SetUp = { ...checkSetUp([]), inks: eightInks() }
  const settle = medianTime(() => settleLine(line), 9)
  const settleEight = medianTime(() => settleLine(lineOf(eight)), 9)
  const run = medianTime(() => readSheet(runPress(checkSetUp(tacks))), 9)
  const plain = (medianTime(() => plainlySettled(plainSetUp(tacks), plainTimed), 3) * plainRevolutions) / plainTimed
  return [
    { name: 'settling 4 inks', value: settle, unit: 'ms', note: 'all 16 patches, 16-14-12-10' },
    { name: 'a frame against it', value: frame / settle, unit: 'times', note: '1/60 s; above 1 wanted' },
    { name: 'settling, printing, reading', value: run, unit: 'ms', note: '4 inks, all readings' },
    { name: 'settling 8 inks', value: settleEight, unit: 'ms', note: 'all 256 patches' },
    {
      name: 'plain reference against settling',
      value: plain / settle,
      unit: 'times',
      note: `${plainRevolutions} revolutions, timed over ${plainTimed}; at least 20 wanted`,
    },
  ]
}

function eightInks(): SetUp['inks'] {
  const draw = seededDraws(1)
  return Array.from({ length: 8 }, (_, unit) => ({
    name: `ink ${unit + 1}`,
    tack: 17 - unit + draw(),
    film: 4,
    coverage: 0.2 + 0.5 * draw(),
  }))
}

function cells(): BenchRow[] {
  const run = runPress(checkSetUp(tacks))
  const grid = { width: 512, height: 512 }
  const first = medianTime(() => printCells({ ...run, setUp: { ...run.setUp, seed: 2 } }, four, grid), 1)
  const print = medianTime(() => printCells(run, four, grid), 9)
  const bytes = bytesOf(printCells(run, four, grid))
  const [source, target] = [new Uint8Array(bytes).fill(1), new Uint8Array(bytes).fill(2)]
  const copy = medianTime(() => target.set(source), 9)
  return [
    { name: 'cells', value: print, unit: 'ms', note: '512 x 512 cells, 4 units, strengths drawn before' },
    { name: 'cells, first time', value: first, unit: 'ms', note: 'strengths drawn too' },
    {
      name: 'cells against a copy',
      value: print / copy,
      unit: 'times',
      note: `of the ${(bytes / 1e6).toFixed(1)} MB that they write; at most 150 wanted`,
    },
  ]
}

const bytesOf = ({ stages }: CellPrint) =>
  stages.reduce(
    (sum, { broke, thickness }) =>
      sum + broke.byteLength + thickness.reduce((inner, film) => inner + film.byteLength, 0),
    0,
  )

/** Points of share by which each film of the four-film patch differs from the mean field: the largest, over eight seeds. */
function straying(): BenchRow[] {
  const sets = [tacks, [13, 13, 13, 13], [10, 12, 14, 16], [14, 16, 12, 10]]
  return [false, true].flatMap((waterless) =>
    (['first', 'settled'] as const).flatMap((reading) =>
      sets.map((set): BenchRow => {
        const run = runPress(checkSetUp(set, { waterless, reading }))
        const { films, onBare } = readSheet(run)
        const seeds = [1, 2, 3, 4, 5, 6, 7, 8]
        const printed = seeds.map((seed) =>
          meanFilmByInk(printCells({ ...run, setUp: { ...run.setUp, seed } }, four, { width: 192, height: 192 })),
        )
        const points = onBare.map((bare, ink) => {
          const mean = printed.reduce((sum, film) => sum + film[ink], 0) / seeds.length
          return (100 * (mean - films[four][ink])) / bare
        })
        return {
          name: `cells off the mean, ${set.join('-')}`,
          value: Math.max(...points.map(Math.abs)),
          unit: 'points',
          note: `${reading}, ${waterless ? 'waterless' : 'dampened'}; by film ${points.map((each) => each.toFixed(1)).join(' ')}`,
        }
      }),
    ),
  )
}
