/**
 * Stands in for Playwright's own `test` while coverage is counted (tsconfig.json beside this file), so that the tests
 * need not know: writes what each page has run into the folder that TACKSTAIR_COVERAGE names, one file a page.
 */
import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright/test'
import { test as base } from 'playwright/test'

export * from 'playwright/test'

const folder = process.env['TACKSTAIR_COVERAGE'] ?? ''
let written = 0

async function write(page: Page): Promise<void> {
  if (page.isClosed()) return
  const scripts = await page.coverage.stopJSCoverage()
  const built = scripts.filter(({ url }) => /\/assets\/[^/]+\.js$/.test(url))
  const counts = built.map(({ url, scriptId, functions }) => ({ url: url.replace(/.*\//, ''), scriptId, functions }))
  mkdirSync(folder, { recursive: true })
  writeFileSync(join(folder, `${process.pid}-${written++}.json`), JSON.stringify(counts))
}

/** What a script has run counts over all the pages that it was loaded by. */
const counting = { resetOnNavigation: false }

export const test = base.extend({
  page: async ({ page }, use) => {
    await page.coverage.startJSCoverage(counting)
    await use(page)
    await write(page)
  },
})
