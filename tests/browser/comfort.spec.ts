/** What suits a person holds at once, in every tab and the next time; a file only offers what suited somebody else. */
import { readFileSync } from 'node:fs'
import type { Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import { openBench } from './bench-page.ts'
import { listenTo } from './console.ts'

async function wears(page: Page, dress: string): Promise<void> {
  await expect(page.locator('html')).toHaveAttribute('data-dress', dress)
}

const comfort = (page: Page) => page.getByRole('button', { name: 'Comfort' })

test('colours and motion chosen in one tab hold in another, after a reload and against a file', async ({
  page,
  context,
}) => {
  const said = listenTo(page)
  await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'no-preference' })
  await openBench(page)
  const other = await context.newPage()
  await openBench(other)
  await wears(page, 'dark')
  await comfort(page).click()
  await page.getByRole('radio', { name: 'High contrast' }).check()
  await page.getByRole('radio', { name: /^Less/ }).check()
  await wears(page, 'contrast dark')
  await page.emulateMedia({ colorScheme: 'light' })
  await wears(page, 'contrast light')
  await wears(other, 'contrast light')
  await expect(other.locator('html')).toHaveAttribute('data-motion', 'still')
  await page.getByRole('combobox', { name: 'Unit of speed' }).selectOption('m/min')
  await page.keyboard.press('Escape')
  await expect(comfort(page)).toBeFocused()

  await page.getByRole('button', { name: 'File' }).click()
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save the file' }).click()
  const text = readFileSync(await (await download).path(), 'utf8')
  expect(JSON.parse(text)).toMatchObject({ settings: { theme: 'high contrast', motion: 'reduced' } })
  await page.keyboard.press('Escape')

  await other.close()
  await page.reload()
  await wears(page, 'contrast light')
  await expect(page.getByText('sheet-fed, 150 m/min')).toBeVisible()

  // Another person's file changes nothing of it by itself; taking it over can be taken back with the rest.
  await page.getByRole('button', { name: 'File' }).click()
  const saved = JSON.parse(text) as { settings: object }
  const theirs = { ...saved, settings: { ...saved.settings, theme: 'dark', motion: 'full', sound: true } }
  const buffer = Buffer.from(JSON.stringify(theirs))
  await page.getByLabel('File to open').setInputFiles({ name: 'theirs.json', mimeType: 'application/json', buffer })
  await expect(page.getByText(/^The file was saved by somebody whose page/)).toContainText(
    /colours: Dark.*; motion: Full; sound: on/,
  )
  await wears(page, 'contrast light')
  await page.getByRole('button', { name: 'Take it over' }).click()
  await expect(page.getByText('The page is now as it was for whoever saved the file.')).toBeFocused()
  await wears(page, 'dark')
  await page.getByRole('button', { name: 'Take it back' }).click()
  await wears(page, 'contrast light')
  expect(said).toEqual([])
})
