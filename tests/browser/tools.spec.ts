/** Sharing, files and the draft, as a person meets them in the head of the page. */
import { JSDOM } from 'jsdom'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Download, Locator, Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import jsQR from 'jsqr'
import { enter, field, openBench, order } from './bench-page.ts'
import { listenTo } from './console.ts'
import { faults, faultsInBothLights, sticksOutAt } from './faults.ts'

const eightInks = Array.from({ length: 8 }, (_, unit) => `the+name+that+never+comes+to+an+end+${unit + 1}:${16 - unit}`)
const longLink = `#v=1&inks=${eightInks.join(',')}`

/** As the commands take it. */
const twoInks = {
  inks: [
    { name: 'cyan', tack: 14 },
    { name: 'yellow', tack: 10 },
  ],
  paper: { base: 'coated' },
  press: { kind: 'sheet-fed' },
  reading: 'first',
  seed: 1,
}

/** Opens a panel and gives what is in it; its dialog is another element, which it stands in by a slot. */
async function openTool(page: Page, name: 'Share' | 'File'): Promise<Locator> {
  await page.getByRole('button', { name, exact: true }).click()
  await expect(toolDialog(page, name)).toBeVisible()
  return page.locator(name === 'Share' ? 'tack-share-panel' : 'tack-file-panel')
}

function toolDialog(page: Page, name: 'Share' | 'File'): Locator {
  return page.getByRole('dialog', { name: name === 'Share' ? 'Share this set-up' : 'Save, open, print' })
}

function file(name: string, text: string) {
  return { name, mimeType: 'application/json', buffer: Buffer.from(text) }
}

async function textOf(download: Download): Promise<string> {
  return readFileSync(await download.path(), 'utf8')
}

/** What a camera reads in a part of the page. */
async function decoded(page: Page, picture: Locator): Promise<string | undefined> {
  const png = (await picture.screenshot()).toString('base64')
  const { data, width, height } = await page.evaluate(async (bytes) => {
    const image = await createImageBitmap(new Blob([Uint8Array.from(atob(bytes), (sign) => sign.charCodeAt(0))]))
    const canvas = new OffscreenCanvas(image.width, image.height)
    const context = canvas.getContext('2d') as OffscreenCanvasRenderingContext2D
    context.drawImage(image, 0, 0)
    const pixels = context.getImageData(0, 0, image.width, image.height)
    return { data: Array.from(pixels.data), width: pixels.width, height: pixels.height }
  }, png)
  return jsQR(Uint8ClampedArray.from(data), width, height)?.data
}

test('the link that is shown opens the very set-up and view, and its picture says the same', async ({
  page,
  browser,
}) => {
  const said = listenTo(page)
  await openBench(page)
  await page.getByRole('button', { name: 'Order reversed' }).click()
  await enter(page, 'Tack of yellow', '9.5')
  await page.getByText('what broke', { exact: true }).click()
  const dialog = await openTool(page, 'Share')
  const link = await dialog.getByRole('textbox', { name: 'Link to this set-up and view' }).inputValue()
  await expect(dialog.getByText(`${link.length} characters`)).toBeVisible()
  await expect.poll(() => decoded(page, dialog.getByRole('img', { name: /^QR picture/ }))).toBe(link)

  const small = await dialog.getByRole('img', { name: /^QR picture/ }).boundingBox()
  await dialog.getByRole('button', { name: 'Show it large' }).click()
  const large = await dialog.getByRole('img', { name: /^QR picture/ }).boundingBox()
  expect(large?.width).toBeGreaterThan(small?.width ?? NaN)
  await dialog.getByRole('button', { name: 'Show it small' }).click()

  const other = await (await browser.newContext()).newPage()
  await other.goto(link)
  await expect.poll(() => order(other)).toEqual(await order(page))
  await expect(field(other, 'Tack of yellow')).toHaveValue('9.5')
  await expect(other.getByRole('radio', { name: 'what broke' })).toBeChecked()
  await other.context().close()
  expect(said).toEqual([])
})

test('the link is copied where the browser allows it', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write'])
  await openBench(page)
  const dialog = await openTool(page, 'Share')
  const link = await dialog.getByRole('textbox', { name: 'Link to this set-up and view' }).inputValue()
  await dialog.getByRole('button', { name: 'Copy: Link to this set-up and view' }).click()
  await expect(dialog.getByRole('status').filter({ hasText: 'Copied.' })).toBeVisible()
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(link)
})

test('where the browser refuses to copy, the text is selected and the person told how', async ({ page }) => {
  const said = listenTo(page)
  await page.addInitScript(() => {
    navigator.clipboard.writeText = () => Promise.reject(new DOMException('refused', 'NotAllowedError'))
  })
  await openBench(page)
  const dialog = await openTool(page, 'Share')
  const text = dialog.getByRole('textbox', { name: 'Link to this set-up and view' })
  await dialog.getByRole('button', { name: 'Copy: Link to this set-up and view' }).click()
  await expect(dialog.getByText('The text is selected')).toBeVisible()
  await expect(text).toBeFocused()
  const selected = await text.evaluate((area: HTMLTextAreaElement) => area.selectionEnd - area.selectionStart)
  expect(selected).toBe((await text.inputValue()).length)
  expect(said).toEqual([])
})

test('a link that is too long for a picture says so instead', async ({ page }) => {
  await page.goto(`./${longLink}`)
  const dialog = await openTool(page, 'Share')
  await expect(dialog.getByText(/^No picture: the link has \d+ characters/)).toBeVisible()
  await expect(dialog.getByRole('img', { name: /^QR picture/ })).toHaveCount(0)
})

test('the text for another page leaves out what is chosen', async ({ page }) => {
  await openBench(page)
  const dialog = await openTool(page, 'Share')
  await dialog.getByRole('checkbox', { name: 'loupe' }).check()
  await dialog.getByRole('checkbox', { name: 'ready set-ups' }).uncheck()
  const text = await dialog.getByRole('textbox', { name: 'Text for the other page' }).inputValue()
  for (const part of await dialog.locator('tack-embed-panel').getByRole('checkbox').all()) await part.check()
  await expect(dialog.getByText('One part at least has to stay.')).toBeVisible()
  await expect(dialog.getByRole('textbox', { name: 'Text for the other page' })).toHaveCount(0)
  expect(text).toMatch(/^<iframe src="http[^"]+&amp;hide=header,loupe" title="[^"]+"/)

  const address = /src="([^"]+)"/.exec(text)?.[1].replaceAll('&amp;', '&') ?? ''
  await page.goto('about:blank')
  await page.goto(address)
  await expect(page.locator('tack-section-panel')).toBeVisible()
  await expect(page.locator('tack-loupe-panel')).toBeHidden()
  await expect(page.getByRole('banner').getByRole('link')).toHaveCount(0)
  await expect(page.getByRole('button', { name: 'Order reversed' })).toBeVisible()
})

test('a bench with parts left out keeps to a frame of 320 to 1366 px, and axe finds nothing wrong', async ({
  page,
}) => {
  await page.goto('./#v=1&inks=black:16,cyan:14&only=section,telling,transport,readings')
  await expect(page.locator('tack-section-panel')).toBeVisible()
  for (const width of [320, 390, 700, 1366]) {
    expect(await sticksOutAt(page, [width], 700)).toEqual([])
    for (const part of [
      'tack-ink-ladder',
      'tack-paper-panel',
      'tack-press-panel',
      'tack-scenario-bar',
      'tack-loupe-panel',
      'tack-line-picture',
    ])
      await expect(page.locator(part)).toBeHidden()
    expect(await faults(page)).toEqual([])
  }
})

test('a single control that a link leaves out cannot be used', async ({ page }) => {
  await page.goto('./#v=1&inks=black:16,cyan:14&hide=tack')
  await expect(field(page, 'Tack of cyan')).toBeDisabled()
  await expect(field(page, 'Film of cyan on the form roller')).toBeEnabled()
})

test('a link brings its units of measure and opens its lesson', async ({ page }) => {
  await page.goto('./#v=1&inks=black:16,cyan:14&in=ft/min')
  await page.locator('summary', { hasText: 'Press' }).click()
  await expect(page.getByText(/ft\/min/).first()).toBeVisible()
  await page.goto('./#v=1&lesson=fast-web')
  await expect(page.locator('tack-lesson-runner')).toBeVisible()
  await expect(page.getByRole('link', { name: 'Lessons' })).toHaveAttribute('aria-current', 'page')
})

test('a file brings back what was saved, and can be taken back', async ({ page }) => {
  const said = listenTo(page)
  await openBench(page)
  await page.getByRole('button', { name: 'Order reversed' }).click()
  await enter(page, 'Tack of yellow', '9.5')
  const reversed = await order(page)
  const dialog = await openTool(page, 'File')
  await dialog.getByRole('textbox', { name: 'Name of the file' }).fill('Monday: first try')
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    dialog.getByRole('button', { name: 'Save the file' }).click(),
  ])
  expect(download.suggestedFilename()).toBe('Monday first try.tackstair.json')
  const text = await textOf(download)
  await page.keyboard.press('Escape')

  await page.getByRole('button', { name: 'Tacks step down' }).click()
  const before = await order(page)
  await openTool(page, 'File')
  await dialog.getByLabel('File to open').setInputFiles(file('try.tackstair.json', text))
  await expect(dialog.getByText('“try.tackstair.json” is open.')).toBeVisible()
  expect(await order(page)).toEqual(reversed)
  await expect(page.locator('tack-bench').getByLabel('Tack of yellow', { exact: true })).toHaveValue('9.5')
  await dialog.getByRole('button', { name: 'Take it back' }).click()
  await expect(dialog.getByText('Everything is as it was before')).toBeVisible()
  expect(await order(page)).toEqual(before)
  expect(said).toEqual([])
})

test('a file that is none, and one with a wrong value, change nothing and are told by field', async ({ page }) => {
  await openBench(page)
  await page.getByRole('button', { name: 'Order reversed' }).click()
  const before = await order(page)
  const dialog = await openTool(page, 'File')
  const chooser = dialog.getByLabel('File to open')
  await chooser.setInputFiles(file('notes.txt', 'black, cyan'))
  await expect(dialog.getByText('“notes.txt” was not opened')).toBeVisible()
  await expect(dialog.getByText('The file is not JSON')).toBeVisible()
  expect(await order(page)).toEqual(before)

  const written = { format: 'tackstair', version: 1, setUp: twoInks, settings: { theme: 'purple' } }
  await chooser.setInputFiles(file('half.tackstair.json', JSON.stringify(written)))
  await expect(dialog.getByText('Nothing has changed yet')).toBeVisible()
  await expect(dialog.getByText(/^settings\.theme: /)).toBeVisible()
  expect(await order(page)).toEqual(before)
  await dialog.getByRole('button', { name: 'Open what could be read' }).click()
  await expect(dialog.getByText('“half.tackstair.json” is open.')).toBeVisible()
  expect(await order(page)).toEqual(['cyan', 'yellow'])
})

test('a file dropped on the page is looked into, even where the tools are folded away', async ({ page }) => {
  await page.setViewportSize({ width: 1024, height: 768 })
  await openBench(page)
  const text = JSON.stringify(twoInks)
  const data = await page.evaluateHandle((content) => {
    const transfer = new DataTransfer()
    transfer.items.add(new File([content], 'dropped.json', { type: 'application/json' }))
    return transfer
  }, text)
  await page.locator('tack-section-panel').dispatchEvent('dragover', { dataTransfer: data })
  await expect(page.getByText('Let go to look into the file')).toBeVisible()
  await page.locator('tack-section-panel').dispatchEvent('drop', { dataTransfer: data })
  await expect(page.getByText('“dropped.json” is open.')).toBeVisible()
  expect(await order(page)).toEqual(['cyan', 'yellow'])
})

test('a table has a unit in every heading and the numbers of the page', async ({ page }) => {
  await openBench(page)
  const shown = await page.locator('tack-readings-strip .traps dd').first().textContent()
  const dialog = await openTool(page, 'File')
  await dialog.getByLabel('Numbers written as').selectOption('comma')
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    dialog.getByRole('button', { name: 'Mass trap', exact: true }).click(),
  ])
  const [head, first] = (await textOf(download)).replace('\ufeff', '').split('\r\n')
  expect(head).toBe('first ink;ink on it;mass trap (%)')
  const [, , trap] = first.split(';')
  expect(trap).toMatch(/^\d+,\d+$/)
  expect(Math.round(Number(trap.replace(',', '.')))).toBe(Number(/\d+/.exec(shown ?? '')?.[0]))
})

/** Saves every picture that the open view offers as SVG, and checks that it is one; waits for so many, or for this one. */
async function saveAll(page: Page, wanted: number | string): Promise<string[]> {
  const dialog = await openTool(page, 'File')
  const which = dialog.getByRole('combobox', { name: 'Picture' })
  const offered = which.locator('option')
  if (typeof wanted === 'number') await expect(offered).toHaveCount(wanted)
  else await expect(offered.filter({ hasText: wanted }).first()).toBeAttached()
  const names = await which.locator('option').allTextContents()
  for (const name of names) {
    await which.selectOption(name)
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      dialog.getByRole('button', { name: 'Save as SVG' }).click(),
    ])
    // Parsed outside the page, which lets no text become markup.
    const text = await textOf(download)
    const svg = new JSDOM(text, { contentType: 'image/svg+xml' }).window.document.documentElement
    const seen = {
      width: svg.getAttribute('width'),
      told: [...svg.querySelectorAll('title, desc')].every(({ textContent }) => textContent !== ''),
      active: svg.querySelectorAll('script, foreignObject, style').length,
      bad: /NaN|Infinity|undefined/.test(text),
    }
    const shapes = svg.querySelectorAll('path, circle, line, rect, polyline, image').length
    expect(seen, name).toEqual({ width: '170mm', told: true, active: 0, bad: false })
    expect(shapes, name).toBeGreaterThan(5)
  }
  return names
}

test('pictures of every view come as SVG, and as PNG of the size and density asked for', async ({ page }) => {
  const said = listenTo(page)
  await openBench(page)
  expect(await saveAll(page, 5)).toEqual([
    'Section at the nip',
    'Loupe',
    'Press line',
    'Pulls at the nip',
    'Stair of tacks',
  ])
  const dialog = page.locator('tack-file-panel')
  await dialog.getByLabel('Width in print, mm').fill('85')
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    dialog.getByRole('button', { name: /^Save as PNG/ }).click(),
  ])
  const png = readFileSync(await download.path())
  expect(png.subarray(1, 4).toString()).toBe('PNG')
  expect(png.readUInt32BE(16)).toBe(Math.round((85 / 25.4) * 300))
  expect(png.subarray(37, 41).toString()).toBe('pHYs')
  expect(png.readUInt32BE(41)).toBe(11811)
  // A picture of one colour alone would be far smaller.
  expect(png.length).toBeGreaterThan(20_000)
  await dialog.getByLabel('Width in print, mm').fill('5000')
  await dialog.getByRole('button', { name: 'Save as SVG' }).click()
  await expect(dialog.getByText('“5000” is no width')).toBeVisible()
  await page.keyboard.press('Escape')

  await page.getByRole('link', { name: 'Strip', exact: true }).click()
  await page.locator('tack-patch-strip [data-patch]').first().waitFor()
  await saveAll(page, 'Control strip')
  await page.keyboard.press('Escape')
  await page.getByRole('link', { name: 'Instruments', exact: true }).click()
  await page.locator('tack-tackmeter-picture').waitFor()
  await saveAll(page, 3)
  await page.keyboard.press('Escape')
  await page.getByRole('link', { name: 'Run chart', exact: true }).click()
  await page.getByRole('button', { name: 'Run the press' }).click()
  await page.locator('tack-run-chart').first().waitFor()
  await saveAll(page, 3)
  await page.keyboard.press('Escape')
  await page.getByRole('link', { name: 'Orders', exact: true }).click()
  await page.getByRole('button', { name: 'Rank all 24 orders' }).click()
  await page.getByText('All 24 orders are ranked.').waitFor()
  await saveAll(page, 'Orders, best first')
  await page.keyboard.press('Escape')
  await page.getByRole('link', { name: 'Trials', exact: true }).click()
  await page.getByRole('button', { name: 'Pin this trial' }).click()
  await saveAll(page, 'Pinned trials')
  await page.keyboard.press('Escape')
  // Two set-ups side by side are one picture, whatever of them is shown.
  await page.getByRole('link', { name: 'Lecture', exact: true }).click()
  await page.getByRole('button', { name: 'Begin with the ready lecture' }).click()
  await page.locator('tack-scene-list .choose').nth(5).click()
  const sentence = await page.getByRole('textbox', { name: 'Sentence above the picture' }).inputValue()
  await saveAll(page, sentence)
  await page.keyboard.press('Escape')
  await page.getByRole('combobox', { name: 'Picture' }).selectOption('press line')
  await saveAll(page, sentence)
  expect(said).toEqual([])
})

test('the pictures on offer follow what is drawn behind the panel, and the one chosen stays chosen', async ({
  page,
}) => {
  const said = listenTo(page)
  await page.goto('./#view=glossary')
  await expect(page.getByRole('heading', { name: 'Words of the trade' })).toBeVisible()
  const dialog = await openTool(page, 'File')
  await expect(dialog.getByText('This part of the page has no picture at the moment.')).toBeVisible()
  // Another view by the address, as by Back; its drill takes a while to be made.
  await page.evaluate(() => (location.hash = '#view=drills&drill=easy:3'))
  const which = dialog.getByRole('combobox', { name: 'Picture' })
  const offered = which.locator('option')
  const patches = /^Sheet, by eye(: Patches of the good sheet.*)?$/
  await expect(offered.filter({ hasText: patches })).toHaveCount(1, { timeout: 60_000 })
  await page.keyboard.press('Escape')
  await page.getByRole('button', { name: 'Loupe', exact: true }).click()
  await openTool(page, 'File')
  await which.selectOption((await offered.filter({ hasText: patches }).textContent()) ?? '')
  // More evidence is laid on top of what was there, as from another tab.
  await page
    .getByRole('button', { name: 'Run chart', exact: true, includeHidden: true })
    .evaluate((button: HTMLButtonElement) => button.click())
  await expect(offered.filter({ hasText: 'Run chart' }).first()).toBeAttached()
  await expect(which.locator('option:checked')).toHaveText(patches)
  const download = page.waitForEvent('download')
  await dialog.getByRole('button', { name: 'Save as SVG' }).click()
  expect((await download).suggestedFilename()).toMatch(/^tackstair-sheet-by-eye(-patches-.*)?\.svg$/)
  await page.evaluate(() => (location.hash = '#view=glossary'))
  await expect(dialog.getByText('This part of the page has no picture at the moment.')).toBeVisible()
  expect(said).toEqual([])
})

test('the report is all that is printed, and goes again', async ({ page }) => {
  await page.addInitScript(() => {
    window.print = () => undefined
  })
  await openBench(page)
  const dialog = await openTool(page, 'File')
  await dialog.getByRole('button', { name: 'Print the report' }).click()
  const report = page.locator('tack-report-sheet')
  await expect(report).toBeHidden()
  await page.emulateMedia({ media: 'print' })
  await expect(report).toBeVisible()
  await expect(page.locator('tack-page')).toBeHidden()
  await expect(report.getByText('mass trap (%)')).toBeVisible()
  await page.emulateMedia({ media: 'screen' })
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')))
  await expect(report).toHaveCount(0)
})

test('a draft brings back the bench after a reload, and a link goes before it', async ({ page }) => {
  await openBench(page)
  await expect(page.getByText('Unchanged')).toBeVisible()
  await page.getByRole('button', { name: 'Order reversed' }).click()
  const reversed = await order(page)
  await expect(page.getByText('Draft saved')).toBeVisible()
  await page.reload()
  await expect.poll(() => order(page)).toEqual(reversed)
  await page.goto('about:blank')
  await page.goto('./#v=1&inks=cyan:14,yellow:10')
  await expect(page.getByText('Unchanged')).toBeVisible()
  expect(await order(page)).toEqual(['cyan', 'yellow'])
})

test('leaving the page at once loses nothing', async ({ page }) => {
  await openBench(page)
  await expect(page.getByText('Unchanged')).toBeVisible()
  await page.getByRole('button', { name: 'Order reversed' }).click()
  const reversed = await order(page)
  await page.reload()
  await expect.poll(() => order(page)).toEqual(reversed)
})

test('a full storage is told in the head, and the page goes on', async ({ page }) => {
  const said = listenTo(page)
  await openBench(page)
  await page.getByRole('button', { name: 'Order reversed' }).click()
  await expect(page.getByText('Draft saved')).toBeVisible()
  await page.evaluate(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError')
    }
  })
  await page.getByRole('button', { name: 'Equal tacks' }).click()
  await expect(page.getByRole('status').filter({ hasText: 'Draft not saved: storage full' })).toBeVisible()
  expect(said).toEqual([])
})

test('a blocked storage is told in the head, and everything works without', async ({ page }) => {
  const said = listenTo(page)
  await page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new DOMException('blocked', 'SecurityError')
      },
    })
  })
  await openBench(page)
  await expect(page.getByRole('status').filter({ hasText: 'No draft: storage blocked' })).toBeVisible()
  const dialog = await openTool(page, 'File')
  await expect(dialog.getByText('closing it loses what is on the bench')).toBeVisible()
  expect(said).toEqual([])
})

test('a draft that cannot be read is offered as a file', async ({ page }) => {
  await page.addInitScript(() => {
    if (localStorage.getItem('planted') !== null) return
    localStorage.setItem('planted', 'yes')
    localStorage.setItem('tackstair draft gone', '{"savedAt":1,"file":"{broken"}')
  })
  await openBench(page)
  const dialog = await openTool(page, 'File')
  await expect(dialog.getByText('A draft was found that cannot be read')).toBeVisible()
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    dialog.getByRole('button', { name: 'Save its text' }).click(),
  ])
  expect(await textOf(download)).toBe('{broken')
  await dialog.getByRole('button', { name: 'Throw it away' }).click()
  await expect(dialog.getByText('A draft was found that cannot be read')).toHaveCount(0)
})

test('axe finds nothing wrong with sharing and files in the light and in the dark, and they close by Escape', async ({
  page,
}) => {
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await openBench(page)
  for (const name of ['Share', 'File'] as const) {
    await openTool(page, name)
    expect(await faultsInBothLights(page)).toEqual([])
    await page.keyboard.press('Escape')
    await expect(toolDialog(page, name)).toBeHidden()
    await expect(page.getByRole('button', { name, exact: true })).toBeFocused()
  }
})

test('sharing and files stay inside a screen of 320 to 1920 px', async ({ page }) => {
  await page.goto(`./${longLink}`)
  for (const name of ['Share', 'File'] as const) {
    await openTool(page, name)
    for (const width of [320, 390, 1920]) {
      expect(await sticksOutAt(page, [width])).toEqual([])
      const sticksOut = await toolDialog(page, name).evaluate((box) => box.scrollWidth - box.clientWidth)
      expect(sticksOut).toBeLessThanOrEqual(0)
    }
    await page.keyboard.press('Escape')
  }
})

test('the page from a stick asks for its address on the web before it gives a whole link', async ({ page }) => {
  await page.goto(`${pathToFileURL(join(import.meta.dirname, '../../dist/tackstair.html')).href}#view=bench`)
  const dialog = await openTool(page, 'Share')
  await expect(dialog.getByText('No picture: there is no public address yet.')).toBeVisible()
  const address = dialog.getByRole('textbox', { name: 'Address of the page on the web' })
  await address.fill('a school')
  await address.press('Enter')
  await expect(dialog.getByText('“a school” is no address of a page')).toBeVisible()
  await address.fill('https://example.org/press/')
  await address.press('Enter')
  const link = dialog.getByRole('textbox', { name: 'Link to this set-up and view' })
  await expect(link).toHaveValue(/^https:\/\/example\.org\/press\/#v=1&inks=black/)
  await expect(dialog.getByRole('img', { name: /^QR picture/ })).toBeVisible()
  await dialog.getByRole('button', { name: 'Save a file instead' }).click()
  await expect(page.getByRole('dialog', { name: 'Save, open, print' })).toBeVisible()
})
