/** Where a page can be: every view and what opens in it, each reached from the one before, so that one page is walked through all. */
import type { Page } from '@playwright/test'
import { unfoldHead } from './bench-page.ts'
import { drawn } from './drawn.ts'

interface Place {
  readonly name: string
  readonly go: (page: Page) => Promise<void>
}

async function view(page: Page, name: string, there: string): Promise<void> {
  await unfoldHead(page)
  await page.getByRole('navigation').getByRole('link', { name, exact: true }).click()
  await page.locator(there).first().waitFor()
}

async function choose(page: Page, name: string): Promise<void> {
  await page.getByRole('radio', { name, exact: true }).check()
}

async function press(page: Page, name: string | RegExp): Promise<void> {
  await page.getByRole('button', { name, exact: true }).first().click()
}

async function type(page: Page, label: string, text: string): Promise<void> {
  await page.getByRole('textbox', { name: label, exact: true }).fill(text)
  await page.getByRole('textbox', { name: label, exact: true }).press('Enter')
}

const broken = { name: 'broken.lesson.yaml', mimeType: 'text/yaml', buffer: Buffer.from('id: x\nsteps: 3\n') }

const places: readonly Place[] = [
  {
    name: 'bench after a link with a fault, all of it open, a number refused',
    go: async (page) => {
      await page.goto('./#view=bench&unit=99')
      await page.getByRole('alert').getByText('Not all of the link could be used').waitFor()
      for (const panel of ['Paper', 'Press']) await page.locator('summary', { hasText: panel }).click()
      await press(page, 'More about black')
      await type(page, 'Tack of cyan', '99')
    },
  },
  {
    name: 'strip',
    go: async (page) => {
      await press(page, 'Close')
      await view(page, 'Strip', 'tack-patch-strip')
    },
  },
  {
    name: 'orders, ranked and compared',
    go: async (page) => {
      await view(page, 'Orders', 'tack-orders-view main')
      await press(page, /^Rank all/)
      await page.getByText('orders are ranked.').waitFor()
      for (const rank of [0, 1])
        await page
          .getByRole('button', { name: /^Compare/ })
          .nth(rank)
          .click()
      await page.locator('tack-order-pair').getByRole('img').first().waitFor()
    },
  },
  { name: 'trials', go: (page) => view(page, 'Trials', 'tack-trials-view main') },
  {
    name: 'run chart',
    go: async (page) => {
      await view(page, 'Run chart', 'tack-run-view main')
      await type(page, 'Length of the run', '100')
      await press(page, 'Run the press')
      await page.locator('tack-run-chart canvas').first().waitFor()
    },
  },
  {
    name: 'tackmeter',
    go: async (page) => {
      await view(page, 'Instruments', 'tack-tackmeter-picture')
      await press(page, 'On to 60 s')
      await press(page, 'Take five')
    },
  },
  {
    name: 'pick test, marked',
    go: async (page) => {
      await choose(page, 'Pick test')
      await press(page, 'Print a strip')
      await page.getByRole('slider').fill('10')
      await press(page, 'Here picking begins')
      await page.locator('tack-pick-rig summary').first().click()
    },
  },
  {
    name: 'wet-on-wet proof, weighed',
    go: async (page) => {
      await choose(page, 'Wet-on-wet proof')
      await press(page, 'Print and weigh')
      await page.locator('tack-proof-result summary').click()
    },
  },
  { name: 'fault drills', go: (page) => view(page, 'Fault drills', 'tack-drills-view main') },
  {
    name: 'lessons, one of them broken',
    go: async (page) => {
      await view(page, 'Lessons', 'tack-course-list')
      await page.getByLabel('Open a lesson file').setInputFiles(broken)
      await page.getByText('broken.lesson.yaml').first().waitFor()
    },
  },
  {
    name: 'lesson, an answer wrong',
    go: async (page) => {
      await press(page, /^Begin: /)
      const lesson = page.getByRole('region', { name: 'Lesson', exact: true })
      await lesson.getByRole('button', { name: 'Go on', exact: true }).click()
      await lesson.getByRole('radio').last().check()
      await lesson.getByRole('button', { name: 'Hand in', exact: true }).click()
    },
  },
  {
    name: 'lecture in preparation',
    go: async (page) => {
      await view(page, 'Lecture', 'tack-lecture-prepare')
      await press(page, 'Begin with the ready lecture')
      await page.locator('tack-scene-list .choose').nth(4).click()
    },
  },
  {
    name: 'lecture',
    go: async (page) => {
      await press(page, 'Show from here')
      await press(page, 'Notes below')
    },
  },
  {
    name: 'board, a file refused',
    go: async (page) => {
      await page.goto('./#view=board')
      await page.getByLabel('Choose result files').setInputFiles({ ...broken, name: 'broken.result.json' })
      await page.getByText('broken.result.json').first().waitFor()
    },
  },
  { name: 'glossary', go: (page) => view(page, 'Glossary', 'tack-glossary-view main') },
]

/** The page stands still at each of them for as long as `look` takes. */
export async function atEachPlace(page: Page, look: (name: string) => Promise<void>): Promise<void> {
  for (const { name, go } of places) {
    await go(page)
    await drawn(page)
    await look(name)
  }
}
