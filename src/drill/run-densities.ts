/** The densities of the solids over the run of a drill's press, as a crew would plot them: every sheet read once, with noise. */
import type { DensityFilter } from '../colour/data/density-weights.ts'
import { isRefused } from '../measure/said.ts'
import { readPatch, stripOf } from '../measure/strip.ts'
import { readingNoise, repeatability } from '../physics/repeatability.ts'
import { longRun, runAt } from '../press/long-run.ts'
import { patchOf } from '../press/patches.ts'
import type { Drill } from './drill.ts'

export interface SheetDensities {
  readonly sheet: number
  /** by ink of the ticket: densities minus paper, status T */
  readonly solids: readonly Readonly<Record<DensityFilter, number>>[]
}

/** Sheets read: close together at first, as most happens there. By the last, a run of these jobs has settled. */
const sheetsRead = [1, 2, 3, 5, 8, 12, 18, 27, 40, 60, 90, 135, 200, 300, 450, 700, 1000, 1500, 2000]

/** Stream of the drill's seed, far from those of observe.ts. */
const chartStream = 9000

export function runDensities({ ticket, press, request }: Drill): SheetDensities[] {
  const run = longRun(press, { sheets: sheetsRead[sheetsRead.length - 1] })
  return sheetsRead.map((sheet) => {
    const strip = stripOf(runAt(run, sheet))
    const solids = ticket.inks.map(({ name }, ink) => {
      const unit = press.inks.findIndex((each) => each.name === name)
      const { colour } = readPatch(strip, patchOf([unit]))
      if (isRefused(colour)) throw new Error(`The solid of ${name} has no colour; every ink of a job needs one.`)
      const read = colour.densitiesMinusPaper.T
      const noisy = (filter: DensityFilter, at: number) =>
        read[filter] + repeatability.density * readingNoise(request.seed, chartStream + 3 * ink + at, sheet)
      return { red: noisy('red', 0), green: noisy('green', 1), blue: noisy('blue', 2) }
    })
    return { sheet, solids }
  })
}
