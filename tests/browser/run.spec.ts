import { readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import { runRow } from '../../src/measure/run-rows.ts'
import { checkSetUp } from '../../src/press/check-setup.ts'
import { longRun } from '../../src/press/long-run.ts'
import { scenarios } from '../../src/session/scenarios.ts'
import { listenTo } from './console.ts'
import { drawn } from './drawn.ts'
import { faultsInBothLights, sticksOut } from './faults.ts'

const checked = checkSetUp(scenarios.descending)
if ('problems' in checked) throw new Error(checked.problems[0].message)
const { setUp } = checked

async function type(page: Page, label: string, text: string): Promise<void> {
  await page.getByRole('textbox', { name: label, exact: true }).fill(text)
  await page.getByRole('textbox', { name: label, exact: true }).press('Enter')
}

async function openRun(page: Page): Promise<void> {
  await page.goto('./#view=run+chart')
  await page.getByRole('heading', { name: 'Run chart' }).waitFor()
}

async function run(page: Page, sheets: string): Promise<void> {
  await type(page, 'Length of the run', sheets)
  await page.getByRole('button', { name: 'Run the press' }).click()
  await page.getByText(/sheets run; \d+ of them read/).waitFor()
}

async function addWashUp(page: Page, sheet: string): Promise<void> {
  await page.getByRole('combobox', { name: 'What happens' }).selectOption('wash-up of one unit')
  await type(page, 'Before sheet', sheet)
  await page.getByRole('button', { name: 'Add', exact: true }).click()
}

const marker = (page: Page) => page.getByRole('textbox', { name: 'Sheet looked at' })

test('a run of 100,000 sheets is drawn, and its table says what the same core says here', async ({ page }) => {
  const said = listenTo(page)
  await openRun(page)
  await run(page, '100000')
  await expect(page.locator('tack-run-chart canvas')).toHaveCount(3)
  await page.getByRole('button', { name: 'Last' }).click()
  const { contamination } = runRow(longRun(setUp, { sheets: 100_000 }), 100_000, undefined)
  const last = page.locator('tack-run-table tbody tr').last()
  await expect(last.locator('th')).toHaveText('100,000')
  expect(await last.locator('td').allTextContents()).toEqual(
    expect.arrayContaining(contamination.map((share) => (100 * share).toFixed(2))),
  )
  expect(said).toEqual([])
})

test('a wash-up is listed, drawn, told in the table and taken away', async ({ page }) => {
  await openRun(page)
  await addWashUp(page, '500')
  await run(page, '1000')
  await page.getByRole('radio', { name: 'foreign ink, %' }).check()
  const washed = page.locator('tack-run-table tbody tr', { hasText: 'wash-up of yellow' })
  for (let turn = 0; turn < 20 && (await washed.count()) === 0; turn++)
    await page.getByRole('button', { name: 'Next' }).click()
  await expect(washed.locator('th')).toHaveText('500')
  const events = [{ kind: 'wash-up', sheet: 500, unit: 3 } as const]
  const { contamination } = runRow(longRun(setUp, { sheets: 1000, events }), 500, undefined)
  await expect(washed.locator('td').nth(3)).toHaveText((100 * contamination[3]).toFixed(2))
  await page.getByRole('button', { name: 'Remove: Before sheet 500: wash-up of yellow' }).click()
  await expect(page.getByText('Nothing happens on the way')).toBeVisible()
  await expect(page.getByText('run the press again').first()).toBeVisible()

  // A stop is one of the whole press; an ink is altered in one unit, in its tack or its film.
  const kind = page.getByRole('combobox', { name: 'What happens' })
  const add = page.getByRole('button', { name: 'Add', exact: true })
  await kind.selectOption('stop, or make-ready again')
  await expect(page.getByRole('combobox', { name: 'Unit' })).toHaveCount(0)
  await add.click()
  await kind.selectOption('ink altered in its duct')
  await page.getByRole('combobox', { name: 'Unit' }).selectOption('2 cyan')
  await add.click()
  await page.getByRole('combobox', { name: 'Altered' }).selectOption('film')
  await type(page, 'To', '3')
  await type(page, 'Before sheet', '1200')
  await add.click()
  const happens = page.locator('tack-run-events li')
  await expect(happens).toHaveText([
    /500: stop/,
    /500: tack of cyan becomes 14 tack units/,
    /1,200: film of cyan becomes 3\sµm\s\(after the end of this run\)/,
  ])
  await run(page, '1000')
  await page.getByRole('combobox', { name: 'Patches' }).selectOption('overprints of two inks')
  await expect(page.getByText(/^At sheet .*cyan \+ magenta [\d.]+/)).toBeAttached()
})

test('the marker is moved by keys, by typing and by dragging, and its sheet is seen on the bench', async ({ page }) => {
  const said = listenTo(page)
  await openRun(page)
  await run(page, '2000')
  await page.getByRole('slider', { name: 'Sheet looked at' }).focus()
  await page.keyboard.press('ArrowRight')
  await expect(marker(page)).toHaveValue('2')
  await type(page, 'Sheet looked at', '1234')
  await expect(page.getByRole('button', { name: 'See sheet 1,234 on the bench' })).toBeVisible()
  await drawn(page)
  const box = await page.locator('tack-run-chart').first().boundingBox()
  if (!box) throw new Error('the chart is not drawn')
  await page.mouse.move(box.x + 0.3 * box.width, box.y + 80)
  await page.mouse.down()
  await page.mouse.move(box.x + 0.4 * box.width, box.y + 80, { steps: 4 })
  await page.mouse.up()
  await expect(marker(page)).not.toHaveValue(/^1,?234$/)
  const dragged = (await marker(page).inputValue()).replaceAll(',', '')
  await page.getByRole('button', { name: /^See sheet/ }).click()
  await expect(page.getByRole('textbox', { name: 'Number of the sheet' })).toHaveValue(
    Number(dragged).toLocaleString('en'),
  )
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(page.getByRole('textbox', { name: 'Number of the sheet' })).toBeHidden()
  expect(said).toEqual([])
})

test('behind an event the page says that the bench knows nothing of it', async ({ page }) => {
  await openRun(page)
  await addWashUp(page, '500')
  await run(page, '1000')
  await type(page, 'Sheet looked at', '499')
  await expect(page.getByText('The bench knows no events')).toBeHidden()
  await type(page, 'Sheet looked at', '500')
  await expect(page.getByText('The bench knows no events')).toBeVisible()
})

test('every column of the run is saved as CSV', async ({ page }) => {
  await openRun(page)
  await addWashUp(page, '500')
  await run(page, '1000')
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save all columns as CSV' }).click()
  const lines = (await readFile(await (await download).path(), 'utf8')).trim().split('\r\n')
  expect(lines[0]).toContain('foreign ink in the store of black (%)')
  expect(lines.find((line) => line.startsWith('500,'))).toContain('wash-up of yellow')
})

test('axe finds nothing wrong with a run in the light and in the dark, and nothing sticks out at 390 px', async ({
  page,
}) => {
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await page.setViewportSize({ width: 390, height: 844 })
  await openRun(page)
  await addWashUp(page, '500')
  await run(page, '1000')
  await type(page, 'Sheet looked at', '600')
  expect(await faultsInBothLights(page)).toEqual([])
  expect(await sticksOut(page)).toBe(false)
})
