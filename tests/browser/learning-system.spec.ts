/** Whole visits from learning systems: the real package, unpacked and served, in a frame or a window of its own. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { FrameLocator, Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import { unzipSync } from 'fflate'
import { pageFor } from '../../src/report/learning-package/package-files.ts'
import { StrictScorm } from '../report/learning-system/strict-scorm.ts'
import { listenTo } from './console.ts'
import { LearningSite } from './learning-site.ts'

type Shown = Page | FrameLocator

async function goOn(shown: Shown): Promise<void> {
  await shown.getByRole('button', { name: 'Go on', exact: true }).click()
}

/** The first three steps of the lesson on the faulty job: read, predict, and a reading missed once. */
async function answerThrice(shown: Shown): Promise<void> {
  await goOn(shown)
  await shown.getByRole('radio').first().check()
  await shown.getByRole('button', { name: 'That is my prediction' }).click()
  await goOn(shown)
  for (const reading of ['3', '58']) {
    await shown.getByLabel('Your reading').fill(reading)
    await shown.getByRole('button', { name: 'Hand in', exact: true }).click()
  }
  await expect(shown.getByRole('button', { name: 'Go on', exact: true })).toBeEnabled()
}

for (const standard of ['scorm-1.2', 'scorm-2004'] as const) {
  test(`${standard}: a visit in a frame, closed in mid-lesson and taken up again`, async ({ page }) => {
    const said = listenTo(page)
    const site = new LearningSite({ standard, parcel: { lessons: ['faulty-job', 'tack'], drills: 1, mastery: 0.8 } })
    await site.open()
    await page.goto(`${site.address}/lms.html`)
    const shown = page.frameLocator('#page')
    const bar = shown.getByRole('region', { name: 'Learning system' })
    await expect(bar).toContainText('Your results go to the learning system that opened this page, and nowhere else.')
    await expect(shown.getByRole('list', { name: 'The course' }).getByRole('listitem')).not.toHaveCount(17)
    await shown.getByRole('button', { name: /^Begin: .*job/i }).click()
    await answerThrice(shown)
    await expect(bar.getByRole('status')).toHaveText('Everything has arrived there.')
    await page
      .locator('#page')
      .evaluate((frame: HTMLIFrameElement) => frame.contentWindow?.location.replace('about:blank'))
    const [begin, end] = standard === 'scorm-1.2' ? ['LMSInitialize', 'LMSFinish'] : ['Initialize', 'Terminate']
    await expect.poll(() => callsOf(page).then((calls) => calls.at(-1)?.[0])).toBe(end)

    // A system that is strict takes every call that this one was given.
    const strict = new StrictScorm(standard === 'scorm-1.2' ? '1.2' : '2004')
    const calls = await callsOf(page)
    expect(calls[0][0]).toBe(begin)
    for (const [name, values] of calls) (strict.api[name] as (...values: string[]) => string)(...values)
    expect(strict.problems).toEqual([])
    expect(strict.interactions().map(({ id }) => id)).toEqual([
      'faulty-job--first-thought',
      'faulty-job--measure',
      'faulty-job--measure',
    ])
    // And this one has taken all of it but what it does not know.
    const refused = calls.filter(([name, , answer]) => /SetValue|Commit/.test(name) && answer !== 'true')
    expect(refused).toEqual([])

    const kept = await page.evaluate(() => {
      const { real } = window as unknown as { real: { cmi: { suspend_data: string } } }
      return JSON.parse(JSON.stringify(real.cmi)) as Record<string, unknown>
    })
    const again = new StrictScorm(strict.edition, strict.committed)
    await page.evaluate((cmi) => (window.name = JSON.stringify({ cmi })), onlyKept(kept))
    await page.goto(`${site.address}/lms.html`)
    await expect(shown.getByRole('heading', { name: /^Step 3 of / })).toBeVisible()
    await goOn(shown)
    await expect(shown.getByRole('heading', { name: /^Step 4 of / })).toBeVisible()
    await page
      .locator('#page')
      .evaluate((frame: HTMLIFrameElement) => frame.contentWindow?.location.replace('about:blank'))
    await expect.poll(() => callsOf(page).then((each) => each.at(-1)?.[0])).toBe(end)
    for (const [name, values] of await callsOf(page)) (again.api[name] as (...values: string[]) => string)(...values)
    expect(again.problems).toEqual([])
    expect(again.interactions()).toHaveLength(3)
    if (standard === 'scorm-2004') await answersCutOff(page, shown, site)
    expect(said).toEqual([])
    await site.close()
  })
}

/** A learner with a name whose system stops taking anything, and has begun a new attempt the next time. */
async function answersCutOff(page: Page, shown: FrameLocator, site: LearningSite): Promise<void> {
  const kim = { learner_id: 'a-17', learner_name: 'Kim' }
  await page.evaluate((cmi) => (window.name = JSON.stringify({ cmi })), kim)
  await page.goto(`${site.address}/lms.html`)
  const bar = shown.getByRole('region', { name: 'Learning system' })
  await shown.getByRole('button', { name: /^Begin: .*job/i }).click()
  await goOn(shown)
  await expect(bar.getByRole('status')).toHaveText('Everything has arrived there.')
  await page.evaluate(() => {
    const { API_1484_11: api } = window as unknown as { API_1484_11: Record<string, () => string> }
    api['Commit'] = () => 'false'
  })
  await shown.getByRole('radio').first().check()
  await shown.getByRole('button', { name: 'That is my prediction' }).click()
  await expect(bar.getByRole('status')).toContainText('Your work is kept in this browser')
  await page.goto(`${site.address}/lms.html`)
  await expect(bar.getByText('Answers of an earlier attempt have not arrived')).toBeVisible()
  const download = page.waitForEvent('download')
  await bar.getByRole('button', { name: /^Save as a result file/ }).click()
  const result = JSON.parse(readFileSync(await (await download).path(), 'utf8')) as Record<string, unknown>
  expect(result).toMatchObject({ learner: { name: 'Kim' }, lessons: [{ id: 'faulty-job' }] })
  const remove = bar.getByRole('button', { name: /^Remove/ })
  await remove.click()
  await bar.getByRole('button', { name: 'Put it back' }).click()
  await expect(remove).toBeVisible()
  await closedWhileFull(page, shown)
}

/** The browser has no room, the system does not listen: only then the page asks before it goes. */
async function closedWhileFull(page: Page, shown: FrameLocator): Promise<void> {
  const bar = shown.getByRole('region', { name: 'Learning system' })
  await shown.getByRole('button', { name: /^Begin: .*job/i }).click()
  await goOn(shown)
  await page.evaluate(() => {
    const { API_1484_11: api } = window as unknown as { API_1484_11: Record<string, () => string> }
    api['Commit'] = () => 'false'
  })
  await page.locator('#page').evaluate((frame: HTMLIFrameElement) => {
    const its = frame.contentWindow as unknown as { Storage: typeof Storage; DOMException: typeof DOMException }
    its.Storage.prototype.setItem = () => {
      throw new its.DOMException('The quota has been exceeded.', 'QuotaExceededError')
    }
  })
  await shown.getByRole('radio').first().check()
  await shown.getByRole('button', { name: 'That is my prediction' }).click()
  await expect(bar.getByRole('status')).toContainText('Your work is kept in this page')
  const asked = page.waitForEvent('dialog')
  const gone = page.goto('about:blank')
  const dialog = await asked
  expect(dialog.type()).toBe('beforeunload')
  await dialog.accept()
  await gone
}

test('cmi5: a visit whose store goes down in mid-lesson, closed without it, is told at the next one', async ({
  page,
}) => {
  const site = new LearningSite({ standard: 'cmi5', parcel: { lessons: ['faulty-job'], drills: 0, mastery: 0.8 } })
  await site.open()
  await page.goto(site.launch({ masteryScore: 0.8 }))
  const bar = page.getByRole('region', { name: 'Learning system' })
  await page.getByRole('button', { name: /^Begin: / }).click()
  await expect(bar.getByRole('status')).toHaveText('Everything has arrived there.')
  // The page may speak with the store it was launched from, and with nobody else.
  const refused = await page.evaluate(async () => {
    const directives: string[] = []
    document.addEventListener('securitypolicyviolation', (event) => directives.push(event.effectiveDirective))
    await fetch('https://example.org/').catch((error: unknown) => error)
    await new Promise((resolve) => setTimeout(resolve, 50))
    return directives
  })
  expect(refused).toContain('connect-src')

  site.store.faults = Array.from({ length: 200 }, () => ({ on: /xapi/, fault: 'down' as const }))
  await answerThrice(page)
  await expect(bar.getByRole('status')).toContainText('does not answer at present. Your work is kept in this browser')
  await page.goto('about:blank')
  expect(site.store.statements.map(({ verb }) => verb.id.split('/').at(-1))).toEqual(['initialized'])

  site.store.faults = []
  await page.goto(site.launch({ masteryScore: 0.8 }))
  await expect(page.getByRole('heading', { name: /^Step 3 of / })).toBeVisible()
  await expect(bar.getByRole('status')).toHaveText('Everything has arrived there.')
  const answers = () => site.store.statements.filter(({ verb }) => verb.id.endsWith('/answered'))
  await expect.poll(() => answers().length).toBe(3)
  await goOn(page)
  const first = await savedLearner(page)
  await page.goto('about:blank')
  await expect.poll(() => site.store.verbs(2).at(-1)).toBe('terminated')
  expect(site.store.verbs(2)[0]).toBe('initialized')
  expect(answers().map(({ result }) => result?.['response'])).toEqual([expect.any(String), '3', '58'])
  expect(site.store.problems).toEqual([])

  await page.goto(site.launch({ masteryScore: 0.8, returnURL: `${site.address}/ended` }))
  expect(await savedLearner(page)).toEqual(first)
  await page.getByRole('button', { name: 'End this visit' }).click()
  await page.waitForURL('**/ended')
  await expect.poll(() => site.store.verbs(3)).toEqual(['initialized', 'terminated'])
  await site.close()
})

test('the page of a package opened by itself is the plain page, and the file makes packages of itself', async ({
  page,
}) => {
  const said = listenTo(page)
  const site = new LearningSite({ standard: 'scorm-1.2', parcel: { lessons: ['tack'], drills: 0, mastery: null } })
  await site.open()
  await page.goto(`${site.address}/package/tackstair.html?${site.parameters}#view=lessons`)
  await expect(page.getByRole('list', { name: 'The course' }).locator('> li')).toHaveCount(17)
  await expect(page.getByRole('region', { name: 'Learning system' })).toHaveCount(0)
  const keys = await page.evaluate(() => Object.keys(localStorage))
  expect(keys.filter((key) => key.startsWith('tackstair visit'))).toEqual([])
  await site.close()

  // Opened from a disk, where nothing can be fetched, the file has its own text.
  const file = join(import.meta.dirname, '../../dist/tackstair.html')
  await page.goto(`${pathToFileURL(file).href}#view=bench`)
  await page.getByRole('button', { name: 'File' }).click()
  await page.getByText('Package for a learning system').click()
  await page.getByLabel('Standard').selectOption('cmi5')
  await page.getByRole('checkbox', { name: 'What a press sheet is' }).uncheck()
  await page.getByLabel('Fault drills').fill('many')
  await page.getByRole('button', { name: 'Make the package' }).click()
  await expect(page.getByText('“many” is not allowed; allowed are whole numbers from 0 to 20.')).toBeVisible()
  await page.getByLabel('Fault drills').fill('2')
  await page.getByLabel('Pass mark').fill('80')
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Make the package' }).click()
  const zip = unzipSync(readFileSync(await (await download).path()))
  const built = readFileSync(file, 'utf8')
  expect(Buffer.from(zip['tackstair.html']).toString()).toBe(pageFor('cmi5', built))
  expect(Buffer.from(zip['cmi5.xml']).toString()).toContain('drills=2&amp;mastery=0.8')
  expect(said).toEqual([])
})

async function callsOf(page: Page): Promise<[name: string, values: string[], answer: string][]> {
  return page.evaluate(() => (window as unknown as { calls: [string, string[], string][] }).calls)
}

/** What a system keeps between two visits. */
function onlyKept(cmi: Record<string, unknown>): Record<string, unknown> {
  const { suspend_data, core, location } = cmi as {
    suspend_data: string
    core?: { lesson_location: string }
    location?: string
  }
  return core
    ? { suspend_data, core: { lesson_location: core.lesson_location, entry: 'resume' } }
    : { suspend_data, location, entry: 'resume' }
}

/** Whose results a file says it holds. */
async function savedLearner(page: Page): Promise<unknown> {
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Download results' }).click()
  const file = await download
  expect(file.suggestedFilename()).toMatch(/\.result\.json$/)
  return (JSON.parse(readFileSync(await file.path(), 'utf8')) as { learner: unknown }).learner
}
