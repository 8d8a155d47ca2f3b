/** Where a process begins: `tsx src/command/start.ts solve setup.json` runs the command on the process's own streams. */
import { readFileSync } from 'node:fs'
import type { Command } from './command.ts'
import { end } from './command.ts'

/** Each loads only what it needs. */
const commands: Readonly<Record<string, () => Promise<Command>>> = {
  solve: async () => (await import('./solve.ts')).solve,
  orders: async () => (await import('./orders.ts')).orders,
  run: async () => (await import('./run.ts')).run,
  'check:lesson': async () => (await import('./check-lesson.ts')).checkLesson,
  'package:lms': async () => (await import('./package-lms.ts')).packageLms,
}

// A reader that stops early (head, for one) is no fault of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0)
  throw error
})

const [name, ...args] = process.argv.slice(2)
const command = await commands[name]()
process.exitCode = await end(command, args, {
  input: () => readFileSync(0, 'utf8'),
  out: console.log,
  err: console.error,
})
