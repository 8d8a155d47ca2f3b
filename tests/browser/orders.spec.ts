import { readFile } from 'node:fs/promises'
import type { Locator, Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import { aimOf } from '../../src/measure/order-service.ts'
import { colourJudge } from '../../src/measure/order-colours.ts'
import { whatToChange } from '../../src/press/changes.ts'
import { checkSetUp } from '../../src/press/check-setup.ts'
import { positionScores } from '../../src/press/order-positions.ts'
import { allPairs, usualWeights } from '../../src/press/order-score.ts'
import { rankOrders } from '../../src/press/orders.ts'
import { planTacks } from '../../src/press/tack-ladder.ts'
import { scenarios } from '../../src/session/scenarios.ts'
import { openBench, order } from './bench-page.ts'
import { listenTo } from './console.ts'
import { drawn } from './drawn.ts'
import { faultsInBothLights, sticksOut } from './faults.ts'

const checked = checkSetUp(scenarios.descending)
if ('problems' in checked) throw new Error(checked.problems[0].message)
const { setUp } = checked
const task = { setUp, overprints: allPairs(4), weights: usualWeights }
const names = (places: readonly number[]) => places.map((place) => setUp.inks[place].name).join(', ')

const row = (page: Page, rank: number): Locator => page.locator('tack-order-table tbody tr').nth(rank - 1)

async function openOrders(page: Page): Promise<void> {
  await page.goto('./#view=orders')
  await page.getByRole('heading', { name: 'Orders and changes' }).waitFor()
}

async function rankAll(page: Page): Promise<void> {
  await openOrders(page)
  await page.getByRole('button', { name: 'Rank all 24 orders' }).click()
  await page.getByText('All 24 orders are ranked.').waitFor()
}

async function part(page: Page, name: string): Promise<void> {
  await page.getByRole('radio', { name, exact: true }).check()
}

test('all orders are ranked as the same core ranks them here', async ({ page }) => {
  const said = listenTo(page)
  await rankAll(page)
  const { ranked } = rankOrders(setUp, { ...aimOf(task), judgeColour: colourJudge(setUp) ?? (() => NaN) })
  for (const rank of [1, 2, 12]) {
    const { order, score } = ranked[rank - 1]
    await expect(row(page, rank)).toContainText(names(order))
    await expect(row(page, rank)).toContainText(score.toFixed(2))
  }
  // The rank stands in the middle of its row, and the table beside what is said of it.
  const boxOf = (place: Locator) => place.evaluate((element) => element.getBoundingClientRect().toJSON() as DOMRect)
  await drawn(page)
  const whole = await boxOf(row(page, 1))
  const rank = await row(page, 1)
    .getByRole('rowheader')
    .evaluate((cell) => {
      const text = document.createRange()
      text.selectNodeContents(cell)
      return text.getBoundingClientRect().toJSON() as DOMRect
    })
  expect(Math.abs(rank.top + rank.bottom - whole.top - whole.bottom)).toBeLessThan(6)
  const harm = await boxOf(page.locator('tack-position-picture'))
  expect(whole.left).toBeGreaterThan(harm.right)
  expect(whole.top).toBeLessThan(harm.top)
  await page.getByRole('button', { name: 'Last' }).click()
  const worst = ranked[23]
  await expect(page.locator('tack-order-table tbody tr').last()).toContainText(names(worst.order))
  expect(said).toEqual([])
})

test('the picture names the position that does most harm, and its table says the same', async ({ page }) => {
  await rankAll(page)
  const scores = positionScores(4, rankOrders(setUp, aimOf(task)).ranked)
  if (!scores) throw new Error('nothing was ranked')
  const { ink, unit } = scores.worst
  await expect(page.getByText(`Most harm: ${setUp.inks[ink].name} on unit ${unit + 1}.`)).toBeVisible()
  const loud = page.locator('tack-position-picture .loud')
  await expect(loud).toHaveCount(1)
  await page.getByText('The same in numbers').click()
  const cell = page.locator('tack-position-picture tbody tr').nth(ink).locator('td').nth(unit)
  expect(await cell.textContent()).toBe(await loud.textContent())
})

test('an order is found by “black first”, loaded, and taken back', async ({ page }) => {
  await rankAll(page)
  const before = names([0, 1, 2, 3])
  // Any ink on any unit is found the same way.
  await page.getByRole('combobox', { name: 'Only orders with' }).selectOption('magenta')
  await page.getByRole('combobox', { name: 'On unit' }).selectOption('unit 3')
  await expect(page.locator('tack-order-table tbody tr')).toHaveCount(6)
  for (const each of await page.locator('tack-order-table td .note').all())
    await expect(each).toHaveText(/^\w+, \w+, magenta, \w+$/)
  await page.getByRole('button', { name: 'Black first' }).click()
  await expect(page.locator('tack-order-table tbody tr')).toHaveCount(6)
  for (const each of await page.locator('tack-order-table td .note').all()) await expect(each).toHaveText(/^black, /)
  const second = (await row(page, 2).locator('.note').textContent()) ?? ''
  await row(page, 2).getByRole('button', { name: /^Load/ }).click()
  await expect(row(page, 2)).toContainText('on the bench')
  await page.getByRole('link', { name: 'Bench' }).click()
  await expect.poll(async () => (await order(page)).join(', ')).toBe(second)
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect.poll(async () => (await order(page)).join(', ')).toBe(before)
  // The ranking is still there, and still of these inks.
  await page.getByRole('link', { name: 'Orders' }).click()
  await expect(page.getByText('All 24 orders are ranked.')).toBeVisible()
})

test('weights act at once, without printing again', async ({ page }) => {
  await rankAll(page)
  await page.getByText('What the score counts').click()
  for (const label of [/^Points for 1\s% of trap/, /^Points for 0.1\s% of the paper/, /^Points for 1 ΔE00/]) {
    await page.getByRole('textbox', { name: label }).fill('0')
    await page.getByRole('textbox', { name: label }).press('Enter')
  }
  const weights = { trap: 0, contamination: 100, picking: 0, colour: 0 }
  const [best] = rankOrders(setUp, { ...aimOf(task), weights }).ranked
  await expect(row(page, 1)).toContainText(names(best.order))
  await expect(row(page, 1)).toContainText(best.score.toFixed(2))
  const overprint = page.getByRole('checkbox', { name: 'black + cyan' })
  await overprint.uncheck()
  await expect(overprint).not.toBeChecked()
  await expect(page.getByRole('checkbox', { name: 'cyan + magenta' })).toBeChecked()
  await overprint.check()
  await page.getByRole('button', { name: 'Back to the usual weights' }).click()
  const [usual] = rankOrders(setUp, aimOf(task)).ranked
  await expect(row(page, 1)).toContainText(usual.score.toFixed(2))
})

test('two orders are watched side by side in step, by keys', async ({ page }) => {
  const said = listenTo(page)
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await rankAll(page)
  await row(page, 1)
    .getByRole('button', { name: /^Compare/ })
    .focus()
  await page.keyboard.press('Enter')
  await expect(page.getByText('One order is chosen')).toBeVisible()
  await row(page, 5)
    .getByRole('button', { name: /^Compare/ })
    .focus()
  await page.keyboard.press('Enter')
  const pair = page.locator('tack-order-pair')
  await expect(pair.getByRole('img', { name: /nip of unit 4/ })).toHaveCount(2)
  await pair.getByRole('radio', { name: 'unit 2' }).check()
  await expect(pair.getByRole('img', { name: /nip of unit 2/ })).toHaveCount(2)
  await pair.getByRole('button', { name: 'Step nip' }).click()
  await expect(pair.getByRole('slider')).toHaveAttribute('aria-valuetext', '100\u00a0% through the nip')
  await pair.getByRole('button', { name: 'Step nip' }).click()
  await expect(pair.getByRole('img', { name: /nip of unit 3/ })).toHaveCount(2)
  await pair.getByRole('slider').fill('40')
  await expect(pair.getByRole('slider')).toHaveAttribute('aria-valuetext', '40\u00a0% through the nip')
  await pair.getByRole('button', { name: 'Run', exact: true }).click()
  await expect(pair.getByRole('slider')).not.toHaveAttribute('aria-valuetext', '40\u00a0% through the nip')
  await pair.getByRole('button', { name: 'Pause' }).click()
  await pair.getByRole('button', { name: 'Put both away' }).click()
  await expect(pair.getByRole('img')).toHaveCount(0)
  expect(said).toEqual([])
})

test('eight inks get a bounded answer that says so, and can be cancelled', async ({ page }) => {
  const said = listenTo(page)
  await openBench(page)
  for (let ink = 0; ink < 4; ink++) await page.getByRole('button', { name: 'Add ink' }).click()
  await page.getByRole('link', { name: 'Orders' }).click()
  await page.getByRole('button', { name: 'Rank all 40,320 orders' }).click()
  await expect(page.getByText('A bounded answer, not yet the exact one')).toBeVisible()
  await expect(page.getByText('The picture comes once all orders are ranked.')).toBeVisible()
  await page.getByRole('button', { name: 'Cancel' }).click()
  await expect(page.getByText(/^Stopped at [\d,]+ of 40,320 orders/)).toBeVisible()
  await expect.poll(() => page.workers().length).toBe(0)
  await expect(row(page, 1)).toBeVisible()
  expect(said).toEqual([])
})

test('all orders are saved as CSV, best first', async ({ page }) => {
  await rankAll(page)
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save as CSV' }).click()
  const file = await download
  expect(file.suggestedFilename()).toBe('orders.csv')
  const lines = (await readFile(await file.path(), 'utf8')).trim().split('\r\n')
  expect(lines).toHaveLength(25)
  expect(lines[0]).toContain('mass trap kept (%)')
  const [best] = rankOrders(setUp, aimOf(task)).ranked
  expect(lines[1]).toContain(`1,${names(best.order).replaceAll(', ', ',')},${best.score}`)
})

test('the worthiest change comes first, after its cautions, and can be tried and taken back', async ({ page }) => {
  const said = listenTo(page)
  await openOrders(page)
  await part(page, 'What to change')
  await page.getByRole('button', { name: 'Try every single change' }).click()
  await expect(page.getByText('This is a teaching model')).toBeVisible()
  const [best] = whatToChange(setUp, aimOf(task))
  const first = page.locator('tack-what-to-change tbody tr').first()
  await expect(first).toContainText(`+${best.gain.toFixed(1)}`)
  // Cautions are read before the changes they belong to.
  const cautionsFirst = await page.locator('tack-what-to-change').evaluate((view) => {
    const [cautions, table] = ['.cautions', 'table'].map((each) => view.shadowRoot?.querySelector(each))
    return cautions && table
      ? Boolean(cautions.compareDocumentPosition(table) & Node.DOCUMENT_POSITION_FOLLOWING)
      : false
  })
  expect(cautionsFirst).toBe(true)
  const all = page.locator('tack-what-to-change tbody tr')
  const gaining = await all.count()
  await page.getByRole('checkbox', { name: 'Show the changes that do not gain as well' }).check()
  await expect.poll(() => all.count()).toBeGreaterThan(gaining)
  await first.getByRole('button', { name: /^Try it/ }).click()
  await expect(page.getByText(/^Done: .* Undo takes it back\.$/)).toBeVisible()
  await expect(page.getByText('The set-up has been changed since.')).toBeVisible()
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(page.getByText('The set-up has been changed since.')).toBeHidden()
  expect(said).toEqual([])
})

test('the tack planner gives the inks the ladder it found, or says what stops it; the focus stays where it was asked', async ({
  page,
}) => {
  const said = listenTo(page)
  await openOrders(page)
  await part(page, 'Tack planner')
  await page.getByRole('button', { name: 'Plan the tacks' }).click()
  const { best } = planTacks(setUp)
  await page.getByRole('button', { name: 'Give the inks these tacks' }).click()
  await page.getByRole('link', { name: 'Bench' }).click()
  for (const [unit, { name }] of setUp.inks.entries())
    await expect(page.getByRole('textbox', { name: `Tack of ${name}` })).toHaveValue(String(best?.tacks[unit]))
  await page.getByRole('link', { name: 'Orders' }).click()
  await part(page, 'Tack planner')
  await page.getByRole('textbox', { name: 'Mass trap, at least' }).fill('99')
  await page.getByRole('textbox', { name: 'Mass trap, at least' }).press('Enter')
  await page.getByRole('button', { name: 'Plan the tacks' }).press('Enter')
  await expect(page.getByText('Trap stops it')).toBeVisible()
  await expect(page.getByRole('button', { name: 'Plan the tacks' })).toBeFocused()
  expect(said).toEqual([])
})

test('axe finds nothing wrong with orders in the light and in the dark, and nothing sticks out at 390 px', async ({
  page,
}) => {
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await page.setViewportSize({ width: 390, height: 844 })
  await rankAll(page)
  await page.getByText('What the score counts').click()
  await page.getByText('The same in numbers').click()
  for (const rank of [1, 2])
    await row(page, rank)
      .getByRole('button', { name: /^Compare/ })
      .click()
  expect(await faultsInBothLights(page)).toEqual([])
  expect(await sticksOut(page)).toBe(false)
  await part(page, 'What to change')
  await page.getByRole('button', { name: 'Try every single change' }).click()
  await page.getByRole('heading', { name: 'First of all' }).waitFor()
  expect(await faultsInBothLights(page)).toEqual([])
  expect(await sticksOut(page)).toBe(false)
  await part(page, 'Tack planner')
  await page.getByRole('button', { name: 'Plan the tacks' }).click()
  await page.getByRole('button', { name: 'Give the inks these tacks' }).waitFor()
  expect(await faultsInBothLights(page)).toEqual([])
  expect(await sticksOut(page)).toBe(false)
})
