/**
 * Runs the browser tests and counts what of the page's own code they run: `npm run coverage:pages`, with the names of
 * spec files for these alone. The page is built for it once more, served and in one file, readable and with source maps;
 * what workers run is not counted. Fails below the least shares.
 */
import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { V8CoverageEntry } from 'monocart-coverage-reports'
import { CoverageReport } from 'monocart-coverage-reports'

const root = join(import.meta.dirname, '../..')
const dist = join(root, 'dist')
const oneFile = 'tackstair.html'

/** What runs in the page and nowhere else. */
const counted = /(^|\/)src\/(ui\/.*|view\/.*|main|build\/unpack)\.ts$/

/** Percent. */
const least = { lines: 95, branches: 90 }

/** What this build is not meant to pass: its size is another. */
const left = ['size.spec.ts']

function run(command: string, args: readonly string[], env: Readonly<Record<string, string>> = {}): void {
  const { status } = spawnSync('npx', [command, ...args], {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, ...env },
  })
  if (status !== 0) process.exitCode = 1
}

type Source = Pick<V8CoverageEntry, 'source' | 'sourceMap'>
const sources = new Map<string, Source>()

function withSource(entry: V8CoverageEntry): V8CoverageEntry {
  const source = sources.get(entry.url) ?? sourceOf(entry.url)
  sources.set(entry.url, source)
  return { ...entry, ...source }
}

/** The single file's script stands in it, with its map. */
function sourceOf(name: string): Source {
  const text = (path: string) => readFileSync(join(dist, path), 'utf8')
  if (name === oneFile) return { source: /<script type="module"[^>]*>([^]*?)<\/script>/.exec(text(name))?.[1] ?? '' }
  return { source: text(`assets/${name}`), sourceMap: JSON.parse(text(`assets/${name}.map`)) as unknown }
}

const folder = mkdtempSync(join(tmpdir(), 'tackstair-coverage-'))
run('vite', ['build', '--minify', 'false', '--sourcemap'])
run('vite', ['build', '--minify', 'false', '--sourcemap', 'inline', '--mode', 'file'])
const specs = readdirSync(join(root, 'tests/browser')).filter(
  (name) => name.endsWith('.spec.ts') && !left.includes(name),
)
const named = process.argv.length > 2 ? process.argv.slice(2) : specs.map((name) => `tests/browser/${name}`)
run('playwright', ['test', '--tsconfig', 'tests/coverage/tsconfig.json', ...named], { TACKSTAIR_COVERAGE: folder })

const report = new CoverageReport({
  name: 'Tackstair: what the browser tests run of the page',
  outputDir: join(root, 'coverage/pages'),
  reports: [['v8'], ['console-details', { metrics: ['lines', 'branches'], maxCols: 100 }]],
  sourceFilter: (path) => counted.test(path),
})
for (const file of readdirSync(folder)) {
  const entries = JSON.parse(readFileSync(join(folder, file), 'utf8')) as V8CoverageEntry[]
  // A script that only loads others has no map.
  const mapped = entries.filter(({ url }) => url === oneFile || existsSync(join(dist, `assets/${url}.map`)))
  await report.add(mapped.map(withSource))
}
const results = await report.generate()
rmSync(folder, { recursive: true })

for (const metric of ['lines', 'branches'] as const) {
  const { pct } = results?.summary[metric] ?? { pct: 0 }
  console.log(`The page in the browser: ${pct} % of ${metric}, at least ${least[metric]} % wanted`)
  if (Number(pct) < least[metric]) process.exitCode = 1
}
