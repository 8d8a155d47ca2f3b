import { densityFilters } from '../colour/density.ts'
import type { Fit } from './fit.ts'
import type { ShelfPress } from './shelf.ts'
import { writtenPaper, writtenPress } from './written-setup.ts'

/** The press that a fit found, under a name, as it goes on the shelf: press, paper and inks belong together. */
export function fittedPress(fit: Fit, name: string): ShelfPress {
  const { inks, paper, press } = fit.setUp
  return {
    name,
    press: writtenPress(press),
    paper: writtenPaper(paper, name),
    inks,
    fit: {
      status: fit.task.status,
      readings: fit.task.sheet.patches.length * densityFilters.length,
      deviation: fit.deviation,
      values: fit.values.map(({ kind, unit, value, standardError }) => ({
        kind,
        ink: unit === null ? null : inks[unit].name,
        value,
        standardError,
      })),
    },
  }
}
