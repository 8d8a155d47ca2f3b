import type { Page } from '@playwright/test'
import axe from 'axe-core'
import { drawn } from './drawn.ts'

const standards = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

/**
 * What axe finds wrong, one plain line for each place: by every rule or by those named alone, on the whole page or in the
 * part that these selectors lead to, one shadow root after another.
 */
export async function faults(page: Page, rules: string[] = [], part?: string[]): Promise<string[]> {
  await drawn(page)
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axe.source)
  const { violations } = await page.evaluate(
    ({ runOnly, part }) =>
      (globalThis as unknown as { axe: typeof axe }).axe.run(part ? { include: [part] } : document, {
        runOnly,
        // Places are worked out for what is wrong alone, which takes a good part of the time.
        resultTypes: ['violations'],
      }),
    { runOnly: rules.length > 0 ? rules : standards, part },
  )
  return violations.flatMap(({ id, help, nodes }) => nodes.map((node) => `${id}: ${help}: ${node.html.slice(0, 120)}`))
}

/** What alone can differ between the light and the dark. */
const ofColour = ['color-contrast', 'link-in-text-block']

/** The same in the light and in the dark, without a second walk to where the page stands. */
export async function faultsInBothLights(page: Page, part?: string[]): Promise<string[]> {
  const found: string[] = []
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' })
    found.push(
      ...(await faults(page, colorScheme === 'dark' ? ofColour : [], part)).map(
        (fault) => `in the ${colorScheme}: ${fault}`,
      ),
    )
  }
  return found
}

/** Whether anything sticks out to the side. */
export async function sticksOut(page: Page): Promise<boolean> {
  await drawn(page)
  return page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth)
}

/** At which of these widths (px) anything sticks out to the side; the page is left at the last of them. */
export async function sticksOutAt(page: Page, widths: readonly number[], height = 768): Promise<number[]> {
  const tooNarrow: number[] = []
  for (const width of widths) {
    await page.setViewportSize({ width, height })
    if (await sticksOut(page)) tooNarrow.push(width)
  }
  return tooNarrow
}
