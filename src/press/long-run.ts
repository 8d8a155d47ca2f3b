/**
 * A run of up to 100,000 sheets by strides (stride.ts) instead of sheet by sheet. Each stride is made twice, whole and in
 * two halves; their difference tells the error, and the error the length of the next stride. Between two halts the state
 * is interpolated by a cubic that meets both and their rates of change.
 */
import type { Line } from './line.ts'
import { lineOf } from './line.ts'
import type { Run } from './run.ts'
import { emptyPassage, printNext, printSheet, settleLine, startingTrains } from './run.ts'
import type { RunEvent } from './run-events.ts'
import { afterEvent } from './run-events.ts'
import type { SetUp } from './setup.ts'
import type { StrideRoom } from './stride.ts'
import { farthest, mixTrains, roomToStride, stride } from './stride.ts'
import type { Train } from './train.ts'
import { copyTrain } from './train.ts'

/** um, and shares of 1: the largest error that one stride may add to any film or store. */
const strideError = 2e-7
/** Revolutions made one by one at the start and after every event, while films change fast; then the shortest stride. */
const stepsAtFirst = 8
const shortest = 4
/** A stride is never longer than so many times the last. */
const lengthening = 2.5

/** The press at one moment: after `sheet` sheets, with what one more revolution makes of it. */
interface Halt {
  sheet: number
  trains: Train[]
  next: Train[]
}

/** A stretch of the run over which the set-up stays the same. */
interface Stretch {
  setUp: SetUp
  line: Line
  halts: Halt[]
}

export interface LongRun {
  sheets: number
  stretches: Stretch[]
  /** units turned, one by one or by a stride, for the record */
  turned: number
}

export interface LongRunOptions {
  sheets: number
  /** in order of their sheets */
  events?: readonly RunEvent[]
  signal?: AbortSignal
}

/** Runs the press for `sheets` sheets. Throws the signal's reason when it is told to stop. */
export function longRun(setUp: SetUp, { sheets, events = [], signal }: LongRunOptions): LongRun {
  const steps = runInSteps(setUp, sheets, events)
  for (;;) {
    signal?.throwIfAborted()
    const step = steps.next()
    if (step.done) return step.value
  }
}

/** The same a stride at a time, yielding the sheet reached, for a caller that has other things to do in between. */
export function* runInSteps(
  setUp: SetUp,
  sheets: number,
  events: readonly RunEvent[] = [],
): Generator<number, LongRun, undefined> {
  const run: LongRun = { sheets, stretches: [], turned: 0 }
  const line = lineOf(setUp)
  let now = { setUp, line, trains: startingTrains(line, settleLine(line)) }
  let sheet = 0
  for (const event of [...events, undefined]) {
    // Sheet 1 is printed from the state after 0 sheets; an event comes before its sheet.
    const end = Math.min(event ? event.sheet - 1 : sheets, sheets)
    const stretch: Stretch = { setUp: now.setUp, line: now.line, halts: [] }
    if (end >= sheet) {
      run.stretches.push(stretch)
      yield* runStretch(run, stretch, now.trains, sheet, end)
      sheet = end
    }
    const last = stretch.halts.at(-1)
    if (event && last) now = afterEvent({ ...now, trains: last.trains.map(copyTrain) }, event)
  }
  return run
}

function* runStretch(
  run: LongRun,
  { line, halts }: Stretch,
  start: readonly Train[],
  from: number,
  to: number,
): Generator<number, void, undefined> {
  const passage = emptyPassage(line)
  const room = roomToStride(line)
  const revolveFrom = (trains: readonly Train[]) => {
    run.turned += line.units.length
    const next = trains.map(copyTrain)
    printSheet(line, next, passage)
    return next
  }
  const halt = (sheet: number, trains: Train[]): Halt => {
    const made = { sheet, trains, next: revolveFrom(trains) }
    halts.push(made)
    return made
  }
  let here = halt(from, start.map(copyTrain))
  let length = shortest
  while (here.sheet < to) {
    const left = to - here.sheet
    const tries = here.sheet - from < stepsAtFirst ? 1 : evenAtMost(Math.min(length, left))
    if (tries < shortest) {
      here = halt(here.sheet + 1, here.next)
    } else {
      const { trains, error } = strideTwice(line, here, tries, room, revolveFrom)
      run.turned += 3 * line.units.length
      const ratio = 0.9 * Math.cbrt(strideError / error)
      length = Math.max(shortest, tries * Math.min(lengthening, Math.max(0.3, ratio)))
      if (error <= strideError) {
        // One true revolution after each stride calms films that a long stride would leave swinging.
        const after = halt(here.sheet + tries, trains)
        here = after.sheet < to ? halt(after.sheet + 1, after.next) : after
      } else if (tries === shortest) {
        for (let step = 0; step < shortest && here.sheet < to; step++) here = halt(here.sheet + 1, here.next)
      }
    }
    yield here.sheet
  }
}

/** One stride in two halves, and the error left in it by comparison with the same stride made at once. */
function strideTwice(
  line: Line,
  here: Halt,
  length: number,
  room: StrideRoom,
  revolveFrom: (trains: readonly Train[]) => Train[],
): { trains: Train[]; error: number } {
  const whole = stride(line, here.trains, here.next, length, room)
  const middle = stride(line, here.trains, here.next, length / 2, room)
  const trains = stride(line, middle, revolveFrom(middle), length / 2, room)
  // The error of a stride goes as H (H^2 - 1), so two halves leave this much of the difference.
  const share = (length ** 2 / 4 - 1) / (0.75 * length ** 2)
  const error = share * farthest(trains, whole)
  return { trains, error: Number.isFinite(error) ? error : Infinity }
}

function evenAtMost(length: number): number {
  return 2 * Math.floor(length / 2)
}

/** The trains from which sheet `sheet` (1 to the length of the run) was printed, and the press they belong to. */
export function pressAt(run: LongRun, sheet: number): { setUp: SetUp; line: Line; trains: Train[] } {
  const done = sheet - 1
  const stretch = run.stretches.findLast(({ halts }) => halts[0].sheet <= done) ?? run.stretches[0]
  const { setUp, line, halts } = stretch
  const after = firstAfter(halts, done)
  if (after === 0) return { setUp, line, trains: halts[0].trains.map(copyTrain) }
  if (after === halts.length) return { setUp, line, trains: halts[after - 1].trains.map(copyTrain) }
  return { setUp, line, trains: between(halts[after - 1], halts[after], done) }
}

/** Prints sheet `sheet` of the run, for the bench and for reading. */
export function runAt(run: LongRun, sheet: number): Run {
  const { setUp, line, trains } = pressAt(run, sheet)
  return printNext({ ...setUp, reading: { sheet } }, line, trains)
}

/** The index of the first halt beyond `sheet`, by halving. */
function firstAfter(halts: readonly Halt[], sheet: number): number {
  let low = 0
  let high = halts.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (halts[middle].sheet <= sheet) low = middle + 1
    else high = middle
  }
  return low
}

/** Cubic Hermite interpolation between two halts. */
function between(a: Halt, b: Halt, sheet: number): Train[] {
  const length = b.sheet - a.sheet
  const t = (sheet - a.sheet) / length
  if (t === 0) return a.trains.map(copyTrain)
  const curve = t * (1 - t)
  return a.trains.map((train, unit) => {
    const risen = mixTrains(train, a.next[unit], (now, next) => next - now)
    const rising = mixTrains(b.trains[unit], b.next[unit], (now, next) => next - now)
    // A gain per revolution is the rate half a revolution later.
    const rateA = mixTrains(risen, rising, (x, y) => x - (0.5 * (y - x)) / length)
    const rateB = mixTrains(risen, rising, (x, y) => y - (0.5 * (y - x)) / length)
    const straight = mixTrains(train, b.trains[unit], (x, y) => (1 - t) * x + t * y)
    const slope = mixTrains(train, b.trains[unit], (x, y) => (y - x) / length)
    const bend = mixTrains(
      mixTrains(rateA, slope, (rate, mean) => curve * length * (1 - t) * (rate - mean)),
      mixTrains(rateB, slope, (rate, mean) => curve * length * t * (mean - rate)),
      (x, y) => x + y,
    )
    return mixTrains(straight, bend, (x, y) => Math.max(0, x + y))
  })
}
