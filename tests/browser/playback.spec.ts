import type { Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import { openBench } from './bench-page.ts'
import { listenTo } from './console.ts'

const scrub = (page: Page) => page.getByRole('slider', { name: 'nip', exact: true })

test('the page starts paused and runs when told', async ({ page }) => {
  const said = listenTo(page)
  await openBench(page)
  const before = await scrub(page).inputValue()
  await page.waitForTimeout(500)
  expect(await scrub(page).inputValue()).toBe(before)
  const slow = page.getByRole('switch', { name: 'Slow' })
  await expect(slow).toBeChecked()
  await slow.uncheck()
  await expect(page.getByText('Slow: off')).toBeVisible()
  await slow.check()
  await expect(page.getByText('Slow: on')).toBeVisible()
  await page.getByRole('button', { name: 'Run' }).click()
  await expect.poll(() => scrub(page).inputValue()).not.toBe(before)
  await page.getByRole('button', { name: 'Pause' }).click()
  const stopped = await scrub(page).inputValue()
  await page.waitForTimeout(300)
  expect(await scrub(page).inputValue()).toBe(stopped)
  expect(said).toEqual([])
})

test('a nip is moved by hand, back and forth, by keys', async ({ page }) => {
  await openBench(page)
  await scrub(page).focus()
  await page.keyboard.press('Home')
  await expect(scrub(page)).toHaveValue('0')
  await page.keyboard.press('ArrowRight')
  await page.keyboard.press('ArrowRight')
  await page.keyboard.press('ArrowLeft')
  await expect(scrub(page)).toHaveValue('1')
  await expect(scrub(page)).toHaveAttribute('aria-valuetext', '1\u00a0% through the nip')
})

test('who wants no motion steps from nip to nip at once', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await openBench(page)
  await page.getByRole('radio', { name: 'Nip of unit 1, black' }).check()
  await page.getByRole('button', { name: 'Step nip' }).click()
  await expect(scrub(page)).toHaveValue('100')
  await page.getByRole('button', { name: 'Step nip' }).click()
  await expect(page.getByRole('heading', { name: 'What happened at unit 2, cyan' })).toBeVisible()
})

/** In the place of the loudspeaker: writes down what the page would have it do. */
function heardInstead(): void {
  const heard = { pitches: [] as number[], knocks: 0, ends: 0 }
  Object.assign(window, { heard })
  // Levels are shares of 1, pitches hundreds of Hz.
  AudioParam.prototype.setTargetAtTime = function (this: AudioParam, value) {
    if (value > 20) heard.pitches.push(value)
    return this
  }
  OscillatorNode.prototype.stop = () => heard.knocks++
  AudioContext.prototype.close = () => {
    heard.ends++
    return Promise.resolve()
  }
}

test('a nip is heard once somebody asks for it: higher the harder it pulls, a knock where paper is picked', async ({
  page,
}) => {
  const said = listenTo(page)
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await page.addInitScript(heardInstead)
  const heard = () =>
    page.evaluate(() => (window as unknown as { heard: { pitches: number[]; knocks: number; ends: number } }).heard)
  await page.goto('./#view=bench&v=1&inks=black:20,cyan:8')
  const step = page.getByRole('button', { name: 'Step nip' })
  await page.getByRole('radio', { name: 'Nip of unit 1, black' }).check()
  await step.click()
  await expect(scrub(page)).toHaveValue('100')
  expect(await heard()).toEqual({ pitches: [], knocks: 0, ends: 0 })

  const ask = async (wanted: boolean) => {
    await page.getByRole('button', { name: 'Comfort' }).click()
    await page.getByRole('checkbox', { name: 'Let me hear the nip' }).setChecked(wanted)
    await page.keyboard.press('Escape')
  }
  await ask(true)
  await page.getByRole('radio', { name: 'Nip of unit 2, cyan' }).check()
  // Its code is fetched only now, and may come a moment later.
  await expect(async () => {
    await scrub(page).fill('0')
    await step.click()
    expect((await heard()).pitches.length).toBeGreaterThan(0)
  }).toPass()
  const soft = (await heard()).pitches.at(-1) ?? NaN
  await page.getByRole('radio', { name: 'Nip of unit 1, black' }).check()
  await scrub(page).fill('0')
  await step.click()
  await expect.poll(async () => (await heard()).pitches.at(-1)).toBeGreaterThan(soft)

  // Moved by hand, it is heard where it stands; where nothing pulls, it is silent.
  const [{ pitches: before }] = [await heard()]
  await scrub(page).fill('10')
  await scrub(page).fill('60')
  await expect.poll(async () => (await heard()).pitches.length).toBe(before.length + 1)

  await page.getByRole('button', { name: 'Weak paper' }).click()
  const knocks = (await heard()).knocks
  await expect(async () => {
    await step.click()
    expect((await heard()).knocks).toBeGreaterThan(knocks)
  }).toPass()

  // Running, one tone follows the nip, and pausing ends it.
  await page.getByRole('button', { name: 'Run', exact: true }).click()
  const running = (await heard()).pitches.length
  await expect.poll(async () => (await heard()).pitches.length).toBeGreaterThan(running + 2)
  await page.getByRole('button', { name: 'Pause' }).click()
  await ask(false)
  await expect.poll(async () => (await heard()).ends).toBe(1)
  expect(said).toEqual([])
})

test('a sheet further is the next sheet, and a settled press has no next one', async ({ page }) => {
  await openBench(page)
  await page.getByRole('button', { name: 'Step sheet' }).click()
  await expect(page.getByRole('textbox', { name: 'Number of the sheet' })).toHaveValue('2')
  await page.getByText('Settled', { exact: true }).click()
  await expect(page.getByRole('button', { name: 'Step sheet' })).toBeDisabled()
})
