/** How commands end: called in this process, which is quick and counted, or in one of their own, as a shell starts them. */
import { spawn } from 'node:child_process'
import { join } from 'node:path'
import type { Command } from '../../src/command/command.ts'
import { end } from '../../src/command/command.ts'

const root = join(import.meta.dirname, '../..')

export interface Ended {
  code: number | null
  out: string
  err: string
}

/** With `input` on standard input. */
export async function endOf(command: Command, args: string[], input = ''): Promise<Ended> {
  const said = { out: '', err: '' }
  const code = await end(command, args, {
    input: () => input,
    out: (line) => (said.out += `${line}\n`),
    err: (line) => (said.err += `${line}\n`),
  })
  return { code, ...said }
}

/** Of the command as its script starts it, in the folder `cwd`. */
export function endOfProcess(name: string, args: string[], input = '', cwd = root): Promise<Ended> {
  return new Promise((resolve, reject) => {
    const child = spawn(join(root, 'node_modules/.bin/tsx'), [join(root, 'src/command/start.ts'), name, ...args], {
      cwd,
    })
    const said = { out: '', err: '' }
    child.stdout.on('data', (text: Buffer) => (said.out += text.toString()))
    child.stderr.on('data', (text: Buffer) => (said.err += text.toString()))
    child.on('error', reject)
    child.on('close', (code) => resolve({ code, ...said }))
    // A command that refuses its input before reading it closes the pipe, which is no fault.
    child.stdin.on('error', (error: NodeJS.ErrnoException) => error.code === 'EPIPE' || reject(error))
    child.stdin.end(input)
  })
}
