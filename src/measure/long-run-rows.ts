/** A long run printed and read, in steps: the rows of a run chart. */
import type { RunEvent } from '../press/run-events.ts'
import { runInSteps } from '../press/long-run.ts'
import type { SetUp } from '../press/setup.ts'
import { aimedColours } from './order-colours.ts'
import type { RunRow } from './run-rows.ts'
import { runRow } from './run-rows.ts'

/** Even stretches between sheets read: chosen so that a chart shows no corners and eight inks are read in seconds. */
const stretches = 160
/** Sheets after the start and after each event that are read as well, as things change fastest there. */
const soonAfter = [0, 1, 2, 4, 7, 12, 20, 35, 60, 100, 180, 300, 500, 900]
/** Share of the work that printing takes, reading being the rest; only for the progress told. */
const printing = 0.3

/** Yields the share done, from 0 to 1. */
export function* longRunRows(
  setUp: SetUp,
  sheets: number,
  events: readonly RunEvent[],
): Generator<number, RunRow[], undefined> {
  const steps = runInSteps(setUp, sheets, events)
  let step = steps.next()
  while (!step.done) {
    yield (printing * step.value) / sheets
    step = steps.next()
  }
  const colours = aimedColours(setUp)
  const chosen = sheetsToChart(sheets, events)
  const rows: RunRow[] = []
  for (const sheet of chosen) {
    rows.push(runRow(step.value, sheet, colours))
    yield printing + ((1 - printing) * rows.length) / chosen.length
  }
  return rows
}

/** The sheets read for a chart: evenly spread, and close together after the start and after each event. */
export function sheetsToChart(sheets: number, events: readonly Pick<RunEvent, 'sheet'>[]): number[] {
  const chosen = new Set([sheets])
  const every = Math.max(1, Math.ceil(sheets / stretches))
  for (let sheet = 1; sheet < sheets; sheet += every) chosen.add(sheet)
  for (const { sheet } of [{ sheet: 1 }, ...events]) {
    // The sheet before an event shows what it changes.
    chosen.add(sheet - 1)
    for (const after of soonAfter) chosen.add(sheet + after)
  }
  return [...chosen].filter((sheet) => sheet >= 1 && sheet <= sheets).sort((a, b) => a - b)
}
