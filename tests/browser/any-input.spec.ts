/**
 * Keys, presses, typed text, links, dropped files and other windows without sense or order: nothing on the console, a
 * legal set-up, a way back, and a page that answers. TACKSTAIR_INPUTS is how many a view gets, TACKSTAIR_SEED which.
 */
import type { Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import { seededDraws } from '../../src/physics/random.ts'
import { checkSetUp } from '../../src/press/check-setup.ts'
import type { SetUp } from '../../src/press/setup.ts'
import type { Session } from '../../src/session/session.ts'
import type { ViewName } from '../../src/session/view-state.ts'
import { writeSetUp } from '../../src/session/write-setup.ts'
import { openBench } from './bench-page.ts'
import { listenTo } from './console.ts'

/** Tab twice as often as others, so that much is reached; nothing that closes or leaves the page. */
const keys = ['Tab', 'Tab', 'Shift+Tab', 'Enter', 'Space', 'ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight', 'Home']
const moreKeys = ['End', 'PageUp', 'PageDown', 'Escape', '7', '-', 'Delete', 'Control+z', 'Control+y']
const allKeys = [...keys, ...moreKeys]
const views: readonly ViewName[] = [
  'bench',
  'strip',
  'orders',
  'trials',
  'run chart',
  'instruments',
  'drills',
  'lessons',
]
const inputsInView = Number(process.env['TACKSTAIR_INPUTS'] ?? 35)
const seed = Number(process.env['TACKSTAIR_SEED'] ?? 41)

const texts = [
  '1e999',
  '-0',
  '12,5',
  '٣',
  '<img src=x onerror=alert(1)>',
  '=1+1',
  '\u202eabc',
  '\ud800',
  'x'.repeat(2000),
  '',
]
const sizes = [
  [1366, 768],
  [390, 844],
  [844, 390],
  [320, 568],
  [1920, 1080],
] as const
const links = [
  'v=1&inks=cyan:14,yellow:10',
  'v=99&inks=a:b',
  'inks=%00,%E0%A4%A',
  'press=web&speed=NaN',
  '%',
  'hide=everything',
]
const files = [
  '',
  '{',
  '[[[[',
  '{"format":"tackstair","version":99}',
  'id: x\nsteps: &a [*a]',
  'a;b;c\n1;2',
  '\u0000\u0001',
]

/** The page's element holds the session, so that the set-up can be looked at whatever the page shows. */
type WithSession = HTMLElement & { session: Session }

async function setUpOf(page: Page): Promise<SetUp> {
  return page.locator('tack-page').evaluate((element) => (element as WithSession).session.setUp)
}

/** Lets a file with this name and text fall on the page, as a person does from another window. */
async function drop(page: Page, name: string, text: string): Promise<void> {
  await page.evaluate(
    ([name, text]) => {
      const dataTransfer = new DataTransfer()
      dataTransfer.items.add(new File([text], name))
      const at = { dataTransfer, bubbles: true, composed: true, cancelable: true }
      document.body.dispatchEvent(new DragEvent('drop', at))
    },
    [name, text],
  )
}

/** One input without sense; keys and presses much more often than the rest. */
async function doAnything(page: Page, draw: () => number): Promise<void> {
  const oneOf = <Item>(list: readonly Item[]) => list[Math.floor(draw() * list.length)]
  const kind = draw()
  if (kind < 0.5) await page.keyboard.press(oneOf(allKeys))
  else if (kind < 0.86) await page.mouse.click(20 + draw() * 1300, 60 + draw() * 680)
  else if (kind < 0.92) await page.keyboard.insertText(oneOf(texts))
  else if (kind < 0.95) await page.setViewportSize({ width: oneOf(sizes)[0], height: oneOf(sizes)[1] })
  else if (kind < 0.97) await page.evaluate((hash) => (location.hash = hash), oneOf(links))
  else await drop(page, oneOf(['a.json', 'b.lesson.yaml', 'c.csv', 'd']), oneOf(files))
}

test('keys, presses and whatever else comes in, at random, leave every view in order', async ({ page }) => {
  test.setTimeout(120_000 + inputsInView * views.length * 500)
  const said = listenTo(page)
  const draw = seededDraws(seed)
  await page.addInitScript(() => {
    window.print = () => undefined
  })
  await openBench(page)
  const before = (await setUpOf(page)).inks.map(({ name }) => name)
  for (const view of views) {
    await page.goto(`./#view=${view.replace(' ', '+')}`)
    for (let input = 0; input < inputsInView; input++) {
      await doAnything(page, draw)
    }
    for (let more = 0; more < 3; more++) await page.keyboard.press('Escape')
    expect(checkSetUp(writeSetUp(await setUpOf(page))), view).toHaveProperty('setUp')
  }
  expect(said).toEqual([])
  // Within a lesson undo ends where the lesson began; leaving it gives the bench back, with all its steps.
  await expect(page.getByText('Loading…')).toHaveCount(0)
  const leave = page.getByRole('button', { name: 'All lessons' })
  if (await leave.isVisible()) await leave.click()
  const after = await page.locator('tack-page').evaluate((element) => {
    const { session } = element as WithSession
    session.lookWith({ closed: [] })
    for (let step = 0; step < 2000 && session.canUndo; step++) session.undo()
    return { inks: session.setUp.inks.map(({ name }) => name), canUndo: session.canUndo }
  })
  expect(after).toEqual({ inks: before, canUndo: false })
  await page.goto('./#view=bench')
  await page.locator('tack-scenario-bar button').nth(1).click()
  expect(await page.locator('tack-page').evaluate((element) => (element as WithSession).session.canUndo)).toBe(true)
  expect(said).toEqual([])
})
