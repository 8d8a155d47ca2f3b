import { provideChromium } from './chromium.ts'

/** Runs once before the browser tests; the workers inherit the environment and read the path in playwright.config.ts. */
export default function setup(): void {
  process.env['TACKSTAIR_CHROMIUM'] = provideChromium()
}
