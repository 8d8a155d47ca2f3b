/** Keys and presses without sense or order: nothing on the console, a legal set-up, a way back, and a page that answers. */
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
const inputsInView = 35

/** The page's element holds the session, so that the set-up can be looked at whatever the page shows. */
type WithSession = HTMLElement & { session: Session }

async function setUpOf(page: Page): Promise<SetUp> {
  return page.locator('tack-page').evaluate((element) => (element as WithSession).session.setUp)
}

test('keys and presses at random leave every view in order', async ({ page }) => {
  test.setTimeout(120_000)
  const said = listenTo(page)
  const draw = seededDraws(41)
  const oneOf = <Item>(list: readonly Item[]) => list[Math.floor(draw() * list.length)]
  await page.addInitScript(() => {
    window.print = () => undefined
  })
  await openBench(page)
  const before = (await setUpOf(page)).inks.map(({ name }) => name)
  for (const view of views) {
    await page.goto(`./#view=${view.replace(' ', '+')}`)
    for (let input = 0; input < inputsInView; input++) {
      if (draw() < 0.6) await page.keyboard.press(oneOf(allKeys))
      else await page.mouse.click(20 + draw() * 1300, 60 + draw() * 680)
    }
    for (let more = 0; more < 3; more++) await page.keyboard.press('Escape')
    expect(checkSetUp(writeSetUp(await setUpOf(page))), view).toHaveProperty('setUp')
  }
  expect(said).toEqual([])
  // Within a lesson undo ends where the lesson began; leaving it gives the bench back, with all its steps.
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
