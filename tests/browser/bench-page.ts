/** What the browser tests find on the bench, by what a person reads there. */
import type { Locator, Page } from '@playwright/test'
import { drawn } from './drawn.ts'

export async function openBench(page: Page): Promise<void> {
  await page.goto('./#view=bench')
  await page.getByRole('heading', { name: 'Tackstair' }).waitFor()
  await handle(page, '.+').first().waitFor()
  await drawn(page)
}

/** Where the head is short of room, what it leads to is under "Menu". */
export async function unfoldHead(page: Page): Promise<void> {
  const menu = page.getByRole('button', { name: 'Menu', exact: true })
  if ((await menu.isVisible()) && (await menu.getAttribute('aria-expanded')) === 'false') await menu.click()
}

/** The handle by which an ink is carried. */
export function handle(page: Page, ink: string): Locator {
  return page.getByRole('button', { name: new RegExp(`^Unit \\d: ${ink}(, tack|$)`) })
}

/** The inks' names as the ladder has them, first unit to last. */
export async function order(page: Page): Promise<string[]> {
  // A bench that is just being opened has none yet.
  await handle(page, '.+').first().waitFor()
  await drawn(page)
  const handles = await page.getByRole('button', { name: /^Unit \d: / }).all()
  const names = await Promise.all(handles.map((each) => each.getAttribute('aria-label')))
  return names.map((name) => /^Unit \d: (.+), tack/.exec(name ?? '')?.[1] ?? '')
}

export function field(page: Page, label: string): Locator {
  return page.getByRole('textbox', { name: label })
}

/** Types a number as a person does, and leaves the field. */
export async function enter(page: Page, label: string, typed: string): Promise<void> {
  await field(page, label).fill(typed)
  await field(page, label).press('Enter')
}

/** Mass traps as the page writes them, whole percent, by "later on earlier". */
export async function traps(page: Page): Promise<Record<string, number>> {
  const shown = page.locator('tack-readings-strip .traps > div')
  await shown.first().waitFor()
  const pairs = await shown.all()
  const read = await Promise.all(
    pairs.map(async (pair) => [
      (await pair.locator('dt .unseen').textContent()) ?? '',
      Number(/[\d,]+/.exec((await pair.locator('dd').textContent()) ?? '')?.[0]),
    ]),
  )
  return Object.fromEntries(read) as Record<string, number>
}
