import type { Page } from '@playwright/test'
import axe from 'axe-core'

const standards = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

/** What axe finds wrong on the page, one plain line for each place; by every rule, or by those named alone. */
export async function faults(page: Page, rules: string[] = []): Promise<string[]> {
  await page.evaluate(axe.source)
  const { violations } = await page.evaluate(
    (runOnly) => (globalThis as unknown as { axe: typeof axe }).axe.run({ runOnly }),
    rules.length > 0 ? rules : standards,
  )
  return violations.flatMap(({ id, help, nodes }) => nodes.map((node) => `${id}: ${help}: ${node.html.slice(0, 120)}`))
}

/** Whether anything sticks out to the side. */
export async function sticksOut(page: Page): Promise<boolean> {
  return page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth)
}
