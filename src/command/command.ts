/** What every command does alike: it is given its arguments and its streams, and turns a problem into words and exit code 2. */
import { InputProblem } from './read-input.ts'

export interface Streams {
  /** All of standard input. */
  readonly input: () => string
  /** Prints a line. */
  readonly out: (line: string) => void
  readonly err: (line: string) => void
}

export interface Command {
  /** What is said where no argument is given. */
  readonly usage: string
  /** Gives the exit code. Throws InputProblem. */
  readonly work: (args: string[], streams: Streams) => number | Promise<number>
}

/** Runs the command and resolves to its exit code. */
export async function end({ usage, work }: Command, args: string[], streams: Streams): Promise<number> {
  try {
    if (args.length === 0) throw new InputProblem(usage)
    return await work(args, streams)
  } catch (error) {
    if (!(error instanceof InputProblem)) throw error
    streams.err(error.message)
    return 2
  }
}
