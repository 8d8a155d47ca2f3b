/**
 * Which Chromium the browser tests drive: the one named by TACKSTAIR_CHROMIUM, the system's, or Playwright's own; where
 * there is none, one is installed.
 */
import { existsSync } from 'node:fs'
import { chromium } from '@playwright/test'
import { installFromDebian, namedBy, placesOf, runs, starts } from '../tools/programs.ts'

/** The same engine without a browser around it, with which all tests together take a third less time. */
const shellNames = ['chromium-headless-shell', 'chrome-headless-shell']
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
  const found = namedBy('TACKSTAIR_CHROMIUM', 'Chromium or Chrome') ?? find() ?? fromDebian() ?? installFromPlaywright()
  if (found !== undefined) return found
  throw new Error(
    'The browser tests need Chromium and none could be installed: install Chromium or Chrome, or set TACKSTAIR_CHROMIUM to the path of one.',
  )
}

function find(): string | undefined {
  const places = [...placesOf(shellNames), chromium.executablePath(), ...placesOf(systemNames)]
  return places.find((path) => existsSync(path) && starts(path))
}

/** With a face that the page's stand-in for its typeface is fitted to (ui/font.css), which not every machine has. */
function fromDebian(): string | undefined {
  const installed = ['chromium-headless-shell', 'chromium'].some((name) => installFromDebian(name, 'fonts-liberation'))
  return installed ? find() : undefined
}

function installFromPlaywright(): string | undefined {
  runs('npx', ['playwright', 'install', 'chromium'])
  return find()
}
