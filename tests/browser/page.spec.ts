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
    const style = document.createElement('style')
    style.textContent = 'body { display: none }'
    document.head.append(style)
    const foreign: string = 'data:text/javascript,document.title="changed"'
    await import(foreign).catch((error: unknown) => error)
    await new Promise((resolve) => setTimeout(resolve, 50))
    return directives.toSorted()
  })
  expect(refused).toEqual(['script-src-elem', 'style-src-elem'])
  await expect(page).toHaveTitle(/Tackstair/)
})

test('text becomes no markup and no script, and no script but its own is started', async ({ page }) => {
  await page.goto('./#view=bench')
  await page.getByRole('heading', { name: 'Tackstair' }).waitFor()
  const outcomes = await page.evaluate(() => {
    const tries: Record<string, () => unknown> = {
      markup: () => Reflect.set(document.createElement('div'), 'innerHTML', '<img src="x">'),
      document: () => new DOMParser().parseFromString('<p>x</p>', 'text/html'),
      script: () => (document.createElement('script').text = '1'),
      'script from elsewhere': () => (document.createElement('script').src = 'https://elsewhere.example/x.js'),
      'worker from a text': () => new Worker(URL.createObjectURL(new Blob(['1']))),
      'another policy': () =>
        (
          window as unknown as { trustedTypes: { createPolicy: (name: string, rules: object) => unknown } }
        ).trustedTypes.createPolicy('another', {}),
      'its own offline keeper': () =>
        void (document.createElement('script').src = new URL('sw.js', document.baseURI).href),
    }
    return Object.entries(tries).map(([name, attempt]) => {
      try {
        attempt()
        return `${name}: done`
      } catch (error) {
        return `${name}: ${error instanceof TypeError ? 'refused' : String(error)}`
      }
    })
  })
  expect(outcomes).toEqual([
    'markup: refused',
    'document: refused',
    'script: refused',
    'script from elsewhere: refused',
    'worker from a text: refused',
    'another policy: refused',
    'its own offline keeper: done',
  ])
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
