/** `npm run picture`: takes the README's picture of the real bench, as built, into assets/. */
import { join } from 'node:path'
import { chromium } from '@playwright/test'
import { build, preview } from 'vite'
import { chromiumFlags, provideChromium } from '../browser/chromium.ts'

const picture = join(import.meta.dirname, '../../assets/bench.png')

await build({ logLevel: 'warn' })
const server = await preview({ preview: { host: '127.0.0.1', port: 0 } })
const browser = await chromium.launch({ args: chromiumFlags, executablePath: provideChromium() })
try {
  const page = await browser.newPage({ viewport: { width: 1366, height: 768 } })
  await page.goto(`${server.resolvedUrls?.local[0] ?? ''}#view=bench`)
  await page.getByRole('button', { name: 'Order reversed' }).click()
  await page.waitForFunction(
    () => document.querySelector('tack-page')?.shadowRoot?.querySelector('tack-bench') instanceof HTMLElement,
  )
  // The pictures are drawn as soon as their code has come; a second is far more than that takes.
  await page.waitForTimeout(1500)
  await page.screenshot({ path: picture })
} finally {
  await browser.close()
  await server.close()
}
