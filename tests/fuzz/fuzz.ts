/**
 * `npm run fuzz -- [cases] [seed] [subject] [path]`: the subjects of the fuzz with so many cases in all (ten times those of
 * `npm test` where nothing is said), each subject in a process of its own, so that its memory is its own. Without a seed
 * one is drawn and printed. With a subject only that one runs; with the path of a counterexample only that case.
 */
import { fork } from 'node:child_process'
import { writeSync } from 'node:fs'
import { subjects } from './subjects.ts'
import type { Subject, Tried } from './subject.ts'

/** MB a subject may take, the program itself included. */
const mostMemory = 500
/** MB of it for what is alive: with room without end, what nobody needs any more is left lying on a large machine. */
const mostHeap = 300
/** ms after which a case that does not end is given up. */
const longestSilence = 60_000
/** Where a child writes the number of each case before it runs, so that one that never ends is known. */
const channel = 4

const inAll = subjects.reduce((sum, { cases }) => sum + cases, 0)

interface Report extends Tried {
  /** MB at the highest */
  memory: number
}

if (process.send) await tryHere()
else await tryAll()

async function tryHere(): Promise<void> {
  const [name = '', cases, seed, path] = process.argv.slice(2)
  const subject = subjects.find((each) => each.name === name)
  if (!subject) throw new Error(`No subject is called ${name}.`)
  const tried = await subject.tryCases({
    cases: Number(cases),
    seed: Number(seed),
    ...(path === '' ? {} : { path }),
    tell: (number) => writeSync(channel, `${number}\n`),
  })
  const memory = process.resourceUsage().maxRSS / 1024
  process.send?.({ ...tried, memory } satisfies Report, () => process.disconnect())
}

async function tryAll(): Promise<void> {
  const [cases = String(10 * inAll), seed = String(drawnSeed()), only = '', path] = process.argv.slice(2)
  const wanted = subjects.filter(({ name }) => only === '' || name === only)
  if (![cases, seed].every((number) => /^\d{1,9}$/.test(number)) || wanted.length === 0) {
    const names = subjects.map(({ name }) => name).join(', ')
    console.error(`fuzz: give cases and seed as whole numbers, then, if one only is wanted, the subject: ${names}`)
    process.exitCode = 2
    return
  }
  console.log(`seed ${seed}\n\nsubject               cases   worst ms   peak MB`)
  const share = Number(cases) / wanted.reduce((sum, each) => sum + each.cases, 0)
  let held = 0
  let failed = 0
  for (const subject of wanted) {
    const report = await tryInChild(subject, Math.max(1, Math.round(share * subject.cases)), seed, path)
    held += report.cases
    const numbers = [report.cases, Math.ceil(report.worst), Math.ceil(report.memory)]
    console.log(subject.name.padEnd(18) + numbers.map((number) => String(number).padStart(9)).join(' '))
    const { failure } = report
    const why = failure?.why ?? (report.memory > mostMemory ? `It took more than ${mostMemory} MB.` : null)
    if (why === null) continue
    failed++
    const replay = `npm run fuzz -- ${cases} ${seed} "${subject.name}"${failure ? ` ${failure.path}` : ''}`
    console.log(`\n${why}\ncase: ${failure?.given.slice(0, 2000) ?? 'all'}\nagain: ${replay}\n`)
  }
  console.log(`\n${held} cases held, ${failed} of ${wanted.length} subjects failed`)
  process.exitCode = failed > 0 ? 1 : 0
}

/** The one seed that is not fixed, and therefore printed. */
function drawnSeed(): number {
  return Math.floor(Math.random() * 1e9)
}

function tryInChild({ name }: Subject, cases: number, seed: string, path = ''): Promise<Report> {
  return new Promise((resolve) => {
    const child = fork(import.meta.filename, [name, String(cases), seed, path], {
      execArgv: [...process.execArgv, `--max-old-space-size=${mostHeap}`],
      stdio: ['ignore', 'inherit', 'inherit', 'ipc', 'pipe'],
    })
    let number = '0'
    let report: Report | undefined
    let ending = ''
    const giveUp = () => {
      ending = `Case ${number} did not end within ${longestSilence / 1000} s.`
      child.kill('SIGKILL')
    }
    let silence = setTimeout(giveUp, longestSilence)
    child.stdio[channel]?.on('data', (text: Buffer) => {
      clearTimeout(silence)
      number = text.toString().trim().split('\n').at(-1) ?? number
      silence = setTimeout(giveUp, longestSilence)
    })
    child.on('message', (message) => (report = message as Report))
    child.on('close', (code, signal) => {
      clearTimeout(silence)
      ending ||= `It ended with ${signal ?? code ?? 'nothing'} at case ${number}.`
      resolve(
        report ?? { cases: Number(number), worst: NaN, memory: NaN, failure: { why: ending, given: '', path: number } },
      )
    })
  })
}
