/**
 * The built page on a slow machine: how long it blocks while it is used, and whether it grows while the press runs.
 * Needs `npm run build` before. The processor is slowed four times, and drawing is done in software.
 */
import type { Browser, CDPSession, Page } from '@playwright/test'
import { chromium } from '@playwright/test'
import { preview } from 'vite'
import { chromiumFlags, provideChromium } from '../browser/chromium.ts'
import type { Resources } from './count-resources.ts'
import { countResources, resources } from './count-resources.ts'
import type { BenchRow } from './bench-row.ts'

const slowed = 4
const views = ['Strip', 'Lessons', 'Orders', 'Trials', 'Run chart', 'Instruments', 'Fault drills', 'Glossary', 'Bench']

/** Each with a server and a browser of its own, so that one that fails takes nothing along. */
export async function measured(
  measure: (browser: Browser, address: string) => Promise<BenchRow[]>,
): Promise<BenchRow[]> {
  const server = await preview({ preview: { host: '127.0.0.1', port: 0 }, logLevel: 'silent' })
  const browser = await chromium.launch({ executablePath: provideChromium(), args: chromiumFlags })
  try {
    const [address] = server.resolvedUrls?.local ?? []
    return await measure(browser, address)
  } finally {
    await browser.close()
    await server.close()
  }
}

export const benchBlocks = () => measured(blocking)
export const benchFrames = () => measured(frames)
export const benchGrowth = () => measured(growth)

export async function open(browser: Browser, width = 1366): Promise<{ page: Page; chrome: CDPSession }> {
  const context = await browser.newContext({
    viewport: { width, height: width < 500 ? 844 : 768 },
    serviceWorkers: 'block',
  })
  const page = await context.newPage()
  return { page, chrome: await context.newCDPSession(page) }
}

async function settled(page: Page): Promise<void> {
  await page.locator('tack-section-picture').first().waitFor()
  await page.waitForTimeout(3000)
}

/** Has the page keep every time in which it could not answer, and slows it down. */
async function watchBlocks(page: Page, chrome: CDPSession): Promise<void> {
  await page.addInitScript(() => {
    const tasks: PerformanceEntry[] = []
    Object.assign(window, { tasks })
    new PerformanceObserver((list) => tasks.push(...list.getEntries())).observe({ type: 'longtask', buffered: true })
  })
  await chrome.send('Emulation.setCPUThrottlingRate', { rate: slowed })
}

/** ms of the longest block that began at `since` (ms since the page was opened) or later. */
function longestBlock(page: Page, since: number): Promise<number> {
  return page.evaluate((since) => {
    const { tasks } = window as unknown as { tasks: PerformanceEntry[] }
    return Math.max(0, ...tasks.filter(({ startTime }) => startTime >= since).map(({ duration }) => duration))
  }, since)
}

function blockRow(name: string, value: number): BenchRow {
  return { name: `longest block: ${name}`, value, unit: 'ms', note: 'below 200' }
}

/** The longest time in which the page could not answer, for each thing a person does. */
async function blocking(browser: Browser, address: string): Promise<BenchRow[]> {
  return [...(await blockingAtFirst(browser, address)), ...(await blockingLater(browser, address))]
}

/** Each view opened by its address, from when the page counts as loaded, and a lesson begun before anything else was seen. */
async function blockingAtFirst(browser: Browser, address: string): Promise<BenchRow[]> {
  const rows: BenchRow[] = []
  for (const view of views) {
    const { page, chrome } = await open(browser)
    await watchBlocks(page, chrome)
    await page.goto(`${address}#view=${view === 'Fault drills' ? 'drills' : view.toLowerCase().replace(' ', '+')}`)
    await page.waitForTimeout(5000)
    const loaded = await page.evaluate(
      () => (performance.getEntriesByType('navigation')[0] as PerformanceNavigationTiming).loadEventEnd,
    )
    rows.push(blockRow(`${view} by its address, once loaded`, await longestBlock(page, loaded)))
    if (view === 'Lessons') {
      const since = await page.evaluate(() => performance.now())
      await page.getByRole('button', { name: /^Begin/ }).first().click()
      await page.waitForTimeout(4000)
      rows.push(blockRow('begin a lesson as the first thing', await longestBlock(page, since)))
    }
    await page.context().close()
  }
  return rows
}

async function blockingLater(browser: Browser, address: string): Promise<BenchRow[]> {
  const { page, chrome } = await open(browser)
  await watchBlocks(page, chrome)
  await page.goto(`${address}#view=bench`)
  await settled(page)
  const rows: BenchRow[] = []
  const longest = async (name: string, act: () => Promise<unknown>) => {
    const since = await page.evaluate(() => performance.now())
    await act()
    await page.waitForTimeout(1500)
    rows.push(blockRow(name, await longestBlock(page, since)))
  }
  const button = (name: string | RegExp) => page.getByRole('button', { name, exact: true }).first()
  await longest('order reversed', () => button('Order reversed').click())
  await longest('undo', () => button('Undo').click())
  await longest('play', () => button('Run').click())
  await longest('pause', () => button('Pause').click())
  await longest('scrub', async () => {
    const slider = page.getByRole('slider', { name: 'nip', exact: true })
    for (const phase of ['10', '50', '90']) await slider.fill(phase)
  })
  await longest('change a film', async () => {
    await page.getByRole('textbox', { name: 'Tack of cyan' }).fill('11')
    await page.getByRole('textbox', { name: 'Tack of cyan' }).press('Enter')
  })
  for (const view of views) {
    await longest(`open ${view}`, () => page.getByRole('link', { name: view, exact: true }).click())
    if (view === 'Orders') await longest('rank 24 orders', () => button(/^Rank all/).click())
    if (view === 'Lessons') await longest('open a lesson', () => button(/^(Begin|Start|Go on|Open)/).click())
  }
  await page.context().close()
  return rows
}

/** Frames a second that the page draws while the press runs, not slowed. */
async function frames(browser: Browser, address: string): Promise<BenchRow[]> {
  const rows: BenchRow[] = []
  for (const width of [390, 1366]) {
    const { page } = await open(browser, width)
    await leapWith(page, 0)
    await page.goto(`${address}#view=bench`)
    await settled(page)
    await page.getByRole('button', { name: 'Run', exact: true }).click()
    const before = await seen(page)
    await page.waitForTimeout(4000)
    const after = await seen(page)
    const value = (1000 * (after.frames - before.frames)) / (after.at - before.at)
    rows.push({ name: `frames while it runs, ${width} px`, value, unit: '1/s', note: 'software drawing' })
    await page.context().close()
  }
  return rows
}

interface Seen {
  frames: number
  /** ms */
  at: number
}

/** Counts the page's frames, and lets its clock leap on with each by so many ms. */
async function leapWith(page: Page, leap: number): Promise<void> {
  await page.addInitScript((leap) => {
    const next = window.requestAnimationFrame.bind(window)
    const times = { frames: 0, now: 0, last: 0 }
    Object.assign(window, { times })
    window.requestAnimationFrame = (call) =>
      next((now) => {
        // Several callbacks of one frame are told the same time.
        if (now !== times.last) {
          times.last = now
          times.now = Math.max(times.now + leap, now)
          times.frames++
        }
        call(times.now)
      })
  }, leap)
}

function seen(page: Page): Promise<Seen> {
  return page.evaluate(() => ({
    frames: (window as unknown as { times: { frames: number } }).times.frames,
    at: performance.now(),
  }))
}

/** ms that pass on the page with each frame: the most that its clock takes at once, so that half an hour is soon over. */
const leap = 250
const halfHour = (30 * 60 * 1000) / leap

/** Frames until the browser has compiled what runs often; its machine code counts as heap. */
const warmUp = 2500

/** What half an hour of running leaves behind, and what 10,000 changes do. */
async function growth(browser: Browser, address: string): Promise<BenchRow[]> {
  // A small window, so that software draws the many frames soon; it shows the same pictures.
  const { page, chrome } = await open(browser, 390)
  await leapWith(page, leap)
  await countResources(page)
  await page.goto(`${address}#view=bench`)
  await settled(page)
  await page.getByRole('button', { name: 'Run', exact: true }).click()
  const pass = async (count: number) => {
    const until = (await seen(page)).frames + count
    while ((await seen(page)).frames < until) await page.waitForTimeout(200)
  }
  await pass(warmUp)
  const before = await held(page, chrome)
  await pass(halfHour)
  const after = await held(page, chrome)
  await page.getByRole('button', { name: 'Pause', exact: true }).click()
  await page.evaluate(() => {
    const { session } = document.querySelector('tack-page') as unknown as {
      session: { change: (change: { kind: 'seed'; seed: number }) => void }
    }
    for (let seed = 1; seed <= 300; seed++) session.change({ kind: 'seed', seed })
  })
  const changed = await held(page, chrome)
  await page.evaluate(() => {
    const { session } = document.querySelector('tack-page') as unknown as {
      session: { change: (change: { kind: 'seed'; seed: number }) => void }
    }
    for (let seed = 301; seed <= 10_300; seed++) session.change({ kind: 'seed', seed })
  })
  const often = await held(page, chrome)
  await page.context().close()
  return [...compared('30 minutes', before, after), ...compared('10,000 changes', changed, often)]
}

interface Held extends Resources {
  heap: number
  nodes: number
  listeners: number
  workers: number
}

async function held(page: Page, chrome: CDPSession): Promise<Held> {
  await page.waitForTimeout(500)
  await chrome.send('HeapProfiler.collectGarbage')
  const { usedSize } = await chrome.send('Runtime.getHeapUsage')
  const { nodes, jsEventListeners } = await chrome.send('Memory.getDOMCounters')
  return {
    heap: usedSize / 1e6,
    nodes,
    listeners: jsEventListeners,
    workers: page.workers().length,
    ...(await resources(page)),
  }
}

function compared(what: string, before: Held, after: Held): BenchRow[] {
  const units = { heap: 'MB', nodes: '', listeners: '', workers: '', textures: '', buffers: '', timers: '' }
  return (Object.keys(units) as (keyof Held)[]).map((kind) => ({
    name: `${kind} after ${what}`,
    value: after[kind],
    unit: units[kind],
    note: `before: ${before[kind].toFixed(kind === 'heap' ? 2 : 0)}`,
  }))
}
