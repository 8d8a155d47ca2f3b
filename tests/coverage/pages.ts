/**
 * Runs the browser tests and counts what of src/ui they run: `npm run coverage:pages`. The page is built for it once more,
 * readable and with source maps; what workers run is not counted. Fails below the least shares.
 */
import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { V8CoverageEntry } from 'monocart-coverage-reports'
import { CoverageReport } from 'monocart-coverage-reports'

const root = join(import.meta.dirname, '../..')
const assets = join(root, 'dist/assets')

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

const sources = new Map<string, Pick<V8CoverageEntry, 'source' | 'sourceMap'>>()

function withSource(entry: V8CoverageEntry): V8CoverageEntry {
  const text = (name: string) => readFileSync(join(assets, name), 'utf8')
  const known = sources.get(entry.url) ?? {
    source: text(entry.url),
    sourceMap: JSON.parse(text(`${entry.url}.map`)) as unknown,
  }
  sources.set(entry.url, known)
  return { ...entry, ...known }
}

const folder = mkdtempSync(join(tmpdir(), 'tackstair-coverage-'))
run('vite', ['build', '--mode', 'coverage', '--sourcemap', '--minify', 'false'])
run('vite', ['build', '--mode', 'file'])
const specs = readdirSync(join(root, 'tests/browser')).filter(
  (name) => name.endsWith('.spec.ts') && !left.includes(name),
)
const named = process.argv.length > 2 ? process.argv.slice(2) : specs.map((name) => `tests/browser/${name}`)
run('playwright', ['test', '--tsconfig', 'tests/coverage/tsconfig.json', ...named], { TACKSTAIR_COVERAGE: folder })

const report = new CoverageReport({
  name: 'Tackstair: what the browser tests run of the page',
  outputDir: join(root, 'coverage/pages'),
  reports: [['v8'], ['console-details', { metrics: ['lines', 'branches'], maxCols: 100 }]],
  sourceFilter: (path) => path.includes('src/ui/') && path.endsWith('.ts'),
})
for (const file of readdirSync(folder)) {
  const entries = JSON.parse(readFileSync(join(folder, file), 'utf8')) as V8CoverageEntry[]
  // A script that only loads others has no map.
  const mapped = entries.filter(({ url }) => existsSync(join(assets, `${url}.map`)))
  await report.add(mapped.map(withSource))
}
const results = await report.generate()
rmSync(folder, { recursive: true })

for (const metric of ['lines', 'branches'] as const) {
  const { pct } = results?.summary[metric] ?? { pct: 0 }
  console.log(`src/ui in the browser: ${pct} % of ${metric}, at least ${least[metric]} % wanted`)
  if (Number(pct) < least[metric]) process.exitCode = 1
}
