/** What can go wrong under a running page: graphics lost or missing, workers that die. The picture and the work come back. */
import { readFileSync } from 'node:fs'
import type { Locator, Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import { openBench, order } from './bench-page.ts'
import { listenTo } from './console.ts'
import { sticksOut } from './faults.ts'

/** Called before the page opens: its graphics pass for those of a graphics card, so that WebGL is used. */
async function withGraphicsCard(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const ask = Reflect.get(WebGL2RenderingContext.prototype, 'getParameter') as (name: number) => unknown
    WebGL2RenderingContext.prototype.getParameter = function (name: number): unknown {
      const unmaskedRenderer = 0x9246
      return name === unmaskedRenderer ? 'A graphics card' : ask.call(this, name)
    }
  })
}

async function withoutWebGl(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const ask = Reflect.get(HTMLCanvasElement.prototype, 'getContext') as (...given: unknown[]) => unknown
    Reflect.set(HTMLCanvasElement.prototype, 'getContext', function (this: unknown, ...given: unknown[]) {
      return String(given[0]).startsWith('webgl') ? null : ask.apply(this, given)
    })
  })
}

/** The picture as 24 x 12 fields of mean colour: two ways of drawing differ in the edges only. */
async function coarse(page: Page, picture: Locator): Promise<number[]> {
  const shot = (await picture.screenshot({ animations: 'disabled' })).toString('base64')
  return page.evaluate(async (base64) => {
    const image = new Image()
    image.src = `data:image/png;base64,${base64}`
    await image.decode()
    const context = new OffscreenCanvas(24, 12).getContext('2d')
    if (!context) return []
    context.imageSmoothingQuality = 'high'
    context.drawImage(image, 0, 0, 24, 12)
    return Array.from(context.getImageData(0, 0, 24, 12).data)
  }, shot)
}

/** The same once it stands still. */
async function still(page: Page, picture: Locator): Promise<number[]> {
  await expect(picture.locator('canvas')).toBeVisible()
  let last = await coarse(page, picture)
  await expect(async () => {
    const before = last
    last = await coarse(page, picture)
    expect(new Set(last).size).toBeGreaterThan(20)
    expect(difference(last, before)).toBe(0)
  }).toPass({ timeout: 20_000 })
  return last
}

function difference(some: readonly number[], others: readonly number[]): number {
  return some.reduce((sum, value, at) => sum + Math.abs(value - others[at]), 0) / some.length
}

/** Loses the contexts of all pictures drawn with WebGL; returns how many those were. */
function loseContexts(page: Page): Promise<number> {
  return page.evaluate(() => {
    const hosts = (root: Document | ShadowRoot): Element[] =>
      Array.from(root.querySelectorAll('*')).flatMap((each) => [
        each,
        ...(each.shadowRoot ? hosts(each.shadowRoot) : []),
      ])
    const canvases = hosts(document).filter((each) => each instanceof HTMLCanvasElement)
    const lost = canvases.filter((canvas) => {
      const extension = canvas.getContext('webgl2')?.getExtension('WEBGL_lose_context')
      extension?.loseContext()
      return extension
    })
    return lost.length
  })
}

test('a lost graphics context, once and ten times over, leaves the same picture and the same press', async ({
  page,
}) => {
  test.setTimeout(180_000)
  const said = listenTo(page)
  await withGraphicsCard(page)
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await openBench(page)
  await page.getByRole('button', { name: 'Move black one unit later' }).click()
  const section = page.locator('tack-section-picture')
  for (const picture of ['line', 'section', 'loupe'])
    await expect(page.locator(`tack-${picture}-picture canvas`)).toBeVisible()
  const lookAtNip = async () => {
    await page.locator('tack-transport').getByText('4', { exact: true }).click()
    await page.locator('tack-transport').getByRole('slider').press('Home')
  }
  await lookAtNip()
  await page.waitForTimeout(500)
  const before = await still(page, section)
  await page.getByRole('button', { name: 'Run', exact: true }).click()
  expect(await loseContexts(page)).toBe(3)
  await page.getByRole('button', { name: 'Pause', exact: true }).click()
  await lookAtNip()
  await expect.poll(async () => difference(await coarse(page, section), before)).toBeLessThan(4)
  for (let time = 2; time <= 10; time++) {
    // A picture that comes into the page anew is drawn as at first.
    await section.evaluate(async (element) => {
      const after = element.nextSibling
      const parent = element.parentNode
      element.remove()
      await new Promise((resolve) => setTimeout(resolve, 100))
      parent?.insertBefore(element, after)
    })
    await expect.poll(() => loseContexts(page), `lost the ${time}. time`).toBe(1)
  }
  await expect.poll(async () => difference(await coarse(page, section), before)).toBeLessThan(4)
  expect(await order(page)).toEqual(['cyan', 'black', 'magenta', 'yellow'])
  expect(said).toEqual([])
})

test('without WebGL, and without any worker, everything is drawn and worked out all the same', async ({ page }) => {
  const said = listenTo(page)
  await withoutWebGl(page)
  await page.addInitScript(() => {
    Reflect.deleteProperty(window, 'Worker')
  })
  await openBench(page)
  await expect(page.locator('tack-section-picture canvas')).toBeVisible()
  await expect
    .poll(async () => new Set(await coarse(page, page.locator('tack-section-picture'))).size)
    .toBeGreaterThan(20)
  await page.goto('./#view=orders')
  await page.getByRole('button', { name: 'Rank all 24 orders' }).click()
  await expect(page.getByText('All 24 orders are ranked.')).toBeVisible()
  expect(said).toEqual([])
})

test('workers that never answer are given up, and what was asked is worked out in the page', async ({ page }) => {
  const said = listenTo(page)
  await page.clock.install()
  await page.addInitScript(() => {
    class Silent extends EventTarget {
      postMessage(): void {
        // Nobody is there.
      }
      terminate(): void {
        // Nothing to end.
      }
    }
    Object.assign(window, { Worker: Silent })
  })
  await openBench(page)
  await page.goto('./#view=orders')
  await page.getByRole('button', { name: 'Rank all 24 orders' }).click()
  await expect(page.getByRole('button', { name: 'Cancel' })).toBeVisible()
  await page.clock.fastForward(61_000)
  await expect(page.getByText('All 24 orders are ranked.')).toBeVisible()
  await page.goto('./#view=drills&drill=easy:3')
  await expect(page.getByText('The job is being printed…')).toBeVisible()
  await page.clock.fastForward(61_000)
  await expect(page.getByText('The sheet is on the table.')).toBeVisible({ timeout: 60_000 })
  expect(said).toEqual([])
})

test('a part whose code does not arrive is told of, and comes once the network is back, with the draft', async ({
  page,
}) => {
  await openBench(page)
  await page.getByRole('button', { name: 'Move black one unit later' }).click()
  await expect(page.getByText('Draft saved')).toBeVisible()
  await page.route(/./, (route) => route.abort())
  await page.getByRole('link', { name: 'Strip' }).click()
  const again = page.getByRole('button', { name: 'Load the page again' })
  await expect(page.getByRole('alert')).toContainText('This part of the page could not be loaded.')
  await again.click()
  await expect(page.getByText('Nothing answers yet. The page stays as it is.')).toBeVisible()
  await page.unroute(/./)
  await again.click()
  await expect(page.locator('tack-strip-view')).toBeVisible()
  await page.getByRole('link', { name: 'Bench' }).click()
  expect(await order(page)).toEqual(['cyan', 'black', 'magenta', 'yellow'])
})

test('a storage damaged throughout is told in a sentence, its texts can be had, and every view works', async ({
  page,
}) => {
  const said = listenTo(page)
  const names = [
    'lesson tack',
    'own lesson mine',
    'lesson being written',
    'open lesson',
    'learner',
    'group',
    'learner id',
  ]
  const moreNames = ['drills', 'drills at work', 'draft gone', 'comfort', 'first look', 'public address']
  const keys = [...names, ...moreNames].map((name) => `tackstair ${name}`)
  await page.addInitScript((keys) => {
    if (localStorage.length > 0) return
    keys.forEach((key, at) =>
      localStorage.setItem(key, ['{"a":[', '{"__proto__":{"x":1}}', '\u0000\ud800', '7'][at % 4]),
    )
    sessionStorage.setItem('tackstair tab', '{')
    sessionStorage.setItem('tackstair lecture', '[{"')
  }, keys)
  await page.goto('./#view=bench')
  const told = page.getByRole('alert')
  await expect(told).toContainText('Some work kept in this browser (lessons or drills) cannot be read.')
  await expect(told).toContainText('A draft was found that cannot be read')
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    told.getByRole('button', { name: 'Save its text' }).click(),
  ])
  expect(readFileSync(await download.path(), 'utf8')).toContain('tackstair lesson tack\n{"a":[')
  await told.getByRole('button', { name: 'Throw it away' }).click()
  await expect(told).toHaveCount(0)
  for (const view of ['lessons', 'drills', 'trials', 'lecture', 'board', 'strip', 'instruments']) {
    await page.goto(`./#view=${view}`)
    await expect(page.locator('tack-page h1, tack-page h2').first()).toBeVisible()
  }
  expect(said).toEqual([])
})

test('turned, zoomed, frozen for an hour and with its clock set back, a running press goes on in the same picture', async ({
  page,
}) => {
  const said = listenTo(page)
  await page.clock.install({ time: new Date('2026-03-02T09:00:00') })
  await openBench(page)
  await page.getByRole('button', { name: 'Move black one unit later' }).click()
  const transport = page.locator('tack-transport')
  const section = page.locator('tack-section-picture')
  const lookAtNip = async () => {
    await page.clock.runFor(200)
    await transport.getByText('4', { exact: true }).click()
    await transport.getByRole('slider').press('Home')
    await page.clock.runFor(1000)
  }
  await expect(section.locator('canvas')).toBeVisible()
  await lookAtNip()
  const before = await still(page, section)
  await transport.getByRole('button', { name: 'Run', exact: true }).click()
  const devtools = await page.context().newCDPSession(page)
  for (const [width, height] of [
    [768, 1366],
    [390, 844],
    [844, 390],
    [683, 384],
  ] as const) {
    await page.setViewportSize({ width, height })
    await page.clock.runFor(300)
    expect(await sticksOut(page), `${width} x ${height}`).toBe(false)
  }
  await page.setViewportSize({ width: 1366, height: 768 })
  await devtools.send('Page.setWebLifecycleState', { state: 'frozen' })
  await devtools.send('Page.setWebLifecycleState', { state: 'active' })
  await page.clock.fastForward('01:00:00')
  await page.clock.runFor(300)
  await page.clock.setSystemTime(new Date('2025-03-02T09:00:00'))
  await page.clock.runFor(300)
  await transport.getByRole('button', { name: 'Pause', exact: true }).click()
  await page.getByText('First sheet', { exact: true }).click()
  await lookAtNip()
  await expect.poll(async () => difference(await coarse(page, section), before)).toBeLessThan(1)
  expect(await order(page)).toEqual(['cyan', 'black', 'magenta', 'yellow'])
  expect(said).toEqual([])
})

test('two tabs keep a bench each, over a reload of both, and share what a person has chosen for themselves', async ({
  page,
  context,
}) => {
  const other = await context.newPage()
  const said = [listenTo(page), listenTo(other)]
  await openBench(page)
  await page.getByRole('button', { name: 'Move black one unit later' }).click()
  await expect(page.getByText('Draft saved')).toBeVisible()
  await openBench(other)
  await other.getByRole('button', { name: 'Order reversed' }).click()
  await expect(other.getByText('Draft saved')).toBeVisible()
  await page.getByRole('button', { name: 'Move black one unit later' }).click()
  await page.reload()
  await other.reload()
  await expect.poll(() => order(page)).toEqual(['cyan', 'magenta', 'black', 'yellow'])
  await expect.poll(() => order(other)).toEqual(['yellow', 'magenta', 'cyan', 'black'])
  await page.getByRole('combobox', { name: 'Language' }).selectOption('es')
  await expect(other.getByRole('link', { name: 'Lecciones' })).toBeVisible()
  expect(said).toEqual([[], []])
})
