import { createServer } from 'node:net'
import { defineConfig } from '@playwright/test'
import { chromiumFlags } from './tests/browser/chromium.ts'

// The workers read this file again and must find the port that the first reading chose.
const port = (process.env['TACKSTAIR_PORT'] ??= await freePort())
const executablePath = process.env['TACKSTAIR_CHROMIUM']

export default defineConfig({
  testDir: 'tests/browser',
  globalSetup: './tests/browser/setup.ts',
  workers: 2,
  fullyParallel: true,
  forbidOnly: true,
  retries: 0,
  // ms: limits against tests that hang, not on how fast a poor, busy machine is.
  timeout: 90_000,
  expect: { timeout: 20_000 },
  reporter: 'list',
  use: {
    baseURL: `http://127.0.0.1:${port}/`,
    browserName: 'chromium',
    viewport: { width: 1366, height: 768 },
    // Keeping the page for offline use fetches all of it anew in every test; offline.spec.ts allows it, where it is tested.
    serviceWorkers: 'block',
    launchOptions: { args: chromiumFlags, ...(executablePath === undefined ? {} : { executablePath }) },
  },
  webServer: {
    command: `npx vite preview --host 127.0.0.1 --port ${port} --strictPort`,
    url: `http://127.0.0.1:${port}/`,
    reuseExistingServer: false,
  },
})

async function freePort(): Promise<string> {
  const server = createServer()
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const address = server.address()
  await new Promise((resolve) => server.close(resolve))
  if (address === null || typeof address === 'string') throw new Error('The system gave no port to serve the page on.')
  return String(address.port)
}
