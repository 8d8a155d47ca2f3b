import { expect, test } from '@playwright/test'
import { listenTo } from './console.ts'

test('the page opens without a word on the console and asks no other server for anything', async ({
  page,
  baseURL,
}) => {
  const said = listenTo(page)
  const foreign: string[] = []
  page.on('request', (request) => {
    const url = request.url()
    if (!url.startsWith(baseURL ?? '') && !/^(data|blob):/.test(url)) foreign.push(url)
  })
  await page.goto('./', { waitUntil: 'networkidle' })
  await expect(page).toHaveTitle(/Tackstair/)
  await expect(page.getByRole('heading', { name: 'Tackstair' })).toBeVisible()
  expect(said).toEqual([])
  expect(foreign).toEqual([])
})

test('the page refuses inline script and inline style', async ({ page }) => {
  await page.goto('./')
  const refused = await page.evaluate(async () => {
    const directives: string[] = []
    document.addEventListener('securitypolicyviolation', (event) => directives.push(event.effectiveDirective))
    const script = document.createElement('script')
    script.textContent = 'document.title = "changed"'
    const style = document.createElement('style')
    style.textContent = 'body { display: none }'
    document.head.append(script, style)
    await new Promise((resolve) => setTimeout(resolve, 50))
    return directives.toSorted()
  })
  expect(refused).toEqual(['script-src-elem', 'style-src-elem'])
  await expect(page).toHaveTitle(/Tackstair/)
})

test('the bundled typeface loads and sets figures in equal widths', async ({ page }) => {
  await page.goto('./')
  const widths = await page.evaluate(async () => {
    const face = '100px "Source Sans 3"'
    const loaded = await document.fonts.load(face, '0123456789')
    const line = document.createElement('span')
    document.body.append(line)
    line.style.font = face
    line.style.fontVariantNumeric = 'tabular-nums'
    const each = Array.from({ length: 10 }, (_, figure) => {
      line.textContent = String(figure).repeat(10)
      return line.getBoundingClientRect().width
    })
    return { faces: loaded.length, each }
  })
  expect(widths.faces).toBeGreaterThan(0)
  expect(Math.max(...widths.each) - Math.min(...widths.each)).toBeLessThan(0.01)
})
