import type { Page } from '@playwright/test'

/**
 * Chromium itself says this of any page with a WebGL canvas where it draws in software, since it then copies each frame
 * back from the canvas; a page that only clears its canvas gets it too.
 */
const softwareDrawing =
  /^\[\.WebGL-0x[0-9a-f]+\]GL Driver Message \(OpenGL, Performance, .*\): GPU stall due to ReadPixels/

/** Said in place of the page by what keeps service workers out of all tests but those of working offline. */
const serviceWorkersKeptOut = 'Service Worker registration blocked by Playwright'

/** Collects from now on whatever the page says on the console and every error it does not handle. */
export function listenTo(page: Page): string[] {
  const said: string[] = []
  page.on('console', (message) => {
    const text = message.text()
    if (!softwareDrawing.test(text) && text !== serviceWorkersKeptOut) said.push(text)
  })
  page.on('pageerror', (error) => said.push(error.message))
  return said
}
