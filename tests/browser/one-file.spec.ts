/** The page in one file, opened from a disk: no server, no network. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { expect, test } from '@playwright/test'
import { listenTo } from './console.ts'

const path = join(import.meta.dirname, '../../dist/tackstair.html')
const address = pathToFileURL(path).href

test.use({ offline: true })

test('opens by double click and draws, without a word on the console or a request of any kind', async ({ page }) => {
  const said = listenTo(page)
  const asked: string[] = []
  page.on('request', (request) => {
    if (!/^(data|blob):/.test(request.url()) && request.url() !== address) asked.push(request.url())
  })
  await page.goto(address)
  await expect(page).toHaveTitle(/Tackstair/)
  await page.getByRole('button', { name: 'Skip this and try inks yourself' }).click()
  const picture = page.locator('tack-line-picture canvas')
  await expect(picture).toBeVisible()
  const faces = await page.evaluate(() => document.fonts.load('16px "Source Sans 3"', 'a'))
  expect(faces).toHaveLength(1)

  // It draws: a picture of one colour alone would come out far smaller.
  await expect.poll(async () => (await picture.screenshot()).length).toBeGreaterThan(4000)
  await page.getByRole('button', { name: 'Order reversed' }).click()
  await expect(page.getByText('Watch unit 4 pull up')).toBeVisible()
  expect(said).toEqual([])
  expect(asked).toEqual([])
})

test('refuses script and style that are not its own, and every connection', async ({ page }) => {
  await page.goto(address)
  const refused = await page.evaluate(async () => {
    const directives: string[] = []
    document.addEventListener('securitypolicyviolation', (event) => directives.push(event.effectiveDirective))
    const style = document.createElement('style')
    style.textContent = 'body { display: none }'
    document.head.append(style)
    const foreign: string = 'data:text/javascript,document.title="changed"'
    await import(foreign).catch((error: unknown) => error)
    await fetch('https://example.org/').catch((error: unknown) => error)
    await new Promise((resolve) => setTimeout(resolve, 50))
    return directives.toSorted()
  })
  expect(refused).toEqual(['connect-src', 'script-src-elem', 'style-src-elem'])
})

test('unpacks its worker, which ranks the orders and makes a drill, and the texts of its lessons', async ({ page }) => {
  const said = listenTo(page)
  const workers: string[] = []
  page.on('worker', (worker) => workers.push(worker.url()))
  await page.goto(`${address}#view=orders`)
  await page.getByRole('button', { name: 'Rank all 24 orders' }).click()
  await expect(page.getByText('All 24 orders are ranked.')).toBeVisible()
  expect(workers.length).toBeGreaterThan(0)
  expect(workers.filter((url) => !url.startsWith('blob:'))).toEqual([])
  await page.getByRole('link', { name: 'Lessons' }).click()
  await expect(page.getByText('Tack: how hard an ink resists').first()).toBeVisible()
  const before = workers.length
  await page.getByRole('link', { name: 'Fault drills' }).click()
  await page.getByRole('button', { name: 'Next drill' }).click()
  await expect(page.getByText('The sheet is on the table.')).toBeVisible({ timeout: 60_000 })
  expect(workers.slice(before).map((url) => url.slice(0, 5))).toEqual(['blob:'])
  expect(said).toEqual([])
})

test('names no other file, no manifest, and carries the licences of what it is made of', () => {
  const html = readFileSync(path, 'utf8')
  const head = html.replace(/<(script|style)\b[^>]*>[^]*?<\/\1>/g, '')
  expect(head).not.toMatch(/(src|href)="(?!data:)/)
  expect(head).not.toContain('manifest')
  expect(head).toMatch(/SIL OPEN FONT LICENSE/i)
  expect(head).toMatch(/pixi\.js/)
})
