import type { Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import { openBench } from './bench-page.ts'
import { listenTo } from './console.ts'

const scrub = (page: Page) => page.getByRole('slider', { name: 'nip', exact: true })

test('the page starts paused and runs when told', async ({ page }) => {
  const said = listenTo(page)
  await openBench(page)
  const before = await scrub(page).inputValue()
  await page.waitForTimeout(500)
  expect(await scrub(page).inputValue()).toBe(before)
  const slow = page.getByRole('switch', { name: 'Slow' })
  await expect(slow).toBeChecked()
  await slow.uncheck()
  await expect(page.getByText('Slow: off')).toBeVisible()
  await slow.check()
  await expect(page.getByText('Slow: on')).toBeVisible()
  await page.getByRole('button', { name: 'Run' }).click()
  await expect.poll(() => scrub(page).inputValue()).not.toBe(before)
  await page.getByRole('button', { name: 'Pause' }).click()
  const stopped = await scrub(page).inputValue()
  await page.waitForTimeout(300)
  expect(await scrub(page).inputValue()).toBe(stopped)
  expect(said).toEqual([])
})

test('a nip is moved by hand, back and forth, by keys', async ({ page }) => {
  await openBench(page)
  await scrub(page).focus()
  await page.keyboard.press('Home')
  expect(await scrub(page).inputValue()).toBe('0')
  await page.keyboard.press('ArrowRight')
  await page.keyboard.press('ArrowRight')
  await page.keyboard.press('ArrowLeft')
  expect(await scrub(page).inputValue()).toBe('1')
  await expect(scrub(page)).toHaveAttribute('aria-valuetext', '1\u00a0% through the nip')
})

test('who wants no motion steps from nip to nip at once', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await openBench(page)
  await page.getByRole('radio', { name: 'Nip of unit 1, black' }).check()
  await page.getByRole('button', { name: 'Step nip' }).click()
  expect(await scrub(page).inputValue()).toBe('100')
  await page.getByRole('button', { name: 'Step nip' }).click()
  await expect(page.getByRole('heading', { name: 'What happened at unit 2, cyan' })).toBeVisible()
})

test('a sheet further is the next sheet, and a settled press has no next one', async ({ page }) => {
  await openBench(page)
  await page.getByRole('button', { name: 'Step sheet' }).click()
  await expect(page.getByRole('textbox', { name: 'Number of the sheet' })).toHaveValue('2')
  await page.getByText('Settled', { exact: true }).click()
  await expect(page.getByRole('button', { name: 'Step sheet' })).toBeDisabled()
})
