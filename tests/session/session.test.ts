import fc from 'fast-check'
import { describe, expect, test, vi } from 'vitest'
import { checkSetUp } from '../../src/press/check-setup.ts'
import { readSheet } from '../../src/press/readings.ts'
import { runPress } from '../../src/press/run.ts'
import { stepsKept } from '../../src/session/history.ts'
import { Session } from '../../src/session/session.ts'
import { writeSetUp } from '../../src/session/write-setup.ts'
import { anyChange } from './any-change.ts'

describe('any sequence of changes', () => {
  test('leaves a legal set-up, and a refused change leaves the very same one', () => {
    fc.assert(
      fc.property(fc.array(anyChange, { maxLength: 25 }), (changes) => {
        const session = new Session()
        for (const change of changes) {
          const before = session.setUp
          const kept = structuredClone(before)
          const problems = session.change(change)
          if (problems.length > 0) {
            expect(session.setUp).toBe(before)
            for (const { message } of problems) expect(message).toMatch(/\S/)
          }
          expect(before).toEqual(kept)
          expect(checkSetUp(writeSetUp(session.setUp))).toEqual({ setUp: session.setUp })
        }
      }),
      { numRuns: 200 },
    )
  })

  test('can be taken back step by step to the start and made again to the end, exactly', () => {
    fc.assert(
      fc.property(fc.array(anyChange, { maxLength: 25 }), (changes) => {
        const session = new Session()
        const seen = [session.setUp]
        for (const change of changes) {
          const could = session.canUndo
          if (session.change(change).length > 0) continue
          // Running on grows the step before it when that was running on too.
          if (change.kind === 'run on' && could && seen.at(-1) !== session.setUp) {
            session.undo()
            const grown = session.setUp !== seen.at(-1)
            session.redo()
            if (grown) seen.pop()
          }
          seen.push(session.setUp)
        }
        const last = seen.length - 1
        for (let step = last - 1; step >= 0; step--) {
          session.undo()
          expect(session.setUp).toBe(seen[step])
        }
        expect(session.canUndo).toBe(false)
        for (let step = 1; step <= last; step++) {
          session.redo()
          expect(session.setUp).toBe(seen[step])
        }
        expect(session.canRedo).toBe(false)
      }),
      { numRuns: 200 },
    )
  })
})

test('only the last steps are kept, and a new change forgets what had been taken back', () => {
  const session = new Session()
  for (let seed = 1; seed <= stepsKept + 20; seed++) session.change({ kind: 'seed', seed })
  let steps = 0
  while (session.canUndo) {
    session.undo()
    steps++
  }
  expect(steps).toBe(stepsKept)
  expect(session.setUp.seed).toBe(20)
  session.change({ kind: 'seed', seed: 7 })
  expect(session.canRedo).toBe(false)
})

test('sheets run on in a row are taken back as one', () => {
  const session = new Session()
  const before = session.setUp
  session.change({ kind: 'run on' })
  session.change({ kind: 'run on' })
  expect(session.setUp.reading).toEqual({ sheet: 3 })
  session.undo()
  expect(session.setUp).toBe(before)
})

test('an ink moved from one unit to another shifts those between', () => {
  const session = new Session()
  session.change({ kind: 'move ink', from: 0, to: 2 })
  expect(session.setUp.inks.map((ink) => ink.name)).toEqual(['cyan', 'magenta', 'black', 'yellow'])
  session.change({ kind: 'move ink', from: 3, to: 0 })
  expect(session.setUp.inks.map((ink) => ink.name)).toEqual(['yellow', 'cyan', 'magenta', 'black'])
})

test('the interval follows the speed until it is pinned, and again once it is let go', () => {
  const session = new Session()
  session.change({ kind: 'edit press', field: 'speed', value: 4.5 })
  // 1.125 m between units at 4.5 m/s
  expect(session.setUp.press.interval).toBeCloseTo(0.25, 12)
  session.change({ kind: 'edit press', field: 'interval', value: 0.4 })
  session.change({ kind: 'edit press', field: 'speed', value: 2.25 })
  expect(session.setUp.press.interval).toBe(0.4)
  session.change({ kind: 'edit press', field: 'interval', value: undefined })
  expect(session.setUp.press.interval).toBeCloseTo(0.5, 12)
})

test('the patch looked at keeps its inks when their order changes', () => {
  const session = new Session()
  session.lookWith({ leftOut: ['cyan', 'yellow'] })
  expect(session.patch).toBe(0b0101)
  session.change({ kind: 'move ink', from: 0, to: 3 })
  // cyan, magenta, yellow, black: magenta and black print
  expect(session.patch).toBe(0b1010)
})

test('results are those of the set-up in force, worked out once', () => {
  const session = new Session()
  const first = session.results
  expect(session.results).toBe(first)
  session.change({ kind: 'take scenario', scenario: 'reversed' })
  expect(session.results.run.sheets).toEqual(runPress(session.setUp).sheets)
  session.undo()
  expect(session.results.run.sheets).toEqual(first.run.sheets)
})

test('a moving phase is told to those who draw, everything else to all', () => {
  const session = new Session()
  const all = vi.fn()
  const drawing = vi.fn()
  const end = session.subscribe(all)
  session.subscribeToFrames(drawing)
  session.play({ kind: 'scrub', phase: 0.3 })
  expect([all.mock.calls.length, drawing.mock.calls.length]).toEqual([0, 1])
  session.play({ kind: 'play' })
  expect([all.mock.calls.length, drawing.mock.calls.length]).toEqual([1, 1])
  end()
  session.change({ kind: 'seed', seed: 5 })
  expect(all.mock.calls.length).toBe(1)
})

describe('a sheet far into the run', () => {
  /** Long work waits here until it is told to go on. */
  function slowSession() {
    const waiting: (() => void)[] = []
    const session = new Session((step) => waiting.push(step))
    return { session, goOn: () => waiting.splice(0).forEach((step) => step()), waiting }
  }

  test('is printed in steps; the set-up changes at the end, to what printing every sheet gives', () => {
    const { session, goOn, waiting } = slowSession()
    const before = session.setUp
    expect(session.change({ kind: 'read', reading: { sheet: 5000 } })).toEqual([])
    expect(session.setUp).toBe(before)
    expect(session.printing).toMatchObject({ sheet: 0, of: 5000 })
    while (waiting.length > 0) goOn()
    expect(session.printing).toBeNull()
    expect(session.setUp.reading).toEqual({ sheet: 5000 })
    const { traps } = readSheet(runPress(session.setUp))
    session.results.readings.traps.forEach(({ massTrap }, pair) =>
      expect(massTrap).toBeCloseTo(traps[pair].massTrap, 5),
    )
  })

  test('is called off by hand or by another change, and nothing of it is left', () => {
    const { session, goOn, waiting } = slowSession()
    const before = session.setUp
    session.change({ kind: 'read', reading: { sheet: 50_000 } })
    goOn()
    session.cancelPrinting()
    expect(session.printing).toBeNull()
    session.change({ kind: 'read', reading: { sheet: 50_000 } })
    session.change({ kind: 'seed', seed: 3 })
    while (waiting.length > 0) goOn()
    expect(session.setUp).toEqual({ ...before, seed: 3 })
  })

  test('is not printed again when it is undone and redone', () => {
    const { session, goOn, waiting } = slowSession()
    session.change({ kind: 'read', reading: { sheet: 5000 } })
    while (waiting.length > 0) goOn()
    const { results } = session
    session.undo()
    session.redo()
    expect(session.results).toBe(results)
  })
})

test('a sheet run on is the very sheet that printing all of them gives', () => {
  const session = new Session()
  session.change({ kind: 'edit ink', unit: 1, field: 'soiled', value: 0.2 })
  for (let sheet = 2; sheet <= 6; sheet++) session.change({ kind: 'run on' })
  expect(session.setUp.reading).toEqual({ sheet: 6 })
  expect(session.results.run.sheets).toEqual(runPress(session.setUp).sheets)
})
