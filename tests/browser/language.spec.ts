/** The page in another language: changed in the middle of a lesson, kept after a reload, whole in every view. */
import type { Page } from '@playwright/test'
import { expect, test } from '@playwright/test'
import axe from 'axe-core'
import { listenTo } from './console.ts'
import { drawn } from './drawn.ts'
import { choose, goOn, openLessons, press } from './lesson-page.ts'

const views = [
  'bench',
  'strip',
  'lessons',
  'orders',
  'trials',
  'run+chart',
  'instruments',
  'drills',
  'glossary',
  'board',
]

test('a lesson goes on in Spanish where it stood, and is finished there', async ({ page }) => {
  const said = listenTo(page)
  const lesson = page.getByRole('region', { name: 'Lección', exact: true })
  const button = (name: string) => lesson.getByRole('button', { name, exact: true })
  const next = () => button('Seguir').click()
  const answer = async (text: string, send: string) => {
    await lesson.getByRole('radio', { name: text, exact: true }).check()
    await button(send).click()
  }
  const number = async (text: string) => {
    await lesson.getByLabel('Tu lectura').fill(text)
    await button('Entregar').click()
    await expect(lesson).toContainText('Hecho.')
  }
  const film = page.getByLabel('Película de cian en el rodillo dador')
  const setFilm = async (text: string) => {
    await film.fill(text)
    await film.press('Enter')
    await button('Comprobar el banco').click()
    await expect(lesson).toContainText('Hecho.')
  }

  await openLessons(page)
  await page.getByRole('button', { name: 'Begin: From the roller to the paper' }).click()
  const readings = page.locator('tack-lesson-bench tack-readings-strip')
  await expect(page.getByText('Readings are covered until you have made your next prediction.')).toBeVisible()
  await expect(readings).toHaveCount(0)
  await goOn(page)
  await goOn(page)
  await goOn(page)
  await choose(page, 'About 1 µm, a quarter')
  await press(page, 'That is my prediction')
  await expect(readings).toBeVisible()
  await page.getByLabel('Language').selectOption('es')

  await expect(page.locator('html')).toHaveAttribute('lang', 'es')
  await expect(lesson.getByRole('heading', { name: /^Paso 4 de/ })).toBeVisible()
  await expect(lesson).toContainText('Tu predicción: Más o menos 1 µm, la cuarta parte')
  await next()
  await answer('Se estira en hilos', 'Entregar')
  await next()
  await number('1,12')
  await page.reload()
  await expect(lesson).toContainText('Hecho.')
  await next()
  await answer('Más tinta, pero algo menos del doble', 'Esa es mi predicción')
  await next()
  await setFilm('8')
  await next()
  await setFilm('5,6')
  await expect(film).toHaveValue('5,6')
  await next()
  await answer('Porque la película se divide en cada línea de contacto, y solo sigue una parte', 'Entregar')
  await button('Resultados').click()
  await expect(page.getByText(/^Los \d+ pasos están hechos\./)).toBeVisible()
  await page.getByLabel('Idioma').selectOption('en')
  await expect(page.getByText(/^All \d+ steps are done\./)).toBeVisible()
  expect(said).toEqual([])
})

test('every view is whole in Spanish: nothing cut off, no decimal point, nothing wrong by axe', async ({ page }) => {
  const said = listenTo(page)
  await page.goto('./?language=es#view=bench')
  for (const [width, height] of [
    [1366, 768],
    [390, 844],
  ]) {
    await page.setViewportSize({ width, height })
    for (const view of views) {
      await go(page, view)
      expect(await flaws(page), `${view} at ${String(width)} px`).toEqual([])
      if (width === 1366) expect(await faults(page), view).toEqual([])
    }
  }
  expect(said).toEqual([])
})

test('texts twice as long, and from right to left, stay on the page and in their boxes', async ({ page }) => {
  const said = listenTo(page)
  for (const language of ['en-x-long', 'en-x-mirror']) {
    await page.goto(`./?language=${language}#view=bench`)
    await expect(page.locator('html')).toHaveAttribute('dir', language === 'en-x-long' ? 'ltr' : 'rtl')
    for (const width of [1366, 390]) {
      await page.setViewportSize({ width, height: 800 })
      for (const view of views) {
        await go(page, view)
        const where = `${view} in ${language} at ${String(width)} px`
        expect(await sideways(page), where).toBeLessThanOrEqual(0)
        expect(await cutOff(page), where).toEqual([])
      }
    }
  }
  expect(said).toEqual([])
})

async function go(page: Page, view: string): Promise<void> {
  await page.evaluate((name) => {
    location.hash = `view=${name}`
  }, view)
  await expect(page.locator('tack-page')).toHaveAttribute('data-view', view.replace('+', ' '))
  await expect(page.locator('tack-page .notice')).toHaveCount(0)
  await drawn(page)
}

/** How far the page runs over its edge, in px. */
function sideways(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
}

/** Boxes that cut their content off, panels that run over into the next one, and words wider than what they stand in. */
function cutOff(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = []
    const cuts = (overflow: string) => overflow === 'hidden' || overflow === 'clip'
    const walk = (root: ParentNode) => {
      for (const element of root.querySelectorAll('*')) {
        if (element.shadowRoot) walk(element.shadowRoot)
        const { clientWidth, clientHeight, scrollWidth, scrollHeight } = element
        // What has no size in CSS is inline or not drawn; one pixel is there to be read out only.
        if (clientWidth <= 1 || !element.checkVisibility()) continue
        const { overflowX, overflowY, display } = getComputedStyle(element)
        // A pixel more may come of rounding.
        const isWide =
          scrollWidth > clientWidth + 1 && (cuts(overflowX) || (display !== 'inline' && element.matches(words)))
        const isHigh = scrollHeight > clientHeight + 1 && (cuts(overflowY) || element.matches('.panel'))
        const scrolls = overflowY === 'auto' || overflowY === 'scroll'
        if (isWide || (isHigh && !scrolls))
          found.push(`${element.localName}.${element.className}: ${element.textContent.trim().slice(0, 40)}`)
      }
    }
    const words = 'button, label, legend, th, td, dt, dd, p, h2, h3, a, span, li'
    walk(document.body)
    return found
  })
}

async function flaws(page: Page): Promise<string[]> {
  const over = await sideways(page)
  const points = await page.evaluate(() => {
    const found: string[] = []
    const walk = (root: ParentNode) => {
      for (const element of root.querySelectorAll('*')) {
        if (element.shadowRoot) walk(element.shadowRoot)
        const own = [...element.childNodes].filter(({ nodeType }) => nodeType === 3).map((node) => node.textContent)
        const text = own.join(' ').trim()
        if (element.matches('style, script, textarea') || !element.checkVisibility()) continue
        if (/\d\.\d/.test(text)) found.push(text)
      }
    }
    walk(document.body)
    return found
  })
  return [...(over > 0 ? [`runs ${String(over)} px over`] : []), ...points.map((text) => `decimal point: ${text}`)]
}

async function faults(page: Page): Promise<string[]> {
  await page.evaluate(axe.source)
  const { violations } = await page.evaluate(() =>
    (globalThis as unknown as { axe: typeof axe }).axe.run({
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
    }),
  )
  return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html.slice(0, 120)}`))
}
