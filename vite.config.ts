import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import type { Plugin } from 'vite'
import { VitePWA } from 'vite-plugin-pwa'
import { viteSingleFile } from 'vite-plugin-singlefile'
import { defineConfig } from 'vitest/config'

const policyTag = /^.*http-equiv="Content-Security-Policy".*\n/m

/** The development server injects inline styles and scripts, which the page's own content security policy refuses. */
const relaxPolicyWhileDeveloping: Plugin = {
  name: 'relax-policy-while-developing',
  apply: 'serve',
  transformIndexHtml: (html) => html.replace(policyTag, ''),
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

/** Workers of the single file are part of it: each is made from text instead of an address. */
const workersInside: Plugin = {
  name: 'workers-inside',
  enforce: 'pre',
  transform(code) {
    const imports: string[] = []
    const inside = code.replace(workerByAddress, (_, path: string) => {
      const name = `WorkerInside${imports.length}`
      imports.push(`import ${name} from '${path}?worker&inline'\n`)
      return `new ${name}()`
    })
    return imports.length === 0 ? null : { code: imports.join('') + inside, map: null }
  },
}

/** new Worker(new URL('./name.ts', import.meta.url), { type: 'module' }) */
const workerByAddress = /new Worker\(\s*new URL\('([^']+)', import\.meta\.url\),\s*\{ type: 'module' \},?\s*\)/g

/** Puts everything that the page needs into one file, under a policy that allows just what is in it. */
const oneFile: Plugin = {
  name: 'one-file',
  enforce: 'post',
  // The policy of the served page would not hold here; another takes its place below.
  transformIndexHtml: (html) => html.replace(policyTag, ''),
  generateBundle: {
    order: 'post',
    handler(_, bundle) {
      const page = bundle['index.html']
      if (page.type !== 'asset') this.error('The page to be put into one file is not there.')
      const others = Object.values(bundle).filter(({ fileName }) => fileName !== 'index.html')
      const code = others.map(({ fileName }) => fileName).filter((fileName) => fileName.endsWith('.js'))
      if (code.length > 0) {
        this.error(
          `${code.join(' and ')} stayed outside the single file; the form that is put inside is ${String(workerByAddress)}.`,
        )
      }
      const notices = others.flatMap((file) =>
        file.type === 'asset' && /licence/.test(file.fileName) ? [file.source] : [],
      )
      for (const { fileName } of [...others, page]) Reflect.deleteProperty(bundle, fileName)
      const pictures = others.flatMap((file) => (file.type === 'asset' && file.fileName.endsWith('.svg') ? [file] : []))
      const html = pictures.reduce(
        (whole, { fileName, source }) =>
          whole.replaceAll(`"./${fileName}"`, `"data:image/svg+xml,${encodeURIComponent(String(source))}"`),
        String(page.source),
      )
      const source = withPolicy(html) + licenceComment(notices.map(String))
      this.emitFile({ type: 'asset', fileName: 'tackstair.html', source })
    },
  },
}

function withPolicy(html: string): string {
  // Elements are gone through in order, so that markup inside a script's texts is not taken for any.
  const elements = Array.from(html.matchAll(/<(script|style)\b[^>]*>([^]*?)<\/\1>/g), ([, tag, text]) => {
    return { tag, hash: `'sha256-${createHash('sha256').update(text).digest('base64')}'` }
  })
  const hashes = (wanted: string) => elements.flatMap(({ tag, hash }) => (tag === wanted ? [hash] : [])).join(' ')
  const policy = [
    "default-src 'none'",
    `script-src ${hashes('script')}`,
    `style-src ${hashes('style')}`,
    'worker-src blob:',
    'img-src data: blob:',
    'font-src data:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ')
  const first = '<meta charset="utf-8">\n'
  return html.replace(first, `${first}    <meta http-equiv="Content-Security-Policy" content="${policy}">\n`)
}

/** The file travels alone, so what it is made of carries its licences inside. */
function licenceComment(notices: string[]): string {
  return `\n<!--\n${notices.join('\n\n').replaceAll('--', '- -').replaceAll('>', '&gt;')}\n-->\n`
}

const served = [typefaceLicence, icon, offline]
const inOneFile = [typefaceLicence, workersInside, viteSingleFile(), oneFile]

export default defineConfig(({ mode }) => ({
  base: './',
  plugins: [relaxPolicyWhileDeveloping, ...(mode === 'file' ? inOneFile : served)],
  worker: { format: mode === 'file' ? 'iife' : 'es' },
  build: {
    target: 'es2022',
    reportCompressedSize: true,
    license: { fileName: 'licences.md' },
    emptyOutDir: mode !== 'file',
    modulePreload: mode !== 'file',
  },
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/browser/**'],
    environment: 'node',
    pool: 'threads',
    maxWorkers: 2,
    allowOnly: false,
    // ms: a limit against tests that hang, not on how fast a poor machine is.
    testTimeout: 60_000,
    coverage: { include: ['src/**/*.ts'] },
  },
}))
