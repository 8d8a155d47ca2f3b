/** Printing a sheet far into a run takes long: it is done in steps, so that the page stays alive and can call it off. */
import { runAt, runInSteps } from '../press/long-run.ts'
import type { Run } from '../press/run.ts'
import type { SetUp } from '../press/setup.ts'

/**
 * Work worth doing in steps: sheets times patches times the square of units. Chosen so that what is left to be done at
 * once takes no more than about a fifth of a second.
 */
const longWork = 1_000_000

/** Whether a set-up's sheet is too far into the run to be printed at once. */
export function takesLong({ inks, reading }: SetUp): boolean {
  const units = inks.length
  return typeof reading === 'object' && reading.sheet * 2 ** units * units ** 2 > longWork
}

/** Prints the sheet of a set-up that takes long, yielding the sheet reached. */
function* printInSteps(setUp: SetUp, sheet: number): Generator<number, Run, undefined> {
  return runAt(yield* runInSteps(setUp, sheet), sheet)
}

/** What calls the next step once the page has had its turn. */
export type Later = (step: () => void) => void

/** A sheet being printed. */
export interface Printing {
  /** sheets done, of all */
  sheet: number
  of: number
  cancel: () => void
}

/** Starts printing; tells after every step, and hands the run over at the end. Nothing more comes once it is cancelled. */
export function startPrinting(
  setUp: SetUp,
  sheet: number,
  later: Later,
  told: { step: () => void; done: (run: Run) => void },
): Printing {
  const steps = printInSteps(setUp, sheet)
  let cancelled = false
  const printing: Printing = { sheet: 0, of: sheet, cancel: () => (cancelled = true) }
  const step = (): void => {
    if (cancelled) return
    const next = steps.next()
    if (next.done) {
      told.done(next.value)
      return
    }
    printing.sheet = next.value
    told.step()
    later(step)
  }
  later(step)
  return printing
}
