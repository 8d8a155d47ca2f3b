/**
 * Runs every stage of the tests, or only those named: `npm test -- types unit`.
 * A stage that fails does not stop the later ones. The last line counts them all.
 */
import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { delimiter, join } from 'node:path'
import { tallyBrowser, tallyCheck, tallyUnit } from './tools/tally.ts'
import type { BrowserReport, Tally, UnitReport } from './tools/tally.ts'

interface Stage {
  name: string
  /** What is looked at, as the heading says it. */
  what: string
  command: string[]
  /** Where the stage is a run of tests: reads what its JSON report says. Other stages count as one check. */
  tally?: (report: unknown, ended: boolean) => Tally
}

const reportFolder = mkdtempSync(join(tmpdir(), 'tackstair-tests-'))
const reportFile = join(reportFolder, 'report.json')

const stages: Stage[] = [
  { name: 'types', what: 'types agree', command: ['tsc'] },
  { name: 'lint', what: 'house rules', command: ['eslint', '--max-warnings=0', '.'] },
  { name: 'imports', what: 'imports point one way', command: ['tsx', 'tests/tools/imports.ts'] },
  { name: 'knip', what: 'nothing unused', command: ['knip'] },
  {
    name: 'unit',
    what: 'tests without a browser',
    command: ['vitest', 'run', '--reporter=default', '--reporter=json', `--outputFile.json=${reportFile}`],
    tally: (report, ended) => tallyUnit(report as UnitReport, ended),
  },
  { name: 'build', what: 'the page that is served', command: ['vite', 'build'] },
  { name: 'file', what: 'the page in one file', command: ['vite', 'build', '--mode', 'file'] },
  {
    name: 'browser',
    what: 'tests of the built page in Chromium',
    command: ['playwright', 'test', '--reporter=list,json'],
    tally: (report, ended) => tallyBrowser(report as BrowserReport, ended),
  },
]

const env = {
  ...process.env,
  PATH: [join(import.meta.dirname, '../node_modules/.bin'), process.env['PATH'] ?? ''].join(delimiter),
  PLAYWRIGHT_JSON_OUTPUT_FILE: reportFile,
}

function run({ name, what, command: [program, ...args], tally }: Stage): Tally & { line: string } {
  console.log(`\n== ${name}: ${what}`)
  const start = performance.now()
  rmSync(reportFile, { force: true })
  const { status } = spawnSync(program, args, { cwd: join(import.meta.dirname, '..'), env, stdio: 'inherit' })
  const ended = status === 0
  const seconds = ((performance.now() - start) / 1000).toFixed(1).padStart(6)
  const counted = tally === undefined ? tallyCheck(ended) : readTally(tally, ended)
  return { ...counted, line: `${name.padEnd(8)} ${seconds} s   ${counted.passed} passed, ${counted.failed} failed` }
}

function readTally(tally: (report: unknown, ended: boolean) => Tally, ended: boolean): Tally {
  if (!existsSync(reportFile)) return tallyCheck(false)
  return tally(JSON.parse(readFileSync(reportFile, 'utf8')), ended)
}

const names = process.argv.slice(2)
const unknown = names.filter((name) => !stages.some((stage) => stage.name === name))
if (unknown.length > 0) {
  console.error(
    `No stage is called ${unknown.join(' or ')}; the stages are ${stages.map((stage) => stage.name).join(', ')}.`,
  )
  process.exitCode = 2
} else {
  const results = stages.filter((stage) => names.length === 0 || names.includes(stage.name)).map(run)
  const passed = results.reduce((sum, result) => sum + result.passed, 0)
  const failed = results.reduce((sum, result) => sum + result.failed, 0)
  console.log(['', ...results.map((result) => result.line), '', `${passed} passed, ${failed} failed`].join('\n'))
  process.exitCode = failed === 0 ? 0 : 1
}
rmSync(reportFolder, { recursive: true })
