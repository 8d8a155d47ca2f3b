/**
 * Runs every stage of the tests, or only those named: `npm test -- types unit`.
 * A stage that fails does not stop the later ones. Those that only read the source run two at a time. The last line
 * counts them all.
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
  /** Leaves the source as it is, so that another such stage may run beside it; what it says is shown when it has ended. */
  reads?: boolean
  /** What the stage needs of this machine, as a setting of the environment; without it the stage is left out, and that is said. */
  needs?: { variable: string; find: () => string | undefined; missing: string }
  /** Where the stage is a run of tests: reads what its JSON report says. Other stages count as one check. */
  tally?: (report: unknown, ended: boolean) => Tally
}

const reportFolder = mkdtempSync(join(tmpdir(), 'tackstair-tests-'))
const reportFile = join(reportFolder, 'report.json')

const stages: Stage[] = [
  { name: 'browsers', what: 'browsers to try the page in', command: ['tsx', 'tests/tools/browsers.ts'], reads: true },
  { name: 'types', what: 'types agree', command: ['tsc'], reads: true },
  { name: 'lint', what: 'house rules', command: ['eslint', '--max-warnings=0', '.'], reads: true },
  { name: 'imports', what: 'imports point one way', command: ['tsx', 'tests/tools/imports.ts'], reads: true },
  { name: 'knip', what: 'nothing unused', command: ['knip'], reads: true },
  {
    name: 'unit',
    what: 'tests without a browser',
    command: ['vitest', 'run', '--reporter=default', '--reporter=json', `--outputFile.json=${reportFile}`],
    tally: (report, ended) => tallyUnit(report as UnitReport, ended),
  },
  { name: 'build', what: 'the page that is served', command: ['vite', 'build'] },
  { name: 'licences', what: 'licences of what is shipped', command: ['tsx', 'tests/tools/licences.ts'] },
  { name: 'file', what: 'the page in one file', command: ['vite', 'build', '--mode', 'file'] },
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

async function run({ name, what, command, reads = false, needs, tally }: Stage): Promise<Result> {
  const heading = `\n== ${name}: ${what}`
  if (!reads) console.log(heading)
  if (needs) {
    const found = needs.find()
    if (found === undefined) return { passed: 0, failed: 0, line: `${name.padEnd(8)} ${needs.missing}` }
    env[needs.variable] = found
  }
  const start = performance.now()
  rmSync(reportFile, { force: true })
  const { ended, said } = await end(command, reads)
  if (reads) console.log(`${heading}\n${said}`.trimEnd())
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

/** Two at a time; the results in the order of the stages. */
async function runTwoAtATime(stages: Stage[]): Promise<Result[]> {
  const results: Result[] = []
  let next = 0
  const lane = async () => {
    while (next < stages.length) {
      const at = next++
      results[at] = await run(stages[at])
    }
  }
  await Promise.all([lane(), lane()])
  return results
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
  const wanted = stages.filter((stage) => names.length === 0 || names.includes(stage.name))
  const results = await runTwoAtATime(wanted.filter(({ reads }) => reads))
  for (const stage of wanted.filter(({ reads }) => !reads)) results.push(await run(stage))
  const passed = results.reduce((sum, result) => sum + result.passed, 0)
  const failed = results.reduce((sum, result) => sum + result.failed, 0)
  console.log(['', ...results.map((result) => result.line), '', `${passed} passed, ${failed} failed`].join('\n'))
  process.exitCode = failed === 0 ? 0 : 1
}
rmSync(reportFolder, { recursive: true })
