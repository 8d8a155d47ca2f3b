/** Whoever works by keyboard or is read to never loses the place. */
import type { Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import { handle, openBench, order } from './bench-page.ts'

const status = (page: Page) => page.locator('tack-ink-ladder').getByRole('status')

test('the focus stays on what moved an ink, and moves on where that has gone', async ({ page }) => {
  await openBench(page)
  const earlier = page.getByRole('button', { name: 'Move magenta one unit earlier' })
  await earlier.focus()
  await page.keyboard.press('Enter')
  await expect(earlier).toBeFocused()
  await page.keyboard.press('Enter')
  expect(await order(page)).toEqual(['magenta', 'black', 'cyan', 'yellow'])
  await expect(handle(page, 'magenta')).toBeFocused()
  await page.keyboard.press('Control+z')
  expect(await order(page)).toEqual(['black', 'magenta', 'cyan', 'yellow'])
  await expect(handle(page, 'magenta')).toBeFocused()
})

test('an ink removed or added is told, and the focus goes to the ink in its place', async ({ page }) => {
  await openBench(page)
  await page.getByRole('button', { name: 'More about magenta' }).click()
  await page.getByRole('button', { name: 'Remove magenta' }).focus()
  await page.keyboard.press('Enter')
  await expect(status(page)).toHaveText('magenta is removed; 3 inks are left.')
  await expect(handle(page, 'yellow')).toBeFocused()
  const add = page.getByRole('button', { name: 'Add ink' })
  await add.focus()
  for (let units = 4; units <= 8; units++) {
    await page.keyboard.press('Enter')
    await expect(status(page)).toContainText(`as unit ${units} of ${units}.`)
  }
  await expect(add).toHaveCount(0)
  await expect(page.getByRole('button', { name: /^Unit 8: / })).toBeFocused()
})

test('undo gives its focus to redo when nothing is left to undo, and back', async ({ page }) => {
  await openBench(page)
  await page.getByRole('button', { name: 'Order reversed' }).click()
  const undo = page.getByRole('button', { name: 'Undo' })
  const redo = page.getByRole('button', { name: 'Redo' })
  await undo.focus()
  await page.keyboard.press('Enter')
  await expect(redo).toBeFocused()
  await page.keyboard.press('Enter')
  await expect(undo).toBeFocused()
})
