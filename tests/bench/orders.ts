/**
 * How fast orders are ranked, a good order is found and a long run is made, beside the plain reference and a plain NumPy
 * program of the same equations (plain.py; left out where Python 3 with NumPy is not there). Both step through
 * revolutions and print every order by itself, as a program without any thought for speed would.
 */
import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { nodeOrderWorker } from '../../src/command/node-order-worker.ts'
import { rankInWorkers } from '../../src/measure/order-pool.ts'
import { longRun } from '../../src/press/long-run.ts'
import { lineOf } from '../../src/press/line.ts'
import { allPairs, usualWeights } from '../../src/press/order-score.ts'
import { searchOrders } from '../../src/press/order-search.ts'
import { factorial, rankOrders, unitsToSolve } from '../../src/press/orders.ts'
import { readSheet } from '../../src/press/readings.ts'
import { emptyPassage, printSheet, runPress, settleLine, startingTrains } from '../../src/press/run.ts'
import type { SetUp } from '../../src/press/setup.ts'
import { whatToChange } from '../../src/press/changes.ts'
import { planTacks } from '../../src/press/tack-ladder.ts'
import { checkSetUp } from '../press/legal-setups.ts'
import { checkSetup as plainSetUp } from '../reference/plain/check-rows.ts'
import { settled as plainlySettled } from '../reference/plain/run.ts'
import type { BenchRow } from './bench-row.ts'
import { medianTime } from './median-time.ts'

const tacks = [16, 14, 12, 10, 9, 8, 13, 11]
/** Revolutions after which the trial table counts a press as settled, and how many of them the slow programs are timed for. */
const [revolutions, timed] = [400, 20]
const threads = 2

function pressOf(inks: number): SetUp {
  return {
    ...checkSetUp([]),
    inks: tacks.slice(0, inks).map((tack, place) => ({ name: `ink ${place + 1}`, tack, film: 4, coverage: 0.5 })),
  }
}

const aimFor = (setUp: SetUp) => ({ overprints: allPairs(setUp.inks.length), weights: usualWeights })

export async function benchOrders(): Promise<BenchRow[]> {
  const byCount = await rankings()
  const four = byCount.find(({ name }) => name === 'ranking 4 inks')?.value ?? NaN
  return [...byCount, ...searching(), ...againstPlain(four), ...longRuns()]
}

async function rankings(): Promise<BenchRow[]> {
  const rows: BenchRow[] = []
  for (const inks of [2, 3, 4, 5, 6, 7]) {
    const setUp = pressOf(inks)
    const time = medianTime(() => rankOrders(setUp, aimFor(setUp)), inks < 6 ? 9 : 1)
    rows.push({
      name: `ranking ${inks} inks`,
      value: time,
      unit: 'ms',
      note: `processor time, one thread; ${countOf(inks)}`,
    })
  }
  const [wall, cpu] = await inThreads(pressOf(8))
  const memory = process.resourceUsage().maxRSS / 1024
  return [
    ...rows,
    { name: 'ranking 8 inks', value: wall, unit: 's', note: `by the clock, ${threads} threads; at most 60 wanted` },
    { name: 'ranking 8 inks, processor', value: cpu, unit: 's', note: `all threads together; ${countOf(8)}` },
    { name: 'peak memory', value: memory, unit: 'MB', note: 'of the whole bench until here, all threads' },
  ]
}

function countOf(inks: number): string {
  const [shared, alone] = [unitsToSolve(inks), inks * factorial(inks)]
  return `${factorial(inks)} orders, ${shared} units settled of ${alone} (${((100 * shared) / alone).toFixed(0)} %)`
}

/** Seconds by the clock, and of processor time. */
async function inThreads(setUp: SetUp): Promise<[number, number]> {
  const [start, used] = [performance.now(), process.cpuUsage()]
  const task = { setUp, ...aimFor(setUp), aim: null }
  await rankInWorkers(task, { spawn: nodeOrderWorker, workers: threads, onBatch: () => undefined })
  const { user, system } = process.cpuUsage(used)
  return [(performance.now() - start) / 1000, (user + system) / 1e6]
}

function searching(): BenchRow[] {
  const eight = pressOf(8)
  const { solved } = searchOrders(eight, aimFor(eight))
  const four = pressOf(4)
  return [
    {
      name: 'bounded answer, 8 inks',
      value: medianTime(() => searchOrders(eight, aimFor(eight)), 3),
      unit: 'ms',
      note: `${solved} units settled; at most 1000 wanted`,
    },
    {
      name: 'what to change, 4 inks',
      value: medianTime(() => whatToChange(four, aimFor(four)), 5),
      unit: 'ms',
      note: 'all single changes tried',
    },
    {
      name: 'tack ladders, 4 inks',
      value: medianTime(() => planTacks(four), 3),
      unit: 'ms',
      note: 'every falling ladder',
    },
  ]
}

function againstPlain(four: number): BenchRow[] {
  const reference = (medianTime(() => plainlySettled(plainSetUp(tacks.slice(0, 4)), timed), 3) * revolutions) / timed
  const note = `24 orders of 4 inks, ${revolutions} revolutions each, timed on one`
  const rows = [{ name: 'plain reference against ranking', value: (24 * reference) / four, unit: 'times', note }]
  const numpy = inNumpy(pressOf(4), revolutions)
  if (!numpy) return rows
  // The slowest store has by then come nearer to its end than this.
  const off = numpy.off < 0.01 ? '' : `; READINGS DIFFER by ${numpy.off.toPrecision(2)}`
  return [
    ...rows,
    { name: 'NumPy against ranking', value: (24 * numpy.time) / four, unit: 'times', note: `${note}${off}` },
    { name: 'NumPy off the settled readings', value: numpy.off, unit: 'share', note: 'traps and stores, largest' },
  ]
}

interface NumpyAnswer {
  readings: { massTraps: number[]; contamination: number[]; picking: number }
  seconds: number
}

/** Processor time (ms) of one order in NumPy, and how far its readings are from the settled ones; undefined without NumPy. */
function inNumpy(setUp: SetUp, steps: number): { time: number; off: number } | undefined {
  const input = JSON.stringify({ setUp, revolutions: steps })
  const { status, stdout } = spawnSync('python3', [join(import.meta.dirname, 'plain.py')], { input, encoding: 'utf8' })
  if (status !== 0) return undefined
  const { readings, seconds } = JSON.parse(stdout) as NumpyAnswer
  const { traps, contamination } = readSheet(runPress(setUp))
  const off = Math.max(
    ...traps.map(({ massTrap }, index) => Math.abs(massTrap - readings.massTraps[index])),
    ...contamination.map((share, unit) => Math.abs(share - readings.contamination[unit])),
  )
  return { time: 1000 * seconds, off }
}

function longRuns(): BenchRow[] {
  const sheets = 100_000
  const setUp = checkSetUp([10, 12, 14, 16])
  const stepped = 2000
  const line = lineOf(setUp)
  const start = startingTrains(line, settleLine(line))
  const passage = emptyPassage(line)
  const plain = medianTime(() => {
    for (let sheet = 0; sheet < stepped; sheet++) printSheet(line, start, passage)
  }, 1)
  const strides = medianTime(() => longRun(setUp, { sheets }), 3)
  const eight = medianTime(() => longRun(pressOf(8), { sheets }), 1)
  return [
    { name: 'long run, 4 inks', value: strides, unit: 'ms', note: `${sheets} sheets, reversed tacks` },
    { name: 'long run, 8 inks', value: eight, unit: 'ms', note: `${sheets} sheets` },
    {
      name: 'plain stepping against long run',
      value: ((plain / stepped) * sheets) / strides,
      unit: 'times',
      note: `4 inks, ${sheets} sheets, timed over ${stepped}`,
    },
  ]
}
