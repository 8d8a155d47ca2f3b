/**
 * Which Chromium the browser tests drive: the one named by TACKSTAIR_CHROMIUM, Playwright's own, or the system's;
 * where there is none, one is installed.
 */
import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'
import { chromium } from '@playwright/test'

const systemNames = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome']

/** Kept fixed: two screenshots are the same bit for bit only when taken with the same flags. */
export const chromiumFlags = [
  '--no-sandbox',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]

/** The path of a Chromium that starts, installed first if need be; throws a plain sentence if there is none to be had. */
export function provideChromium(): string {
  const named = process.env['TACKSTAIR_CHROMIUM']
  if (named !== undefined && named !== '') {
    if (starts(named)) return named
    throw new Error(
      `TACKSTAIR_CHROMIUM names "${named}", which does not start as a browser; name a Chromium or Chrome program, or unset it.`,
    )
  }
  const found = find() ?? installFromPlaywright() ?? installFromDebian()
  if (found !== undefined) return found
  throw new Error(
    'The browser tests need Chromium and none could be installed: install Chromium or Chrome, or set TACKSTAIR_CHROMIUM to the path of one.',
  )
}

function find(): string | undefined {
  const folders = (process.env['PATH'] ?? '').split(delimiter)
  const system = systemNames.flatMap((name) => folders.map((folder) => join(folder, name)))
  return [chromium.executablePath(), ...system].find(starts)
}

function installFromPlaywright(): string | undefined {
  run('npx', ['playwright', 'install', 'chromium'])
  return find()
}

function installFromDebian(): string | undefined {
  const asRoot = process.getuid?.() === 0 ? [] : ['sudo', '--non-interactive']
  for (const step of [['update'], ['install', '--yes', '--no-install-recommends', 'chromium']]) {
    const [program, ...rest] = [...asRoot, 'apt-get', ...step]
    if (!run(program, rest)) return undefined
  }
  return find()
}

function starts(path: string): boolean {
  return existsSync(path) && run(path, ['--version'])
}

function run(program: string, args: string[]): boolean {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  return spawnSync(program, args, { env, stdio: 'ignore', timeout: 600_000 }).status === 0
}
