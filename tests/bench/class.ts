/**
 * A class of 5,000 result files on the board of the built page: how long they take to be read and shown, how long the page
 * blocks meanwhile, and how much memory they hold. Needs `npm run build` before.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, CDPSession, Page } from '@playwright/test'
import type { ClassBoard } from '../../src/class/board.ts'
import { writeResult } from '../../src/session/make-result.ts'
import { courseLessons } from '../class/course-lessons.ts'
import { classMember } from '../class/made-class.ts'
import type { BenchRow } from './bench-row.ts'
import { measured, open } from './page.ts'

const count = 5000

export const benchClass = () => measured(board)

async function board(browser: Browser, address: string): Promise<BenchRow[]> {
  const folder = mkdtempSync(join(tmpdir(), 'tackstair-class-'))
  try {
    const { files, bytes } = writeClass(folder)
    return await shown(browser, address, files, bytes)
  } finally {
    rmSync(folder, { recursive: true })
  }
}

function writeClass(folder: string): { files: string[]; bytes: number } {
  const lessons = courseLessons()
  let bytes = 0
  const files = Array.from({ length: count }, (_, n) => {
    const text = writeResult(classMember(n, lessons))
    bytes += Buffer.byteLength(text)
    const file = join(folder, `${n}.result.json`)
    writeFileSync(file, text)
    return file
  })
  return { files, bytes }
}

async function shown(browser: Browser, address: string, files: string[], bytes: number): Promise<BenchRow[]> {
  const { page, chrome } = await open(browser)
  await page.addInitScript(noteTasks)
  await page.goto(`${address}#view=board`)
  const input = page.getByLabel('Choose result files')
  await input.waitFor()
  const before = await heapOf(chrome)
  await page.locator('tack-file-drop').evaluate((element) => {
    const { board } = element as unknown as { board: ClassBoard }
    board.subscribe(() => performance.mark(board.state.reading ? 'reading' : 'read'))
  })
  await input.setInputFiles(files)
  await page.getByText(/^5,000 learners from 5,000 files\.$/).waitFor({ timeout: 120_000 })
  await page.getByRole('region', { name: 'Learners' }).waitFor()
  await page.waitForTimeout(2000)
  const { seconds, whileRead, first } = await page.evaluate(() => {
    const { tasks } = window as unknown as { tasks: Task[] }
    const [begin, end] = ['reading', 'read'].map((name) => performance.getEntriesByName(name)[0].startTime)
    // What the browser does to hand the files over comes before, and is no work of the page.
    const [reading, drawing] = [
      tasks.filter(({ from, to }) => from >= begin && to < end),
      tasks.filter(({ to }) => to >= end),
    ].map((some) => Math.max(0, ...some.map(({ from, to }) => to - from)))
    tasks.length = 0
    return { seconds: (end - begin) / 1000, whileRead: reading, first: drawing }
  })
  await page.getByRole('combobox', { name: 'Group' }).selectOption('Evening class')
  await page.waitForTimeout(2000)
  const grouped = await longest(page)
  await page.getByRole('combobox', { name: 'Lesson' }).selectOption('tack')
  await page.waitForTimeout(2000)
  const lesson = await longest(page)
  await page.getByRole('combobox', { name: 'Group' }).selectOption('All groups')
  await page.waitForTimeout(2000)
  const all = await longest(page)
  await page
    .getByRole('region', { name: 'Learners' })
    .getByRole('button', { name: /^Learner/ })
    .click()
  await page.waitForTimeout(2000)
  const sorted = await longest(page)
  const after = await heapOf(chrome)
  await page.context().close()
  const block = (name: string, value: number) => ({ name: `longest block: ${name}`, value, unit: 'ms', note: '' })
  return [
    {
      name: `${count} result files read`,
      value: seconds,
      unit: 's',
      note: `${(bytes / 1e6).toFixed(0)} MB of files`,
    },
    block('while they are read', whileRead),
    block('class first shown', first),
    block('one group of it', grouped),
    block('one lesson of it', lesson),
    block('all groups again', all),
    block('learners sorted by name', sorted),
    { name: 'memory with the class', value: after, unit: 'MB', note: `before: ${before.toFixed(1)}` },
  ]
}

/** ms by the page's clock */
interface Task {
  from: number
  to: number
}

function noteTasks(): void {
  const tasks: Task[] = []
  Object.assign(window, { tasks })
  new PerformanceObserver((list) => {
    for (const { startTime, duration } of list.getEntries()) tasks.push({ from: startTime, to: startTime + duration })
  }).observe({ type: 'longtask' })
}

/** ms; of the tasks since it was last asked. */
function longest(page: Page): Promise<number> {
  return page.evaluate(() => {
    const { tasks } = window as unknown as { tasks: Task[] }
    return Math.max(0, ...tasks.splice(0).map(({ from, to }) => to - from))
  })
}

/** MB */
async function heapOf(chrome: CDPSession): Promise<number> {
  await chrome.send('HeapProfiler.collectGarbage')
  return (await chrome.send('Runtime.getHeapUsage')).usedSize / 1e6
}
