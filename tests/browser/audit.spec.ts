/**
 * Every view, each looked at by axe, for what sticks out of a narrow page and for controls too small to be hit. A page is
 * loaded once and walked through, since loading costs more than looking.
 */
import type { Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import { listenTo } from './console.ts'
import { faults, sticksOut } from './faults.ts'

/** Each view by its name in the navigation, and what is there once it has come. */
const views = [
  ['Bench', 'tack-bench main'],
  ['Strip', 'tack-patch-strip'],
  ['Lessons', 'tack-course-list'],
  ['Orders', 'tack-orders-view main'],
  ['Trials', 'tack-trials-view main'],
  ['Run chart', 'tack-run-view main'],
  ['Instruments', 'tack-tackmeter-picture'],
  ['Fault drills', 'tack-drills-view main'],
  ['Glossary', 'tack-glossary-view main'],
] as const

/** px: WCAG 2.2, 2.5.8 */
const leastTarget = 24

/** Controls that are smaller than a target has to be: none of them a word within a sentence, nor drawn by the browser. */
async function tooSmall(page: Page): Promise<string[]> {
  return page.evaluate((least) => {
    const found: string[] = []
    const look = (root: Element | ShadowRoot) => {
      for (const element of root.children) {
        if (element.shadowRoot) look(element.shadowRoot)
        look(element)
        if (
          !element.matches('button, select, summary, a[href], input:not([type=range], [type=radio], [type=checkbox])')
        )
          continue
        const root = element.getRootNode()
        const host = root instanceof ShadowRoot ? root.host.localName : ''
        const { width, height } = element.getBoundingClientRect()
        const isInSentence = host === 'tack-term' || element.closest('p, dd, li p') !== null
        if (width <= 1 || isInSentence || !element.checkVisibility() || (width >= least && height >= least)) continue
        found.push(`${host} ${element.localName} "${element.textContent.trim()}" ${width} x ${height}`)
      }
    }
    look(document.body)
    return found
  }, leastTarget - 0.1)
}

/** As when the person chooses it in another tab. */
async function wear(page: Page, theme: string): Promise<void> {
  await page.evaluate((kept) => {
    localStorage.setItem('tackstair comfort', kept)
    dispatchEvent(new StorageEvent('storage', { key: 'tackstair comfort' }))
  }, JSON.stringify({ theme }))
}

test('axe finds nothing wrong in any view, in high contrast, and no colours too near to each other in the dark', async ({
  page,
}) => {
  test.setTimeout(120_000)
  const said = listenTo(page)
  await page.setViewportSize({ width: 390, height: 844 })
  await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' })
  await page.goto('./#view=bench')
  for (const [name, there] of views) {
    await page.getByRole('navigation').getByRole('link', { name, exact: true }).click()
    await page.locator(there).first().waitFor()
    await wear(page, 'high contrast')
    expect(await faults(page), name).toEqual([])
    expect(await tooSmall(page), name).toEqual([])
    await wear(page, 'dark')
    expect(await faults(page, ['color-contrast']), name).toEqual([])
  }
  for (const panel of ['Share', 'File', 'Comfort']) {
    await page.getByRole('button', { name: panel, exact: true }).click()
    await expect(page.getByRole('dialog')).toBeVisible()
    expect(await faults(page), panel).toEqual([])
    await page.keyboard.press('Escape')
    await expect(page.getByRole('button', { name: panel, exact: true })).toBeFocused()
  }
  expect(said).toEqual([])
})

test('nothing sticks out of a page of 320 px', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 })
  await page.goto('./#view=bench')
  for (const [name, there] of views) {
    await page.getByRole('navigation').getByRole('link', { name, exact: true }).click()
    await page.locator(there).first().waitFor()
    expect(await sticksOut(page), name).toBe(false)
  }
})
