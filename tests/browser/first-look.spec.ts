import type { Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import axe from 'axe-core'
import { readFileSync } from 'node:fs'
import { readCourse } from '../../src/lesson/check-course.ts'
import { listenTo } from './console.ts'
import { drawn } from './drawn.ts'

const said = (page: Page) => page.locator('#said')
const print = (page: Page) => page.getByRole('button', { name: 'Print the yellow on top' })
const swap = (page: Page) => page.getByRole('button', { name: 'Swap the two inks and print again' })

/** Every picture of the bench is drawn in its full width. */
async function expectDrawn(page: Page): Promise<void> {
  for (const name of ['line', 'section', 'loupe']) {
    const picture = page.locator(`tack-${name}-picture`)
    const widths = async () => {
      const inside = await picture.locator('canvas').evaluate((canvas) => getComputedStyle(canvas).width)
      return [inside, await picture.evaluate((element) => `${element.clientWidth}px`)]
    }
    await expect(async () => {
      const [drawn, wide] = await widths()
      expect(parseFloat(wide)).toBeGreaterThan(100)
      expect(drawn).toBe(wide)
    }).toPass({ timeout: 20_000 })
  }
}

/** Percentages of a sentence, in its order. */
async function percents(page: Page): Promise<number[]> {
  const text = (await said(page).textContent()) ?? ''
  return Array.from(text.matchAll(/([\d.]+)\s%/g), ([, number]) => Number(number))
}

test('a first visit opens on two inks and one button; two presses by keyboard tell the story', async ({ page }) => {
  const console = listenTo(page)
  await page.goto('./')
  await expect(print(page)).toBeFocused()
  await expect(page.getByRole('navigation')).toHaveCount(0)
  await page.keyboard.press('Enter')
  await expect(swap(page)).toBeFocused()
  await expect(said(page)).toContainText('The yellow film was pulled apart in its middle', { timeout: 10_000 })
  const [stayed, lifted] = await percents(page)
  await page.keyboard.press('Enter')
  await expect(said(page)).toContainText('Only in few places was the cyan film pulled apart', { timeout: 10_000 })
  const [stayedNow, liftedNow] = await percents(page)
  expect(stayed).toBeGreaterThan(2 * stayedNow)
  expect(liftedNow).toBeGreaterThan(10 * lifted)
  const open = page.getByRole('button', { name: 'Open the bench' })
  await expect(open).toBeFocused()
  await page.keyboard.press('Enter')
  await expect(page.getByRole('button', { name: 'Tacks step down' })).toBeVisible()
  await expect(page.getByRole('heading', { name: 'Tackstair' })).toBeFocused()
  await expectDrawn(page)
  expect(console).toEqual([])
})

test('what is turned round is shown; the question why is answered on the spot and leads to the first lesson', async ({
  page,
}) => {
  const console = listenTo(page)
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await page.goto('./')
  await expect(page.getByText('First cyan, tack 16, which is high. Then yellow, tack 8, which is low.')).toBeVisible()
  await print(page).click()
  await expect(page.getByRole('button', { name: 'Why?' })).toHaveCount(0)
  await swap(page).click()
  await expect(page.getByText('First yellow, tack 8, which is low. Then cyan, tack 16, which is high.')).toBeVisible()
  await expect(said(page)).toContainText(/of what bare paper would get\. Of the yellow, the blanket took/)
  const place = () => page.getByRole('button', { name: 'Open the bench' }).boundingBox()
  await drawn(page)
  const before = await place()
  const why = page.getByRole('button', { name: 'Why?' })
  expect((await why.boundingBox())?.height).toBe(before?.height)
  await why.click()
  await expect(page.getByText('so the yellow gave way, and the cyan left with it')).toBeVisible()
  expect(await place()).toEqual(before)
  const { course } = readCourse(readFileSync(new URL('../../lessons/course.yaml', import.meta.url), 'utf8'))
  const link = page.getByRole('link', { name: /lesson 1/ })
  await expect(link).toHaveAttribute('href', `#view=lessons&lesson=${course?.lessons[0]}`)
  await link.click()
  await expect(page.getByRole('heading', { name: /^Step 1 of/ })).toBeVisible()
  expect(console).toEqual([])
})

test('it comes once, then only when asked for, and never before what a link shows', async ({ page, context }) => {
  await page.goto('./')
  await expect(print(page)).toBeVisible()
  await page.reload()
  await expect(page.getByRole('button', { name: 'Tacks step down' })).toBeVisible()
  await expect(print(page)).toHaveCount(0)
  await page.getByRole('button', { name: 'First look' }).click()
  await expect(print(page)).toBeVisible()
  await page.getByRole('button', { name: 'Skip this and try inks yourself' }).click()
  await expect(page.getByRole('button', { name: 'Tacks step down' })).toBeVisible()
  await expectDrawn(page)

  await page.evaluate(() => localStorage.clear())
  const other = await context.newPage()
  await other.goto('./#view=glossary')
  await expect(other.getByRole('heading', { name: 'Words of the trade' })).toBeVisible()
})

test('who wants no motion sees the end at once, and axe finds nothing wrong at any stage', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await page.goto('./')
  for (const press of [print(page), swap(page)]) {
    await press.click()
    await expect(said(page)).toContainText('of what bare paper would get')
    await page.evaluate(axe.source)
    const { violations } = await page.evaluate(() => (globalThis as unknown as { axe: typeof axe }).axe.run())
    expect(violations.map(({ id }) => id)).toEqual([])
  }
})

for (const [width, height] of [
  [320, 568],
  [1366, 768],
]) {
  test(`everything of it is seen without scrolling at ${width} x ${height}`, async ({ page }) => {
    await page.setViewportSize({ width, height })
    await page.emulateMedia({ reducedMotion: 'reduce' })
    await page.goto('./')
    await print(page).click()
    await expect(said(page)).toContainText('of what bare paper would get')
    await drawn(page)
    const size = await page.evaluate(() => {
      const { scrollWidth, scrollHeight } = document.documentElement
      return { scrollWidth, scrollHeight }
    })
    expect(size.scrollWidth).toBeLessThanOrEqual(width)
    expect(size.scrollHeight).toBeLessThanOrEqual(height)
  })
}
