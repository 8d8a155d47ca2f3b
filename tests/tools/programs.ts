/** Programs of this machine that tests drive: found on the path, or installed where the system is a Debian. */
import { spawnSync } from 'node:child_process'
import { delimiter, join } from 'node:path'

/** ms: a limit against an installation that hangs. */
const patience = 600_000

/** Where programs of these names would lie, in the order of the names. */
export function placesOf(names: readonly string[]): string[] {
  const folders = (process.env['PATH'] ?? '').split(delimiter)
  return names.flatMap((name) => folders.map((folder) => join(folder, name)))
}

export function starts(path: string): boolean {
  return runs(path, ['--version'])
}

/** Whether the packages could be installed. */
export function installFromDebian(...names: string[]): boolean {
  const asRoot = process.getuid?.() === 0 ? [] : ['sudo', '--non-interactive']
  return [['update'], ['install', '--yes', '--no-install-recommends', ...names]].every((step) => {
    const [program, ...rest] = [...asRoot, 'apt-get', ...step]
    return runs(program, rest)
  })
}

/** Whether the program ran and ended well. */
export function runs(program: string, args: readonly string[]): boolean {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  return spawnSync(program, args, { env, stdio: 'ignore', timeout: patience }).status === 0
}

/** The program that a variable of the environment names, or undefined where it names none; throws if it does not start. */
export function namedBy(variable: string, kind: string): string | undefined {
  const named = process.env[variable]
  if (named === undefined || named === '') return undefined
  if (starts(named)) return named
  throw new Error(`${variable} names "${named}", which does not start; name a ${kind} program, or unset it.`)
}
