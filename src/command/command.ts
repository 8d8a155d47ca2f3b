/** What every command does alike: run, print, and turn a problem into words and exit code 2. */
import { InputProblem } from './read-input.ts'

/** Runs `work` on the command's arguments. */
export function command(usage: string, work: (args: string[]) => void | Promise<void>): void {
  void inWords(usage, work)
}

async function inWords(usage: string, work: (args: string[]) => void | Promise<void>): Promise<void> {
  const args = process.argv.slice(2)
  // A reader that stops early (head, for one) is no fault of ours.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0)
    throw error
  })
  try {
    if (args.length === 0) throw new InputProblem(usage)
    await work(args)
  } catch (error) {
    if (!(error instanceof InputProblem)) throw error
    console.error(error.message)
    process.exitCode = 2
  }
}
