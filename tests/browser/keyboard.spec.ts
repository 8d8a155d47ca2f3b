/** Every main task by keyboard alone: the focus is always somewhere, and can be seen. */
import type { Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import { openBench, order } from './bench-page.ts'
import { listenTo } from './console.ts'
import { drawn } from './drawn.ts'
import { atStep, lesson, openFile, openLessons } from './lesson-page.ts'

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
    const named = Array.from((element as Partial<HTMLInputElement>).labels ?? []).at(0)
    const bare = (named ?? element).cloneNode(true) as Element
    for (const unread of bare.querySelectorAll('[aria-hidden=true]')) unread.remove()
    const label = element.getAttribute('aria-label') ?? (bare.textContent.trim() || element.getAttribute('title') || '')
    return { name: label.replace(/\s+/g, ' ').trim(), seen }
  })
}

const shortLesson = `
format: 1
id: by-keyboard
title: Two steps
language: en
minutes: 5
audience: The tests
assumes: [tack]
introduces: []
objectives: [Get to the end.]
sources: ['All readings: this model']
cautions: [teaching-model]
start:
  inks:
    - { name: cyan, tack: 14 }
    - { name: yellow, tack: 10 }
  reading: first
steps:
  - id: choose
    kind: expect
    text: Which is the tackier?
    expect:
      - is: choice
        choices: [{ id: cyan, text: Cyan }, { id: yellow, text: Yellow, feedback: Read its number again. }]
        right: cyan
  - id: tack
    kind: do
    text: Give yellow a tack of 12.
    expect: [{ is: within, reading: { what: tack, of: yellow }, value: 12, tolerance: 0.1, unit: tack units }]
solution:
  - { step: choose, choose: cyan }
  - { step: tack, changes: [{ change: tack, of: yellow, to: 12 }] }
`

/** Tabs on until what has the focus is called so, as somebody does who hears or sees the names go by. */
async function tabTo(page: Page, name: RegExp, most = 120): Promise<void> {
  const passed: string[] = []
  await drawn(page)
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
  // A new screen takes it as soon as it is drawn.
  await expect.poll(async () => (await focused(page)).name, `after ${key} the focus is somewhere`).not.toBe('nothing')
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
  await page.locator('tack-run-view main').waitFor()
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

test('a lesson is finished, a drill judged, a patch read, an order loaded and the marker of a run moved by keyboard alone', async ({
  page,
}) => {
  test.setTimeout(120_000)
  const said = listenTo(page)
  const focusIs = (name: RegExp) => expect.poll(async () => (await focused(page)).name).toMatch(name)

  // A wrong answer, said twice though it is the same; the right one, and on to the end.
  await openLessons(page)
  await openFile(page, shortLesson)
  await atStep(page, 1)
  await focusIs(/^Step 1 of 2/)
  await tabTo(page, /^Cyan$/)
  await page.keyboard.press('ArrowDown')
  await tabTo(page, /^Hand in$/)
  await page.keyboard.press('Enter')
  const outcome = lesson(page).getByRole('status').filter({ hasText: 'Not yet.' })
  await expect(outcome).toContainText('Read its number again.')
  await outcome.locator('.told').evaluate((told) => told.setAttribute('data-heard', ''))
  await page.keyboard.press('Enter')
  await expect(outcome.locator('.told:not([data-heard])')).toContainText('Read its number again.')
  await page.keyboard.press('Shift+Tab')
  await page.keyboard.press('ArrowUp')
  await tabTo(page, /^Hand in$/)
  await page.keyboard.press('Enter')
  await focusIs(/^Go on$/)
  await page.keyboard.press('Enter')
  await focusIs(/^Step 2 of 2/)
  await tabTo(page, /^Tack of yellow$/, 200)
  await page.keyboard.type('12')
  await page.keyboard.press('Enter')
  await tabTo(page, /^Check the bench$/, 200)
  await page.keyboard.press('Enter')
  await focusIs(/results/i)
  await page.keyboard.press('Enter')
  await focusIs(/Two steps/)
  await tabTo(page, /^All lessons$/)
  await page.keyboard.press('Enter')
  await focusIs(/^Lessons$/)

  // A drill: named without a cause, named wrong, and the answer.
  await page.goto('./#view=drills&drill=easy:3')
  await expect(page.getByText('The sheet is on the table.')).toBeVisible({ timeout: 60_000 })
  await tabTo(page, /^Sheet, by eye$/)
  await tabTo(page, /^The unit of cyan runs too warm$/, 200)
  await page.keyboard.press('Space')
  await tabTo(page, /^Sheet, by eye$/)
  await page.keyboard.press('Space')
  await tabTo(page, /^Name it$/)
  await press(page, 'Enter')
  await expect(page.getByText('Not so:')).toBeVisible({ timeout: 60_000 })
  await focusIs(/^Name it$/)
  await tabTo(page, /^Show the answer$/)
  await page.keyboard.press('Enter')
  await focusIs(/^The answer$/)

  // The strip, read patch by patch.
  await tabTo(page, /^Strip$/, 200)
  await press(page, 'Enter')
  await page.locator('tack-patch-strip').waitFor()
  await tabTo(page, /^\w+: .+ \+ /)
  await press(page, 'Home')
  await expect(page.locator('tack-patch-strip [aria-live]')).toContainText('bare paper')
  await press(page, 'ArrowRight')
  await expect(page.locator('tack-patch-strip [aria-live]')).not.toContainText('bare paper')

  // An order out of the ranking.
  await tabTo(page, /^Orders$/, 200)
  await press(page, 'Enter')
  await page.locator('tack-orders-view main').waitFor()
  await tabTo(page, /^Rank all/)
  await page.keyboard.press('Enter')
  await page.getByText('orders are ranked.').waitFor()
  await focusIs(/^Rank all \d+ orders again$/)
  await tabTo(page, /^Load rank 2/, 200)
  await page.keyboard.press('Enter')
  await focusIs(/^Compare rank 2/)
  await page.keyboard.press('Control+z')
  await expect(page.locator('tack-page-header').getByText('The last change is taken back.')).toBeAttached()

  // The marker of a run.
  await tabTo(page, /^Run chart$/, 200)
  await press(page, 'Enter')
  await page.locator('tack-run-view main').waitFor()
  await tabTo(page, /^Run the press$/)
  await page.keyboard.press('Enter')
  await page.getByText(/sheets run/).waitFor()
  const marker = page.getByRole('slider', { name: 'Sheet looked at' })
  const before = await marker.getAttribute('aria-valuetext')
  await tabTo(page, /^Sheet looked at$/)
  await tabTo(page, /^Sheet looked at$/)
  await press(page, 'End')
  await expect(marker).not.toHaveAttribute('aria-valuetext', before ?? '')
  expect(said).toEqual([])
})
