/** The first five lessons, done on the page by hand the way their authors say they can be done. */
import { readFileSync } from 'node:fs'
import type { Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import type { Action } from '../../src/lesson/action.ts'
import { checkLesson } from '../../src/lesson/check-lesson.ts'
import type { Lesson } from '../../src/lesson/lesson.ts'
import type { Step, WayStep } from '../../src/lesson/step.ts'
import { answerOf } from '../../src/lesson/step.ts'
import { enter, handle } from './bench-page.ts'
import { listenTo } from './console.ts'
import { atStep, choose, lesson, openLessons, press } from './lesson-page.ts'

function read(id: string): Lesson {
  const text = readFileSync(new URL(`../../lessons/${id}.lesson.yaml`, import.meta.url), 'utf8')
  const { lesson: found, problems } = checkLesson(text, { everyday: [] })
  if (!found) throw new Error(problems.map(({ message }) => message).join('; '))
  return found
}

async function change(page: Page, action: Action, inks: readonly string[]): Promise<void> {
  switch (action.change) {
    case 'patch':
      for (const ink of inks) {
        const button = page.getByRole('button', { name: `${ink} prints in this patch` })
        const prints = (await button.getAttribute('aria-pressed')) === 'true'
        if (prints !== action.to.includes(ink)) await button.click()
      }
      return
    case 'order':
      return handle(page, action.of).press(String(action.to))
    case 'tack':
      return enter(page, `Tack of ${action.of}`, String(action.to))
    case 'film':
      return enter(page, `Film of ${action.of} on the form roller`, String(action.to))
    default:
      throw new Error(`This test does not know how ${action.change} is changed on the page.`)
  }
}

/** Everything that can be chosen in a step, by its id. */
function textsIn(step: Step): Map<string, string> {
  const questions = step.kind === 'predict' ? [step] : step.kind === 'say' ? [] : step.expect
  const items = questions.flatMap((each) => [
    ...('choices' in each ? each.choices : []),
    ...('items' in each ? each.items : []),
  ])
  return new Map(items.map(({ id, text }) => [id, text]))
}

async function answer(page: Page, step: Step, way: WayStep): Promise<boolean> {
  const texts = textsIn(step)
  const given = answerOf(way)
  if (!given) return false
  if ('choose' in given) await choose(page, texts.get(given.choose) ?? '')
  if ('enter' in given) await page.getByRole('textbox', { name: 'Your reading' }).fill(String(given.enter))
  if ('sequence' in given) {
    for (const [place, id] of given.sequence.entries()) {
      const item = lesson(page).locator('tack-answer-form li', { hasText: texts.get(id) ?? '' })
      while (!(await item.textContent())?.includes(`${String(place + 1)}. `)) {
        await item.getByRole('button', { name: /^Move up/ }).click()
      }
    }
  }
  return true
}

for (const id of ['press-sheet', 'film-on-paper', 'tack', 'two-inks-right-order', 'two-inks-wrong-order']) {
  test(`the lesson ${id} can be finished on the page`, async ({ page }) => {
    test.setTimeout(90_000)
    const said = listenTo(page)
    const { title, steps, start, solution } = read(id)
    await openLessons(page)
    await page.getByRole('button', { name: `Begin: ${title}` }).click()
    for (const [at, step] of steps.entries()) {
      await atStep(page, at + 1)
      const way = solution.find((each) => each.step === step.id) ?? { step: step.id }
      for (const action of way.changes ?? []) {
        await change(
          page,
          action,
          start.inks.map(({ name }) => name),
        )
      }
      const answered = await answer(page, step, way)
      if (step.kind === 'predict') {
        await press(page, 'That is my prediction')
        await expect(lesson(page)).toContainText('Your prediction:')
      } else if (step.kind !== 'say') {
        await press(page, answered ? 'Hand in' : 'Check the bench')
        await expect(lesson(page)).toContainText('Done.')
      }
      await press(page, at === steps.length - 1 ? 'Results' : 'Go on')
    }
    await expect(page.getByText(`All ${String(steps.length)} steps are done.`)).toBeVisible()
    await page.getByRole('button', { name: 'All lessons' }).click()
    await expect(page.getByRole('button', { name: `Look again: ${title}` })).toBeVisible()
    expect(said).toEqual([])
  })
}
