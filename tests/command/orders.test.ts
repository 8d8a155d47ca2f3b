/** `npm run --silent orders` and `run`: what they print and how they end. */
import { describe, expect, it } from 'vitest'
import { orders } from '../../src/command/orders.ts'
import { run } from '../../src/command/run.ts'
import { runPress } from '../../src/press/run.ts'
import { readSheet } from '../../src/press/readings.ts'
import { checkSetUp } from '../press/legal-setups.ts'
import { endOf, endOfProcess } from './end-of.ts'

const ordersOf = (args: string[], input: unknown) => endOf(orders, args, JSON.stringify(input))
const runOf = (args: string[], input: unknown) => endOf(run, args, JSON.stringify(input))

const inks = [
  { name: 'yellow', tack: 10 },
  { name: 'black', tack: 16 },
  { name: 'cyan', tack: 14 },
]

interface Line {
  order: string[]
  score: number
  terms: Record<string, number | null>
  bounded?: true
  mostPossible?: number
}

const linesOf = (out: string) =>
  out
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as Line)

describe('the orders command', () => {
  it('prints every order once, best first, in the names of the inks', async () => {
    const { code, out, err } = await ordersOf(['-'], { inks })
    expect({ code, err }).toEqual({ code: 0, err: '' })
    const lines = linesOf(out)
    expect(lines).toHaveLength(6)
    expect(lines[0].order).toEqual(['black', 'cyan', 'yellow'])
    expect(lines.map(({ score }) => score)).toEqual(lines.map(({ score }) => score).toSorted((a, b) => b - a))
    expect(Object.keys(lines[0].terms)).toEqual(['trap', 'contamination', 'picking', 'dE00'])
  })

  it('weighs as it is told, and prints as many lines as are wanted', async () => {
    const weights = { trap: 0, contamination: 0, picking: 0, colour: 3 }
    const { out } = await ordersOf(['-', '--best', '2'], { inks, weights, aim: 'FOGRA27L' })
    const lines = linesOf(out)
    expect(lines).toHaveLength(2)
    for (const { score, terms } of lines) expect(score).toBeCloseTo(100 - 3 * (terms['dE00'] ?? NaN), 7)
  })

  it('searches so few inks to the end, and then says of no bound', async () => {
    const [best, quick] = await Promise.all([ordersOf(['-'], { inks }), ordersOf(['-', '--quick'], { inks })])
    const [found] = linesOf(quick.out)
    expect(found).toEqual(linesOf(best.out)[0])
  })

  it('prints in a process of its own what it prints here', async () => {
    const input = JSON.stringify({ inks })
    expect(await endOfProcess('orders', ['-', '--best', '2'], input)).toEqual(
      await endOf(orders, ['-', '--best', '2'], input),
    )
  })

  it('ranks seven inks in threads, and finds at least what the quick search does', { timeout: 240_000 }, async () => {
    const seven = [16, 14, 12, 10, 9, 13, 11].map((tack, place) => ({ name: `ink ${place}`, tack, coverage: 0.3 }))
    const [all, quick] = await Promise.all([
      ordersOf(['-'], { inks: seven }),
      ordersOf(['-', '--quick', '--best', '1'], { inks: seven }),
    ])
    const lines = linesOf(all.out)
    expect(new Set(lines.map(({ order }) => order.join())).size).toBe(5040)
    const [found] = linesOf(quick.out)
    expect(found.bounded).toBe(true)
    expect(found.score).toBeLessThanOrEqual(lines[0].score + 1e-6)
    expect(found.mostPossible).toBeGreaterThanOrEqual(lines[0].score - 1e-6)
    expect(lines[0].terms['dE00']).toBeNull()
  })

  it('says what is wrong and ends with 2', async () => {
    expect(await ordersOf(['-'], { inks, weights: { trap: 'much' } })).toMatchObject({
      code: 2,
      out: '',
      err: expect.stringMatching(/^weights\.trap: /) as string,
    })
    expect(await ordersOf(['-', '--best', '0'], { inks })).toMatchObject({ code: 2, out: '' })
    for (const args of [
      ['-', 'another.json'],
      ['-', '--worst', '3'],
    ]) {
      expect(await ordersOf(args, { inks })).toMatchObject({
        code: 2,
        out: '',
        err: expect.stringMatching(/^orders: /) as string,
      })
    }
    expect(await ordersOf([], {})).toMatchObject({ code: 2, out: '' })
  })
})

describe('the run command', () => {
  const four = ['black', 'cyan', 'magenta', 'yellow'].map((name, unit) => ({ name, tack: 10 + 2 * unit }))

  it('prints a row for every so many sheets, every column with its unit', async () => {
    const events = [{ kind: 'wash-up', sheet: 1500, ink: 'yellow' }]
    const { code, out } = await runOf(['-', '--sheets', '2000', '--every', '500'], { inks: four, events })
    expect(code).toBe(0)
    const rows = out
      .trimEnd()
      .split('\n')
      .map((row) => row.split(','))
    expect(rows.map(([sheet]) => sheet)).toEqual(['sheet', '1', '500', '1000', '1500', '2000'])
    for (const row of rows) expect(row).toHaveLength(rows[0].length)
    for (const title of rows[0].slice(1, -1)) expect(title).toMatch(/\(%\)$|^dE00 of/)
    expect(rows[4].at(-1)).toBe('wash-up of yellow')
    // Sheet 500 printed one by one.
    const { contamination, traps } = readSheet(runPress(checkSetUp([10, 12, 14, 16], { reading: { sheet: 500 } })))
    expect(Number(rows[2][4])).toBeCloseTo(100 * contamination[3], 3)
    expect(Number(rows[2][10])).toBeCloseTo(100 * traps[5].massTrap, 3)
  })

  it('prints in a process of its own what it prints here', async () => {
    const input = JSON.stringify({ inks: four })
    const args = ['-', '--sheets', '200']
    expect(await endOfProcess('run', args, input)).toEqual(await endOf(run, args, input))
  })

  it('keeps a name that looks like a formula a text, and quotes what has a comma', async () => {
    const odd = [
      { name: '=1+1', tack: 12 },
      { name: 'a, "b"', tack: 10 },
    ]
    const { out } = await runOf(['-', '--sheets', '5', '--every', '5'], {
      inks: odd,
      events: [{ kind: 'ink change', sheet: 3, ink: '=1+1', tack: 13 }],
    })
    expect(out).toContain('"foreign ink in the store of a, ""b"" (%)"')
    expect(out).toContain(`,'=1+1 changed to tack 13`)
  })

  it('says what is wrong and ends with 2', async () => {
    for (const [args, input] of [
      [['-', '--sheets', '0'], { inks: four }],
      [['-', '--every', 'x'], { inks: four }],
      [['-'], { inks: four, events: [{ kind: 'stop' }] }],
      [['-'], { inks: 3 }],
      [['-'], []],
      [['-', 'another.json'], { inks: four }],
      [['-', '--sheet', '3'], { inks: four }],
      [[], {}],
    ] as const) {
      const { code, out, err } = await runOf([...args], input)
      expect({ code, out }).toEqual({ code: 2, out: '' })
      expect(err).not.toBe('')
    }
  })
})
