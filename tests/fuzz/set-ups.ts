/** Set-ups for solve, orders and run as JSON text: legal ones, their numbers at the ends of what is legal or beyond, spoilt ones. */
import fc from 'fast-check'
import { parseJson } from '../../src/command/read-input.ts'
import { InputProblem } from '../../src/command/read-input.ts'
import { solutionOf } from '../../src/command/solution.ts'
import { checkRanking } from '../../src/measure/check-ranking.ts'
import { aimedColours } from '../../src/measure/order-colours.ts'
import { aimOf } from '../../src/measure/order-service.ts'
import { runRow, sheetsToRead } from '../../src/measure/run-rows.ts'
import { checkEvents } from '../../src/press/check-events.ts'
import type { Checked } from '../../src/press/check-setup.ts'
import type { Problem } from '../../src/press/problem.ts'
import { checkSetUp } from '../../src/press/check-setup.ts'
import { longRun } from '../../src/press/long-run.ts'
import { searchOrders } from '../../src/press/order-search.ts'
import { factorial, rankOrders } from '../../src/press/orders.ts'
import type { RangeName } from '../../src/press/ranges.ts'
import { ranges } from '../../src/press/ranges.ts'
import { runPress } from '../../src/press/run.ts'
import type { SetUp } from '../../src/press/setup.ts'
import { finite, same, spoken, tell } from './hold.ts'
import { anyText, spoiltText, textEdits } from './spoil-text.ts'
import { spoiltTree, treeEdits } from './spoil-tree.ts'
import { subject } from './subject.ts'

/** The ends of the range, a step inside, and just beyond. */
function atTheEnds(name: RangeName): fc.Arbitrary<number> {
  const { least, most, step } = ranges[name]
  return fc.oneof(
    { weight: 240, arbitrary: fc.constantFrom(least, most) },
    { weight: 80, arbitrary: fc.constantFrom(least + step, most - step) },
    { weight: 80, arbitrary: fc.double({ min: least, max: most, noNaN: true }) },
    {
      weight: 1,
      arbitrary: fc.constantFrom(least - step, most + step, -least, least * (1 - 2 ** -53), most * (1 + 2 ** -52)),
    },
  )
}

const names = ['black', 'cyan', 'magenta', 'yellow', 'Ünsäglich', 'constructor', '__proto__', '=1+1']
const ink = fc.record(
  {
    tack: atTheEnds('tack'),
    film: atTheEnds('film'),
    coverage: atTheEnds('coverage'),
    temperature: atTheEnds('temperature'),
    dampening: atTheEnds('dampening'),
    soiled: atTheEnds('soiled'),
    colour: fc.constantFrom('#000000', '#ffffff', '#ff0000', [0, 0, 0], [100, 150, -150], [50, 0, 0]),
    dryBefore: fc.boolean(),
  },
  { requiredKeys: ['tack'] },
)
const paper = fc.oneof(
  fc.constantFrom('coated', 'light-weight coated', 'uncoated', 'newsprint', 'weak uncoated'),
  fc.record(
    {
      base: fc.constantFrom('coated', 'newsprint'),
      surfaceStrength: atTheEnds('surfaceStrength'),
      absorbency: atTheEnds('absorbency'),
      evenness: fc.constantFrom(ranges.evenness.least, 3.5, ranges.evenness.most),
      contactRate: atTheEnds('contactRate'),
      holdLimit: atTheEnds('holdLimit'),
      freeSplit: atTheEnds('freeSplit'),
      settingGain: atTheEnds('settingGain'),
      settingTime: atTheEnds('settingTime'),
      wetLoss: atTheEnds('wetLoss'),
    },
    { requiredKeys: ['base'] },
  ),
)
const press = fc.record(
  {
    kind: fc.constantFrom('sheet-fed', 'web'),
    speed: atTheEnds('speed'),
    interval: atTheEnds('interval'),
    temperature: atTheEnds('temperature'),
    dampening: atTheEnds('dampening'),
    waterless: fc.boolean(),
  },
  { requiredKeys: [] },
)

function given(most: number, reading: fc.Arbitrary<unknown>): fc.Arbitrary<Record<string, unknown>> {
  const inks = fc
    .tuple(fc.array(ink, { minLength: 2, maxLength: most }), fc.shuffledSubarray(names, { minLength: 8 }))
    .map(([drawn, called]) => drawn.map((each, unit) => ({ name: called[unit], ...each })))
  return fc.record({ inks, paper, press, reading, seed: atTheEnds('seed') }, { requiredKeys: ['inks'] })
}

/** Mostly what is legal, so that the press runs. */
function written(data: fc.Arbitrary<unknown>): fc.Arbitrary<string> {
  return fc.oneof(
    { weight: 6, arbitrary: data.map((each) => JSON.stringify(each)) },
    { weight: 2, arbitrary: fc.tuple(data, treeEdits).map(([each, edits]) => spoiltTree(each, edits)) },
    { weight: 1, arbitrary: fc.tuple(data, textEdits).map(([each, edits]) => spoiltText(JSON.stringify(each), edits)) },
    { weight: 1, arbitrary: anyText },
  )
}

/** The data in a text, as a command reads it; undefined where it is told to be no JSON. */
function dataIn(text: string): unknown {
  try {
    return parseJson('set-up', text)
  } catch (error) {
    if (!(error instanceof InputProblem)) throw error
    spoken(error.message, text)
    return undefined
  }
}

function told(problems: readonly Problem[], given: string): void {
  if (problems.length === 0) tell('It is refused without a reason.')
  for (const { message } of problems) spoken(message, given)
}

function legal(checked: Checked, given: string): SetUp | undefined {
  if ('setUp' in checked) return checked.setUp
  told(checked.problems, given)
  return undefined
}

const anyReading = fc.oneof(fc.constantFrom('first', 'settled'), fc.record({ sheet: fc.integer({ min: 0, max: 40 }) }))

export const solving = subject('solve', 350, written(given(5, anyReading)), (text) => {
  const setUp = legal(checkSetUp(dataIn(text)), text)
  if (!setUp) return
  const solution = solutionOf(runPress(setUp))
  finite(solution)
  if (!(solution.balance < 1e-9)) tell(`The balance of ink is off by ${solution.balance}.`)
})

const weights = fc.record(
  {
    trap: fc.constantFrom(0, 1, 1e6, -1),
    contamination: fc.constantFrom(0, 1, 1e6),
    picking: fc.constantFrom(0, 1, 1e6),
    colour: fc.constantFrom(0, 1, 1e6),
  },
  { requiredKeys: [] },
)
const anyTask = fc
  .tuple(
    given(4, fc.constant('settled')),
    fc.record(
      { weights, aim: fc.constantFrom(null, 'none', { overprints: [['black', 'cyan']] }) },
      { requiredKeys: [] },
    ),
  )
  .map(([setUp, goal]) => ({ ...setUp, ...goal }))

export const ordering = subject('orders', 300, written(anyTask), (text) => {
  const checked = checkRanking(dataIn(text))
  if ('problems' in checked) {
    told(checked.problems, text)
    return
  }
  const { task } = checked
  const { found } = searchOrders(task.setUp, aimOf(task))
  const ranked = task.setUp.inks.length > 4 ? found : rankOrders(task.setUp, aimOf(task)).ranked
  if (ranked !== found) same(ranked.length, factorial(task.setUp.inks.length))
  for (const { score, terms } of ranked)
    finite({ score, ...terms, colour: Number.isNaN(terms.colour) ? 0 : terms.colour })
})

const event = fc.oneof(
  fc.record({ kind: fc.constantFrom('stop', 'wash-up', 'ink change', 'nap'), sheet: fc.integer({ min: 0, max: 700 }) }),
  fc.record({ kind: fc.constant('wash-up'), sheet: fc.integer({ min: 1, max: 700 }), ink: fc.constantFrom(...names) }),
  fc.record(
    {
      kind: fc.constant('ink change'),
      sheet: fc.integer({ min: 1, max: 700 }),
      ink: fc.constantFrom(...names),
      tack: atTheEnds('tack'),
      film: atTheEnds('film'),
    },
    { requiredKeys: ['kind', 'sheet', 'ink'] },
  ),
)
const anyRun = fc
  .tuple(given(3, fc.constant('first')), fc.array(event, { maxLength: 3 }))
  .map(([setUp, events]) => ({ ...setUp, events }))

export const running = subject(
  'run',
  300,
  fc.tuple(written(anyRun), fc.integer({ min: 1, max: 600 })),
  ([text, sheets]) => {
    const data = dataIn(text)
    const isObject = typeof data === 'object' && data !== null && !Array.isArray(data)
    const given: Record<string, unknown> = isObject ? { ...data } : {}
    const { events = [], ...rest } = given
    const setUp = legal(checkSetUp(isObject ? rest : data), text)
    if (!setUp || setUp.inks.length > 3) return
    const happening = checkEvents(events, setUp)
    if ('problems' in happening) {
      told(happening.problems, text)
      return
    }
    const run = longRun(setUp, { sheets, events: happening.events })
    const colours = aimedColours(setUp)
    for (const sheet of sheetsToRead(sheets, 200, happening.events)) {
      const { massTraps, differences, ...row } = runRow(run, sheet, colours)
      finite(row)
      // Before any ink is on the sheet there is no trap, and no colour where an ink has none.
      finite([...massTraps, ...differences].filter((value) => !Number.isNaN(value)))
    }
  },
)
