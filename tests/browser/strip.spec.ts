import type { Locator, Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import { listenTo } from './console.ts'
import { faultsInBothLights, sticksOutAt } from './faults.ts'

type Part = 'Strip' | 'Own sheet' | 'Practice' | 'Shelf'

async function open(page: Page, part: Part = 'Strip'): Promise<void> {
  await page.goto('./#view=strip')
  await page.getByRole('radio', { name: part, exact: true }).check()
}

function patch(page: Page, name: string): Locator {
  return page.getByRole('button', { name, exact: true })
}

/** The number an element starts with. */
async function figure(of: Locator): Promise<number> {
  return Number(/-?[\d.]+/.exec((await of.textContent()) ?? '')?.[0])
}

/** D1, D2, D3 as the trap panel shows them. */
async function densities(page: Page): Promise<[number, number, number]> {
  const shown = page.locator('tack-trap-panel dd.figure')
  return [await figure(shown.nth(0)), await figure(shown.nth(1)), await figure(shown.nth(2))]
}

function trapBy(page: Page, heading: RegExp): Locator {
  return page
    .locator('tack-trap-panel section')
    .filter({ has: page.getByRole('heading', { name: heading }) })
    .locator('.figure')
}

/** The table of traps: what stands in each column, by "later on below". */
async function trapTable(page: Page): Promise<Record<string, string[]>> {
  const rows = await page.locator('tack-sheet-traps-table tbody tr').all()
  const read = await Promise.all(
    rows.map(async (row): Promise<[string, string[]]> => [
      (await row.locator('th').textContent()) ?? '',
      await row.locator('td').allTextContents(),
    ]),
  )
  return Object.fromEntries(read)
}

async function drop(page: Page, name: string, text: string): Promise<void> {
  const file = { name, mimeType: 'text/csv', buffer: Buffer.from(text) }
  await page.locator('tack-sheet-file-panel input[type=file]').setInputFiles(file)
}

test('the head goes from patch to patch by the arrow keys, and only one patch is a stop of the tab key', async ({
  page,
}) => {
  const said = listenTo(page)
  await open(page)
  await patch(page, 'MY: magenta + yellow').focus()
  await page.keyboard.press('ArrowLeft')
  await expect(patch(page, 'CY: cyan + yellow')).toBeFocused()
  await expect(patch(page, 'CY: cyan + yellow')).toHaveAttribute('aria-pressed', 'true')
  await page.keyboard.press('Home')
  await expect(patch(page, 'bare paper')).toBeFocused()
  await page.keyboard.press('End')
  await expect(patch(page, 'KCMY: black + cyan + magenta + yellow')).toBeFocused()
  expect(await page.locator('tack-patch-strip [data-patch][tabindex="0"]').count()).toBe(1)
  expect(said).toEqual([])
})

test('the patch under the head is the one the bench looks at', async ({ page }) => {
  await open(page)
  await patch(page, 'CY: cyan + yellow').click()
  await page.getByRole('link', { name: 'Bench' }).click()
  for (const [ink, prints] of Object.entries({ black: false, cyan: true, magenta: false, yellow: true })) {
    await expect(page.getByRole('button', { name: `${ink} prints` })).toHaveAttribute('aria-pressed', String(prints))
  }
})

test('each trap follows from the densities shown, by the equation shown', async ({ page }) => {
  await open(page)
  for (const name of ['MY: magenta + yellow', 'CY: cyan + yellow', 'CM: cyan + magenta']) {
    await patch(page, name).click()
    const [D1, D2, D3] = await densities(page)
    // Densities are shown to 0.01, which moves Preucil and Ritz by two points at most.
    expect(Math.abs((await figure(trapBy(page, /Preucil/))) - (100 * (D3 - D1)) / D2)).toBeLessThan(2)
    expect(
      Math.abs((await figure(trapBy(page, /Ritz/))) - (100 * (1 - 10 ** (D1 - D3))) / (1 - 10 ** -D2)),
    ).toBeLessThan(2)
    expect(
      Math.abs((await figure(trapBy(page, /Brunner/))) - (100 * (1 - 10 ** -D3)) / (1 - 10 ** -(D1 + D2))),
    ).toBeLessThan(0.5)
  }
  await expect(page.locator('tack-trap-panel math').first()).toBeVisible()
})

test('only the trap by Preucil stands on a scale with the normal band', async ({ page }) => {
  await open(page)
  await expect(page.locator('tack-normal-band')).toHaveCount(1)
  const percent = await figure(trapBy(page, /Preucil/))
  const side = percent < 70 ? 'is below' : percent > 87 ? 'is above' : 'lies within'
  await expect(page.locator('tack-normal-band p')).toContainText(`${side} the 70 to 87 %`)
})

test('the wrong filter can be chosen and is explained', async ({ page }) => {
  await open(page)
  await expect(page.locator('tack-trap-panel')).toContainText('The blue filter is the right one for yellow')
  await page.locator('tack-densitometer').getByRole('radio', { name: 'red', exact: true }).check()
  await expect(page.locator('tack-trap-panel')).toContainText('This is the wrong filter')
})

test('absolute densities are those minus paper and the paper together', async ({ page }) => {
  await open(page)
  const shown = page.locator('tack-densitometer dd.figure')
  const absolute = page.locator('tack-densitometer').getByRole('radio', { name: 'absolute' })
  const minus = await figure(shown.nth(2))
  await absolute.check()
  const whole = await figure(shown.nth(2))
  await patch(page, 'bare paper').click()
  const paper = await figure(shown.nth(2))
  expect(Math.abs(minus + paper - whole)).toBeLessThan(0.016)
})

test('the spectrum is there as a table of 36 bands', async ({ page }) => {
  await open(page)
  await page.getByText('The spectrum as a table').click()
  await expect(page.locator('tack-spectrum-panel tbody tr')).toHaveCount(36)
})

test('a CSV with decimal commas gives the traps of the published arithmetic, and a bad row is listed by its line', async ({
  page,
}) => {
  const said = listenTo(page)
  await open(page, 'Own sheet')
  const rows = [
    'patch;red;green;blue',
    'magenta;0,20;1,45;0,65',
    'yellow;0,02;0,08;1,00',
    'magenta + yellow;0,21;1,47;1,40',
    'cyan;1,40;0,40;0,15',
    'cyan + yellow;1,41;0,42;1,02',
    'cyan + magenta;1,45;none;0,70',
  ]
  await drop(page, 'ours.csv', rows.join('\r\n'))
  await expect(page.locator('tack-sheet-panel')).toContainText('Readings are taken from “ours.csv”')
  // Worked by hand: 100 (1.40 - 0.65) / 1.00 and 100 (1.02 - 0.15) / 1.00; the other two columns from the same cases.
  expect(await trapTable(page)).toEqual({
    'yellow on magenta': ['0.65', '1.00', '1.40', '75.0', '91.4', '98.2'],
    'yellow on cyan': ['0.15', '1.00', '1.02', '87.0', '96.1', '97.3'],
  })
  await expect(page.locator('tack-sheet-panel .problems')).toHaveText(/Line 7:.*“none”.*green/)
  expect(said).toEqual([])
})

test('a typed row that cannot be read is named by its patch, and marked', async ({ page }) => {
  await open(page, 'Own sheet')
  const cells = ['red', 'green', 'blue'].map((filter) =>
    page.getByLabel(`cyan, density through the ${filter} filter`, { exact: true }),
  )
  for (const [at, text] of ['1,4', 'x', '0.1'].entries()) await cells[at].fill(text)
  await cells[2].press('Tab')
  await expect(page.locator('tack-sheet-panel .problems')).toHaveText(/cyan: .*“x”.*green/)
  await expect(cells[1]).toHaveAttribute('aria-invalid', 'true')
  await page.getByLabel('cyan + magenta, density through the red filter', { exact: true }).fill('1.5')
  await page.keyboard.press('Tab')
  await page.getByRole('link', { name: 'Bench' }).click()
  await page.getByRole('button', { name: 'Order reversed' }).click()
  await page.getByRole('link', { name: 'Strip' }).click()
  await page.getByRole('radio', { name: 'Own sheet', exact: true }).check()
  await expect(cells[0]).toHaveValue('1,4')
  // The same patch, its inks now printed the other way round.
  await expect(page.getByLabel('magenta + cyan, density through the red filter', { exact: true })).toHaveValue('1.5')
  await page.getByLabel('magenta + cyan, density through the red filter', { exact: true }).fill('')
  await cells[1].fill('0.4')
  await cells[1].press('Tab')
  await expect(page.locator('tack-sheet-panel .problems')).toHaveCount(0)
})

test('colours outside the screen are marked and said', async ({ page }) => {
  await open(page)
  // Cyan of coated offset lies outside sRGB; black does not.
  await expect(patch(page, 'C: cyan')).toHaveClass('outside')
  await expect(patch(page, 'K: black')).not.toHaveClass('outside')
  await patch(page, 'C: cyan').click()
  await expect(page.locator('tack-colour-panel')).toContainText('Outside your screen’s range')
})

test('a file of another kind is refused in words and invents nothing', async ({ page }) => {
  await open(page, 'Own sheet')
  await drop(page, 'ours.pdf', '%PDF-1.7 and so on')
  await expect(page.locator('tack-sheet-panel')).toContainText('This is a PDF file, not a table of readings')
  await expect(page.locator('tack-sheet-traps-table')).toHaveCount(0)
})

test('the template that is saved can be filled in and read', async ({ page }) => {
  await open(page, 'Own sheet')
  const saving = page.waitForEvent('download')
  await page.getByRole('button', { name: 'semicolon' }).click()
  const template = await (await saving).createReadStream()
  const chunks: Buffer[] = []
  for await (const chunk of template) chunks.push(chunk as Buffer)
  const lines = Buffer.concat(chunks).toString('utf8').trim().split('\r\n')
  expect(lines[0]).toBe('patch;red;green;blue;sheet')
  expect(lines).toHaveLength(1 + 16)
  const filled = lines.map((line) => line.replace(';;;;', ';1,0;1,1;1,2;'))
  await drop(page, 'filled.csv', filled.join('\n'))
  await expect(page.locator('tack-sheet-traps-table')).toContainText('15 patches were read')
})

test('the model fitted to its own strip finds the press it came from, which goes to shelf and bench and can be undone', async ({
  page,
}) => {
  const said = listenTo(page)
  await open(page, 'Own sheet')
  await page.getByRole('button', { name: 'Fill in the computed strip' }).click()
  await page.getByRole('button', { name: 'Fit the press' }).click()
  const values = page.getByRole('region', { name: 'Fitted press' }).locator('tbody tr')
  await expect(values).toHaveCount(5)
  for (const row of (await values.all()).slice(0, 4)) {
    // The strip was filled in to 0.01 density, which decides a film of 4 um to a tenth of a um or better.
    expect(Math.abs((await figure(row.locator('td').nth(1))) - 4)).toBeLessThan(0.1)
  }
  await page.getByRole('link', { name: 'Bench' }).click()
  await page.getByRole('link', { name: 'Strip' }).click()
  await page.getByRole('radio', { name: 'Own sheet', exact: true }).check()
  await expect(values).toHaveCount(5)
  await page.getByLabel('Name of this press').fill('press two')
  await page.getByRole('button', { name: 'Use as my press' }).click()
  await expect(page.locator('tack-fit-result')).toContainText('“press two” is on the shelf and on the bench now')
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled()
  await open(page, 'Shelf')
  await expect(page.getByRole('button', { name: 'Set up press two' })).toBeVisible()
  expect(said).toEqual([])
})

test('a long fit can be called off, and the page stays alive meanwhile', async ({ page }) => {
  const spots = [1, 2, 3, 4].map((n) => `own+ink+${String(n)}:12:rgb${String(n)}03050`)
  await page.goto(`./#view=strip&inks=black,cyan,magenta,yellow,${spots.join(',')}`)
  await page.getByRole('radio', { name: 'Own sheet', exact: true }).check()
  await page.getByRole('button', { name: 'Fill in the computed strip' }).click()
  for (const each of await page.locator('tack-fit-panel').getByRole('checkbox').all()) await each.check()
  await page.getByRole('button', { name: 'Fit the press' }).press('Enter')
  await expect(page.getByRole('progressbar')).toBeVisible()
  await expect(page.getByRole('button', { name: 'Cancel' })).toBeFocused()
  // By key: what stands below the fit moves as its first step is told.
  await page.getByRole('radio', { name: 'Status T' }).press('Space')
  await expect(page.getByRole('radio', { name: 'Status T' })).toBeChecked()
  await page.getByRole('button', { name: 'Cancel' }).press('Enter')
  await expect(page.getByRole('progressbar')).toHaveCount(0)
  await expect(page.getByRole('button', { name: 'Fit the press' })).toBeFocused()
  await expect(page.locator('tack-fit-result')).toHaveCount(0)
})

test('a fit that the readings cannot decide is refused in words', async ({ page }) => {
  await open(page, 'Own sheet')
  await drop(page, 'solid.csv', 'patch,red,green,blue\ncyan,1.4,0.4,0.15\n')
  await page.getByRole('checkbox', { name: 'evenness of the paper' }).check()
  await page.getByRole('button', { name: 'Fit the press' }).click()
  await expect(page.locator('tack-fit-panel')).toContainText('No overprint was read')
})

test('typed formulas are judged by value, and slips are named', async ({ page }) => {
  const said = listenTo(page)
  await open(page, 'Practice')
  const typed = page.getByLabel('Percent trap =')
  const result = page.locator('tack-formula-practice [role=status]')
  const judge = async (formula: string, words: string | RegExp) => {
    await typed.fill(formula)
    await typed.press('Enter')
    await expect(result).toContainText(words)
  }
  await judge('(D3 - D1) / D2', 'This gives trap as a share of 1')
  await judge('D3/D2*100 - D1*100/D2', 'Right')
  await judge('100*(D3-D2)/D1', 'D1 and D2 have changed places')
  await judge('constructor("x")', /not used here|not known here|Only numbers/)
  await judge('D1 + 7', 'It does not give what the equation asked for gives.')
  await page.getByRole('button', { name: 'Show the equation' }).click()
  await expect(page.locator('tack-formula-practice').getByRole('heading', { name: 'The equation' })).toBeVisible()
  await page.getByRole('radio', { name: 'Ritz' }).check()
  await judge('100*(D3-D1)/D2', 'This is Preucil’s equation')
  await judge('100*(1-10^(D1-D3))/(1-10^(-D2))', 'Right')
  expect(said).toEqual([])
})

test('an own ink goes on the shelf, to a file and back, and into the press', async ({ page }) => {
  const said = listenTo(page)
  await open(page, 'Shelf')
  await page.getByText('Make a new ink').click()
  await page.locator('tack-new-ink').getByLabel('Name').fill('barn red')
  await page.getByRole('button', { name: 'Put it on the shelf' }).click()
  const saving = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save to a file' }).click()
  const file = await (await saving).path()
  await page.getByRole('button', { name: 'Take off barn red' }).click()
  await expect(page.getByRole('button', { name: 'Load barn red' })).toHaveCount(0)
  await page.getByLabel('Open a saved shelf').setInputFiles(file)
  await page.getByRole('button', { name: 'Load barn red' }).click()
  await page.getByRole('radio', { name: 'Strip', exact: true }).check()
  await expect(page.getByRole('button', { name: /: barn red$/ })).toBeVisible()
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(page.getByRole('button', { name: /: barn red$/ })).toHaveCount(0)

  // What is on the bench goes there too, under names of our own, and back on the bench from there.
  await page.getByRole('radio', { name: 'Shelf', exact: true }).check()
  const shelf = page.locator('tack-shelf-panel')
  const keep = async (what: 'ink' | 'paper' | 'press', name: string, told: string) => {
    const saver = shelf.locator('tack-shelf-saver', { has: page.getByRole('button', { name: `Keep this ${what}` }) })
    await saver.getByLabel('Name').fill(name)
    await saver.getByRole('button').click()
    await expect(saver.getByRole('status')).toHaveText(`“${name}” is on the shelf${told}.`)
  }
  await shelf.getByLabel('Loaded ink').selectOption('magenta')
  await keep('ink', 'our magenta', '')
  await keep('ink', 'our magenta', ', in place of the one of that name')
  await keep('paper', 'mill paper', '')
  await keep('press', 'press two', '')
  for (const use of ['Load our magenta', 'Print on it: mill paper', 'Set up press two']) {
    await shelf.getByRole('button', { name: use }).click()
    await expect(shelf.getByText('is on the bench now. Undo takes it off again.')).toBeVisible()
  }
  await expect(shelf).toContainText('made from')

  // A colour can be typed as it was measured.
  await page.getByText('Make a new ink').click()
  const made = page.locator('tack-new-ink')
  await made.getByRole('radio', { name: 'as L*, a*, b*' }).check()
  for (const [label, typed] of [
    ['Tack number', '11'],
    ['L*', '30'],
    ['b*', '-40'],
  ]) {
    await made.getByLabel(label, { exact: true }).fill(typed)
    await made.getByLabel(label, { exact: true }).press('Tab')
  }
  await made.getByRole('button', { name: 'Put it on the shelf' }).click()
  await expect(made).toContainText('This is no name')
  await made.getByLabel('Name').fill('night blue')
  await made.getByRole('button', { name: 'Put it on the shelf' }).click()
  await expect(made).toContainText('“night blue” is on the shelf.')
  await expect(shelf.getByRole('listitem').filter({ hasText: 'night blue' })).toContainText('tack 11')

  // A file that is no shelf changes nothing and says why.
  const broken = { name: 'bad.json', mimeType: 'application/json', buffer: Buffer.from('no shelf') }
  await page.getByLabel('Open a saved shelf').setInputFiles(broken)
  await expect(shelf.getByRole('status').first()).toContainText('JSON')
  await expect(shelf.getByRole('button', { name: 'Load night blue' })).toBeVisible()
  expect(said).toEqual([])
})

test('a name that no shelf can hold is refused at its field', async ({ page }) => {
  await open(page, 'Shelf')
  await page.getByRole('button', { name: 'Keep this paper' }).click()
  await expect(page.locator('tack-shelf-panel')).toContainText('This is no name: allowed are 1 to 40 characters')
})

test('axe finds nothing wrong in any part in the light and in the dark', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await open(page)
  await expect(page.locator('tack-trap-panel math').first()).toBeVisible()
  await page.getByText('The spectrum as a table').click()
  expect(await faultsInBothLights(page, ['tack-page', 'tack-strip-view'])).toEqual([])
  await page.getByRole('radio', { name: 'Own sheet' }).check()
  await page.getByText('What the columns are').click()
  await page.getByRole('button', { name: 'Fill in the computed strip' }).click()
  await page.getByRole('button', { name: 'Fit the press' }).click()
  await page.getByText('What is left over, patch by patch').click()
  expect(await faultsInBothLights(page, ['tack-page', 'tack-strip-view'])).toEqual([])
  await page.getByRole('radio', { name: 'Practice' }).check()
  await page.getByRole('button', { name: 'Check' }).click()
  expect(await faultsInBothLights(page, ['tack-page', 'tack-strip-view'])).toEqual([])
  await page.getByRole('radio', { name: 'Shelf' }).check()
  await page.getByText('Make a new ink').click()
  expect(await faultsInBothLights(page, ['tack-page', 'tack-strip-view'])).toEqual([])
})

test('nothing of the strip sticks out to the side from 320 to 1920 px', async ({ page }) => {
  for (const part of ['Strip', 'Own sheet', 'Practice', 'Shelf'] as const) {
    await open(page, part)
    expect(await sticksOutAt(page, [320, 390, 1366, 1920])).toEqual([])
  }
})
