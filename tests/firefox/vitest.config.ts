import { defineConfig } from 'vitest/config'

/** The one test of the built page in Firefox, apart from the unit tests because it needs the build. */
export default defineConfig({
  test: {
    root: `${import.meta.dirname}/../..`,
    include: ['tests/firefox/*.firefox.ts'],
    environment: 'node',
    allowOnly: false,
    // ms: a limit against a browser that hangs.
    testTimeout: 180_000,
    hookTimeout: 120_000,
  },
})
