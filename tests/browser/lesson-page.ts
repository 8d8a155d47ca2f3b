/** What the tests of lessons find on the page, by what a learner reads there. */
import { readFileSync } from 'node:fs'
import type { Locator, Page } from '@playwright/test'
import { expect } from '@playwright/test'

export const everyForm = readFileSync(new URL('every-form.lesson.yaml', import.meta.url), 'utf8')

export async function openLessons(page: Page): Promise<void> {
  await page.goto('./#view=lessons')
  await page.getByRole('heading', { name: 'Lessons', exact: true }).waitFor()
}

/** Opens a lesson file as a person does who picks it from a folder. */
export async function openFile(page: Page, text: string, name = 'mine.lesson.yaml'): Promise<void> {
  const file = { name, mimeType: 'text/yaml', buffer: Buffer.from(text) }
  await page.getByLabel('Open a lesson file').setInputFiles(file)
}

export function lesson(page: Page): Locator {
  return page.getByRole('region', { name: 'Lesson', exact: true })
}

export async function atStep(page: Page, step: number): Promise<void> {
  await expect(page.getByRole('heading', { name: new RegExp(`^Step ${String(step)} of `) })).toBeVisible()
}

export async function press(page: Page, name: string): Promise<void> {
  await lesson(page).getByRole('button', { name, exact: true }).click()
}

export async function goOn(page: Page): Promise<void> {
  await press(page, 'Go on')
}

export async function choose(page: Page, answer: string): Promise<void> {
  await lesson(page).getByRole('radio', { name: answer, exact: true }).check()
}

/** Opens the lesson of every form and goes through its first two steps. */
export async function toThirdStep(page: Page): Promise<void> {
  await openFile(page, everyForm)
  await atStep(page, 1)
  await goOn(page)
  await choose(page, 'Less stays')
  await press(page, 'That is my prediction')
  await goOn(page)
}
