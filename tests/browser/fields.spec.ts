import { expect, test } from '@playwright/test'
import { enter, field, openBench, traps } from './bench-page.ts'
import { listenTo } from './console.ts'

let said: string[]
test.beforeEach(async ({ page }) => {
  said = listenTo(page)
  await openBench(page)
})
test.afterEach(() => expect(said).toEqual([]))

test('an entry that cannot be is explained at the field, and the value in force stays', async ({ page }) => {
  const before = await traps(page)
  await enter(page, 'Tack of cyan', '99')
  await expect(page.getByText('99 is out of range. Tack of cyan: 2 to 40 tack units. It stays at 14.')).toBeVisible()
  await enter(page, 'Tack of cyan', 'sticky')
  await expect(page.getByText('“sticky” is not a number.', { exact: false })).toBeVisible()
  await expect(field(page, 'Tack of cyan')).toHaveAttribute('aria-invalid', 'true')
  expect(await traps(page)).toEqual(before)
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled()
  await field(page, 'Tack of cyan').press('Escape')
  await expect(field(page, 'Tack of cyan')).toHaveValue('14')
  await expect(page.getByText('is not a number')).toHaveCount(0)
})

test('a legal entry changes the readings, and undo brings them back', async ({ page }) => {
  const before = await traps(page)
  // A step up and one down by keys lead back to where they began.
  await field(page, 'Tack of yellow').press('ArrowUp')
  expect(Number(await field(page, 'Tack of yellow').inputValue())).toBeGreaterThan(10)
  await field(page, 'Tack of yellow').press('ArrowDown')
  await expect(field(page, 'Tack of yellow')).toHaveValue('10')
  await enter(page, 'Tack of yellow', '16,5')
  await expect(field(page, 'Tack of yellow')).toHaveValue('16.5')
  const after = await traps(page)
  expect(after['yellow on magenta']).toBeLessThan(before['yellow on magenta'])
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(field(page, 'Tack of yellow')).toHaveValue('10')
  expect(await traps(page)).toEqual(before)
})

test('film, coverage and what an ink has besides are edited', async ({ page }) => {
  await enter(page, 'Film of black on the form roller', '3')
  await enter(page, 'Coverage of black', '80')
  await page.getByRole('button', { name: 'More about magenta' }).click()
  await enter(page, 'Temperature of its unit', '31')
  await enter(page, 'Foreign ink at the start', '12')
  await page.getByLabel('The sheet is dry when it gets here').check()
  await expect(page.getByText('met dry ink', { exact: false })).toHaveCount(0)
  await page.getByRole('radio', { name: 'Nip of unit 3, magenta' }).check()
  await expect(page.getByText('met dry ink', { exact: false })).toBeVisible()
})

test('units are switched, and what is typed counts in the unit shown', async ({ page }) => {
  await page.locator('summary', { hasText: 'Press' }).click()
  await page.getByLabel('Unit of speed').selectOption('sheets/h')
  await expect(field(page, 'Speed')).toHaveValue('10,000')
  await enter(page, 'Speed', '12000')
  await page.getByLabel('Unit of speed').selectOption('m/s')
  await expect(field(page, 'Speed')).toHaveValue('3')
  await expect(field(page, 'Time between units')).toHaveValue('0.375')
  await page.getByLabel('Unit of temperature').selectOption('degF')
  await expect(field(page, 'Temperature')).toHaveValue('77')
  await enter(page, 'Temperature', '400')
  await expect(page.getByText('Temperature: 50 to 140 °F', { exact: false })).toBeVisible()
})

test('the interval follows the speed unless it is pinned', async ({ page }) => {
  await page.locator('summary', { hasText: 'Press' }).click()
  await enter(page, 'Time between units', '0.8')
  await enter(page, 'Speed', '5')
  await expect(field(page, 'Time between units')).toHaveValue('0.8')
  await page.getByRole('button', { name: 'Let it follow speed' }).click()
  await expect(field(page, 'Time between units')).toHaveValue('0.225')
})

test('a paper is picked, edited and put back as supplied', async ({ page }) => {
  await page.locator('summary', { hasText: 'Paper' }).click()
  await page.getByLabel('Kind of paper').selectOption('newsprint')
  await expect(field(page, 'Strength')).toHaveValue('32')
  await enter(page, 'Strength', '20')
  await page.getByRole('button', { name: 'Back to the paper as supplied' }).click()
  await expect(field(page, 'Strength')).toHaveValue('32')
})
