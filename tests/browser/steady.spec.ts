/** The bench stays where it is while the press runs, and says each thing once. */
import { expect, test } from '@playwright/test'
import { openBench } from './bench-page.ts'

const units = ['1, black', '2, cyan', '3, magenta', '4, yellow']

for (const [width, height] of [
  [1366, 768],
  [1920, 1080],
]) {
  test(`no picture changes its size from nip to nip at ${width} x ${height}`, async ({ page }) => {
    await page.setViewportSize({ width, height })
    await openBench(page)
    const sizes: unknown[] = []
    for (const unit of units) {
      await page.getByRole('radio', { name: `Nip of unit ${unit}` }).check()
      for (const picture of ['line-picture', 'section-panel', 'loupe-panel'])
        sizes.push(await page.locator(`tack-${picture}`).boundingBox())
    }
    expect(sizes.length).toBe(12)
    for (let each = 3; each < sizes.length; each++) expect(sizes[each]).toEqual(sizes[each % 3])
  })
}

test('the head of the page keeps its height while the page opens, and while the draft is kept', async ({ page }) => {
  await page.addInitScript(() => {
    const heights = new Set<number>()
    const look = () => {
      const head = document.querySelector('tack-page')?.shadowRoot?.querySelector('tack-page-header')
      if (head?.clientHeight && document.fonts.status === 'loaded') heights.add(head.clientHeight)
      requestAnimationFrame(look)
    }
    look()
    Object.assign(window, { heights })
  })
  await openBench(page)
  await page.getByRole('button', { name: 'Order reversed' }).click()
  await expect(page.getByText('Draft saved')).toBeVisible()
  const seen = await page.evaluate(() => [...(window as unknown as { heights: Set<number> }).heights])
  expect(seen).toHaveLength(1)
})

test('at 1024 x 768 section, loupe and the buttons that run the press are seen without scrolling', async ({ page }) => {
  await page.setViewportSize({ width: 1024, height: 768 })
  await openBench(page)
  for (const part of ['section-panel', 'loupe-panel', 'transport'])
    await expect(page.locator(`tack-${part}`)).toBeInViewport({ ratio: 1 })
})

for (const width of [320, 1024]) {
  test(`no name and no number of the bench is cut off at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 768 })
    await openBench(page)
    const bars = await page.locator('tack-pull-bars').evaluate((each) => [each.scrollWidth, each.clientWidth])
    expect(bars[0]).toBeLessThanOrEqual(bars[1])
    for (const name of await page.locator('tack-ink-row .name').all())
      expect((await name.boundingBox())?.height, (await name.textContent()) ?? '').toBeLessThan(30)
  })
}

test('a nip that has been stepped through is read out once, and nothing while it runs', async ({ page }) => {
  await openBench(page)
  await page.locator('tack-telling').evaluate((telling) => {
    const live = telling.shadowRoot?.querySelector('[aria-live]')
    const heard: string[] = []
    Object.assign(window, { heard })
    const hear = () => {
      if (live?.getAttribute('aria-live') === 'polite') heard.push(live.textContent.trim())
    }
    if (live) new MutationObserver(hear).observe(live, { childList: true, characterData: true, subtree: true })
  })
  const heard = () => page.evaluate(() => (window as unknown as { heard: string[] }).heard)
  await page.getByRole('slider', { name: 'nip', exact: true }).fill('100')
  await page.getByRole('button', { name: 'Step nip' }).click()
  await expect(page.getByRole('heading', { name: 'What happened at unit 1, black' })).toBeVisible()
  await page.waitForTimeout(500)
  expect(await heard()).toEqual([])
  await expect.poll(heard, { timeout: 10_000 }).toHaveLength(1)
  expect((await heard())[0]).toMatch(/^The black/)
})
