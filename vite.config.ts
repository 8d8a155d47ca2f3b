import { readFileSync } from 'node:fs'
import type { Plugin } from 'vite'
import { defineConfig } from 'vitest/config'

/** The development server injects inline styles and scripts, which the page's own content security policy refuses. */
const relaxPolicyWhileDeveloping: Plugin = {
  name: 'relax-policy-while-developing',
  apply: 'serve',
  transformIndexHtml: (html) => html.replace(/^.*http-equiv="Content-Security-Policy".*\n/m, ''),
}

/** The typeface is no module, so the collected licences of the build leave its own out. */
const typefaceLicence: Plugin = {
  name: 'typeface-licence',
  apply: 'build',
  generateBundle() {
    const source = readFileSync(new URL(import.meta.resolve('@fontsource-variable/source-sans-3/LICENSE')))
    this.emitFile({ type: 'asset', fileName: 'licence-of-typeface.txt', source })
  },
}

export default defineConfig({
  base: './',
  plugins: [relaxPolicyWhileDeveloping, typefaceLicence],
  worker: { format: 'es' },
  build: {
    target: 'es2022',
    reportCompressedSize: true,
    license: { fileName: 'licences.md' },
  },
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/browser/**'],
    environment: 'node',
    pool: 'threads',
    maxWorkers: 2,
    allowOnly: false,
    coverage: { include: ['src/**/*.ts'] },
  },
})
