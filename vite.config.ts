import { readFileSync } from 'node:fs'
import { basename } from 'node:path'
import type { Plugin } from 'vite'
import { VitePWA } from 'vite-plugin-pwa'
import { viteSingleFile } from 'vite-plugin-singlefile'
import { defineConfig } from 'vitest/config'
import { leftOut } from './src/build/left-out.ts'
import { oneFile } from './src/build/one-file.ts'
import { textsPacked, wordsPacked } from './src/build/pack.ts'
import { relaxPolicyWhileDeveloping } from './src/build/policy.ts'
import { tidyTemplates } from './src/build/tidy-templates.ts'
import { workersInside, workersPacked } from './src/build/workers-inside.ts'

/** Parts that are no modules of the page, so that the collected licences of the build leave theirs out. */
function licenceOf(part: string, file: string): Plugin {
  return {
    name: `licence-of-${part}`,
    apply: 'build',
    generateBundle() {
      const source = readFileSync(new URL(file))
      this.emitFile({ type: 'asset', fileName: `licence-of-${part}.txt`, source })
    },
  }
}

const typefaceLicence = licenceOf('typeface', import.meta.resolve('@fontsource-variable/source-sans-3/LICENSE'))
const offlineWorkerLicence = licenceOf('offline-worker', import.meta.resolve('workbox-core/LICENSE'))

const icon: Plugin = {
  name: 'icon',
  apply: 'build',
  generateBundle() {
    this.emitFile({ type: 'asset', fileName: 'icon.svg', source: readFileSync('src/ui/stair.svg') })
  },
}

/** Lets the page open without a network. A newer version waits until a person takes it (src/ui/offline.ts). */
const offline = VitePWA({
  registerType: 'prompt',
  injectRegister: false,
  manifest: {
    name: 'Tackstair',
    short_name: 'Tackstair',
    description: 'How wet inks take on each other on an offset press',
    display: 'standalone',
    background_color: '#e4dfd5',
    theme_color: '#e4dfd5',
    icons: [{ src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' }],
  },
  workbox: {
    globPatterns: ['**/*.{js,css,html,svg,woff2,json,yaml,txt,md}'],
    maximumFileSizeToCacheInBytes: 4_000_000,
    inlineWorkboxRuntime: true,
    cleanupOutdatedCaches: true,
    clientsClaim: false,
    skipWaiting: false,
    sourcemap: false,
  },
})

/**
 * What is wanted together comes together: left to itself, the bundler would send the bench in 88 pieces, most of them
 * smaller than what asking for them costs. With these it is 26, and the first view is as small as before.
 */
const inFewPieces = {
  codeSplitting: {
    groups: [
      { name: 'first', tags: ['$initial' as const] },
      { name: 'drawing', test: /\/node_modules\/(pixi\.js|@pixi|earcut|eventemitter3)\/|\/src\/view\// },
      { name: 'shared', test: /\/src\//, entriesAware: true, entriesAwareMergeThreshold: 20_000 },
    ],
  },
  // Pieces that share may need one another; so each module is still run before those that need it.
  strictExecutionOrder: true,
  chunkFileNames: ({ name }: { name: string }) => `assets/${shortName(name)}-[hash].js`,
  assetFileNames: ({ names }: { names: string[] }) => `assets/${shortName(names[0] ?? 'asset')}-[hash][extname]`,
}

/** A shared piece would be named after all that share it, and the first one after the folder that all of it lies in. */
function shortName(name: string): string {
  const short = name.replace(/~.*/, '').replace(/\.[a-z0-9]+$/, '')
  return short === basename(import.meta.dirname) ? 'first' : short
}

/** In the single file the typeface stands in the style sheet already, and would be carried twice. */
const nothingAhead: Plugin = {
  name: 'nothing-ahead',
  transformIndexHtml: {
    order: 'pre',
    handler: (html) => html.replace(/\s*<link rel="preload"[^>]*>/, ''),
  },
}

const served = [typefaceLicence, offlineWorkerLicence, icon, offline]
const inOneFile = [
  nothingAhead,
  typefaceLicence,
  workersInside,
  workersPacked,
  textsPacked,
  wordsPacked,
  viteSingleFile(),
  oneFile,
]

/** Tests that mock a module. */
const ownModules = ['tests/reference/plain-agreement.test.ts']

export default defineConfig(({ mode }) => ({
  base: './',
  plugins: [relaxPolicyWhileDeveloping, leftOut, tidyTemplates, ...(mode === 'file' ? inOneFile : served)],
  worker: { format: mode === 'file' ? 'iife' : 'es' },
  build: {
    target: 'es2022',
    reportCompressedSize: true,
    license: { fileName: 'licences.md' },
    emptyOutDir: mode !== 'file',
    modulePreload: mode !== 'file',
    ...(mode === 'file' ? {} : { rolldownOptions: { output: inFewPieces } }),
  },
  test: {
    // Modules are read once a thread, not once a file, which takes a fifth off the whole; but not where a file puts
    // another module in the place of one.
    projects: [
      {
        extends: true,
        test: {
          name: 'shared',
          include: ['tests/**/*.test.ts'],
          exclude: [...ownModules, 'tests/browser/**'],
          isolate: false,
        },
      },
      { extends: true, test: { name: 'own', include: ownModules } },
    ],
    environment: 'node',
    setupFiles: ['tests/tools/one-seed.ts'],
    pool: 'threads',
    maxWorkers: 2,
    allowOnly: false,
    // ms: a limit against tests that hang, not on how fast a poor machine is.
    testTimeout: 60_000,
    coverage: {
      include: ['src/**/*.ts'],
      // What is seen only in a browser, while building, or in a process or a thread of its own, is tested there, where this
      // does not count.
      exclude: [
        ...['src/view/**', 'src/ui/**', 'src/main.ts', 'src/build/**'],
        ...['start', 'lesson-schema', 'order-thread'].map((name) => `src/command/${name}.ts`),
      ],
      thresholds: { lines: 95, branches: 90 },
    },
  },
}))
