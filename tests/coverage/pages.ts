/**
 * Runs the browser tests and counts what of the page's own code they run: `npm run coverage:pages`, with the names of
 * spec files for these alone. The page is built for it once more, served and in one file, readable and with source maps;
 * what workers run is not counted. Fails below the least shares.
 */
import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { CoverageResults, V8CoverageEntry } from 'monocart-coverage-reports'
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

/** Reports what the pages have run of the sources that `isOf` takes, as far as `isBuilt` takes what they were built into. */
async function report(
  name: string,
  isBuilt: (url: string) => boolean,
  isOf: (path: string) => boolean,
): Promise<CoverageResults> {
  const made = new CoverageReport({
    name: `Tackstair: what the browser tests run of ${name}`,
    outputDir: join(root, 'coverage', name.replaceAll(' ', '-')),
    reports: [['v8'], ['console-details', { metrics: ['lines', 'branches'], maxCols: 100 }]],
    sourceFilter: (path) => counted.test(path) && isOf(path),
  })
  for (const file of readdirSync(folder)) {
    const entries = JSON.parse(readFileSync(join(folder, file), 'utf8')) as V8CoverageEntry[]
    const built = entries.filter(({ url }) => isBuilt(url))
    if (built.length > 0) await made.add(built.map(withSource))
  }
  const results = await made.generate()
  if (!results) throw new Error(`Nothing was counted of ${name}.`)
  return results
}

// A script that only loads others has no map.
const served = await report(
  'the served page',
  (url) => existsSync(join(dist, `assets/${url}.map`)),
  () => true,
)
const others = new Set(served.files.map(({ sourcePath }) => sourcePath))
// Branches of one source do not add up over two builds; so of the single file only what is nowhere else.
const alone = await report(
  'the single file alone',
  (url) => url === oneFile,
  (path) => !others.has(path),
)
rmSync(folder, { recursive: true })

for (const metric of ['lines', 'branches'] as const) {
  const both = [served.summary[metric], alone.summary[metric]]
  const [covered, total] = [
    both.reduce((sum, each) => sum + each.covered, 0),
    both.reduce((sum, each) => sum + each.total, 0),
  ]
  const share = (100 * covered) / total
  console.log(`The page in the browser: ${share.toFixed(2)} % of ${metric}, at least ${least[metric]} % wanted`)
  if (!(share >= least[metric])) process.exitCode = 1
}
