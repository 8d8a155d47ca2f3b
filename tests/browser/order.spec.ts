import { expect, test } from '@playwright/test'
import { handle, openBench, order } from './bench-page.ts'
import { listenTo } from './console.ts'

const start = ['black', 'cyan', 'magenta', 'yellow']
const blackSecond = ['cyan', 'black', 'magenta', 'yellow']

let said: string[]
test.beforeEach(async ({ page }) => {
  said = listenTo(page)
  await openBench(page)
  expect(await order(page)).toEqual(start)
})
test.afterEach(() => expect(said).toEqual([]))

test('an ink moves by the buttons beside its row, and the first and last go no further', async ({ page }) => {
  await page.getByRole('button', { name: 'Move black one unit later' }).click()
  expect(await order(page)).toEqual(blackSecond)
  await page.getByRole('button', { name: 'Move black one unit earlier' }).click()
  expect(await order(page)).toEqual(start)
  await expect(page.getByRole('button', { name: 'Move black one unit earlier' })).toBeDisabled()
  await expect(page.getByRole('button', { name: 'Move yellow one unit later' })).toBeDisabled()
})

test('an ink is lifted, carried and set down by keys; it keeps the focus', async ({ page }) => {
  await handle(page, 'black').focus()
  await page.keyboard.press('Space')
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('ArrowUp')
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled()
  await page.keyboard.press('Space')
  expect(await order(page)).toEqual(blackSecond)
  await expect(handle(page, 'black')).toBeFocused()
  await expect(page.getByText('black is now in unit 2 of 4.')).toBeVisible()
})

test('Escape returns a carried ink, and nothing is there to be undone', async ({ page }) => {
  await handle(page, 'yellow').focus()
  await page.keyboard.press('Space')
  await page.keyboard.press('ArrowUp')
  await page.keyboard.press('Escape')
  expect(await order(page)).toEqual(start)
  await expect(handle(page, 'yellow')).toBeFocused()
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled()
})

test('an ink left while it is carried goes back', async ({ page }) => {
  await handle(page, 'black').focus()
  await page.keyboard.press('Space')
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('Tab')
  await expect.poll(() => order(page)).toEqual(start)
})

test('a unit number typed on the row sends the ink there; a number that is no unit is explained', async ({ page }) => {
  await handle(page, 'black').focus()
  await page.keyboard.press('4')
  expect(await order(page)).toEqual(['cyan', 'magenta', 'yellow', 'black'])
  await expect(handle(page, 'black')).toBeFocused()
  await page.keyboard.press('7')
  expect(await order(page)).toEqual(['cyan', 'magenta', 'yellow', 'black'])
  await expect(page.getByText('There is no unit 7; allowed are 1 to 4. black stays where it is.')).toBeVisible()
})

test('an ink is dragged to another unit', async ({ page }) => {
  const from = await handle(page, 'black').boundingBox()
  const to = await handle(page, 'magenta').boundingBox()
  if (!from || !to) throw new Error('the rows are not drawn')
  await page.mouse.move(from.x + 30, from.y + from.height / 2)
  await page.mouse.down()
  await page.mouse.move(to.x + 30, to.y + to.height - 4, { steps: 8 })
  await page.mouse.up()
  expect(await order(page)).toEqual(['cyan', 'magenta', 'black', 'yellow'])
  await page.getByRole('button', { name: 'Undo' }).click()
  expect(await order(page)).toEqual(start)
})

test('a tread of the stair is dragged to another unit', async ({ page }) => {
  const treads = page.locator('tack-ink-stair .tread')
  const from = await treads.nth(3).boundingBox()
  const to = await treads.nth(0).boundingBox()
  if (!from || !to) throw new Error('the stair is not drawn')
  await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2)
  await page.mouse.down()
  await page.mouse.move(to.x + to.width / 2, from.y + from.height / 2, { steps: 8 })
  await page.mouse.up()
  expect(await order(page)).toEqual(['yellow', 'black', 'cyan', 'magenta'])
})

test('a wrong order is a step up before anything runs', async ({ page }) => {
  await expect(page.locator('tack-ink-stair .rise')).toHaveCount(0)
  await handle(page, 'black').focus()
  await page.keyboard.press('2')
  await expect(page.locator('tack-ink-stair .rise')).toHaveCount(1)
  await expect(page.getByText('A step up at unit 2: 2 more')).toBeVisible()
})

test('undo and redo by keys', async ({ page }) => {
  await handle(page, 'black').focus()
  await page.keyboard.press('2')
  await page.keyboard.press('Control+z')
  expect(await order(page)).toEqual(start)
  await page.keyboard.press('Control+Shift+Z')
  expect(await order(page)).toEqual(blackSecond)
})

test('inks are added and removed, never fewer than two nor more than eight', async ({ page }) => {
  for (let inks = 4; inks < 8; inks++) await page.getByRole('button', { name: 'Add ink' }).click()
  await expect(page.getByRole('button', { name: 'Add ink' })).toHaveCount(0)
  expect(await order(page)).toHaveLength(8)
  for (const name of [...start, 'harvest orange', 'reed green']) {
    await page.getByRole('button', { name: `More about ${name}` }).click()
    await page.getByRole('button', { name: `Remove ${name}` }).click()
  }
  expect(await order(page)).toHaveLength(2)
  const [left] = await order(page)
  await page.getByRole('button', { name: `More about ${left}` }).click()
  await expect(page.getByRole('button', { name: `Remove ${left}` })).toBeDisabled()
})

test('all of it by keyboard alone: Tab reaches the ladder, a field, a reading and the press', async ({ page }) => {
  const reached = new Set<string>()
  for (let press = 0; press < 80; press++) {
    await page.keyboard.press('Tab')
    reached.add(
      await page.evaluate(() => {
        let element = document.activeElement
        while (element?.shadowRoot?.activeElement) element = element.shadowRoot.activeElement
        const input = element as HTMLInputElement | null
        return input?.ariaLabel ?? input?.labels?.[0]?.textContent.trim() ?? input?.textContent.trim() ?? ''
      }),
    )
  }
  for (const name of [
    'First sheet',
    'Order reversed',
    'Unit 1: black, tack 16',
    'Tack of black',
    'Run',
    'Step nip',
    'Unit of film',
  ])
    expect(
      [...reached].some((each) => each.includes(name)),
      `${name} among ${[...reached].join(' | ')}`,
    ).toBe(true)
})
