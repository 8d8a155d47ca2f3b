/**
 * Runs every stage of the tests, or only those named: `npm test -- types unit`.
 * A stage that fails does not stop the later ones. What needs one processor runs two at a time. The last line counts
 * them all.
 */
import { spawn } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { delimiter, join } from 'node:path'
import { findFirefox } from './firefox/firefox.ts'
import { tallyBrowser, tallyCheck, tallyUnit } from './tools/tally.ts'
import type { BrowserReport, Tally, UnitReport } from './tools/tally.ts'

interface Stage {
  name: string
  /** What is looked at, as the heading says it. */
  what: string
  command: string[]
  /** What the stage needs of this machine, as a setting of the environment; without it the stage is left out, and that is said. */
  needs?: { variable: string; find: () => string | undefined; missing: string }
  /** Where the stage is a run of tests: reads what its JSON report says. Other stages count as one check. */
  tally?: (report: unknown, ended: boolean) => Tally
}

const reportFolder = mkdtempSync(join(tmpdir(), 'tackstair-tests-'))
const reportFile = join(reportFolder, 'report.json')

/** Rows of stages, one after another in a row and two rows at a time; the longest stand first. */
const besideEachOther: Stage[][] = [
  [{ name: 'lint', what: 'house rules', command: ['eslint', '--max-warnings=0', '.'] }],
  [
    { name: 'browsers', what: 'browsers to try the page in', command: ['tsx', 'tests/tools/browsers.ts'] },
    { name: 'build', what: 'the page that is served', command: ['vite', 'build'] },
    { name: 'licences', what: 'licences of what is shipped', command: ['tsx', 'tests/tools/licences.ts'] },
    { name: 'file', what: 'the page in one file', command: ['vite', 'build', '--mode', 'file'] },
  ],
  [{ name: 'types', what: 'types agree', command: ['tsc'] }],
  [{ name: 'knip', what: 'nothing unused', command: ['knip'] }],
  [{ name: 'imports', what: 'imports point one way', command: ['tsx', 'tests/tools/imports.ts'] }],
]

/** Each of these uses two processors by itself. */
const oneByOne: Stage[] = [
  {
    name: 'unit',
    what: 'tests without a browser',
    command: ['vitest', 'run', '--reporter=default', '--reporter=json', `--outputFile.json=${reportFile}`],
    tally: (report, ended) => tallyUnit(report as UnitReport, ended),
  },
  {
    name: 'browser',
    what: 'tests of the built page in Chromium',
    command: ['playwright', 'test', '--reporter=list,json'],
    tally: (report, ended) => tallyBrowser(report as BrowserReport, ended),
  },
  {
    name: 'firefox',
    what: 'the main task in Firefox',
    command: [
      ...['vitest', 'run', '--config=tests/firefox/vitest.config.ts'],
      ...['--reporter=default', '--reporter=json', `--outputFile.json=${reportFile}`],
    ],
    needs: {
      variable: 'TACKSTAIR_FIREFOX',
      find: findFirefox,
      missing: 'left out: there is no Firefox here and none could be installed',
    },
    tally: (report, ended) => tallyUnit(report as UnitReport, ended),
  },
]

const env: NodeJS.ProcessEnv = {
  ...process.env,
  PATH: [join(import.meta.dirname, '../node_modules/.bin'), process.env['PATH'] ?? ''].join(delimiter),
  PLAYWRIGHT_JSON_OUTPUT_FILE: reportFile,
}

type Result = Tally & { line: string }

/** Runs a stage; one beside another is shown when it has ended. */
async function run({ name, what, command, needs, tally }: Stage, beside = false): Promise<Result> {
  const heading = `\n== ${name}: ${what}`
  if (!beside) console.log(heading)
  if (needs) {
    const found = needs.find()
    if (found === undefined) return { passed: 0, failed: 0, line: `${name.padEnd(8)} ${needs.missing}` }
    env[needs.variable] = found
  }
  const start = performance.now()
  rmSync(reportFile, { force: true })
  const { ended, said } = await end(command, beside)
  if (beside) console.log(`${heading}\n${said}`.trimEnd())
  else if (said !== '') console.error(said)
  const seconds = ((performance.now() - start) / 1000).toFixed(1).padStart(6)
  const counted = tally === undefined ? tallyCheck(ended) : readTally(tally, ended)
  return { ...counted, line: `${name.padEnd(8)} ${seconds} s   ${counted.passed} passed, ${counted.failed} failed` }
}

/** Runs a program to its end; `keep` what it says, or let it speak. */
function end([program, ...args]: string[], keep: boolean): Promise<{ ended: boolean; said: string }> {
  return new Promise((resolve) => {
    let said = ''
    const child = spawn(program, args, {
      cwd: join(import.meta.dirname, '..'),
      env,
      stdio: keep ? ['ignore', 'pipe', 'pipe'] : 'inherit',
    })
    for (const stream of [child.stdout, child.stderr]) {
      stream?.setEncoding('utf8').on('data', (text: string) => (said += text))
    }
    child.on('error', ({ message }) => (said += `${program} did not start: ${message}`))
    child.on('close', (status) => resolve({ ended: status === 0, said }))
  })
}

/** Two rows at a time; the results in the order of the stages. */
async function runRows(rows: Stage[][]): Promise<Result[]> {
  const results: Result[][] = rows.map(() => [])
  let next = 0
  const lane = async () => {
    while (next < rows.length) {
      const row = next++
      for (const stage of rows[row]) results[row].push(await run(stage, true))
    }
  }
  await Promise.all([lane(), lane()])
  return results.flat()
}

function readTally(tally: (report: unknown, ended: boolean) => Tally, ended: boolean): Tally {
  if (!existsSync(reportFile)) return tallyCheck(false)
  return tally(JSON.parse(readFileSync(reportFile, 'utf8')), ended)
}

const names = process.argv.slice(2)
const known = [...besideEachOther.flat(), ...oneByOne].map(({ name }) => name)
const unknown = names.filter((name) => !known.includes(name))
if (unknown.length > 0) {
  console.error(`No stage is called ${unknown.join(' or ')}; the stages are ${known.join(', ')}.`)
  process.exitCode = 2
} else {
  const wanted = ({ name }: Stage) => names.length === 0 || names.includes(name)
  const results = await runRows(besideEachOther.map((row) => row.filter(wanted)))
  for (const stage of oneByOne.filter(wanted)) results.push(await run(stage))
  const passed = results.reduce((sum, result) => sum + result.passed, 0)
  const failed = results.reduce((sum, result) => sum + result.failed, 0)
  console.log(['', ...results.map((result) => result.line), '', `${passed} passed, ${failed} failed`].join('\n'))
  process.exitCode = failed === 0 ? 0 : 1
}
rmSync(reportFolder, { recursive: true })
