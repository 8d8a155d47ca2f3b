import type { Page } from '@playwright/test'
import { expect, test as base } from '@playwright/test'
import { listenTo } from './console.ts'
import { Site } from './site.ts'

/** Each test has a site of its own, and so an origin of its own. */
const test = base.extend<{ site: Site }>({
  site: async ({}, use) => {
    const site = new Site()
    await site.switchOn()
    await use(site)
    await site.remove()
  },
})

test.use({ serviceWorkers: 'allow' })

/** Opens the page twice: the first visit keeps it, and the next one is answered from what was kept. */
async function visit(page: Page, site: Site): Promise<void> {
  await page.goto(site.address)
  await page.evaluate(() => navigator.serviceWorker.ready)
  await page.reload()
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true)
}

/** Puts a second version on the server: its page says so in its title. */
function publish(site: Site): void {
  site.change('index.html', (text) => text.replace('<title>Tackstair</title>', '<title>Tackstair 2</title>'))
  site.change('sw.js', (text) =>
    text.replace(/(\{url:"index\.html",revision:")[^"]*|(revision:")[^"]*(",url:"index\.html")/, '$1$2second$3'),
  )
}

const notice = (page: Page) => page.getByRole('button', { name: 'Take the newer version' })

test('the page opens and works with the network off', async ({ page, site }) => {
  await visit(page, site)
  await site.switchOff()
  const said = listenTo(page)
  const failed: string[] = []
  page.on('requestfailed', (request) => failed.push(request.url()))
  await page.goto(`${site.address}#v=1&press=web`)
  await expect(page).toHaveTitle(/Tackstair/)
  await expect(page.locator('tack-line-picture canvas')).toBeVisible()
  await page
    .evaluate(() => document.fonts.load('16px "Source Sans 3"', 'a'))
    .then((faces) => expect(faces).toHaveLength(1))
  expect(said).toEqual([])
  expect(failed).toEqual([])
  await site.switchOn()
})

test('a newer version is offered, waits, and is loaded only when it is taken', async ({ page, site }) => {
  await visit(page, site)
  let loads = 0
  page.on('load', () => loads++)
  publish(site)
  await page.reload()
  await expect(notice(page)).toBeVisible()
  await expect(page).toHaveTitle('Tackstair')
  // Long enough for a page that loads itself to have done so.
  await page.waitForTimeout(1500)
  expect(loads).toBe(1)
  await expect(page).toHaveTitle('Tackstair')
  // The server no longer has the files of this version; what was kept of it opens all the same.
  site.empty('assets')
  await page.getByRole('link', { name: 'Strip' }).click()
  await expect(page.locator('tack-strip-view')).toBeVisible()
  await page.getByRole('link', { name: 'Bench' }).click()

  await page.getByRole('button', { name: 'Later', exact: true }).click()
  await expect(notice(page)).toBeHidden()
  await page.reload()
  await expect(page).toHaveTitle('Tackstair')
  await notice(page).click()
  await expect(page).toHaveTitle('Tackstair 2')
  await expect(notice(page)).toBeHidden()
  // The title stands there before the page has finished loading.
  await expect.poll(() => loads).toBe(3)
})

test('a newer version taken in one tab leaves the other as it is, and tells it', async ({ page, context, site }) => {
  await visit(page, site)
  const other = await context.newPage()
  await other.goto(site.address)
  await expect.poll(() => other.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true)
  let loads = 0
  other.on('load', () => loads++)
  publish(site)
  await page.reload()
  await notice(page).click()
  await expect(page).toHaveTitle('Tackstair 2')
  await expect(other.getByText('Another tab took a newer version.')).toBeVisible()
  await expect(other).toHaveTitle('Tackstair')
  expect(loads).toBe(0)
})
