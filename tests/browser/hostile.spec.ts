/** Scripts hidden in all that comes from outside: none runs, nothing is asked of another server, no prototype is touched. */
import type { Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import { writeResult } from '../../src/session/make-result.ts'
import { madeLesson, madeResult, madeStep } from '../class/made-results.ts'
import { openBench } from './bench-page.ts'
import { listenTo } from './console.ts'
import { LearningSite } from './learning-site.ts'
import { everyForm, openFile, openLessons } from './lesson-page.ts'

const scripts = [
  '<img src=x onerror="window.ran=1">',
  '"><script>window.ran=1</script>',
  '<svg onload="window.ran=1"></svg>',
  '<iframe src="https://elsewhere.example/"></iframe>',
  '</style><script src="https://elsewhere.example/x.js"></script>',
]
const markdown = [
  '[press](javascript:window.ran=1)',
  '![sheet](https://elsewhere.example/a.png)',
  '<a href="https://elsewhere.example/" onclick="window.ran=1">press</a>',
  ...scripts,
]

interface Watched {
  said: string[]
  asked: string[]
}

function watch(page: Page): Watched {
  const asked: string[] = []
  page.on('request', (request) => {
    if (!/^(blob:|data:|http:\/\/127\.0\.0\.1)/.test(request.url())) asked.push(request.url())
  })
  page.on('dialog', (dialog) => {
    asked.push(`dialog: ${dialog.message()}`)
    void dialog.dismiss()
  })
  return { said: listenTo(page), asked }
}

async function expectUntouched(page: Page, { said, asked }: Watched): Promise<void> {
  const left = await page.evaluate(() => {
    const plain: Record<string, unknown> = {}
    return {
      ran: (window as unknown as { ran?: number }).ran,
      stained: plain['stained'],
      keys: Object.keys(Object.prototype),
    }
  })
  expect(left).toEqual({ ran: undefined, stained: undefined, keys: [] })
  expect({ said, asked }).toEqual({ said: [], asked: [] })
}

const json = (name: string, value: unknown) => ({
  name,
  mimeType: 'application/json',
  buffer: Buffer.from(typeof value === 'string' ? value : JSON.stringify(value)),
})

test('links, saved files, lessons, tables and results full of scripts', async ({ page }) => {
  test.setTimeout(150_000)
  const watched = watch(page)
  const inLink = (text: string) => encodeURIComponent(text)
  for (const script of scripts) {
    const ink = inLink(script)
    await page.goto(
      `./#v=1&inks=${ink}:16,cyan:14&paper=${ink}&view=bench&lesson=${ink}&${ink}=1&__proto__=stained&unit=${ink}`,
    )
    await page.getByRole('heading', { name: 'Not all of the link could be used' }).waitFor()
  }
  await expectUntouched(page, watched)

  await openBench(page)
  await page.getByRole('button', { name: 'File', exact: true }).click()
  const hostile = {
    format: 'tackstair',
    version: 1,
    setUp: { inks: scripts.slice(0, 2).map((name, at) => ({ name: `${at}${name}`.slice(0, 40), tack: 16 - at })) },
    view: { view: scripts[0], unit: scripts[1] },
    trials: [{ name: scripts[0], expected: scripts[1] }],
    ['constructor']: { prototype: { stained: 1 } },
  }
  const text = JSON.stringify(hostile).replace('{', '{"__proto__":{"stained":1},')
  const chooser = page.getByLabel('File to open')
  await chooser.setInputFiles(json(`${scripts[0]}.tackstair.json`.replaceAll('/', ''), text))
  await page.getByRole('button', { name: 'Open what could be read' }).click()
  await expect(page.getByText('onerror').first()).toBeVisible()
  await page.keyboard.press('Escape')
  await expectUntouched(page, watched)

  await openLessons(page)
  const lesson = everyForm
    .replace('title: Every form of a step', `title: '${scripts[0]}'`)
    .replace('Ink taken back off', `${markdown.join('\n      ')}\n      Ink taken back off`)
    .replace('A mark our shop', `${scripts[0].replaceAll("'", "''")} A mark our shop`)
  await openFile(page, lesson)
  await expect(page.getByRole('region', { name: 'Lesson', exact: true })).toContainText('window.ran')
  await expectUntouched(page, watched)

  await page.goto('./#view=strip')
  await page.getByText('Own sheet', { exact: true }).click()
  const table = `patch,red,green,blue\n"${scripts[0].replaceAll('"', '""')}",1,1,1\n=HYPERLINK("https://elsewhere.example"),1,1,1\n__proto__,1,1,1\n`
  await page.locator('tack-sheet-file-panel input[type=file]').setInputFiles({
    name: 'sheet.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(table),
  })
  await expect(page.locator('tack-sheet-file-panel')).toContainText('sheet.csv')
  await expectUntouched(page, watched)

  await page.goto('./#view=board')
  const steps = [madeStep(scripts[1], { misses: 2 })]
  const result = madeResult('a', {
    name: scripts[0],
    group: scripts[2],
    lessons: [madeLesson('tack', { title: scripts[0], steps }), madeLesson('constructor'), madeLesson('toString')],
  })
  await page
    .getByLabel('Choose result files')
    .setInputFiles([
      json('one.json', writeResult(result)),
      json('two.json', writeResult(result).replace('{', '{"__proto__":{"stained":1},')),
      { name: 'three.csv', mimeType: 'text/csv', buffer: Buffer.from(`actor,verb\n${scripts.join(',')}\n`) },
    ])
  await expect(page.getByRole('region', { name: 'Learners' })).toContainText('onerror')
  await expectUntouched(page, watched)
})

test('a learning system that hands back scripts', async ({ page }) => {
  const watched = watch(page)
  const site = new LearningSite({ standard: 'scorm-1.2', parcel: { lessons: ['tack'], drills: 1, mastery: 0.8 } })
  await site.open()
  await page.goto(`${site.address}/lms.html`)
  const cmi = {
    suspend_data: `{"__proto__":{"stained":1},"lessons":{"${scripts[2].replaceAll('"', '')}":1}}`,
    core: { lesson_location: scripts[0], student_name: scripts[1], entry: 'resume' },
  }
  await page.evaluate((kept) => (window.name = JSON.stringify({ cmi: kept })), cmi)
  await page.goto(`${site.address}/lms.html`)
  const shown = page.frameLocator('#page')
  await expect(shown.getByRole('region', { name: 'Learning system' })).toBeVisible()
  await expect(shown.getByRole('list', { name: 'The course' })).toBeVisible()
  const frame = page.frames().find((each) => each.url().includes('/package/'))
  const left = await frame?.evaluate(() => ({
    ran: (window as unknown as { ran?: number }).ran,
    keys: Object.keys(Object.prototype),
    stained: ({} as Record<string, unknown>)['stained'],
  }))
  expect(left).toEqual({ ran: undefined, keys: [], stained: undefined })
  expect(watched).toEqual({ said: [], asked: [] })
  await site.close()
})
