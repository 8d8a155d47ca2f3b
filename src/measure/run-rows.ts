/** What is read off chosen sheets of a long run: one row a sheet. */
import type { LongRun } from '../press/long-run.ts'
import { runAt } from '../press/long-run.ts'
import { filmOf } from '../press/order-score.ts'
import { patchOf } from '../press/patches.ts'
import { pairs, tornShares } from '../press/readings.ts'
import type { AimedColours } from './order-colours.ts'

export interface RunRow {
  sheet: number
  /** by unit: foreign share of its store, after this sheet */
  contamination: number[]
  /** by pair of units, as in `pairs`: film of the later ink on the earlier / on bare paper of the same sheet; NaN before any ink is there */
  massTraps: number[]
  /** share of the worst patch's area torn at one unit or another */
  picking: number
  /** dE00 by patch of the colours given; empty without */
  differences: number[]
}

/** Reads sheet `sheet` of the run. */
export function runRow(run: LongRun, sheet: number, colours: AimedColours | undefined): RunRow {
  const printed = runAt(run, sheet)
  const units = printed.line.units.length
  const last = printed.sheets[units]
  return {
    sheet,
    contamination: printed.trains.map(({ store }, unit) => 1 - store[unit]),
    massTraps: pairs(units).map(
      ([earlier, later]) => filmOf(last, patchOf([earlier, later]), later) / filmOf(last, patchOf([later]), later),
    ),
    picking: Math.max(...tornShares(printed)),
    differences: colours
      ? colours.differences(
          last,
          printed.line.units.map(({ index }) => index),
        )
      : [],
  }
}

/** Sheet 1, every `every`-th sheet, the last, and the first after each event. */
export function sheetsToRead(sheets: number, every: number, events: readonly { sheet: number }[]): number[] {
  const chosen = new Set([1, sheets, ...events.map(({ sheet }) => sheet)])
  for (let sheet = every; sheet < sheets; sheet += every) chosen.add(sheet)
  return [...chosen].filter((sheet) => sheet <= sheets).sort((a, b) => a - b)
}
