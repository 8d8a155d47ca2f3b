/** Which Firefox the main task is tried on: the one named by TACKSTAIR_FIREFOX, or the system's; one is installed if need be. */
import { spawnSync } from 'node:child_process'
import { delimiter, join } from 'node:path'

const systemNames = ['firefox-esr', 'firefox']

/**
 * The path of a Firefox that starts, or undefined if there is none to be had: it is a second browser, and a machine
 * without it can still run all other tests. Throws a plain sentence if the one named does not start.
 */
export function findFirefox(): string | undefined {
  const named = process.env['TACKSTAIR_FIREFOX']
  if (named !== undefined && named !== '') {
    if (starts(named)) return named
    throw new Error(`TACKSTAIR_FIREFOX names "${named}", which does not start; name a Firefox program, or unset it.`)
  }
  return find() ?? installFromDebian()
}

function find(): string | undefined {
  const folders = (process.env['PATH'] ?? '').split(delimiter)
  return systemNames.flatMap((name) => folders.map((folder) => join(folder, name))).find(starts)
}

function installFromDebian(): string | undefined {
  const asRoot = process.getuid?.() === 0 ? [] : ['sudo', '--non-interactive']
  for (const step of [['update'], ['install', '--yes', '--no-install-recommends', 'firefox-esr']]) {
    const [program, ...rest] = [...asRoot, 'apt-get', ...step]
    if (!run(program, rest)) return undefined
  }
  return find()
}

function starts(path: string): boolean {
  return run(path, ['--version'])
}

function run(program: string, args: string[]): boolean {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  return spawnSync(program, args, { env, stdio: 'ignore', timeout: 300_000 }).status === 0
}
