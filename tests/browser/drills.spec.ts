import { readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import type { DrillRequest } from '../../src/drill/drill.ts'
import { makeDrill } from '../../src/drill/drill.ts'
import { evidenceKey } from '../../src/drill/evidence.ts'
import { enoughEvidence } from '../../src/drill/judge.ts'
import { observe } from '../../src/drill/observe.ts'
import type { DrillSaid } from '../../src/drill/said.ts'
import { causeSaid, cureSaid, evidenceSaid } from '../../src/drill/said.ts'
import { say } from '../../src/ui/say.ts'
import { listenTo } from './console.ts'
import { faultsInBothLights, sticksOutAt } from './faults.ts'

/** Making a drill takes a second or so of a free processor. */
const patience = { timeout: 60_000 }
test.setTimeout(180_000)

const words = ({ message, values }: DrillSaid) => say(message, { ...values })

async function open(page: Page, { level, seed }: DrillRequest): Promise<void> {
  await page.goto(`./#view=drills&drill=${level}:${seed}`)
  await expect(page.getByText('The sheet is on the table.')).toBeVisible(patience)
}

function exactly(page: Page, name: string) {
  return page.getByRole('button', { name, exact: true })
}

/** Which way a colour has gone whose number is higher or lower than usual. */
function gone(name: string): { more: string; less: string } {
  if (name === 'lightness') return { more: 'lighter', less: 'darker' }
  if (name === 'red-green') return { more: 'towards red', less: 'towards green' }
  return { more: 'towards yellow', less: 'towards blue' }
}

async function cure(page: Page, name: string): Promise<void> {
  await page.getByRole('combobox', { name: 'What to do' }).selectOption({ label: name })
  // The caution is there before anything is done.
  await expect(page.locator('tack-cure-panel').getByText('This is a teaching model')).toBeVisible()
  await page.getByRole('button', { name: 'Do it' }).click()
}

test('a drill is worked from the sheet to the cure, and is written down', async ({ page }) => {
  const said = listenTo(page)
  const drill = makeDrill({ seed: 3, level: 'easy' })
  await open(page, drill.request)
  await expect(page.getByRole('img', { name: /Patches of the good sheet/ })).toBeVisible()
  // What the three numbers say is to be looked at, and each that is not as usual says which way the colour has gone.
  await expect(page.getByText('−50 blue')).toBeVisible()
  const table = await page.locator('tack-evidence-card table').first().innerText()
  const unusual = observe(drill, { kind: 'eye', unit: null }, 1).flatMap(({ quantity, value, usual: [least, most] }) =>
    value > most ? [gone(quantity.name).more] : value < least ? [gone(quantity.name).less] : [],
  )
  expect(unusual.length).toBeGreaterThan(0)
  expect(table.match(/(?<=[▲▼] )[a-z ]+/g)?.toSorted()).toEqual(unusual.toSorted())
  const enough = enoughEvidence(drill)
  for (const piece of enough) {
    if (evidenceKey(piece) !== 'eye') await exactly(page, words(evidenceSaid(drill, piece))).click()
    await page.getByRole('checkbox', { name: words(evidenceSaid(drill, piece)), exact: true }).check()
  }
  await page.getByRole('radio', { name: words(causeSaid(drill, drill.faults[0])), exact: true }).check()
  await page.getByRole('button', { name: 'Name it' }).click()
  await expect(page.getByText('What you named rules out every other cause offered.')).toBeVisible(patience)
  await expect(page.getByText('What misled:')).toBeVisible()
  await cure(page, words(cureSaid(drill, { kind: 'put right', cause: drill.faults[0] })))
  await expect(page.getByText('The sheet is good again')).toBeVisible(patience)
  await expect(page.getByText('This puts right the cause itself.')).toBeVisible()
  // Its tables are to be looked up, not to be read out whole.
  await expect(page.getByText('What it gained')).toBeVisible()
  await expect(page.locator('tack-cure-panel [aria-live]').getByText('What it gained')).toHaveCount(0)
  await page.getByRole('radio', { name: 'Record' }).check()
  await expect(page.getByRole('row', { name: /easy-3/ })).toContainText('found and proven')
  await page.reload()
  await page.getByRole('radio', { name: 'Record' }).check()
  await expect(page.getByRole('row', { name: /easy-3/ })).toContainText('found and proven')
  expect(said).toEqual([])
})

test('a wrong cause gives nothing away until the answer is asked for', async ({ page }) => {
  const drill = makeDrill({ seed: 3, level: 'easy' })
  const wrong = drill.offered.find((cause) => cause.kind !== drill.faults[0].kind)
  if (!wrong) throw new Error('This drill offers no cause of another kind.')
  await open(page, drill.request)
  await page.getByRole('button', { name: 'Name it' }).click()
  await expect(page.getByText('Choose one cause.')).toBeVisible()
  await page.getByRole('radio', { name: words(causeSaid(drill, wrong)), exact: true }).check()
  await page.getByRole('button', { name: 'Name it' }).click()
  await expect(page.getByText('Choose at least one piece of evidence')).toBeVisible()
  await page.getByRole('checkbox', { name: 'Sheet, by eye' }).check()
  await page.getByRole('button', { name: 'Name it' }).click()
  await expect(page.getByText('Not so:')).toBeVisible(patience)
  await expect(page.getByText('Missed:')).toHaveCount(0)
  await expect(page.getByText('This would have been enough')).toHaveCount(0)
  await expect(page.locator('tack-cure-panel').getByText('Being judged…')).toHaveCount(0)
  await page.getByRole('button', { name: 'Show the answer' }).click()
  const missed = words(causeSaid(drill, drill.faults[0]))
  await expect(page.getByText(`Missed: ${missed}`)).toBeVisible()
  await expect(page.locator('tack-diagnosis-verdict').getByText(missed)).toHaveCount(1)
  await cure(page, words(cureSaid(drill, { kind: 'put right', cause: wrong })))
  await expect(page.locator('tack-cure-panel .mark').nth(1)).toBeVisible(patience)
  await expect(page.getByText('The sheet is good again')).toHaveCount(0)
})

test('more readings narrow what is usual, and are still there after a reload', async ({ page }) => {
  await open(page, { level: 'easy', seed: 3 })
  await exactly(page, 'Speed counter').click()
  const usual = page.locator('tack-evidence-card').first().locator('small')
  const span = async () => {
    const [least, most] = Array.from(((await usual.textContent()) ?? '').matchAll(/[\d.]+/g), ([each]) => Number(each))
    return most - least
  }
  const once = await span()
  for (let more = 0; more < 5; more++) await exactly(page, 'Speed counter: Three more').click()
  await expect(page.getByText('Mean of 16 readings.')).toBeVisible()
  await expect(page.locator('tack-drill-evidence').getByText(/^Speed counter, mean of 16 readings: /)).toBeAttached()
  const read = await page.locator('tack-evidence-card').first().locator('table').textContent()
  expect(await span()).toBeLessThan(once)
  await expect(exactly(page, 'Speed counter: Read again')).toBeDisabled()
  // The next visit comes without the link, and finds the drill where it was left.
  await page.goto('./#view=drills')
  await page.reload()
  await expect(page.getByText('Mean of 16 readings.')).toBeVisible(patience)
  expect(await page.locator('tack-evidence-card').first().locator('table').textContent()).toBe(read)

  // What the loupe shows comes as a picture of its own, round as it is.
  await exactly(page, 'Loupe').click()
  await page.getByRole('button', { name: 'File', exact: true }).click()
  const which = page.getByRole('combobox', { name: 'Picture' })
  await expect(which.locator('option').filter({ hasText: /^\s*(good|this) sheet\s*$/ })).toHaveText([
    'good sheet',
    'this sheet',
  ])
  await which.selectOption('good sheet')
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save as SVG' }).click()
  const svg = await readFile(await (await download).path(), 'utf8')
  expect(svg).toMatch(/<clipPath id="[^"]+"><circle[^]*<image [^>]*href="data:image\/png;base64,/)
})

test('two learners with one link get the same readings', async ({ page, browser, baseURL }) => {
  const second = await browser.newContext(baseURL === undefined ? {} : { baseURL })
  const other = await second.newPage()
  const read = async (tab: Page) => {
    await open(tab, { level: 'medium', seed: 11 })
    await exactly(tab, 'Loupe').click()
    return tab.locator('tack-evidence-card').first().locator('table').textContent()
  }
  expect(await read(page)).toBe(await read(other))
  await second.close()
})

test('the next drill opens by a key, and another follows', async ({ page }) => {
  await page.goto('./#view=drills')
  await page.getByRole('button', { name: 'Next drill' }).focus()
  await page.keyboard.press('Enter')
  const code = page.getByText('This is drill')
  await expect(code).toBeVisible(patience)
  const first = await code.textContent()
  await page.getByRole('button', { name: 'Next drill' }).click()
  await expect(code).toBeVisible(patience)
  await expect(code).not.toHaveText(first ?? '', patience)
})

test('each remedy begins with its caution, shows gain and cost, and goes to the bench on request', async ({ page }) => {
  await page.goto('./#view=drills')
  await page.getByRole('radio', { name: 'Remedies' }).check()
  const sections = page.locator('tack-remedies-panel section')
  await expect(sections).toHaveCount(11)
  for (const section of await sections.all()) {
    const caution = await section.getByText('This is a teaching model').boundingBox()
    const button = await section.getByRole('button').boundingBox()
    expect(caution && button && caution.y < button.y).toBe(true)
  }
  const slow = sections.filter({ hasText: 'Slow the press by a quarter' })
  await slow.getByRole('button').click()
  await expect(slow.getByRole('table', { name: 'What it cost' })).toContainText('Speed')
  await slow.getByRole('button', { name: 'Take it to the bench' }).click()
  await page.getByRole('button', { name: 'Undo' }).click()
})

test('axe finds nothing wrong with a drill in the light and in the dark', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await open(page, { level: 'hard', seed: 5 })
  for (const name of ['Loupe', 'Densitometer on the strip', 'Run chart', 'Pick test of the paper']) {
    await exactly(page, name).click()
  }
  expect(await faultsInBothLights(page)).toEqual([])
  for (const cause of [0, 1])
    await page.locator('tack-diagnosis-form fieldset').first().locator('input').nth(cause).check()
  await page.getByRole('checkbox', { name: 'Sheet, by eye' }).check()
  await page.getByRole('button', { name: 'Name it' }).click()
  await page.getByRole('combobox', { name: 'What to do' }).selectOption({ index: 1 }, patience)
  await page.getByRole('button', { name: 'Do it' }).click()
  await expect(page.locator('tack-cure-panel .mark').nth(1)).toBeVisible(patience)
  expect(await faultsInBothLights(page)).toEqual([])
  await page.getByRole('radio', { name: 'Remedies' }).check()
  await page.getByRole('button', { name: /Compute gain and cost: Slow/ }).click()
  expect(await faultsInBothLights(page)).toEqual([])
  await page.getByRole('radio', { name: 'Record' }).check()
  expect(await faultsInBothLights(page)).toEqual([])
})

test('nothing of a drill sticks out to the side from 320 to 1920 px', async ({ page }) => {
  const widths = [320, 390, 1366, 1920]
  await open(page, { level: 'easy', seed: 3 })
  for (const name of ['Loupe', 'Densitometer on the strip', 'Run chart']) await exactly(page, name).click()
  await expect(page.locator('tack-run-chart canvas')).toBeVisible()
  await page.getByRole('radio', { name: 'blue' }).check()
  expect(await sticksOutAt(page, widths)).toEqual([])
  for (const part of ['Remedies', 'Record']) {
    await page.getByRole('radio', { name: part }).check()
    expect(await sticksOutAt(page, widths)).toEqual([])
  }
})
