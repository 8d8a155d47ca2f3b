/** Every main task by keyboard alone: the focus is always somewhere, and can be seen. */
import type { Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import { openBench, order } from './bench-page.ts'
import { listenTo } from './console.ts'

/** What has the focus, through every shadow tree: its words, and whether it is marked. */
async function focused(page: Page): Promise<{ name: string; seen: boolean }> {
  return page.evaluate(() => {
    let element = document.activeElement
    while (element?.shadowRoot?.activeElement) element = element.shadowRoot.activeElement
    if (!element || element === document.body) return { name: 'nothing', seen: false }
    // A choice drawn as a strip shows the focus of its radio button on the label around it.
    const shown = [element, ...(element.closest('label') ? [element.closest('label') as Element] : [])]
    const seen = shown.some((each) => {
      const { outlineStyle, outlineWidth } = getComputedStyle(each)
      return outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2
    })
    const label = element.getAttribute('aria-label') ?? element.closest('label')?.textContent ?? element.textContent
    return { name: label.replace(/\s+/g, ' ').trim(), seen }
  })
}

/** Tabs on until what has the focus is called so, as somebody does who hears or sees the names go by. */
async function tabTo(page: Page, name: RegExp, most = 120): Promise<void> {
  const passed: string[] = []
  for (let step = 0; step < most; step++) {
    await page.keyboard.press('Tab')
    const now = await focused(page)
    passed.push(now.name)
    if (now.name !== 'nothing') expect(now.seen, `the focus is seen on "${now.name}"`).toBe(true)
    if (name.test(now.name)) return
  }
  throw new Error(`${name.source} was not reached; passed were ${passed.join(' | ')}`)
}

async function press(page: Page, key: string): Promise<void> {
  await page.keyboard.press(key)
  expect((await focused(page)).name, `after ${key} the focus is somewhere`).not.toBe('nothing')
}

test('the bench, a file, a lesson and an instrument are worked by keyboard alone', async ({ page }) => {
  test.setTimeout(90_000)
  const said = listenTo(page)
  await openBench(page)

  // Order, by the button that moves an ink; then back.
  await tabTo(page, /^Move cyan one unit earlier/)
  await press(page, 'Enter')
  expect(await order(page)).toEqual(['cyan', 'black', 'magenta', 'yellow'])
  await press(page, 'Control+z')
  expect(await order(page)).toEqual(['black', 'cyan', 'magenta', 'yellow'])

  // Running, stepping, and the nip moved by hand.
  await tabTo(page, /^Run$/)
  await press(page, 'Enter')
  await press(page, 'Enter')
  await tabTo(page, /^nip$/)
  await press(page, 'Home')
  await press(page, 'ArrowRight')
  await expect(page.getByRole('slider', { name: 'nip', exact: true })).toHaveValue('1')

  // The film stack in numbers, and back to where it was opened.
  await tabTo(page, /^Film stack as a table$/)
  await press(page, 'Enter')
  await expect(page.getByRole('dialog', { name: 'Film stack as a table' })).toBeVisible()
  await press(page, 'Escape')
  expect((await focused(page)).name).toBe('Film stack as a table')

  // A link and a file.
  await tabTo(page, /^Share$/)
  await press(page, 'Enter')
  await expect(page.getByRole('dialog', { name: 'Share this set-up' })).toBeVisible()
  await tabTo(page, /^Copy: Link/)
  await press(page, 'Escape')
  await tabTo(page, /^File$/)
  await press(page, 'Enter')
  await expect(page.getByRole('dialog', { name: 'Save, open, print' })).toBeVisible()
  await tabTo(page, /^Save the file$/)
  const download = page.waitForEvent('download')
  await press(page, 'Enter')
  expect((await download).suggestedFilename()).toMatch(/\.tackstair\.json$/)
  await press(page, 'Escape')

  // The run chart.
  await tabTo(page, /^Run chart$/)
  await press(page, 'Enter')
  await tabTo(page, /^Run the press$/)
  await page.keyboard.press('Enter')
  await expect(page.locator('tack-run-chart').first()).toBeVisible()
  expect((await focused(page)).name, 'when the run is done').not.toBe('nothing')

  // The first lesson.
  await tabTo(page, /^Lessons$/)
  await press(page, 'Enter')
  await page.locator('tack-course-list button').first().waitFor()
  await tabTo(page, /^Begin/)
  await press(page, 'Enter')
  await expect(page.getByRole('heading', { name: /^Step 1 of / })).toBeVisible()

  // The tackmeter.
  await tabTo(page, /^Instruments$/, 200)
  await press(page, 'Enter')
  await page.locator('tack-tackmeter-picture').waitFor()
  await tabTo(page, /^Start$/)
  await press(page, 'Enter')
  expect(said).toEqual([])
})
