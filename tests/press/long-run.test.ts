import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { RunEvent } from '../../src/press/run-events.ts'
import { afterEvent } from '../../src/press/run-events.ts'
import { longRun, pressAt, runAt, runInSteps } from '../../src/press/long-run.ts'
import { lineOf } from '../../src/press/line.ts'
import { emptyPassage, printSheet, runPress, settleLine, startingTrains } from '../../src/press/run.ts'
import { farthest } from '../../src/press/stride.ts'
import type { SetUp } from '../../src/press/setup.ts'
import { anySetUp, checkSetUp } from './legal-setups.ts'

/** um, and shares of 1: what any film or store of a long run may be off, against plain stepping. */
const stated = 2e-5

/** The largest difference between a long run and plain stepping, at every sheet of `looked`. */
function farthestFromPlain(setUp: SetUp, sheets: number, looked: (sheet: number) => boolean, events: RunEvent[] = []) {
  const run = longRun(setUp, { sheets, events })
  const line = lineOf(setUp)
  let now = { setUp, line, trains: startingTrains(line, settleLine(line)) }
  const passage = emptyPassage(line)
  let most = 0
  for (let sheet = 1; sheet <= sheets; sheet++) {
    for (const event of events) if (event.sheet === sheet) now = afterEvent(now, event)
    if (looked(sheet)) {
      const off = farthest(pressAt(run, sheet).trains, now.trains)
      most = off <= most ? most : off
    }
    printSheet(now.line, now.trains, passage)
  }
  return most
}

const oftenAtFirst = (sheet: number) => sheet < 60 || sheet % 41 === 0

describe('a long run', () => {
  it.each([
    ['descending', checkSetUp([16, 14, 12, 10])],
    ['reversed, waterless', checkSetUp([10, 12, 14, 16], { waterless: true })],
    [
      'soiled, little coverage',
      {
        ...checkSetUp([]),
        inks: checkSetUp([12, 13, 11]).inks.map((ink) => ({ ...ink, coverage: 0.06, soiled: 0.3 })),
      },
    ],
  ])('equals plain stepping to 2e-5 um or share, sheet by sheet: %s', { timeout: 60_000 }, (_, setUp) => {
    expect(farthestFromPlain(setUp, 4000, oftenAtFirst)).toBeLessThan(stated)
  })

  it('does so for set-ups from the whole legal range', { timeout: 120_000 }, () => {
    fc.assert(
      fc.property(anySetUp(2, 3), (setUp) => {
        expect(farthestFromPlain(setUp, 600, oftenAtFirst)).toBeLessThan(stated)
      }),
      { numRuns: 30, seed: 3 },
    )
  })

  it('does so through a stop, a wash-up and an ink change', { timeout: 60_000 }, () => {
    const events: RunEvent[] = [
      { kind: 'stop', sheet: 300 },
      { kind: 'wash-up', sheet: 700, unit: 3 },
      { kind: 'ink change', sheet: 701, unit: 3, ink: { tack: 9, film: 5 } },
    ]
    const oftenAround = (sheet: number) =>
      oftenAtFirst(sheet) || (sheet > 295 && sheet < 330) || (sheet > 695 && sheet < 730)
    expect(farthestFromPlain(checkSetUp([10, 12, 14, 16]), 1500, oftenAround, events)).toBeLessThan(stated)
  })

  it('begins with the first sheet and ends at the settled one', () => {
    const setUp = checkSetUp([10, 12, 14, 16])
    const run = longRun(setUp, { sheets: 100_000 })
    const first = runAt(run, 1)
    const settled = runPress(setUp)
    expect(first.sheets[4]).toEqual(runPress({ ...setUp, reading: 'first' }).sheets[4])
    expect(farthest(runAt(run, 100_000).trains, settled.trains)).toBeLessThan(stated)
    expect(run.turned).toBeLessThan(4 * 3000)
  })

  it('wipes what an event wipes, and nothing else', () => {
    const setUp = checkSetUp([10, 12, 14, 16])
    const run = longRun(setUp, {
      sheets: 900,
      events: [
        { kind: 'stop', sheet: 500 },
        { kind: 'wash-up', sheet: 800, unit: 2 },
      ],
    })
    const stopped = pressAt(run, 500).trains
    for (const { plate, blanket } of stopped) expect(Math.max(...plate, ...blanket)).toBe(0)
    expect(1 - stopped[3].store[3]).toBeGreaterThan(0.1)
    const washed = pressAt(run, 800).trains
    expect(Array.from(washed[2].store)).toEqual([0, 0, 1, 0])
    expect(Math.max(...washed[3].blanket)).toBeGreaterThan(0)
    expect(pressAt(run, 799).trains[2].store[2]).toBeLessThan(0.99)
  })

  it('gives the same sheet again however often it is asked', () => {
    const run = longRun(checkSetUp([16, 14, 12, 10]), { sheets: 2000 })
    expect(runAt(run, 1234).sheets[4]).toEqual(runAt(run, 1234).sheets[4])
  })

  it('stops when it is told to', () => {
    const stop = new AbortController()
    stop.abort(new Error('enough'))
    expect(() => longRun(checkSetUp([16, 14]), { sheets: 1000, signal: stop.signal })).toThrow('enough')
    const steps = runInSteps(checkSetUp([16, 14]), 1000)
    expect(steps.next().value).toBeGreaterThan(0)
  })
})
