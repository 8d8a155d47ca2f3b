import { expect, test } from '@playwright/test'
import { openBench } from './bench-page.ts'
import { listenTo } from './console.ts'
import { faults, faultsInBothLights, sticksOutAt } from './faults.ts'

test('axe finds nothing wrong in the light and in the dark', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await openBench(page)
  expect(await faultsInBothLights(page)).toEqual([])
  await page.getByRole('button', { name: 'Order reversed' }).click()
  for (const more of ['black', 'cyan']) await page.getByRole('button', { name: `More about ${more}` }).click()
  for (const panel of ['Paper', 'Press']) await page.locator('summary', { hasText: panel }).click()
  await page.getByRole('textbox', { name: 'Tack of cyan' }).fill('99')
  await page.getByRole('textbox', { name: 'Tack of cyan' }).press('Enter')
  expect(await faultsInBothLights(page)).toEqual([])
})

for (const panel of ['Film stack as a table', 'All readings', 'How this is computed']) {
  test(`axe finds nothing wrong in "${panel}", and it closes by Escape back to its button`, async ({ page }) => {
    const said = listenTo(page)
    await openBench(page)
    await page.getByRole('button', { name: panel }).click()
    await expect(page.getByRole('dialog', { name: panel })).toBeVisible()
    expect(await faults(page)).toEqual([])
    await page.keyboard.press('Escape')
    await expect(page.getByRole('dialog', { name: panel })).toBeHidden()
    await expect(page.getByRole('button', { name: panel })).toBeFocused()
    expect(said).toEqual([])
  })
}

test('a word of the trade shows its one sentence and goes away by Escape', async ({ page }) => {
  await openBench(page)
  await page.getByRole('button', { name: 'lifted' }).first().click()
  const meaning = page.getByRole('dialog', { name: 'Meaning of lifting' })
  await expect(meaning).toBeVisible()
  expect(await faults(page)).toEqual([])
  await page.keyboard.press('Escape')
  await expect(meaning).toBeHidden()
})

test('nothing sticks out to the side from 320 to 1920 px', async ({ page }) => {
  await openBench(page)
  for (const panel of ['Paper', 'Press']) await page.locator('summary', { hasText: panel }).click()
  await page.getByRole('button', { name: 'More about black' }).click()
  expect(await sticksOutAt(page, [320, 390, 768, 1024, 1366, 1920])).toEqual([])
})

test('at 1366 x 768 the whole bench is seen without scrolling', async ({ page }) => {
  await openBench(page)
  for (const picture of ['line', 'section', 'loupe'])
    await expect(page.locator(`tack-${picture}-picture canvas`)).toBeVisible()
  expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeLessThanOrEqual(768)
})
