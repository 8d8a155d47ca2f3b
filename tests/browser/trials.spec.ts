import { readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import { checkSetUp } from '../../src/press/check-setup.ts'
import { readSheet } from '../../src/press/readings.ts'
import { runPress } from '../../src/press/run.ts'
import type { ScenarioName } from '../../src/session/scenarios.ts'
import { scenarios } from '../../src/session/scenarios.ts'
import { openBench, order, unfoldHead } from './bench-page.ts'
import { listenTo } from './console.ts'
import { faultsInBothLights, sticksOut } from './faults.ts'

/** Percent: the least mass trap of any pair, computed here by the same core. */
function leastTrap(scenario: ScenarioName): number {
  const checked = checkSetUp(scenarios[scenario])
  if ('problems' in checked) throw new Error(checked.problems[0].message)
  return 100 * Math.min(...readSheet(runPress(checked.setUp)).traps.map(({ massTrap }) => massTrap))
}

/** Pins the set-up as it opens and the reversed one, each with what was expected. */
async function pinTwo(page: Page): Promise<void> {
  await openBench(page)
  for (const [name, expected] of [
    ['Tacks step down', 'all inks take'],
    ['Order reversed', '=black lifts the others'],
  ]) {
    await unfoldHead(page)
    await page.getByRole('link', { name: 'Bench' }).click()
    await page.getByRole('button', { name }).click()
    await unfoldHead(page)
    await page.getByRole('link', { name: 'Trials' }).click()
    await page.getByRole('textbox', { name: 'Name', exact: true }).fill(name)
    await page.getByRole('textbox', { name: 'What I expect, and why' }).fill(expected)
    await page.getByRole('button', { name: 'Pin this trial' }).click()
  }
}

const rows = (page: Page) => page.getByRole('region', { name: 'Pinned trials' }).locator('tbody tr')

test('trials keep what was expected and show what was printed', async ({ page }) => {
  const said = listenTo(page)
  await pinTwo(page)
  await expect(rows(page)).toHaveCount(2)
  for (const [index, scenario] of (['descending', 'reversed'] as const).entries())
    await expect(rows(page).nth(index)).toContainText(leastTrap(scenario).toFixed(1))
  await expect(page.getByRole('textbox', { name: 'What was expected of “Tacks step down”' })).toHaveValue(
    'all inks take',
  )
  await page.getByRole('textbox', { name: 'What was seen in “Order reversed”' }).fill('so it was')
  await page.getByRole('link', { name: 'Bench' }).click()
  await page.getByRole('link', { name: 'Trials' }).click()
  await expect(page.getByRole('textbox', { name: 'What was seen in “Order reversed”' })).toHaveValue('so it was')
  expect(said).toEqual([])
})

test('two rows are compared: what was changed, and what came of it', async ({ page }) => {
  await pinTwo(page)
  const compare = page.locator('tack-compare-trials')
  await expect(compare.getByRole('row', { name: /^order of the inks/ })).toContainText('yellow, magenta, cyan, black')
  const difference = leastTrap('reversed') - leastTrap('descending')
  await expect(compare.getByRole('row', { name: /^least mass trap/ })).toContainText(
    `${difference < 0 ? '−' : '+'}${Math.abs(difference).toFixed(2)} percentage points`,
  )
  await compare.getByRole('combobox', { name: 'To' }).selectOption({ index: 0 })
  await expect(compare.getByText('Nothing was changed between these two.')).toBeVisible()

  // One that differs in nearly all: each difference in words, and an ink that only one of them has as such.
  const inks = 'black:15:temp35,silver:12:rgb8a8d8f'
  await page.goto(`./#v=1&inks=${inks}&paper=newsprint:strength30&press=web:waterless&sheet=settled&view=trials`)
  await page.getByRole('button', { name: 'Pin this trial' }).click()
  await expect(rows(page)).toHaveCount(3)
  await compare.getByRole('combobox', { name: 'From' }).selectOption({ index: 0 })
  await compare.getByRole('combobox', { name: 'To' }).selectOption({ index: 2 })
  for (const [what, from, to, by] of [
    ['ink cyan', 'there, tack 14 tack units', 'not stated', ''],
    ['ink silver', 'not stated', 'there, tack 12 tack units', ''],
    ['black: tack, tack units', '16', '15', '−1.00'],
    ['black: temperature, °C', 'not stated', '35', ''],
    ['kind of press', 'sheet-fed', 'web', ''],
    ['waterless', 'no', 'yes', ''],
    ['which sheet is read', 'first', 'settled', ''],
  ])
    await expect(compare.getByRole('row', { name: what }).getByRole('cell')).toHaveText([from, to, by])
})

test('a trial is loaded on the bench and taken back, removed and put back', async ({ page }) => {
  await pinTwo(page)
  await page.getByRole('button', { name: 'Load “Tacks step down” on the bench' }).click()
  await page.getByRole('link', { name: 'Bench' }).click()
  await expect.poll(() => order(page)).toEqual(['black', 'cyan', 'magenta', 'yellow'])
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect.poll(() => order(page)).toEqual(['yellow', 'magenta', 'cyan', 'black'])
  await page.getByRole('link', { name: 'Trials' }).click()
  await page.getByRole('button', { name: 'Remove “Tacks step down”' }).click()
  await expect(rows(page)).toHaveCount(1)
  await page.getByRole('button', { name: 'Put it back' }).click()
  await expect(rows(page)).toHaveCount(2)
  await expect(rows(page).first()).toContainText('Tacks step down')
})

test('the table is saved as CSV, and no text in it is taken for a formula', async ({ page }) => {
  await pinTwo(page)
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save as CSV' }).click()
  const lines = (await readFile(await (await download).path(), 'utf8')).trim().split('\r\n')
  expect(lines).toHaveLength(3)
  expect(lines[0]).toContain('least mass trap (%)')
  expect(lines[2]).toContain("'=black lifts the others")
})

test('axe finds nothing wrong with trials in the light and in the dark, and nothing sticks out at 390 px', async ({
  page,
}) => {
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await page.setViewportSize({ width: 390, height: 844 })
  await pinTwo(page)
  expect(await faultsInBothLights(page)).toEqual([])
  expect(await sticksOut(page)).toBe(false)
})
