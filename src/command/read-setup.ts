/** A set-up from a file or standard input, checked; every problem becomes a line of words. */
import { checkSetUp } from '../press/check-setup.ts'
import type { SetUp } from '../press/setup.ts'
import { InputProblem, parseJson, readInput } from './read-input.ts'

/** Throws InputProblem, one line a problem: `path: what is wrong, what is allowed`. */
export function readSetUp(file: string, standardInput: () => string): SetUp {
  const checked = checkSetUp(parseJson(file, readInput(file, standardInput)))
  if ('setUp' in checked) return checked.setUp
  throw new InputProblem(checked.problems.map(({ path, message }) => `${path || 'set-up'}: ${message}`).join('\n'))
}
