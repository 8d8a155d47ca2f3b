/** What follows from a set-up, worked out when first asked for and kept while the set-up stays the same. */
import { InSteps } from '../colour/in-steps.ts'
import type { NipAccount } from '../press/account.ts'
import { nipAccount } from '../press/account.ts'
import type { CellPrint } from '../press/cell-stage.ts'
import { cellsInSteps } from '../press/cells.ts'
import type { Readings } from '../press/readings.ts'
import { readSheet } from '../press/readings.ts'
import type { Run } from '../press/run.ts'
import { printNext, runPress } from '../press/run.ts'
import type { SetUp } from '../press/setup.ts'
import { copyTrain } from '../press/train.ts'

/** Cells on each side of the picture of the sheet's face: 1 mm across, so that one cell is about 5 um. */
export const pictureCells = 192

export class Results {
  readonly run: Run
  #readings: Readings | undefined
  readonly #accounts = new Map<number, NipAccount[]>()
  #cells: { patch: number; print: InSteps<CellPrint> } | undefined

  constructor(run: Run) {
    this.run = run
  }

  static of(setUp: SetUp): Results {
    return new Results(runPress(setUp))
  }

  /** The sheet after this one, for the set-up that reads it: the very result of printing all sheets up to there. */
  nextSheet(setUp: SetUp): Results {
    const { line, trains } = this.run
    return new Results(printNext(setUp, line, trains.map(copyTrain)))
  }

  get readings(): Readings {
    return (this.#readings ??= readSheet(this.run))
  }

  /** Every nip of one patch, first unit to last. */
  accounts(patch: number): NipAccount[] {
    let accounts = this.#accounts.get(patch)
    if (!accounts) {
      accounts = this.run.line.units.map((unit) => nipAccount(this.run, unit.index, patch))
      this.#accounts.set(patch, accounts)
    }
    return accounts
  }

  /** One patch cell by cell; only the last one asked for is kept, as it is large. */
  cells(patch: number): CellPrint {
    return this.#printing(patch).make()
  }

  /** The same, as far as it may go on for now: undefined where there is more to do. */
  cellsWhile(patch: number, mayGoOn: () => boolean): CellPrint | undefined {
    return this.#printing(patch).makeWhile(mayGoOn)
  }

  #printing(patch: number): InSteps<CellPrint> {
    if (this.#cells?.patch !== patch) {
      const grid = { width: pictureCells, height: pictureCells }
      this.#cells = { patch, print: new InSteps(cellsInSteps(this.run, patch, grid)) }
    }
    return this.#cells.print
  }
}
