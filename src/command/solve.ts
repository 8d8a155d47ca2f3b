/** `npm run --silent solve -- setup.json`: prints one set-up and reads its sheet, as JSON. */
import { longRun, runAt } from '../press/long-run.ts'
import type { Run } from '../press/run.ts'
import { runPress } from '../press/run.ts'
import type { SetUp } from '../press/setup.ts'
import type { Command } from './command.ts'
import { readSetUp } from './read-setup.ts'
import { solutionOf } from './solution.ts'

/** Sheets beyond which strides are taken instead of single revolutions: eight inks need milliseconds for each. */
const farSheet = 500

export const solve: Command = {
  usage: 'solve: give the file of one set-up, or - for standard input',
  work: ([file], { input, out }) => {
    out(JSON.stringify(solutionOf(solved(readSetUp(file, input))), null, 1))
    return 0
  },
}

function solved(setUp: SetUp): Run {
  const { reading } = setUp
  if (typeof reading === 'string' || reading.sheet <= farSheet) return runPress(setUp)
  return runAt(longRun(setUp, { sheets: reading.sheet }), reading.sheet)
}
