/** A reader who has set text to twice its size in the browser: every view follows, as if its window were smaller. */
import { expect, test } from '@playwright/test'
import { unfoldHead } from './bench-page.ts'
import { chromiumFlags } from './chromium.ts'
import { listenTo } from './console.ts'
import { cutOff } from './legible.ts'

const executablePath = process.env['TACKSTAIR_CHROMIUM']

test.use({
  launchOptions: {
    args: [...chromiumFlags, '--blink-settings=defaultFontSize=32'],
    ...(executablePath === undefined ? {} : { executablePath }),
  },
})

test('text set to 32 px is shown in 32 px, and nothing is cut off or lies on other words', async ({ page }) => {
  const said = listenTo(page)
  await page.goto('./#view=bench')
  const links = page.getByRole('navigation').getByRole('link')
  await page.getByRole('banner').waitFor()
  await unfoldHead(page)
  expect(await page.locator('body').evaluate((body) => getComputedStyle(body).fontSize)).toBe('32px')
  for (const link of await links.all()) {
    await unfoldHead(page)
    await link.click()
    await unfoldHead(page)
    await expect(link).toHaveAttribute('aria-current', 'page')
    await page.getByRole('main').waitFor()
    expect(await cutOff(page), (await link.textContent()) ?? '').toEqual([])
  }
  expect(said).toEqual([])
})
