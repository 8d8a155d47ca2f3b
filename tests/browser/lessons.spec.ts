/** Lessons on the page: place kept, hints, instructor, hostile files, author, handout, results. */
import { readFileSync } from 'node:fs'
import type { Locator, Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import { enter, field } from './bench-page.ts'
import { listenTo } from './console.ts'
import { drawn } from './drawn.ts'
import { atStep, choose, everyForm, goOn, lesson, openFile, openLessons, press, toThirdStep } from './lesson-page.ts'
import { faultsInBothLights, sticksOutAt } from './faults.ts'

async function toPatchStep(page: Page): Promise<void> {
  await openLessons(page)
  await toThirdStep(page)
  await atStep(page, 3)
}

test('reading and pressing "Go on" never finishes a lesson', async ({ page }) => {
  await openLessons(page)
  await page.getByRole('button', { name: 'Begin: What a press sheet is' }).click()
  await goOn(page)
  await atStep(page, 2)
  await expect(lesson(page).getByRole('button', { name: 'Go on', exact: true })).toBeDisabled()
})

test('hints come one by one, in their order, and are counted', async ({ page }) => {
  await toPatchStep(page)
  await expect(lesson(page)).not.toContainText('Switch yellow off.')
  await press(page, 'Show a hint (0 of 2 shown)')
  await expect(lesson(page)).toContainText('Switch yellow off.')
  await expect(lesson(page)).not.toContainText('Then only cyan prints.')
  await press(page, 'Show a hint (1 of 2 shown)')
  await expect(lesson(page)).toContainText('Then only cyan prints.')
  await expect(lesson(page).getByRole('button', { name: 'All hints are shown.' })).toBeVisible()
})

test('a reload keeps the step, what was answered and the bench', async ({ page }) => {
  await toPatchStep(page)
  await enter(page, 'Tack of cyan', '17')
  await page.getByRole('button', { name: 'yellow prints in this patch' }).click()
  await press(page, 'Check the bench')
  await expect(lesson(page)).toContainText('Done.')
  await page.reload()
  await atStep(page, 3)
  await expect(lesson(page)).toContainText('Done.')
  await expect(field(page, 'Tack of cyan')).toHaveValue('17')
  await expect(page.getByRole('button', { name: 'yellow prints in this patch' })).toHaveAttribute(
    'aria-pressed',
    'false',
  )
})

test('undo ends at the start of the lesson, and leaving it gives back the bench, also after a reload', async ({
  page,
}) => {
  await page.goto('./#view=bench')
  await enter(page, 'Tack of black', '19')
  await page.getByRole('link', { name: 'Lessons' }).click()
  await openFile(page, everyForm)
  await atStep(page, 1)
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled()
  await enter(page, 'Tack of cyan', '17')
  await page.reload()
  await expect(field(page, 'Tack of cyan')).toHaveValue('17')
  await enter(page, 'Tack of cyan', '18')
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(field(page, 'Tack of cyan')).toHaveValue('17')
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled()
  await page.getByRole('button', { name: 'All lessons' }).click()
  await page.getByRole('link', { name: 'Bench' }).click()
  await expect(field(page, 'Tack of black')).toHaveValue('19')
})

test('another part of the page and back again: the lesson is where it was', async ({ page }) => {
  await toPatchStep(page)
  await page.getByRole('link', { name: 'Glossary' }).click()
  await page.getByRole('heading', { name: 'Words of the trade' }).waitFor()
  await page.getByRole('link', { name: 'Bench' }).click()
  await expect(field(page, 'Coverage of cyan')).toBeEnabled()
  await page.getByRole('link', { name: 'Lessons' }).click()
  await atStep(page, 3)
  await expect(field(page, 'Coverage of cyan')).toBeDisabled()
})

test('Back and Forward show what the address says: bench, list, lesson, glossary', async ({ page }) => {
  const said = listenTo(page)
  await page.goto('./#view=bench')
  await page.evaluate(() => (location.hash = ''))
  const bench = page.getByRole('button', { name: 'Step nip' })
  const list = page.getByRole('heading', { name: 'Lessons', exact: true })
  const words = page.getByRole('heading', { name: 'Words of the trade' })
  await bench.waitFor()
  await page.getByRole('link', { name: 'Lessons' }).click()
  await page.getByRole('button', { name: 'Begin: What a press sheet is' }).click()
  await expect(page).toHaveURL(/#view=lessons&lesson=press-sheet$/)
  await goOn(page)
  await page.getByRole('button', { name: 'All lessons' }).click()
  await list.waitFor()
  await page.getByRole('link', { name: 'Glossary' }).click()
  await words.waitFor()
  await page.goBack()
  await expect(list).toBeVisible()
  await page.goBack()
  await atStep(page, 2)
  await page.goBack()
  await expect(list).toBeVisible()
  await page.goBack()
  await expect(bench).toBeVisible()
  expect(new URL(page.url()).hash).toBe('')
  await page.goForward()
  await expect(list).toBeVisible()
  await page.goForward()
  await atStep(page, 2)
  await page.goForward()
  await expect(list).toBeVisible()
  await page.goForward()
  await expect(words).toBeVisible()
  expect(said).toEqual([])
})

test('a step can be tried again and the bench set back', async ({ page }) => {
  await toPatchStep(page)
  await enter(page, 'Tack of cyan', '17')
  await press(page, 'Set the bench back')
  await expect(field(page, 'Tack of cyan')).toHaveValue('14')
  await page.getByRole('button', { name: 'yellow prints in this patch' }).click()
  await press(page, 'Check the bench')
  await press(page, 'Try this step again')
  await expect(lesson(page)).not.toContainText('Done.')
  await expect(page.getByRole('button', { name: 'yellow prints in this patch' })).toHaveAttribute(
    'aria-pressed',
    'true',
  )
  await press(page, 'Back')
  await atStep(page, 2)
  await expect(page.getByRole('radio', { name: 'More stays' })).toBeDisabled()
})

test('where the browser keeps nothing, the lesson goes on and says so', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get() {
        throw new DOMException('blocked', 'SecurityError')
      },
    })
  })
  const said = listenTo(page)
  await toPatchStep(page)
  await expect(lesson(page)).toContainText('This browser keeps nothing for this page')
  await page.getByRole('link', { name: 'Glossary' }).click()
  await page.getByRole('link', { name: 'Lessons' }).click()
  await atStep(page, 3)
  expect(said).toEqual([])
})

test('an instructor starts at any step, sees the notes and keeps feedback back', async ({ page }) => {
  await openLessons(page)
  await openFile(page, everyForm)
  await lesson(page).getByText('For instructors').click()
  await lesson(page).getByRole('checkbox', { name: 'Show notes' }).check()
  await expect(lesson(page)).toContainText('Nobody but the instructor reads this.')
  await lesson(page).getByRole('checkbox', { name: 'Hide feedback' }).check()
  await lesson(page).getByRole('combobox', { name: 'Go to step' }).selectOption('tack')
  await atStep(page, 5)
  // The bench is as the author's own way leaves it: yellow first.
  await expect(page.getByRole('button', { name: /^Unit 1: yellow/ })).toBeVisible()
  await press(page, 'Check the bench')
  await expect(lesson(page)).toContainText('Handed in. Feedback is hidden.')
  await expect(lesson(page)).not.toContainText('has to')
})

test('results are printed or saved with a name that is optional', async ({ page }) => {
  await openLessons(page)
  await openFile(page, everyForm)
  await lesson(page).getByText('For instructors').click()
  await lesson(page).getByRole('combobox', { name: 'Go to step' }).selectOption('both')
  await enter(page, 'Tack of yellow', '12')
  await choose(page, 'Up')
  await press(page, 'Hand in')
  await press(page, 'Results')
  await expect(page.getByText('1 of 15 steps are done.')).toBeVisible()
  await page.getByRole('textbox', { name: 'Name, if you want it on the sheet' }).fill('Kim')
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as text' }).click(),
  ])
  expect(download.suggestedFilename()).toBe('every-form-results.txt')
  const text = readFileSync(await download.path(), 'utf8')
  expect(text).toContain('Name: Kim')
  expect(text).toContain('Of these at the first try, without a hint: 1')
  await page.emulateMedia({ media: 'print' })
  await expect(page.getByRole('button', { name: 'Print' })).toBeHidden()
  await expect(page.getByRole('link', { name: 'Bench' })).toBeHidden()
  await expect(page.getByText('Name: Kim')).toBeVisible()
})

test('a file dropped on the page is run', async ({ page }) => {
  await openLessons(page)
  const data = await page.evaluateHandle((text) => {
    const transfer = new DataTransfer()
    transfer.items.add(new File([text], 'mine.lesson.yaml'))
    return transfer
  }, everyForm)
  await page.locator('tack-lessons-view').dispatchEvent('drop', { dataTransfer: data })
  await atStep(page, 1)
})

const bomb = 'a: &a [x, x, x]\nb: &b [*a, *a, *a]\nc: [*b, *b, *b]\n'

for (const [what, text, says] of [
  ['an alias bomb', bomb, /an anchor \(&\) is not allowed/],
  ['a prototype', `${everyForm}\n__proto__: { polluted: true }\n`, /__proto__ is not allowed/],
  ['a future format', everyForm.replace('format: 1', 'format: 7'), /newer than this program, which reads format 1/],
  ['an unknown field', everyForm.replace('minutes: 20', 'minuets: 20'), /"minuets" is no field.*did you mean minutes/],
  ['no YAML at all', '\u0000\u0001 {{{', /cannot be run as it is/],
] as const) {
  test(`${what} is refused in words, and what was done before stays`, async ({ page }) => {
    const said = listenTo(page)
    await toPatchStep(page)
    await press(page, 'All lessons')
    await openFile(page, text)
    await expect(page.getByRole('alert').filter({ hasText: 'cannot be run as it is' })).toContainText(says)
    await page.getByRole('button', { name: 'Close' }).click()
    await page.getByRole('button', { name: 'Go on: every-form' }).click()
    await atStep(page, 3)
    expect(said).toEqual([])
  })
}

test('a file too large is not even read', async ({ page }) => {
  await openLessons(page)
  await openFile(page, '#'.repeat(300 * 1024), 'large.yaml')
  await expect(page.getByRole('alert').filter({ hasText: 'large.yaml is 300 kB' })).toContainText('up to 256 kB')
})

test('script and foreign images in Markdown stay words and ask nobody for anything', async ({ page, baseURL }) => {
  const said = listenTo(page)
  const foreign: string[] = []
  page.on('request', (request) => {
    if (!request.url().startsWith(baseURL ?? '') && !/^(data|blob):/.test(request.url())) foreign.push(request.url())
  })
  await openLessons(page)
  const hostile =
    'Look <script>document.title = "taken"</script> ![spy](https://example.org/spy.png) <img src=x onerror="document.title=1"> [go](javascript:document.title=2)'
  await openFile(page, everyForm.replace('Ink taken back off', `${hostile} Ink taken back off`))
  await atStep(page, 1)
  await expect(lesson(page)).toContainText(/The checker names \d+ problems/)
  await expect(lesson(page)).toContainText('<script>')
  expect(await page.locator('tack-lessons-view').locator('img, script, a[href^="javascript"]').count()).toBe(0)
  await expect(page).toHaveTitle(/Tackstair/)
  expect(foreign).toEqual([])
  expect(said).toEqual([])
})

test('an author sees problems with their lines, takes set-up and reading, and saves a sound lesson', async ({
  page,
}) => {
  const said = listenTo(page)
  await openLessons(page)
  await page.getByRole('button', { name: 'Write a lesson' }).click()
  const text = page.getByRole('textbox', { name: 'Text of the lesson' })
  await expect(page.getByText('No problems: the lesson can be done as written.')).toBeVisible()
  const sound = await text.inputValue()

  await text.fill(sound.replace('kind: say', 'kind: sya'))
  const problem = page.getByRole('button', {
    name: /^Line \d+, column \d+: "sya" is no kind of step.*did you mean say/,
  })
  await problem.click()
  const line = await text.evaluate(
    (area: HTMLTextAreaElement) => area.value.slice(0, area.selectionEnd).split('\n').length,
  )
  expect(line).toBe(sound.split('\n').findIndex((each) => each.includes('kind: say')) + 1)
  await page.getByLabel('Language').selectOption('es')
  const inSpanish = page.getByRole('button', {
    name: /^Línea \d+, columna \d+: "sya" no es ninguna clase de paso; valen say, .*; ¿querías decir say\?$/,
  })
  await expect(inSpanish).toBeVisible()
  await expect(inSpanish.locator('[lang]')).toHaveCount(0)
  await page.getByLabel('Idioma').selectOption('en')

  await text.fill(sound)
  await enter(page, 'Tack of cyan', '13.5')
  await page.getByRole('button', { name: 'Take this set-up as the start' }).click()
  await expect(text).toHaveValue(/start:\n {2}inks:\n {4}- name: cyan\n {6}tack: 13\.5\n/)

  const caret = (await text.inputValue()).indexOf("value: 72, unit: '%'")
  await text.evaluate((area: HTMLTextAreaElement, at) => area.setSelectionRange(at, at), caret)
  await page.getByRole('combobox', { name: 'Reading' }).selectOption('the tack of cyan')
  await page.getByRole('button', { name: 'Take this reading as the expectation' }).click()
  await expect(text).toHaveValue(
    /\n {6}- \{ is: within, reading: \{ what: tack, of: cyan \}, value: 13\.5, tolerance: 0\.3/,
  )

  await text.fill(sound)
  await expect(page.getByText('No problems: the lesson can be done as written.')).toBeVisible()
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as a file' }).click(),
  ])
  expect(download.suggestedFilename()).toBe('softer-second.lesson.yaml')
  expect(readFileSync(await download.path(), 'utf8')).toBe(sound)
  await page.getByRole('button', { name: 'Run it as a lesson' }).click()
  await atStep(page, 1)
  expect(said).toEqual([])
})

test('a handout prints steps, figures, blanks, and the answers on a page of their own', async ({ page }) => {
  await openLessons(page)
  const handout = page.getByRole('button', { name: 'Handout: Two inks, the wrong way round' })
  await expect(handout).toHaveCount(0)
  await page.getByRole('checkbox', { name: /^I teach/ }).check()
  await handout.click()
  const sheets = page.locator('tack-lesson-handout article')
  await expect(sheets).toHaveCount(2)
  await expect(sheets.first().getByRole('img', { name: 'Section at the nip, to be labelled' })).toHaveCount(2)
  await expect(sheets.first()).not.toContainText('78, 14')
  await expect(sheets.last()).toContainText('78, 14')
  await page.emulateMedia({ media: 'print' })
  await expect(page.getByRole('button', { name: 'Print' })).toBeHidden()
  expect(await sheets.last().evaluate((each) => getComputedStyle(each).breakBefore)).toBe('page')
  // The boxes to tick stand on the paper, whose edge is the sheet's here, and the gaps take a pen.
  const roomForBox = await sheets.first().evaluate((sheet) => {
    const lines = [...sheet.querySelectorAll('.boxes > li')].map((line) => line.getBoundingClientRect().left)
    return Math.min(...lines) - sheet.getBoundingClientRect().left
  })
  expect(roomForBox).toBeGreaterThanOrEqual(20)
  await expect(sheets.first().locator('.blanks > li').first()).toHaveText(/_{12}/)
})

test('axe finds nothing wrong in the lessons, in the light and in the dark', async ({ page }) => {
  test.setTimeout(180_000)
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await openLessons(page)
  await page.getByRole('checkbox', { name: /^I teach/ }).check()
  expect(await faultsInBothLights(page)).toEqual([])
  await page.getByRole('button', { name: 'Handout: Two inks, the wrong way round' }).click()
  expect(await faultsInBothLights(page)).toEqual([])
  await page.getByRole('button', { name: 'All lessons' }).click()
  await page.getByRole('button', { name: 'Write a lesson' }).click()
  expect(await faultsInBothLights(page)).toEqual([])
  await page.getByRole('button', { name: 'All lessons' }).click()
  await openFile(page, everyForm)
  await lesson(page).getByText('For instructors').click()
  for (const step of ['guess', 'look', 'arrange', 'number', 'diagnose']) {
    await lesson(page).getByRole('combobox', { name: 'Go to step' }).selectOption(step)
    if (step === 'look') await press(page, 'Check the bench')
    expect(await faultsInBothLights(page)).toEqual([])
  }
})

test('a whole step is done by keyboard alone, and the focus goes to the next step', async ({ page }) => {
  await openLessons(page)
  await openFile(page, everyForm)
  await expect(page.getByRole('heading', { name: /^Step 1 of/ })).toBeFocused()
  const pressUntil = async (name: string) => {
    for (let tab = 0; tab < 40; tab++) {
      await page.keyboard.press('Tab')
      const focused = page.getByRole('button', { name, exact: true })
      if (await focused.evaluateAll((all) => all.some((each) => each.matches(':focus')))) return
    }
    throw new Error(`Tab never came to ${name}.`)
  }
  await pressUntil('Go on')
  await page.keyboard.press('Enter')
  await expect(page.getByRole('heading', { name: /^Step 2 of/ })).toBeFocused()
  await page.keyboard.press('Tab')
  await page.keyboard.press('Space')
  await page.keyboard.press('ArrowDown')
  await expect(page.getByRole('radio', { name: 'Less stays' })).toBeChecked()
  await pressUntil('That is my prediction')
  await page.keyboard.press('Enter')
  await expect(lesson(page)).toContainText('Your prediction: Less stays')
})

test('nothing of a lesson sticks out to the side from 320 to 1920 px', async ({ page }) => {
  const widths = [320, 390, 768, 1024, 1366, 1920]
  await toPatchStep(page)
  expect(await sticksOutAt(page, widths)).toEqual([])
  await press(page, 'All lessons')
  expect(await sticksOutAt(page, widths)).toEqual([])
  await page.getByRole('button', { name: 'Write a lesson' }).click()
  expect(await sticksOutAt(page, widths)).toEqual([])
})

test('at 1366 x 768 four inks, their picture, readings and pulls, and what happened are seen together', async ({
  page,
}) => {
  await page.goto('./#view=lessons&lesson=contamination')
  await page.getByText('For instructors').click()
  // A step at which nothing is covered.
  await page.getByRole('combobox', { name: 'Go to step' }).selectOption({ index: 5 })
  for (const part of ['ink-ladder', 'transport', 'section-picture', 'readings-strip'])
    await expect(page.locator(`tack-lesson-bench tack-${part}`)).toBeInViewport({ ratio: 1 })
  await expect(page.locator('tack-telling')).toHaveCount(2)
  for (const half of await page.locator('tack-telling').all()) await expect(half).toBeInViewport({ ratio: 1 })
})

test('beside a lesson the densitometer reads the patch of the bench, and says no more than is asked', async ({
  page,
}) => {
  await page.goto('./#view=lessons&lesson=reading-trap')
  const meter = page.locator('tack-lesson-bench tack-densitometer')
  await expect(meter.locator('dd')).toHaveCount(3)
  await expect(meter.getByRole('table')).toHaveCount(0)
  await expect(meter.getByRole('group', { name: 'Filter for trap' })).toHaveCount(0)
  const leaveOut = (ink: string) => page.getByRole('button', { name: `${ink} prints in this patch` }).click()
  for (const ink of ['black', 'cyan']) await leaveOut(ink)
  await expect(meter.getByText('magenta + yellow', { exact: true })).toBeVisible()
  const all = await meter.locator('dd').allTextContents()
  await leaveOut('yellow')
  await expect(meter.getByText('magenta', { exact: true })).toBeVisible()
  // Without the yellow hardly anything takes the blue light away, and the other two filters read as before.
  const [red, green, blue] = (await meter.locator('dd').allTextContents()).map(Number)
  expect(blue).toBeLessThan(0.7 * Number(all[2]))
  expect(Math.abs(red - Number(all[0]))).toBeLessThan(0.1)
  expect(Math.abs(green - Number(all[1]))).toBeLessThan(0.15)
})

test('at 390 x 844 the way on is in view, and each number of an ink has its head above it', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 })
  await page.goto('./#view=lessons&lesson=contamination')
  await expect(lesson(page).getByRole('button', { name: 'Go on', exact: true })).toBeInViewport({ ratio: 1 })
  await expect(page.locator('tack-ink-row .head')).toHaveText(Array(4).fill(['tack', 'film, µm']).flat() as string[])
  await drawn(page)
  for (const field of await page.locator('tack-ink-row .field').all()) {
    const [head, number] = [await field.locator('.head').boundingBox(), await field.locator('input').boundingBox()]
    expect(Math.round((number?.y ?? 0) - (head?.y ?? 0) - (head?.height ?? 0))).toBeLessThanOrEqual(2)
    expect(number?.x).toBe(head?.x)
  }
})

test('at 390 x 844 the picture is seen beside a step whose inks are only looked at, and a turned phone reads it beside the bench', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 })
  await page.goto('./#view=lessons&lesson=press-sheet')
  await expect(page.locator('tack-line-picture')).toBeInViewport({ ratio: 0.8 })
  await page.setViewportSize({ width: 844, height: 390 })
  const text = lesson(page).locator('.prose-text p').first()
  for (const seen of [text, lesson(page).getByRole('button', { name: 'Go on', exact: true })])
    await expect(seen).toBeInViewport({ ratio: 1 })
  await expect(page.locator('tack-line-picture')).toBeInViewport({ ratio: 0.8 })
  const rightOf = async (left: Locator, right: Locator) => {
    const [first, second] = [await left.boundingBox(), await right.boundingBox()]
    return (first?.x ?? 0) + (first?.width ?? 0) <= (second?.x ?? 0)
  }
  await expect.poll(() => rightOf(text, page.locator('tack-line-picture'))).toBe(true)
  await expect(text).toBeInViewport({ ratio: 1 })
})

test('at 1366 x 768 step and section are seen together', async ({ page }) => {
  await toPatchStep(page)
  // An earlier step has turned to the loupe.
  await page.getByRole('group', { name: 'Pictures' }).getByText('Section at the nip', { exact: true }).first().click()
  for (const seen of [lesson(page).getByRole('heading', { level: 2 }), page.locator('tack-section-picture')]) {
    await expect(seen).toBeInViewport({ ratio: 1 })
  }
  await drawn(page)
  const box = await page.locator('tack-section-picture').boundingBox()
  expect(box?.width).toBeGreaterThanOrEqual(300)
  expect(box?.height).toBeGreaterThanOrEqual(220)
})
