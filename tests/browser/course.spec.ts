/** Every lesson of the course, done on the page by hand the way its author says it can be done. */
import { readFileSync } from 'node:fs'
import type { Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import type { Action } from '../../src/lesson/action.ts'
import { readCourse } from '../../src/lesson/check-course.ts'
import { checkLesson } from '../../src/lesson/check-lesson.ts'
import type { Lesson } from '../../src/lesson/lesson.ts'
import type { Step, WayStep } from '../../src/lesson/step.ts'
import { answerOf } from '../../src/lesson/step.ts'
import { termsIn } from '../../src/lesson/terms.ts'
import { glossary } from '../../src/words/en/glossary.ts'
import { enter, handle } from './bench-page.ts'
import { listenTo } from './console.ts'
import { drawn } from './drawn.ts'
import { atStep, choose, lesson, openLessons, press } from './lesson-page.ts'

function read(id: string): Lesson {
  const text = readFileSync(new URL(`../../lessons/${id}.lesson.yaml`, import.meta.url), 'utf8')
  const { lesson: found, problems } = checkLesson(text, { everyday: [] })
  if (!found) throw new Error(problems.map(({ message }) => message).join('; '))
  return found
}

/** Opens the panel of the paper or of the press where it is folded. */
async function unfold(page: Page, panel: 'Paper' | 'Press'): Promise<void> {
  const details = page.locator('details', { has: page.getByRole('heading', { name: panel, exact: true }) })
  if ((await details.getAttribute('open')) === null) await details.locator('summary').click()
}

async function typeIn(page: Page, panel: 'Paper' | 'Press', label: string, value: number): Promise<void> {
  await unfold(page, panel)
  await enter(page, label, String(value))
}

/** Makes one change of a solution by hand, whatever it is. */
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
    case 'coverage':
      return enter(page, `Coverage of ${action.of}`, String(Math.round(100 * action.to)))
    case 'unit temperature': {
      const more = page.getByRole('button', { name: `More about ${action.of}` })
      if ((await more.getAttribute('aria-expanded')) === 'false') await more.click()
      return enter(page, 'Temperature of its unit', String(action.to))
    }
    case 'paper':
      await unfold(page, 'Paper')
      await page.getByRole('combobox', { name: 'Kind of paper' }).selectOption(action.to)
      return
    case 'kind':
      await unfold(page, 'Press')
      await page.getByRole('radio', { name: action.to, exact: true }).check()
      return
    case 'waterless':
      await unfold(page, 'Press')
      await page.getByRole('checkbox', { name: 'waterless' }).setChecked(action.to)
      return
    case 'speed':
      return typeIn(page, 'Press', 'Speed', action.to)
    case 'interval':
      return typeIn(page, 'Press', 'Time between units', action.to)
    case 'dampening':
      return typeIn(page, 'Press', 'Dampening', action.to)
    case 'sheet':
      if (typeof action.to === 'string') {
        await page.getByRole('radio', { name: action.to === 'first' ? 'First sheet' : 'Settled' }).check()
        return
      }
      await page.getByRole('radio', { name: 'Sheet number' }).check()
      await enter(page, 'Number of the sheet', String(action.to))
      return expect(page.getByRole('progressbar', { name: /^Printing/ })).toHaveCount(0)
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
    ...('causes' in each ? [...each.causes, ...each.evidence] : []),
  ])
  return new Map(items.map(({ id, text }) => [id, text]))
}

async function answer(page: Page, step: Step, way: WayStep): Promise<boolean> {
  const texts = textsIn(step)
  const given = answerOf(way)
  if (!given) return false
  if ('choose' in given) await choose(page, texts.get(given.choose) ?? '')
  if ('cause' in given) {
    await choose(page, texts.get(given.cause) ?? '')
    for (const id of given.because) {
      await lesson(page)
        .getByRole('checkbox', { name: texts.get(id) ?? '', exact: true })
        .check()
    }
  }
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

/** Everything a learner reads on the bench beside the lesson: all text that is shown, and the names of its pictures. */
async function wordsOnBench(page: Page): Promise<string> {
  await drawn(page)
  return page.locator('tack-lesson-bench').evaluate((bench) => {
    const words: string[] = []
    const read = (node: Node): void => {
      if (node instanceof Text) words.push(node.data)
      if (!(node instanceof Element || node instanceof DocumentFragment)) return
      if (node instanceof Element) {
        if (node.matches('style, dialog:not([open]), [popover]') || !node.checkVisibility({ visibilityProperty: true }))
          return
        words.push(node.getAttribute('aria-label') ?? '', node.getAttribute('title') ?? '')
        if (node.shadowRoot) read(node.shadowRoot)
      }
      node.childNodes.forEach(read)
    }
    read(bench)
    return words.join(' | ')
  })
}

const course = readCourse(readFileSync(new URL('../../lessons/course.yaml', import.meta.url), 'utf8')).course
if (!course) throw new Error('The course cannot be read.')
const lessons = course.lessons.map(read)

/** Begins a lesson and does it to its end; returns each word that stood on the bench before the course had come to it. */
async function play(page: Page, { title, steps, start, solution }: Lesson, known: Set<string>): Promise<string[]> {
  const early: string[] = []
  await page.getByRole('button', { name: `Begin: ${title}` }).click()
  for (const [at, step] of steps.entries()) {
    await atStep(page, at + 1)
    for (const term of step.explains ?? []) known.add(term)
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
    const unknown = termsIn(await wordsOnBench(page), glossary).filter(({ term }) => !known.has(term))
    early.push(...new Set(unknown.map(({ words }) => `${title}, ${step.id}: ${words}`)))
    await press(page, at === steps.length - 1 ? 'Results' : 'Go on')
  }
  await expect(page.getByText(`All ${String(steps.length)} steps are done.`)).toBeVisible()
  await page.getByRole('button', { name: 'All lessons' }).click()
  await expect(page.getByRole('button', { name: `Look again: ${title}` })).toBeVisible()
  return early
}

/** Lessons done on one page: as many as take about as long as those of the other pages. */
const parts = [
  [0, 6],
  [6, 12],
  [12, lessons.length],
] as const

for (const [from, to] of parts) {
  test(`lessons ${String(from + 1)} to ${String(to)} of the course can be finished on the page`, async ({ page }) => {
    test.setTimeout(180_000)
    const said = listenTo(page)
    const before = lessons.slice(0, from).flatMap(({ introduces }) => introduces)
    const known = new Set([...course.everyday, ...before])
    const early: string[] = []
    await openLessons(page)
    for (const each of lessons.slice(from, to)) early.push(...(await play(page, each, known)))
    expect(early).toEqual([])
    expect(said).toEqual([])
  })
}
