/**
 * Stands in for Playwright's own `test` while coverage is counted (tsconfig.json beside this file), so that the tests
 * need not know: writes what each page has run into the folder that TACKSTAIR_COVERAGE names, one file a page.
 */
import { mkdirSync, writeFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import type { BrowserContext, Page } from 'playwright/test'
import { test as base } from 'playwright/test'

export * from 'playwright/test'

const folder = process.env['TACKSTAIR_COVERAGE'] ?? ''
mkdirSync(folder, { recursive: true })
let written = 0

/** Counts from now on, over all that the page will load and all windows that it opens; returns what writes the counts. */
async function count(page: Page): Promise<() => Promise<void>> {
  const session = await page.context().newCDPSession(page)
  await session.send('Profiler.enable')
  await session.send('Profiler.startPreciseCoverage', { callCount: true, detailed: true })
  return async () => {
    if (page.isClosed()) return
    const { result } = await session.send('Profiler.takePreciseCoverage')
    const built = result.filter(({ url }) => /\/assets\/[^/]+\.js$|\/tackstair\.html([?#]|$)/.test(url))
    const counts = built.map((script) => ({ ...script, url: basename(new URL(script.url).pathname) }))
    writeFileSync(join(folder, `${process.pid}-${written++}.json`), JSON.stringify(counts))
  }
}

/** Every page of the context is counted before a test has it, and written before it is closed, alone or with all. */
function counted(context: BrowserContext): BrowserContext {
  const pages: (() => Promise<void>)[] = []
  const newPage = context.newPage.bind(context)
  const closeAll = context.close.bind(context)
  return Object.assign(context, {
    newPage: async () => {
      const page = await newPage()
      const write = await count(page)
      const close = page.close.bind(page)
      pages.push(write)
      return Object.assign(page, {
        close: async (options?: Parameters<Page['close']>[0]) => {
          await write()
          await close(options)
        },
      })
    },
    close: async (options?: Parameters<BrowserContext['close']>[0]) => {
      for (const write of pages) await write()
      await closeAll(options)
    },
  })
}

/** With it, Chromium would stop and begin counting anew at every load, and tell no branches of what it has run before. */
const oneCount = '--disable-features=RenderDocument'

export const test = base.extend({
  launchOptions: [
    async ({ launchOptions }, use) => {
      await use({ ...launchOptions, args: [...(launchOptions.args ?? []), oneCount] })
    },
    { scope: 'worker' },
  ],
  browser: [
    async ({ browser }, use) => {
      const newContext = browser.newContext.bind(browser)
      await use(Object.assign(browser, { newContext: async (options = {}) => counted(await newContext(options)) }))
    },
    { scope: 'worker' },
  ],
})
