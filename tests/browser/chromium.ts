/**
 * Which Chromium the browser tests drive: the one named by TACKSTAIR_CHROMIUM, Playwright's own, or the system's;
 * where there is none, one is installed.
 */
import { existsSync } from 'node:fs'
import { chromium } from '@playwright/test'
import { installFromDebian, namedBy, placesOf, runs, starts } from '../tools/programs.ts'

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
  const found = namedBy('TACKSTAIR_CHROMIUM', 'Chromium or Chrome') ?? find() ?? installFromPlaywright() ?? fromDebian()
  if (found !== undefined) return found
  throw new Error(
    'The browser tests need Chromium and none could be installed: install Chromium or Chrome, or set TACKSTAIR_CHROMIUM to the path of one.',
  )
}

function find(): string | undefined {
  return [chromium.executablePath(), ...placesOf(systemNames)].find((path) => existsSync(path) && starts(path))
}

function installFromPlaywright(): string | undefined {
  runs('npx', ['playwright', 'install', 'chromium'])
  return find()
}

function fromDebian(): string | undefined {
  return installFromDebian('chromium') ? find() : undefined
}
