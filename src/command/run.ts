/**
 * `npm run --silent run -- setup.json --sheets 20000 --every 100`: a long run as comma separated values, one row for
 * every so many sheets. The set-up may carry `events`; see check-events.ts.
 */
import { parseArgs } from 'node:util'
import { aimedColours } from '../measure/order-colours.ts'
import { runRow, sheetsToRead } from '../measure/run-rows.ts'
import { checkEvents } from '../press/check-events.ts'
import { checkSetUp } from '../press/check-setup.ts'
import { longRun } from '../press/long-run.ts'
import { allowed, ranges } from '../press/ranges.ts'
import { pairs } from '../press/readings.ts'
import type { RunEvent } from '../press/run-events.ts'
import type { SetUp } from '../press/setup.ts'
import type { Command, Streams } from './command.ts'
import { InputProblem, parseJson, readInput } from './read-input.ts'

export const run: Command = {
  usage:
    'run: give the file of one set-up, or - for standard input; --sheets N is the length, --every M the sheets between rows',
  work: (args, { input, out }) => {
    const { file, sheets, every } = wanted(args)
    const { setUp, events } = readRun(file, input)
    const colours = aimedColours(setUp)
    const names = setUp.inks.map(({ name }) => name)
    out(
      line([
        'sheet',
        ...names.map((name) => `foreign ink in the store of ${name} (%)`),
        ...pairs(names.length).map(([earlier, later]) => `mass trap of ${names[later]} on ${names[earlier]} (%)`),
        'paper torn in the worst patch (%)',
        ...(colours?.patches.map(({ inks }) => `dE00 of ${inks.map((ink) => names[ink]).join(' + ')}`) ?? []),
        'event before this sheet',
      ]),
    )
    const printed = longRun(setUp, { sheets, events })
    for (const sheet of sheetsToRead(sheets, every, events)) {
      const { contamination, massTraps, picking, differences } = runRow(printed, sheet, colours)
      const happened = events.filter((event) => event.sheet === sheet).map((event) => told(event, names))
      out(
        line([
          String(sheet),
          ...[...contamination, ...massTraps, picking].map((share) => rounded(100 * share)),
          ...differences.map(rounded),
          happened.join('; '),
        ]),
      )
    }
    return 0
  },
}

function wanted(args: string[]): { file: string; sheets: number; every: number } {
  try {
    const { values, positionals } = parseArgs({
      args,
      allowPositionals: true,
      options: { sheets: { type: 'string', default: '20000' }, every: { type: 'string', default: '100' } },
    })
    if (positionals.length !== 1) throw new InputProblem('run: give one file, or - for standard input')
    const [sheets, every] = (['sheets', 'every'] as const).map((name) => {
      const number = Number(values[name])
      if (Number.isInteger(number) && number >= 1 && number <= ranges.sheet.most) return number
      throw new InputProblem(`--${name}: ${values[name]} is not allowed; allowed are ${allowed('sheet')}`)
    })
    return { file: positionals[0], sheets, every }
  } catch (error) {
    if (error instanceof InputProblem) throw error
    throw new InputProblem(`run: ${error instanceof Error ? error.message : String(error)}`)
  }
}

function readRun(file: string, standardInput: Streams['input']): { setUp: SetUp; events: RunEvent[] } {
  const input = parseJson(file, readInput(file, standardInput))
  const isObject = typeof input === 'object' && input !== null && !Array.isArray(input)
  const given: Record<string, unknown> = isObject ? { ...input } : {}
  const { events = [], ...rest } = given
  const checked = checkSetUp(isObject ? rest : input)
  if ('problems' in checked) throw problemsOf(checked.problems)
  const happening = checkEvents(events, checked.setUp)
  if ('problems' in happening) throw problemsOf(happening.problems)
  return { setUp: checked.setUp, events: happening.events }
}

function problemsOf(problems: readonly { path: string; message: string }[]): InputProblem {
  return new InputProblem(problems.map(({ path, message }) => `${path || 'set-up'}: ${message}`).join('\n'))
}

function told(event: RunEvent, names: readonly string[]): string {
  if (event.kind === 'stop') return 'stop'
  if (event.kind === 'wash-up') return `wash-up of ${names[event.unit]}`
  const changes = Object.entries(event.ink).map(([what, value]) => `${what} ${value}`)
  return `${names[event.unit]} changed to ${changes.join(', ')}`
}

/** Seven significant digits; nothing where there is no number. */
function rounded(value: number): string {
  return Number.isFinite(value) ? String(Number(value.toPrecision(7))) : ''
}

/** One row after RFC 4180; a text that a spreadsheet would take for a formula is kept a text. */
function line(cells: readonly string[]): string {
  return cells
    .map((cell) => (/^[=+@\t\r]|^-(?!\d)/.test(cell) ? `'${cell}` : cell))
    .map((cell) => (/[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell))
    .join(',')
}
