/** The instructor's board: forty files through the real file input, seen as a class, saved as CSV. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import axe from 'axe-core'
import { writeResult } from '../../src/session/make-result.ts'
import { courseLessons } from '../class/course-lessons.ts'
import { classMember } from '../class/made-class.ts'
import { listenTo } from './console.ts'
import { drawn } from './drawn.ts'
import { openLessons } from './lesson-page.ts'

async function faults(page: Page): Promise<string[]> {
  await page.evaluate(axe.source)
  const { violations } = await page.evaluate(() =>
    (globalThis as unknown as { axe: typeof axe }).axe.run({
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
    }),
  )
  return violations.flatMap(({ id, help, nodes }) => nodes.map((node) => `${id}: ${help}: ${node.html.slice(0, 120)}`))
}

const json = (name: string, text: string) => ({ name, mimeType: 'application/json', buffer: Buffer.from(text) })

/** Drops a folder of these results as the system's file manager does, some of it in a folder within. */
async function drop(page: Page, [first, ...others]: readonly string[]): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'tackstair-class-'))
  const within = join(folder, 'evening', 'group b')
  mkdirSync(within, { recursive: true })
  writeFileSync(join(folder, 'first.json'), first)
  others.forEach((text, at) => writeFileSync(join(within, `${at}.json`), text))
  for (const name of ['desktop.ini', '.hidden.json']) writeFileSync(join(within, name), 'no result')
  await drawn(page)
  const box = await page.getByText('Choose result files').boundingBox()
  if (!box) throw new Error('There is no place to drop on.')
  const session = await page.context().newCDPSession(page)
  const data = { items: [], files: [folder], dragOperationsMask: 1 }
  for (const type of ['dragEnter', 'dragOver', 'drop'] as const)
    await session.send('Input.dispatchDragEvent', { type, x: box.x, y: box.y, data })
  await expect(page.getByText(/learners? from/)).toBeVisible()
  rmSync(folder, { recursive: true })
}

test('a class is read from forty files, three of them broken, and saved as CSV', async ({ page }) => {
  const said = listenTo(page)
  const lessons = courseLessons()
  const results = Array.from({ length: 36 }, (_, n) => classMember(n, lessons))
  const files = results.map((result, n) => json(`learner ${n}.result.json`, writeResult(result)))
  // The first learner hands in again later, with a name that a spreadsheet would take for a formula.
  const [first] = results
  const again = { ...first, made: '2026-03-04T08:00:00.000Z', learner: { ...first.learner, name: '=1+1' } }
  const older = { ...first, made: '2026-03-01T08:00:00.000Z' }
  await page.goto('./#view=board')
  await expect(page.getByRole('link', { name: 'Lessons' })).toBeVisible()
  await expect(page.getByRole('navigation').getByText('A class at a glance')).toHaveCount(0)
  await page
    .getByLabel('Choose result files')
    .setInputFiles([
      ...files,
      json('again.json', writeResult(again)),
      json('older.json', writeResult(older)),
      json('cut.json', writeResult(first).slice(0, 500)),
      json('other.json', '{"format": "tackstair"}'),
    ])
  await expect(page.getByRole('status').getByText('37 learners from 38 files.')).toBeVisible()
  // Who may need help stands first: nobody below has finished less.
  const finished = page.getByRole('region', { name: 'Learners' }).locator('tbody tr td:nth-of-type(2)')
  await expect(finished).toHaveCount(37)
  const counted = (await finished.allTextContents()).map(Number)
  expect(counted).toEqual(counted.toSorted((one, other) => one - other))
  await expect(page.getByRole('region', { name: '2 files could not be read' })).toContainText('other.json')
  await expect(page.getByText('One learner handed in more than once')).toBeVisible()
  await expect(page.getByText('One browser handed in under several names')).toBeVisible()
  const began = (id: string) => results.filter((result) => result.lessons.some((each) => each.id === id)).length
  const row = page.getByRole('region', { name: 'Lessons' }).getByRole('row', { name: /^1\. / })
  // the first learner counts twice, under two names
  await expect(row.getByRole('cell').first()).toHaveText(String(began('press-sheet') + 1))
  await page.getByRole('combobox', { name: 'Group' }).selectOption('Evening class')
  // every third of 36, and the second name of the first
  await expect(page.getByRole('region', { name: 'Learners' }).getByRole('rowheader')).toHaveCount(13)
  await page.getByRole('combobox', { name: 'Lesson' }).selectOption('two-inks-wrong-order')
  await expect(page.getByRole('heading', { name: /^Step by step: 5\. / })).toBeVisible()
  await expect(page.getByText('What the lesson says to it:').first()).toBeVisible()
  const byTime = page.getByRole('region', { name: 'Learners' }).getByRole('button', { name: /^Time/ })
  await byTime.click()
  await expect(
    page.getByRole('region', { name: 'Learners' }).getByRole('columnheader', { name: /^Time/ }),
  ).toHaveAttribute('aria-sort', 'descending')
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as CSV: Learners' }).click(),
  ])
  const csv = readFileSync(await download.path(), 'utf8')
  expect(csv.split('\r\n')).toHaveLength(15)
  expect(csv).toContain("'=1+1")
  expect(await faults(page)).toEqual([])
  await page.setViewportSize({ width: 390, height: 800 })
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390)
  await page.getByRole('button', { name: 'Put all away' }).click()
  await expect(page.getByRole('region', { name: 'Learners' })).toHaveCount(0)

  // A folder dropped on it is gone through to the bottom; what a system has put in there is nobody's result.
  await drop(page, results.slice(0, 2).map(writeResult))
  await expect(page.getByText('2 learners from 2 files.')).toBeVisible()
  await expect(page.getByText('could not be read')).toHaveCount(0)
  expect(said).toEqual([])
})

test('a learner’s own result file is saved and read by the board', async ({ page }) => {
  const said = listenTo(page)
  await openLessons(page)
  await page.getByRole('button', { name: 'Begin: What a press sheet is' }).click()
  await page.getByRole('button', { name: 'All lessons' }).click()
  await page.getByRole('textbox', { name: 'Name, if you want it on the sheet' }).fill('Kim')
  await page.getByRole('textbox', { name: 'Class or group' }).fill('Evening class')
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the result file' }).click(),
  ])
  expect(download.suggestedFilename()).toBe('Results Kim.result.json')
  const text = readFileSync(await download.path(), 'utf8')
  await page.getByRole('link', { name: 'See a class’s results' }).click()
  await page.getByLabel('Choose result files').setInputFiles(json('kim.json', text))
  await expect(page.getByText('1 learner from 1 file.')).toBeVisible()
  await expect(page.getByRole('region', { name: 'Learners' }).getByRole('row', { name: /Kim/ })).toContainText(
    'Evening class',
  )
  expect(said).toEqual([])
})
