/** The bench stays where it is while the press runs, and says each thing once. */
import type { Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import { openBench } from './bench-page.ts'
import { sticksOut } from './faults.ts'
import { cutOff } from './legible.ts'

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

test('from 900 px on the section has its 300 x 220, and on a wall the letters grow with it', async ({ page }) => {
  await openBench(page)
  const section = page.locator('tack-section-panel tack-section-picture')
  for (const width of [900, 942, 984, 1024, 1099]) {
    await page.setViewportSize({ width, height: 768 })
    await expect.poll(async () => (await section.boundingBox())?.width, `${width} px`).toBeGreaterThanOrEqual(300)
    expect((await section.boundingBox())?.height, `${width} px`).toBeGreaterThanOrEqual(220)
    expect(await sticksOut(page), `${width} px`).toBe(false)
    expect(await cutOff(page), `${width} px`).toEqual([])
  }
  const letters = () => page.locator('body').evaluate((body) => getComputedStyle(body).fontSize)
  expect(await letters()).toBe('16px')
  await page.setViewportSize({ width: 3840, height: 2160 })
  await expect.poll(letters).toBe('24px')
  expect(await cutOff(page)).toEqual([])
  expect(await page.evaluate(() => document.documentElement.scrollHeight <= innerHeight)).toBe(true)
})

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

for (const tag of ['en', 'es']) {
  test(`the head of the page is one row from 320 to 1920 px, and leads everywhere (${tag})`, async ({ page }) => {
    await page.goto(`./#view=glossary&language=${tag}`)
    const head = page.getByRole('banner')
    const links = head.getByRole('navigation').getByRole('link')
    const menu = head.getByRole('button', { name: /^Men[uú]$/ })
    await links.first().waitFor()
    for (const width of [1920, 1366, 1280, 1024, 768, 390, 320]) {
      await page.setViewportSize({ width, height: 768 })
      // a row of buttons of 28 px and 8 px above
      await expect.poll(async () => (await head.boundingBox())?.height, `${width} px`).toBe(36)
    }
    await menu.click()
    for (const link of await links.all()) await expect(link).toBeInViewport()
    await links.nth(1).click()
    await expect(page).toHaveURL(/view=strip/)
    await expect(links.first()).toBeHidden()
    await expect(menu).toBeFocused()
  })
}

/** Has the page keep what moves in it by itself. */
async function watchShifts(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const shifts: number[] = []
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) shifts.push((entry as PerformanceEntry & { value: number }).value)
    }).observe({ type: 'layout-shift', buffered: true })
    Object.assign(window, { shifts })
  })
}

/** What has moved since this was last asked: shares of the window times shares of the way. */
async function shiftsSince(page: Page): Promise<number> {
  const shifts = await page.evaluate(() => (window as unknown as { shifts: number[] }).shifts.splice(0))
  return shifts.reduce((all, each) => all + each, 0)
}

test('on a slow machine a view is seen once all of it is drawn, and nothing in it jumps', async ({ page }) => {
  await watchShifts(page)
  const chrome = await page.context().newCDPSession(page)
  await page.goto('./#view=glossary')
  await page.locator('tack-glossary-view h2').first().waitFor()
  await chrome.send('Emulation.setCPUThrottlingRate', { rate: 4 })
  await shiftsSince(page)
  await page.goto('./#view=bench')
  await expect(page.locator('tack-readings-strip .traps dd')).toHaveCount(6)
  await expect(page.locator('tack-bench')).toHaveCSS('opacity', '1')
  // Up to 0.16 where its parts are seen one by one.
  expect(await shiftsSince(page)).toBeLessThan(0.02)
})

test('the typeface takes the place of what stood in for it, and nothing moves', async ({ page }) => {
  let send = (): void => undefined
  const opened = new Promise<void>((resolve) => (send = resolve))
  await page.route('**/*.woff2', async (route) => {
    await opened
    await route.continue()
  })
  await watchShifts(page)
  await page.goto('./#view=bench', { waitUntil: 'commit' })
  // The pictures wait for the typeface; the numbers come last of all else.
  await expect(page.locator('tack-readings-strip .traps dd')).toHaveCount(6)
  await expect(page.getByText('Unchanged')).toBeVisible()
  await page.waitForTimeout(500)
  const standsIn = await page.evaluate(() =>
    document.fonts.load('16px "Stand-in A"').then(
      (faces) => faces.length > 0,
      () => false,
    ),
  )
  if (!standsIn) {
    test.info().annotations.push({ type: 'left out', description: 'no face here is fitted to the typeface' })
    return
  }
  await shiftsSince(page)
  send()
  await page.evaluate(async () => {
    await document.fonts.ready
    await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)))
  })
  // 0.51 where the stand-in is not fitted, and the head takes two rows.
  expect(await shiftsSince(page)).toBeLessThan(0.02)
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
      heard.push(live?.getAttribute('aria-live') === 'polite' ? live.textContent.trim() : 'runs')
    }
    const all = { attributes: true, childList: true, characterData: true, subtree: true }
    if (live) new MutationObserver(hear).observe(live, all)
  })
  const heard = () => page.evaluate(() => (window as unknown as { heard: string[] }).heard)
  await page.getByRole('slider', { name: 'nip', exact: true }).fill('100')
  await page.getByRole('button', { name: 'Step nip' }).click()
  await expect(page.getByRole('heading', { name: 'What happened at unit 1, black' })).toBeVisible()
  await expect.poll(async () => (await heard()).at(-1)).toMatch(/^The black/)
  const [first, ...others] = await heard()
  expect(first).toBe('runs')
  expect(others.filter((each) => each !== 'runs')).toHaveLength(1)
})
