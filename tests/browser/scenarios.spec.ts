import { expect, test } from '@playwright/test'
import { checkSetUp } from '../../src/press/check-setup.ts'
import { readSheet } from '../../src/press/readings.ts'
import { runPress } from '../../src/press/run.ts'
import type { Reading } from '../../src/press/setup.ts'
import type { ScenarioName } from '../../src/session/scenarios.ts'
import { scenarioNames, scenarios } from '../../src/session/scenarios.ts'
import { bench } from '../../src/words/en/bench.ts'
import { openBench, traps } from './bench-page.ts'
import { listenTo } from './console.ts'

/** Mass traps in whole percent, computed here by the same core. */
function computed(scenario: ScenarioName, reading: Reading = scenarios[scenario].reading): Record<string, number> {
  const checked = checkSetUp({ ...scenarios[scenario], reading })
  if ('problems' in checked) throw new Error(checked.problems[0].message)
  const { inks } = checked.setUp
  return Object.fromEntries(
    readSheet(runPress(checked.setUp)).traps.map(({ earlier, later, massTrap }) => [
      `${inks[later].name} on ${inks[earlier].name}`,
      Math.round(100 * massTrap),
    ]),
  )
}

test('each scenario is one click, and shows what the computation says', async ({ page }) => {
  const said = listenTo(page)
  await openBench(page)
  for (const scenario of scenarioNames) {
    const button = page.getByRole('button', { name: bench[`bench.scenario.${scenario}`] })
    await button.click()
    await expect(button).toHaveAttribute('aria-pressed', 'true')
    expect(await traps(page)).toEqual(computed(scenario))
  }
  expect(said).toEqual([])
})

test('first sheet, sheet N and settled each show their own numbers', async ({ page }) => {
  await openBench(page)
  await page.getByRole('button', { name: bench['bench.scenario.reversed'] }).click()
  await page.getByText('Settled', { exact: true }).click()
  expect(await traps(page)).toEqual(computed('reversed', 'settled'))
  await page.getByText('Sheet number', { exact: true }).click()
  expect(await traps(page)).toEqual(computed('reversed', { sheet: 100 }))
  await page.getByRole('textbox', { name: 'Number of the sheet' }).fill('7')
  await page.getByRole('textbox', { name: 'Number of the sheet' }).press('Enter')
  expect(await traps(page)).toEqual(computed('reversed', { sheet: 7 }))
})
