/** Every form of a step, done wrong first and then right, as a learner would who gets everything wrong. */
import type { Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import { enter, handle } from './bench-page.ts'
import { listenTo } from './console.ts'
import { atStep, choose, everyForm, goOn, lesson, openFile, openLessons, press } from './lesson-page.ts'

interface Form {
  id: string
  wrong: (page: Page) => Promise<void>
  /** what the page says of it, beside "Not yet." */
  says: RegExp
  right: (page: Page) => Promise<void>
  handIn?: 'Hand in'
}

const nothing = () => Promise.resolve()

async function open(page: Page, panel: 'Paper' | 'Press'): Promise<void> {
  const details = page.locator('details', { has: page.getByRole('heading', { name: panel, exact: true }) })
  if ((await details.getAttribute('open')) === null) await details.locator('summary').click()
}

async function prints(page: Page, ink: string): Promise<void> {
  await page.getByRole('button', { name: `${ink} prints in this patch` }).click()
}

/** The steps that ask for something, in their order. */
const forms: Form[] = [
  {
    id: 'a patch to look at',
    wrong: (page) => prints(page, 'cyan'),
    says: /Now yellow prints.*only cyan prints.*That is yellow alone/s,
    right: async (page) => {
      await prints(page, 'cyan')
      await prints(page, 'yellow')
    },
  },
  {
    id: 'an order',
    wrong: nothing,
    says: /order cyan, yellow\. They have to print in the order yellow, cyan/s,
    right: (page) => handle(page, 'yellow').press('1'),
  },
  {
    id: 'a reading within a tolerance',
    wrong: (page) => enter(page, 'Tack of cyan', '20'),
    says: /The tack of cyan is 20 tack units, which is too high: it has to be 9 tack units\..*other way/s,
    right: (page) => enter(page, 'Tack of cyan', '9'),
  },
  {
    id: 'at least and at most',
    wrong: (page) => enter(page, 'Film of yellow on the form roller', '7'),
    says: /is 7\sµm, which is too high: it has to be at most 6\sµm/s,
    right: (page) => enter(page, 'Film of yellow on the form roller', '5.5'),
  },
  {
    id: 'a paper',
    wrong: nothing,
    says: /The paper is .*coated.*\. It has to be newsprint/s,
    right: async (page) => {
      await open(page, 'Paper')
      await page.getByRole('combobox', { name: 'Kind of paper' }).selectOption('newsprint')
    },
  },
  {
    id: 'a kind of press',
    wrong: nothing,
    says: /press is sheet-fed\. It has to be web/s,
    right: async (page) => {
      await open(page, 'Press')
      await page.getByRole('radio', { name: 'web', exact: true }).check()
    },
  },
  {
    id: 'without water',
    wrong: nothing,
    says: /press is dampened\. It has to be waterless/s,
    right: async (page) => {
      await open(page, 'Press')
      await page.getByRole('checkbox', { name: 'waterless' }).check()
    },
  },
  {
    id: 'a sheet',
    wrong: nothing,
    says: /sheet looked at is: first\. It has to be: settled/s,
    right: (page) => page.getByRole('radio', { name: 'Settled' }).check(),
  },
  {
    id: 'a choice',
    handIn: 'Hand in',
    wrong: (page) => choose(page, 'Flying'),
    says: /Nothing flies here/s,
    right: (page) => choose(page, 'Lifting'),
  },
  {
    id: 'a sequence',
    handIn: 'Hand in',
    wrong: nothing,
    says: /Begin with the first/s,
    right: (page) => page.getByRole('button', { name: 'Move up: First' }).click(),
  },
  {
    id: 'a number',
    handIn: 'Hand in',
    wrong: (page) => enter(page, 'Your reading', '9'),
    says: /Not yet\.\s*That is the tack/,
    right: (page) => page.getByRole('textbox', { name: 'Your reading' }).fill('10,0'),
  },
  {
    id: 'a diagnosis',
    handIn: 'Hand in',
    wrong: async (page) => {
      await choose(page, 'Too much water')
      await page.getByRole('checkbox', { name: 'A noise' }).check()
    },
    says: /There is no water at all/s,
    right: async (page) => {
      await choose(page, 'The order')
      await page.getByRole('checkbox', { name: 'A noise' }).uncheck()
      await page.getByRole('checkbox', { name: 'The stair goes up' }).check()
    },
  },
  {
    id: 'the bench and a question at once',
    handIn: 'Hand in',
    wrong: (page) => choose(page, 'Up'),
    says: /tack of yellow is 10 tack units/s,
    right: async (page) => {
      await enter(page, 'Tack of yellow', '12')
      await choose(page, 'Up')
    },
  },
]

test('every form of a step, by a learner who gets everything wrong first', async ({ page }) => {
  test.setTimeout(120_000)
  const said = listenTo(page)
  await openLessons(page)
  await openFile(page, everyForm)
  await atStep(page, 1)
  await expect(lesson(page).getByRole('region', { name: 'New words' })).toContainText('lifting')
  await lesson(page).getByRole('button', { name: 'red corner', exact: true }).click()
  await expect(page.getByRole('dialog', { name: 'Meaning of red corner' })).toContainText(
    'A mark our shop puts on a sheet',
  )
  await page.keyboard.press('Escape')
  // The step turns to its picture, and the learner to another.
  const shown = page.getByRole('group', { name: 'Pictures' })
  await expect(shown.getByRole('radio', { name: 'Loupe' })).toBeChecked()
  await expect(shown.locator('tack-loupe-panel')).toBeVisible()
  await shown.getByText('Section at the nip', { exact: true }).first().click()
  await expect(shown.locator('tack-section-panel')).toBeVisible()
  // All that an author may write with is there as what it is.
  const text = lesson(page)
  await expect(text.getByRole('heading', { name: 'Kept sheets' })).toBeVisible()
  await expect(text.locator('ol.prose, ol').getByRole('listitem').first()).toContainText('They are dated')
  await expect(text.locator('em', { hasText: 'dated' })).toBeVisible()
  await expect(text.locator('code')).toHaveText('year')
  await expect(text.locator('blockquote')).toHaveText('A sheet without a date is waste.')
  await expect(text.getByRole('row', { name: 'upper 2' })).toBeVisible()
  await expect(text.getByRole('link', { name: 'elsewhere' })).toHaveAttribute('rel', 'noopener noreferrer')
  await goOn(page)

  await expect(page.getByText('covered until you have made your prediction')).toBeVisible()
  await press(page, 'That is my prediction')
  await expect(lesson(page).getByRole('alert')).toHaveText('Choose an answer first.')
  await choose(page, 'More stays')
  await press(page, 'That is my prediction')
  await expect(lesson(page)).toContainText('Your prediction: More stays')
  await expect(lesson(page)).not.toContainText('The bench shows less')
  await expect(page.getByRole('radio', { name: 'Less stays' })).toBeDisabled()
  await goOn(page)

  for (const [at, { id, wrong, says, right, handIn = 'Check the bench' }] of forms.entries()) {
    await test.step(id, async () => {
      await atStep(page, at + 3)
      await wrong(page)
      // Enter in the field of a number has handed it in already.
      if (id !== 'a number') await press(page, handIn)
      await expect(lesson(page)).toContainText('Not yet.')
      await expect(lesson(page)).toContainText(says)
      await expect(lesson(page).getByRole('button', { name: /^(Go on|Results)$/ })).toBeDisabled()
      await right(page)
      await press(page, handIn)
      await expect(lesson(page)).toContainText('Done.')
      if (id === 'an order') {
        await expect(lesson(page)).toContainText('You predicted: More stays. The bench shows something else.')
        await expect(lesson(page)).toContainText('The bench shows less.')
      }
      await lesson(page)
        .getByRole('button', { name: /^(Go on|Results)$/ })
        .click()
    })
  }

  await expect(page.getByText('All 15 steps are done.')).toBeVisible()
  const results = page.locator('tack-lesson-results')
  await expect(results.locator('dd')).toHaveText(['0 of 1', '13 of 13', '0', '13', '0'])
  expect(said).toEqual([])
})
