/** A lecture from beginning to end: prepared, shown by the keys of a clicker, followed by the speaker, saved and opened again. */
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import { openBench } from './bench-page.ts'
import { listenTo } from './console.ts'
import { drawn } from './drawn.ts'
import { faults, sticksOut } from './faults.ts'

const oneFile = pathToFileURL(join(import.meta.dirname, '../../dist/tackstair.html')).href

const title = (page: Page) => page.locator('tack-scene-stage.shown').getByRole('heading', { level: 2 })
const number = (page: Page) => page.locator('tack-scene-stage.shown .number')
const scenes = (page: Page) => page.locator('tack-scene-list .choose')

async function beginReadyLecture(page: Page, address = './#view=lecture'): Promise<void> {
  await page.goto(address)
  await page.getByRole('button', { name: 'Begin with the ready lecture' }).click()
  await expect(scenes(page)).toHaveCount(9)
}

test('three scenes are prepared, put in order, shown, and are there again after a reload and in a file', async ({
  page,
}) => {
  const said = listenTo(page)
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await openBench(page)
  for (const scenario of ['Tacks step down', 'Order reversed', 'Weak paper']) {
    await page.getByRole('link', { name: 'Bench' }).click()
    await page.getByRole('button', { name: scenario }).click()
    await page.getByRole('link', { name: 'Lecture' }).click()
    await page.getByRole('button', { name: 'Take the bench as a scene' }).click()
  }
  await expect(scenes(page)).toContainText(['Tacks step down', 'Order reversed', 'Weak paper'])

  // The second: a sentence of its own, a number that waits, and the right order beside it.
  await scenes(page).nth(1).click()
  await page.getByRole('textbox', { name: 'Sentence above the picture' }).fill('Black comes last')
  await page.getByRole('textbox', { name: 'Note for the speaker alone' }).fill('Let them guess.')
  await page.getByRole('combobox', { name: 'The one number' }).selectOption('black: what is left of it on the sheet')
  await page.getByRole('checkbox', { name: 'A press plays the nip first' }).check()
  await page.getByRole('checkbox', { name: 'The number waits for a press' }).check()
  await page.getByRole('combobox', { name: 'Or one of the ready set-ups' }).selectOption('Tacks step down')
  expect(await faults(page)).toEqual([])

  // By keyboard one place earlier, taken out, and had back.
  await scenes(page).nth(1).focus()
  await page.keyboard.press('Alt+ArrowUp')
  await expect(scenes(page)).toContainText(['Black comes last', 'Tacks step down', 'Weak paper'])
  await page.getByRole('button', { name: 'Delete “Black comes last”' }).click()
  await expect(scenes(page)).toHaveCount(2)
  await page.keyboard.press('Control+z')
  await expect(scenes(page)).toContainText(['Black comes last', 'Tacks step down', 'Weak paper'])

  await page.getByRole('button', { name: 'Show the lecture' }).click()
  await expect(title(page)).toHaveText('Black comes last')
  await expect(number(page)).toContainText(['?', '?'])
  await page.keyboard.press('PageDown')
  await expect(page.getByText('Press 1 of 2 in this scene.')).toBeAttached()
  await expect(page.getByText('The nip has been played. The number is hidden until the next press.')).toBeAttached()
  await page.keyboard.press('PageDown')
  await expect(number(page)).toContainText([/^\d+\s% of the black is left/, /^\d+\s% of the black is left/])
  await page.keyboard.press('PageDown')
  await expect(title(page)).toHaveText('Tacks step down')

  await page.reload()
  await expect(title(page)).toHaveText('Tacks step down')
  await page.keyboard.press('Escape')
  await expect(scenes(page)).toContainText(['Black comes last', 'Tacks step down', 'Weak paper'])

  // No link holds scenes: it says so, and leads whoever has none to the bench. Its picture, made large, is seen whole.
  await page.getByRole('button', { name: 'Share' }).click()
  await expect(page.getByText('The scenes of the lecture are not in it')).toBeVisible()
  await expect(page.getByRole('textbox', { name: 'Link to this set-up and view' })).not.toHaveValue(/view=/)
  await page.getByRole('button', { name: 'Show it large' }).click()
  await expect(page.getByRole('img', { name: /^QR picture/ })).toBeInViewport({ ratio: 1 })
  await page.keyboard.press('Escape')

  await page.getByRole('button', { name: 'File' }).click()
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save the file' }).click()
  const path = await (await download).path()
  expect(await readFile(path, 'utf8')).toContain('Let them guess.')

  await page.goto('about:blank')
  await page.context().clearCookies()
  await page.goto('./#view=lecture')
  await page.evaluate(() => {
    localStorage.clear()
    sessionStorage.clear()
  })
  await page.reload()
  await expect(page.getByRole('button', { name: 'Begin with the ready lecture' })).toBeVisible()
  await page.getByRole('button', { name: 'File' }).click()
  await page.locator('tack-open-panel input[type=file]').setInputFiles({
    name: 'mine.tackstair.json',
    mimeType: 'application/json',
    buffer: await readFile(path),
  })
  await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click()
  await page.getByRole('link', { name: 'Lecture' }).click()
  await expect(scenes(page)).toContainText(['Black comes last', 'Tacks step down', 'Weak paper'])
  expect(said).toEqual([])
})

test('a scene is worked on in every part: picture, number, words and a second set-up, taken back and copied', async ({
  page,
}) => {
  const said = listenTo(page)
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await beginReadyLecture(page)
  await expect(page.getByText('The ready lecture is here: 9 scenes, each with a note')).toBeVisible()
  await scenes(page).nth(5).click()
  const preview = page.locator('tack-scene-editor tack-scene-stage')
  const sides = preview.getByRole('region')
  const told = page.locator('tack-lecture-prepare').getByRole('status').first()
  await expect(sides).toHaveCount(2)

  for (const [picture, number, read] of [
    ['press line', 'magenta: its film on the sheet', /^[\d.]+\sµm of magenta on the sheet/],
    ['loupe', 'paper picked, of the patch', /^<?[\d.]+\s% of this patch has lost/],
    ['ink ladder', 'magenta: contamination of its unit', /^<?[\d.]+ foreign ink in the unit of the magenta/],
    ['section', 'black: what is left of it on the sheet', /^\d+\s% of the black is left/],
  ] as const) {
    await page.getByRole('combobox', { name: 'Picture' }).selectOption(picture)
    await page.getByRole('combobox', { name: 'The one number' }).selectOption(number)
    await expect(preview.locator('.number')).toHaveText([read, read])
    const stairs = preview.getByRole('img', { name: /^The inks as a stair of their tack/ })
    await expect(stairs).toHaveCount(picture === 'ink ladder' ? 2 : 0)
  }
  await page.getByRole('checkbox', { name: 'The number waits for a press' }).check()
  await page.getByRole('textbox', { name: 'Question while it waits' }).fill('Where will the black go?')

  // The second set-up: words over both, the two swapped, the second taken away and had back, another in its place.
  const [first, second] = [
    page.getByRole('textbox', { name: 'Words over the first' }),
    page.getByRole('textbox', { name: 'Words over the second' }),
  ]
  await first.fill('Ours')
  await second.fill('Theirs')
  await page.getByRole('button', { name: 'Swap the two' }).click()
  await expect(first).toHaveValue('Theirs')
  await expect(second).toHaveValue('Ours')
  await page.getByRole('button', { name: 'Take the second away' }).click()
  await expect(second).toHaveCount(0)
  await expect(sides).toHaveCount(0)
  const button = (name: string) => page.locator('tack-lecture-prepare').getByRole('button', { name, exact: true })
  await button('Undo').click()
  await expect(told).toHaveText('The last change to the lecture is taken back.')
  await expect(second).toHaveValue('Ours')
  await button('Redo').click()
  await expect(told).toHaveText('The change is made again.')
  await button('Take the bench as the second').click()
  await expect(second).toHaveValue('')

  await button('Put it on the bench').click()
  await expect(told).toHaveText(/^“One order splits.*” is on the bench\./)
  await button('Update it from the bench').click()
  await expect(told).toHaveText(/^“One order splits.*” now shows what is on the bench\.$/)
  await page.getByRole('button', { name: /^Move “One order splits.*” one place later$/ }).click()
  await expect(told).toHaveText(/^“One order splits.*” is now scene 7 of 9\.$/)
  await page.getByRole('button', { name: /^Duplicate “One order splits/ }).click()
  await expect(told).toHaveText('The copy is scene 8.')
  await expect(scenes(page)).toHaveCount(10)

  // Shown from here: the question stands there until the last press.
  await button('Show from here').click()
  await expect(title(page)).toContainText('One order splits')
  await expect(number(page).first()).toContainText('Where will the black go?')
  const fillsScreen = () => page.evaluate(() => document.fullscreenElement !== null)
  for (const isWanted of [true, false]) {
    // The buttons are there while the pointer moves.
    await page.mouse.move(300, isWanted ? 300 : 310)
    await page.getByRole('button', { name: 'Full screen' }).click()
    await expect.poll(fillsScreen).toBe(isWanted)
  }

  // With words alone there is neither a number nor a second set-up.
  await page.keyboard.press('Escape')
  await page.getByRole('combobox', { name: 'Picture' }).selectOption('words alone')
  await expect(page.getByRole('combobox', { name: 'The one number' })).toHaveCount(0)
  await expect(button('Take the bench as the second')).toHaveCount(0)
  expect(said).toEqual([])
})

test('a clicker leads through the ready lecture; the screen goes blank, a unit stands in the light, and axe finds nothing', async ({
  page,
}) => {
  const said = listenTo(page)
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await beginReadyLecture(page)
  await page.keyboard.press('F5')
  const status = page.locator('tack-lecture-show p[role=status]')
  await expect(status).toHaveText('Scene 1 of 9. Four inks, one upon another, and none has time to dry.')
  expect(await faults(page)).toEqual([])

  await page.keyboard.press('3')
  await expect(status).toHaveText('Unit 3, magenta, in the light.')
  await expect(page.getByRole('button', { name: 'Unit 3, magenta, in the light' })).toHaveAttribute(
    'aria-pressed',
    'true',
  )
  await expect(page.locator('tack-spot-light .edge')).toBeAttached()
  // A press on the first unit of the picture puts that one in the light instead.
  await drawn(page)
  const line = await page.locator('tack-spot-light').boundingBox()
  if (!line) throw new Error('The press line is not to be seen.')
  await page.mouse.click(line.x + 0.17 * line.width, line.y + 0.5 * line.height)
  await expect(status).toHaveText('Unit 1, black, in the light.')
  await page.keyboard.press('0')
  await expect(page.locator('tack-spot-light .edge')).toHaveCount(0)

  await page.keyboard.press('b')
  await expect(page.locator('.blank.black')).toBeVisible()
  expect(await faults(page)).toEqual([])
  await page.keyboard.press('PageDown')
  await expect(page.locator('.blank')).toHaveCount(0)
  await expect(title(page)).toContainText('Four inks')
  await page.keyboard.press(',')
  await expect(page.locator('.blank.white')).toBeVisible()
  await page.keyboard.press(',')

  // A question from the floor: what if magenta goes first? The class is asked anew, and leaving the scene ends the try.
  await page.keyboard.press('PageDown')
  await expect(title(page)).toHaveText(/^Tack is how hard/)
  await page.keyboard.press('3')
  await page.keyboard.press('Shift+ArrowLeft')
  await expect(status).toHaveText('magenta is now in unit 2 of 4, as a try.')
  await page.getByRole('button', { name: 'Try magenta one unit earlier' }).click()
  await expect(title(page)).toHaveText('Tried: magenta, black, cyan, yellow')
  await expect(page.getByRole('button', { name: 'Try magenta one unit earlier' })).toBeDisabled()
  await expect(page.getByRole('img', { name: /magenta 12, black 16, cyan 14, yellow 10/ })).toBeVisible()
  await page.keyboard.press('PageUp')
  await expect(status).toHaveText('The order is as prepared again.')
  await expect(title(page)).toHaveText(/^Tack is how hard/)
  await page.keyboard.press('1')
  await page.keyboard.press('Shift+ArrowRight')
  await expect(title(page)).toHaveText('Tried: cyan, black, magenta, yellow')
  await page.keyboard.press('PageDown')
  await page.keyboard.press('PageUp')
  await expect(title(page)).toHaveText(/^Tack is how hard/)

  // Tab brings the buttons up for good; whoever goes on with the clicker wants the picture and its number whole.
  await page.keyboard.press('Tab')
  await expect(page.locator('tack-lecture-show main')).not.toHaveAttribute('data-idle')
  await page.keyboard.press('PageUp')
  await expect(page.locator('tack-lecture-show main')).toHaveAttribute('data-idle')
  await expect(page.locator('tack-lecture-show .controls')).toHaveCSS('opacity', '0')

  for (const key of ['ArrowRight', ' ', 'Enter']) await page.keyboard.press(key)
  await expect(number(page)).toHaveText(/\d+\s% of the yellow stays on the magenta/)
  await expect(status).toHaveText(/^\d+\s% of the yellow stays/)
  await page.keyboard.press('Backspace')
  await expect(number(page)).toHaveText('')
  await page.keyboard.press('End')
  await expect(title(page)).toContainText('The weakest film splits')
  await page.keyboard.press('PageDown')
  await expect(title(page)).toContainText('The weakest film splits')
  await page.keyboard.press('Home')
  await expect(title(page)).toContainText('Four inks')

  // Buttons go when nothing moves, and come back with the pointer; the picture can be had in words.
  await page.getByRole('combobox', { name: 'Scene shown' }).selectOption({ index: 5 })
  await expect(page.locator('tack-lecture-show main')).toHaveAttribute('data-idle')
  await page.mouse.move(300, 300)
  await page.getByRole('button', { name: 'In words' }).click()
  await expect(page.getByRole('row', { name: /^M magenta/ })).toBeVisible()
  expect(await faults(page)).toEqual([])
  await page.keyboard.press('Escape')
  await expect(title(page)).toContainText('One order splits')
  await page.getByRole('button', { name: 'Leave' }).click()
  await expect(scenes(page).nth(5)).toHaveAttribute('aria-current', 'true')

  // After a look at the bench it is still the scene being worked on; a bench that was changed is no ready set-up.
  await page.getByRole('link', { name: 'Bench' }).click()
  await page.getByRole('button', { name: 'Move magenta one unit earlier' }).click()
  await page.getByRole('link', { name: 'Lecture' }).click()
  await expect(scenes(page).nth(5)).toHaveAttribute('aria-current', 'true')
  await page.getByRole('button', { name: 'Take the bench as a scene' }).click()
  await expect(scenes(page).nth(9)).toContainText('Scene 10')
  expect(said).toEqual([])
})

for (const [width, height] of [
  [1024, 768],
  [3840, 2160],
]) {
  test(`every scene fills ${width} x ${height}: nothing is cut off, nothing scrolls, nothing jumps`, async ({
    page,
  }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' })
    await page.setViewportSize({ width, height })
    await beginReadyLecture(page)
    await page.keyboard.press('F5')
    const rooms = new Map<string, Set<string>>()
    const buttons = page.locator('tack-lecture-show .controls')
    for (let scene = 1; scene <= 9; scene++) {
      await page.getByRole('combobox', { name: 'Scene shown' }).selectOption({ index: scene - 1 })
      await drawn(page)
      const found = await page.locator('tack-scene-stage.shown').evaluate((stage) => {
        const root = stage.shadowRoot as ShadowRoot
        const texts = [...root.querySelectorAll<HTMLElement>('.title, .number, .head')]
        const bounds = stage.getBoundingClientRect()
        const cut = texts.filter((each) => {
          const { left, right, top, bottom } = each.getBoundingClientRect()
          const isOutside = left < bounds.left || right > bounds.right || top < bounds.top || bottom > bounds.bottom
          return isOutside || each.scrollWidth > each.clientWidth
        })
        const inner = root.querySelector('.scene') as HTMLElement
        const picture = root.querySelector('.picture')?.getBoundingClientRect()
        const sides = inner.dataset['sides'] ?? ''
        return {
          cut: cut.map(({ textContent }) => textContent.trim()),
          numberEnds: Math.max(
            0,
            ...[...root.querySelectorAll('.number > *')].map((part) => part.getBoundingClientRect().bottom),
          ),
          scrolls: document.documentElement.scrollHeight > innerHeight,
          text: parseFloat(getComputedStyle(inner).fontSize),
          figure: Math.max(
            ...[...root.querySelectorAll('.number b')].map((b) => parseFloat(getComputedStyle(b).fontSize)),
          ),
          room: picture && `${sides}: ${picture.y} ${picture.height}`,
          share: picture ? picture.height / innerHeight : 1,
        }
      })
      expect(found.cut, `scene ${scene}`).toEqual([])
      // The buttons are there, as one of them was just used.
      expect(found.numberEnds, `scene ${scene}`).toBeLessThanOrEqual((await buttons.boundingBox())?.y ?? 0)
      expect(found.scrolls, `scene ${scene}`).toBe(false)
      expect(found.text).toBeGreaterThanOrEqual(28)
      if (Number.isFinite(found.figure)) expect(found.figure).toBeGreaterThanOrEqual(64)
      expect(found.share).toBeGreaterThan(0.5)
      if (found.room) rooms.set(found.room[0], (rooms.get(found.room[0]) ?? new Set()).add(found.room))
    }
    for (const places of rooms.values()) expect([...places]).toHaveLength(1)
    // The picture is drawn no finer than a machine without graphics of its own can follow.
    const pixels = await page
      .locator('tack-scene-stage.shown canvas')
      .evaluateAll((all) => all.map((each) => (each as HTMLCanvasElement).width * (each as HTMLCanvasElement).height))
    for (const each of pixels) expect(each).toBeLessThan(2_700_000)
  })
}

for (const kind of ['served', 'one file']) {
  test(`the speaker’s window follows and leads, and outlives either window (${kind})`, async ({ page, context }) => {
    const said = listenTo(page)
    await page.emulateMedia({ reducedMotion: 'reduce' })
    await beginReadyLecture(page, kind === 'served' ? './#view=lecture' : `${oneFile}#view=lecture`)
    await page.keyboard.press('F5')
    await expect(title(page)).toContainText('Four inks')
    const opened = context.waitForEvent('page')
    await page.getByRole('button', { name: 'Speaker’s window' }).click()
    const speaker = await opened
    const heard = listenTo(speaker)
    await expect(speaker.getByText('Scene 1 of 9')).toBeVisible()
    await expect(speaker.getByRole('region', { name: 'Note' })).toContainText('Follow one sheet')
    await expect(speaker.getByText('Next scene: Tack is how hard')).toBeVisible()
    await expect(speaker.getByRole('timer')).toContainText(/\d:\d\d/)
    expect(await faults(speaker)).toEqual([])

    await page.keyboard.press('PageDown')
    await expect(speaker.getByText('Scene 2 of 9')).toBeVisible()
    await speaker.getByRole('button', { name: 'Next scene' }).click()
    await expect(title(page)).toContainText('Where a stack of films')
    await speaker.keyboard.press('b')
    await expect(page.locator('.blank.black')).toBeVisible()
    await expect(speaker.getByText('The screen is black.')).toBeVisible()
    await speaker.getByRole('button', { name: 'White' }).click()
    await expect(page.locator('.blank.white')).toBeVisible()
    await speaker.keyboard.press('PageUp')
    await expect(page.locator('.blank')).toHaveCount(0)

    // The lecture's window is loaded again: the speaker's goes on with it.
    await page.reload()
    await expect(title(page)).toContainText('Where a stack of films')
    await speaker.getByRole('button', { name: 'Next: the nip' }).click()
    await expect(number(page)).toHaveText(/\d+\s% of the yellow stays/)

    // At the end the speaker's window says so.
    await page.keyboard.press('End')
    await expect(speaker.getByText('This is the last scene.')).toBeVisible()
    await page.getByRole('combobox', { name: 'Scene shown' }).selectOption({ index: 2 })
    await expect(speaker.getByText('Scene 3 of 9')).toBeVisible()

    // The speaker's window is closed and opened again: it shows where the lecture is.
    await speaker.close()
    await page.mouse.move(200, 200)
    const again = context.waitForEvent('page')
    await page.getByRole('button', { name: 'Speaker’s window' }).click()
    const second = await again
    await expect(second.getByText('Scene 3 of 9')).toBeVisible()
    await page.keyboard.press('Escape')
    await expect(second.getByText('The lecture’s window is closed, or shows no lecture.')).toBeVisible()
    await expect(second.getByText('Scene 3 of 9')).toBeVisible()
    expect([...said, ...heard]).toEqual([])
  })
}

test('a blocked window is told with a way out, and at 390 px nothing sticks out', async ({ page }) => {
  await page.addInitScript(() => {
    window.open = () => null
  })
  await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce', forcedColors: 'active' })
  await page.setViewportSize({ width: 390, height: 844 })
  await beginReadyLecture(page)
  expect(await sticksOut(page)).toBe(false)
  await page.goto('./#view=lecture&scene=5')
  await expect(title(page)).toContainText('Now the black comes last')
  await page.getByRole('button', { name: 'Speaker’s window' }).click()
  await expect(page.getByRole('alert')).toContainText('did not open the speaker’s window')
  await page.getByRole('button', { name: 'Notes below the picture' }).click()
  await expect(page.getByText('Let them raise hands')).toBeVisible()
  expect(await sticksOut(page)).toBe(false)
  expect(await faults(page)).toEqual([])

  // Another scene in the address is gone to; one beyond the last is the last.
  await page.keyboard.press('PageUp')
  await page.goto('./#view=lecture&scene=5')
  await expect(title(page)).toContainText('Now the black comes last')
  await page.goto('./#view=lecture&scene=300')
  await expect(title(page)).toContainText('The weakest film splits')
  await expect(page).toHaveURL(/scene=9$/)
})
