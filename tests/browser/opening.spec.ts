/** What somebody begins while the page is still opening stays. */
import type { Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import { enter, field, openBench } from './bench-page.ts'
import { atStep, everyForm, lesson, openFile, press, toThirdStep } from './lesson-page.ts'

/** The words in the head before anybody has looked for a draft. */
const draftSought = async (page: Page) => {
  await expect(page.locator('tack-draft-state')).toHaveText(/\S/)
  await expect(page.locator('tack-draft-state')).not.toHaveText('Opening…')
}

/** Holds back all code that is not asked for by the page's first text, as a slow network does; returns what lets it come. */
async function holdCodeBack(page: Page): Promise<() => void> {
  let arrive = (): void => undefined
  const held = new Promise<void>((resolve) => (arrive = resolve))
  const first = await (await page.request.get('./')).text()
  await page.route('**/*.js', async (route) => {
    if (!first.includes(new URL(route.request().url()).pathname.slice(1))) await held
    await route.continue()
  })
  return arrive
}

/** Holds what a reloaded tab waits for before it looks for its draft, as a slow machine does; returns what lets it go on. */
async function holdDraftBack(page: Page): Promise<() => Promise<void>> {
  const name = await page.evaluate(() => `tackstair tab ${sessionStorage.getItem('tackstair tab') ?? ''}`)
  const other = await page.context().newPage()
  await other.goto('./icon.svg')
  await other.evaluate((lock) => {
    void navigator.locks.request(lock, () => new Promise<void>((letGo) => Object.assign(window, { letGo })))
  }, name)
  return () => other.evaluate(() => (window as unknown as { letGo: () => void }).letGo())
}

test('a view is put up once, whatever else changes while its code is on the way', async ({ page }) => {
  const arrive = await holdCodeBack(page)
  await page.goto('./#view=lessons', { waitUntil: 'commit' })
  await expect(page.getByText('Opening…')).toBeVisible()
  await page.locator('tack-page').evaluate(({ shadowRoot }) => {
    const putUp: string[] = []
    Object.assign(window, { putUp })
    const look = (changes: MutationRecord[]) =>
      putUp.push(...changes.flatMap(({ addedNodes }) => Array.from(addedNodes, ({ nodeName }) => nodeName)))
    if (shadowRoot) new MutationObserver(look).observe(shadowRoot, { childList: true })
  })
  await page.emulateMedia({ colorScheme: 'dark' })
  await expect(page.locator('html')).toHaveAttribute('data-dress', 'dark')
  arrive()
  await draftSought(page)
  await openFile(page, everyForm)
  await atStep(page, 1)
  const putUp = await page.evaluate(() => (window as unknown as { putUp: string[] }).putUp)
  expect(putUp.filter((name) => name === 'TACK-LESSONS-VIEW')).toHaveLength(1)
})

test('the first look does not come over what somebody has gone to meanwhile', async ({ page }) => {
  const arrive = await holdCodeBack(page)
  await page.goto('./', { waitUntil: 'commit' })
  await page.getByRole('link', { name: 'Lessons' }).click()
  arrive()
  await expect(page.getByRole('heading', { name: 'Lessons', exact: true })).toBeVisible()
  await draftSought(page)
  await openFile(page, everyForm)
  await atStep(page, 1)
})

test('a lesson that is gone on with before the draft is found stays as it is, and so does the bench of before', async ({
  page,
}) => {
  await openBench(page)
  await draftSought(page)
  await enter(page, 'Tack of black', '19')
  await expect(page.getByText('Draft saved')).toBeVisible()
  await page.getByRole('link', { name: 'Lessons' }).click()
  await toThirdStep(page)
  const letGo = await holdDraftBack(page)
  // The page waits however long all that follows takes on a busy machine.
  await page.addInitScript(() => (AbortSignal.timeout = () => new AbortController().signal))
  await page.reload()
  await atStep(page, 3)
  await page.getByRole('button', { name: 'yellow prints in this patch' }).click()
  await expect(page.getByText('Opening…')).toBeVisible()
  await letGo()
  await draftSought(page)
  await expect(page.getByRole('button', { name: 'yellow prints in this patch' })).toHaveAttribute(
    'aria-pressed',
    'false',
  )
  await press(page, 'Check the bench')
  await expect(lesson(page)).toContainText('Done.')
  await press(page, 'All lessons')
  await page.getByRole('link', { name: 'Bench' }).click()
  await expect(field(page, 'Tack of black')).toHaveValue('19')
})
