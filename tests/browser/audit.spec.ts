/**
 * Every place, each looked at by axe, for what sticks out of a narrow page or is cut off in a small one, for controls too
 * small to be hit and for what is too faint. A page is loaded once and walked through, since loading costs more than looking.
 */
import type { Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import { unfoldHead } from './bench-page.ts'
import { listenTo } from './console.ts'
import { faults, sticksOut } from './faults.ts'
import { cutOff, tooFaint } from './legible.ts'
import { atEachPlace } from './places.ts'

/** px: WCAG 2.2, 2.5.8 */
const leastTarget = 24

/** Controls that are smaller than a target has to be: none of them a word within a sentence, nor drawn by the browser. */
async function tooSmall(page: Page, target = leastTarget): Promise<string[]> {
  return page.evaluate((least) => {
    const found: string[] = []
    const look = (root: Element | ShadowRoot) => {
      for (const element of root.children) {
        if (element.shadowRoot) look(element.shadowRoot)
        look(element)
        if (!element.matches('button, select, summary, a[href], input:not([type=range])')) continue
        // A box or a button to choose by is as large as its label.
        const shape = element.matches('[type=radio], [type=checkbox]') ? (element.closest('label') ?? element) : element
        const root = element.getRootNode()
        const host = root instanceof ShadowRoot ? root.host.localName : ''
        const { width, height } = shape.getBoundingClientRect()
        const isInSentence = host === 'tack-term' || element.closest('p, dd, li p') !== null
        if (width <= 1 || isInSentence || !element.checkVisibility() || (width >= least && height >= least)) continue
        found.push(`${host} ${element.localName} "${element.textContent.trim()}" ${width} x ${height}`)
      }
    }
    look(document.body)
    return found
  }, target - 0.1)
}

/** As when the person chooses it in another tab. */
async function wear(page: Page, theme: string): Promise<void> {
  await page.evaluate((kept) => {
    localStorage.setItem('tackstair comfort', kept)
    dispatchEvent(new StorageEvent('storage', { key: 'tackstair comfort' }))
  }, JSON.stringify({ theme }))
}

/** Whatever is chosen and does not look otherwise than what is not, where the system sets all colours. */
async function choiceUnseen(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = []
    const groundOf = (element: Element) => getComputedStyle(element).backgroundColor
    const look = (root: Element | ShadowRoot) => {
      for (const element of root.children) {
        if (element.shadowRoot) look(element.shadowRoot)
        look(element)
        if (!element.matches('button[aria-pressed=true], .strip label:has(:checked)') || !element.checkVisibility())
          continue
        const probe = document.createElement('button')
        element.after(probe)
        if (groundOf(element) === groundOf(probe)) found.push(element.textContent.trim())
        probe.remove()
      }
    }
    look(document.body)
    return found
  })
}

/** Panels whose edge is not to be seen, where their ground is that of the page. */
async function edgeless(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = []
    const look = (root: Element | ShadowRoot) => {
      for (const element of root.children) {
        if (element.shadowRoot) look(element.shadowRoot)
        look(element)
        if (!element.matches('.panel') || !element.checkVisibility()) continue
        const { borderTopWidth, borderTopColor } = getComputedStyle(element)
        const clear = /^rgba\(.*, 0\)$/.test(borderTopColor)
        if (parseFloat(borderTopWidth) < 1 || clear) found.push(`${element.localName}: ${borderTopColor}`)
      }
    }
    look(document.body)
    return found
  })
}

/** Whatever is read out twice, as the hint of a pointer says again what it is called. */
async function saidTwice(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = []
    const read = (element: Element): string => {
      const copy = element.cloneNode(true) as Element
      for (const unread of copy.querySelectorAll('[aria-hidden=true]')) unread.remove()
      return copy.textContent.replace(/\s+/g, ' ').trim()
    }
    const look = (root: Element | ShadowRoot) => {
      for (const element of root.children) {
        if (element.getAttribute('aria-hidden') === 'true') continue
        if (element.shadowRoot) look(element.shadowRoot)
        look(element)
        const hint = element.getAttribute('title') ?? ''
        const name = element.getAttribute('aria-label') ?? read(element)
        if (hint !== '' && name !== '' && name.includes(hint)) found.push(`${element.localName}: ${hint}`)
      }
    }
    look(document.body)
    return found
  })
}

test('axe finds nothing wrong at any place in high contrast, nothing is too near to its ground in colour in any dress', async ({
  page,
}) => {
  test.setTimeout(360_000)
  const said = listenTo(page)
  await page.setViewportSize({ width: 390, height: 844 })
  await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' })
  await atEachPlace(page, async (name) => {
    await wear(page, 'high contrast')
    expect(await faults(page), name).toEqual([])
    expect(await tooSmall(page), name).toEqual([])
    expect(await saidTwice(page), name).toEqual([])
    expect(await tooFaint(page), `${name}, high contrast`).toEqual([])
    expect(await edgeless(page), `${name}, high contrast`).toEqual([])
    await wear(page, 'dark')
    expect(await faults(page, ['color-contrast']), name).toEqual([])
    expect(await tooFaint(page), `${name}, dark`).toEqual([])
    await wear(page, 'light')
    expect(await tooFaint(page), `${name}, light`).toEqual([])
    await page.emulateMedia({ forcedColors: 'active' })
    await expect(page.locator('html')).toHaveAttribute('data-dress', 'contrast dark')
    expect(await tooFaint(page), `${name}, forced colours`).toEqual([])
    expect(await choiceUnseen(page), `${name}, forced colours`).toEqual([])
    expect(await edgeless(page), `${name}, forced colours`).toEqual([])
    await page.emulateMedia({ forcedColors: 'none' })
  })
  await unfoldHead(page)
  for (const panel of ['Share', 'File', 'Comfort']) {
    await page.getByRole('button', { name: panel, exact: true }).click()
    await expect(page.getByRole('dialog')).toBeVisible()
    expect(await faults(page), panel).toEqual([])
    await page.keyboard.press('Escape')
    await expect(page.getByRole('button', { name: panel, exact: true })).toBeFocused()
  }
  expect(said).toEqual([])
})

test('fingers find 44 px at every place, nothing sticks out at 320 px, nothing is cut off zoomed to 200 %', async ({
  browser,
}) => {
  test.setTimeout(360_000)
  const context = await browser.newContext({ hasTouch: true, isMobile: true, viewport: { width: 320, height: 640 } })
  const page = await context.newPage()
  await atEachPlace(page, async (name) => {
    expect(await sticksOut(page), name).toBe(false)
    expect(await tooSmall(page, 44), name).toEqual([])
    // a window of 1366 x 768 px at 200 %
    await page.setViewportSize({ width: 683, height: 384 })
    expect(await cutOff(page), `${name}, at 200 %`).toEqual([])
    await page.setViewportSize({ width: 320, height: 640 })
  })
  await context.close()
})
