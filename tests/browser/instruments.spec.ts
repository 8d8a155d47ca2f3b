import type { Locator, Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import { papers } from '../../src/physics/paper.ts'
import { oilViscosity, pickVelocity, placeOf } from '../../src/physics/pick-test.ts'
import { repeatability } from '../../src/physics/repeatability.ts'
import { listenTo } from './console.ts'
import { faultsInBothLights, sticksOutAt } from './faults.ts'

/** Standard deviations within which a mean of five has to lie: five would be missed once in two million. */
const five = (5 * repeatability.tackmeter) / Math.sqrt(5)

async function open(page: Page, rig: 'Tackmeter' | 'Pick test' | 'Wet-on-wet proof' = 'Tackmeter'): Promise<void> {
  await page.goto('./#view=instruments')
  await page.getByRole('radio', { name: rig, exact: true }).check()
}

async function choose(page: Page, name: string | RegExp): Promise<void> {
  await page.getByRole('radio', { name }).check()
}

async function dial(page: Page, label: string, value: string): Promise<void> {
  const field = page.getByRole('textbox', { name: label })
  await field.fill(value)
  await field.press('Enter')
}

/** Runs fresh ink to the minute, takes five readings and returns their mean as the table shows it. */
async function readFive(page: Page): Promise<number> {
  await page.getByRole('button', { name: 'Meter the ink on afresh' }).click()
  await page.getByRole('button', { name: 'On to 60\u00a0s' }).click()
  await page.getByRole('button', { name: 'Take five' }).click()
  const mean = page.locator('tack-tackmeter-readings table').first().locator('tbody tr').last().locator('td').last()
  return number(await mean.textContent())
}

/** The first number in a text. */
function number(text: string | null): number {
  return Number(/-?[\d,]*\.?\d+/.exec(text ?? '')?.[0].replaceAll(',', ''))
}

async function numbers(cells: Locator): Promise<number[]> {
  const texts = await cells.allTextContents()
  return texts.filter((text) => text.trim() !== '').map(number)
}

test('each loaded ink reads its tack at the standard condition, within the noise', async ({ page }) => {
  const said = listenTo(page)
  await open(page)
  for (const [ink, tack] of Object.entries({ black: 16, cyan: 14, magenta: 12, yellow: 10 })) {
    await choose(page, ink)
    expect(Math.abs((await readFive(page)) - tack)).toBeLessThan(five)
  }
  expect(said).toEqual([])
})

test('the reading rises with speed and falls with warmth and with more ink', async ({ page }) => {
  await open(page)
  const standard = await readFive(page)
  await dial(page, 'Main roller, rpm', '2400')
  expect(await readFive(page)).toBeGreaterThan(standard + 2 * five)
  await dial(page, 'Main roller, rpm', '1200')
  await dial(page, 'Rollers, °C', '40')
  expect(await readFive(page)).toBeLessThan(standard - 2 * five)
  await dial(page, 'Rollers, °C', '32.2')
  await dial(page, 'Ink metered on, ml', '3')
  expect(await readFive(page)).toBeLessThan(standard - 2 * five)
})

test('left running, the ink dries and reads higher; the chart goes on with it', async ({ page }) => {
  await open(page)
  await page.getByRole('button', { name: 'On to 60\u00a0s' }).click()
  const chart = page.getByRole('img', { name: /Reading against time/ })
  const atMinute = number(
    /to ([\d.]+) tack units after 60\ss/.exec((await chart.getAttribute('aria-label')) ?? '')?.[1] ?? null,
  )
  for (let minute = 0; minute < 3; minute++) await page.getByRole('button', { name: '60 s later' }).click()
  const later = number(
    /to ([\d.]+) tack units after 240\ss/.exec((await chart.getAttribute('aria-label')) ?? '')?.[1] ?? null,
  )
  expect(later).toBeGreaterThan(atMinute * 1.05)
})

test('the rollers start by a key, turn, and pause', async ({ page }) => {
  await open(page)
  await page.getByRole('button', { name: 'Start' }).focus()
  await page.keyboard.press('Enter')
  await expect(page.getByText('The rollers turn.')).toBeVisible()
  const time = page.getByText('since the ink was metered on')
  await expect.poll(async () => number(await time.textContent())).toBeGreaterThan(0.5)
  await page.keyboard.press('Enter')
  const paused = await time.textContent()
  await page.waitForTimeout(300)
  expect(await time.textContent()).toBe(paused)
})

test('no factor turns one scale into the other', async ({ page }) => {
  await open(page)
  for (const instrument of [/Laboratory/, /Workshop/]) {
    await choose(page, instrument)
    for (const ink of ['black', 'yellow']) {
      await choose(page, ink)
      await readFive(page)
    }
  }
  const rows = page.locator('tack-tackmeter-readings table').last().locator('tbody tr')
  await expect(rows).toHaveCount(2)
  const [black, yellow] = await Promise.all([numbers(rows.nth(0).locator('td')), numbers(rows.nth(1).locator('td'))])
  for (const [laboratory, workshop, ratio] of [black, yellow]) {
    expect(Math.abs(workshop / laboratory - ratio)).toBeLessThan(0.2)
  }
  expect(Math.abs(black[2] - yellow[2])).toBeGreaterThan(0.3)
})

test('an ink whose tack is not told is read, and a number too far off is not taken', async ({ page }) => {
  await open(page)
  await choose(page, 'Read an ink')
  const mean = await readFive(page)
  await dial(page, 'Your answer, on the laboratory scale', (mean + 1.5).toFixed(1))
  await page.getByRole('button', { name: 'Hand in' }).click()
  await expect(page.getByText('Not within the noise.')).toBeVisible()
  await dial(page, 'Your answer, on the laboratory scale', mean.toFixed(1))
  await page.getByRole('button', { name: 'Hand in' }).click()
  await expect(page.getByText('Right, within the noise of the readings.')).toBeVisible()
  await expect(page.getByRole('checkbox', { name: /law/ })).toHaveCount(0)
})

test('a series is graded from its readings, by keys alone', async ({ page }) => {
  await open(page)
  await choose(page, 'Grade a series')
  const read = new Map<string, number>()
  for (const letter of ['A', 'B', 'C', 'D']) {
    await choose(page, `Sample ${letter}`)
    read.set(`Sample ${letter}`, await readFive(page))
  }
  const wanted = [...read].sort(([, one], [, other]) => other - one).map(([name]) => name)
  for (const [place, name] of wanted.entries()) {
    const items = () => page.locator('tack-exercise-panel li span').allTextContents()
    for (let at = (await items()).findIndex((text) => text.includes(name)); at > place; at--) {
      await page.getByRole('button', { name: `${name} earlier` }).focus()
      await page.keyboard.press('Enter')
    }
  }
  await page.getByRole('button', { name: 'Hand in' }).click()
  await expect(page.getByText('Right: the tackiest prints first')).toBeVisible()
})

test('the ink is read at the speed of a web press', async ({ page }) => {
  await open(page)
  await choose(page, 'Web speed')
  const rpm = number(/([\d,]+)\srpm/.exec((await page.getByText(/That is/).textContent()) ?? '')?.[1] ?? null)
  await dial(page, 'Main roller, rpm', String(Math.round(rpm / 10) * 10))
  const mean = await readFive(page)
  await dial(page, 'Your answer, on the laboratory scale', mean.toFixed(1))
  await page.getByRole('button', { name: 'Hand in' }).click()
  await expect(page.getByText('Right, within the noise of the readings.')).toBeVisible()
})

test('the pick test is marked by keys; the product is that of the numbers shown, and no press speed', async ({
  page,
}) => {
  const said = listenTo(page)
  await open(page, 'Pick test')
  await expect(page.getByText('A pick velocity is not a press speed.')).toBeVisible()
  await page.getByRole('button', { name: 'Print a strip' }).click()
  const begins = pickVelocity({ paper: papers.coated, oil: 'medium', wet: false })
  const place = Math.round(placeOf({ endVelocity: 5 }, begins))
  await page.getByRole('slider').focus()
  for (let step = 0; step < place; step++) await page.keyboard.press('ArrowRight')
  await page.getByRole('button', { name: 'Here picking begins' }).press('Enter')
  await expect(page.getByText('Right: here picking begins.')).toBeVisible()
  const formula = (await page.getByText(/Pick resistance =/).textContent()) ?? ''
  const [velocity, viscosity, resistance] = Array.from(formula.matchAll(/[\d.]+/g), ([each]) => Number(each))
  expect(viscosity).toBe(oilViscosity.medium)
  // Shown to 0.01 m/s and 0.1 N/m.
  expect(Math.abs(velocity * viscosity - resistance)).toBeLessThan(0.005 * viscosity + 0.05 + 1e-9)
  expect(said).toEqual([])
})

test('a mark too early is told so, and a wetted strip is weaker', async ({ page }) => {
  await open(page, 'Pick test')
  await page.getByRole('button', { name: 'Print a strip' }).click()
  // Marked with the pointer, in the middle; then by the slider.
  await page.locator('tack-pick-strip svg').click()
  const longest = Number(await page.getByRole('slider').getAttribute('max'))
  expect(Math.abs(Number(await page.getByRole('slider').inputValue()) - longest / 2)).toBeLessThanOrEqual(1)
  await page.getByRole('slider').fill('10')
  await page.getByRole('button', { name: 'Here picking begins' }).click()
  await expect(page.getByText('Too early:')).toBeVisible()
  const strength = page.getByText(/In the press model this paper/)
  const dry = number(/strength of ([\d.]+)/.exec((await strength.textContent()) ?? '')?.[1] ?? null)
  await page.getByRole('checkbox', { name: 'Wet the strip first' }).check()
  await page.getByRole('button', { name: 'Print a strip' }).click()
  await page.getByRole('button', { name: 'Nowhere on this strip' }).click()
  const wet = number(/strength of ([\d.]+)/.exec((await strength.textContent()) ?? '')?.[1] ?? null)
  expect(wet).toBeLessThan(dry)
})

test('a proof is weighed in both orders, and the ratio is that of the weights shown', async ({ page }) => {
  await open(page, 'Wet-on-wet proof')
  await page.getByRole('button', { name: 'Print and weigh' }).click()
  await page.getByRole('button', { name: 'Print them the other way round' }).click()
  for (let more = 0; more < 3; more++) await page.getByRole('button', { name: 'Weigh again and average' }).click()
  await expect(page.getByText('Mean of 4 weighings')).toBeVisible()
  const results = page.locator('tack-proof-result')
  await expect(results).toHaveCount(2)
  const ratios: number[] = []
  for (const result of await results.all()) {
    const strip = await numbers(result.locator('tbody tr').nth(0).locator('td'))
    const dry = await numbers(result.locator('tbody tr').nth(1).locator('td'))
    const shown = /= ([\d.]+)\smg \/ ([\d.]+)\smg = (\d+)\s%/.exec(
      (await result.getByText(/Mass trap ratio/).textContent()) ?? '',
    )
    const [onWet, onDry, percent] = (shown ?? []).slice(1).map(Number)
    expect(Math.abs(strip[2] - strip[1] - onWet)).toBeLessThan(0.2)
    expect(Math.abs(dry[1] - dry[0] - onDry)).toBeLessThan(0.2)
    expect(Math.abs((100 * onWet) / onDry - percent)).toBeLessThan(2)
    ratios.push(percent)
  }
  // Black is the tackier of the two: it takes cyan well, and cyan takes it badly.
  expect(ratios[0]).toBeGreaterThan(ratios[1] + 10)
})

test('axe finds nothing wrong with the rigs in the light and in the dark', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await open(page)
  await readFive(page)
  await page.getByRole('checkbox', { name: /law/ }).check()
  expect(await faultsInBothLights(page)).toEqual([])
  await choose(page, 'Grade a series')
  expect(await faultsInBothLights(page)).toEqual([])
  await choose(page, 'Pick test')
  await page.getByRole('button', { name: 'Print a strip' }).click()
  await page.getByRole('button', { name: 'Nowhere on this strip' }).click()
  await page.locator('tack-pick-rig summary').click()
  expect(await faultsInBothLights(page)).toEqual([])
  await choose(page, 'Wet-on-wet proof')
  await page.getByRole('button', { name: 'Print and weigh' }).click()
  await page.locator('tack-proof-result summary').click()
  expect(await faultsInBothLights(page)).toEqual([])
})

test('no rig sticks out to the side from 320 to 1920 px', async ({ page }) => {
  const widths = [320, 390, 1366, 1920]
  await open(page)
  await readFive(page)
  expect(await sticksOutAt(page, widths)).toEqual([])
  await choose(page, 'Pick test')
  await page.getByRole('button', { name: 'Print a strip' }).click()
  expect(await sticksOutAt(page, widths)).toEqual([])
  await choose(page, 'Wet-on-wet proof')
  await page.getByRole('button', { name: 'Print and weigh' }).click()
  expect(await sticksOutAt(page, widths)).toEqual([])
})
