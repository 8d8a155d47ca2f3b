import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Attempt } from '../../src/lesson/attempt.ts'
import { mergeProgress, stepsDone } from '../../src/lesson/merge-progress.ts'
import type { Progress } from '../../src/lesson/progress.ts'
import { recordOf } from '../../src/lesson/progress.ts'

const record = fc.record(
  {
    done: fc.boolean(),
    misses: fc.nat(5),
    hints: fc.nat(3),
    answer: fc.record({ choose: fc.constantFrom('a', 'b') }),
  },
  { requiredKeys: ['done', 'misses', 'hints'] },
)
const steps = ['look', 'guess', 'why'] as const
const progress: fc.Arbitrary<Progress> = fc.record({
  lesson: fc.constant('two'),
  step: fc.constantFrom(...steps),
  records: fc.dictionary(fc.constantFrom(...steps), record),
})

test('nothing that is done on either side is lost, and no answer given here is changed', () => {
  fc.assert(
    fc.property(progress, progress, (here, theirs) => {
      const merged = mergeProgress(here, theirs)
      for (const id of steps) {
        const [own, other, now] = [here, theirs, merged].map((each) => recordOf(each, id))
        expect(now.done).toBe(own.done || other.done)
        if (own.done) expect(now.answer).toEqual(own.answer)
        expect(now.hints).toBeGreaterThanOrEqual(Math.max(own.hints, other.hints))
      }
      expect(merged.step).toBe(stepsDone(theirs) > stepsDone(here) ? theirs.step : here.step)
    }),
    { seed: 6, numRuns: 300 },
  )
})

test('bringing along what is here already changes nothing', () => {
  fc.assert(
    fc.property(progress, (here) => {
      expect(mergeProgress(here, here)).toEqual(here)
    }),
    { seed: 6, numRuns: 100 },
  )
})

test('every attempt of both is kept once, and the times are those of the whole', () => {
  const tried = (at: string): Attempt => ({ at, met: false })
  const [monday, tuesday] = [tried('2026-03-02T08:00:00.000Z'), tried('2026-03-03T08:00:00.000Z')]
  const of = (attempts: Attempt[], started: string, active: number): Progress => ({
    lesson: 'two',
    step: 'look',
    records: { look: { done: false, misses: attempts.length, hints: 0, attempts } },
    started,
    active,
  })
  const here = of([monday, tuesday], '2026-03-02T07:00:00.000Z', 90)
  const theirs = of([monday], '2026-03-01T07:00:00.000Z', 60)
  const { records, started, active } = mergeProgress(here, theirs)
  expect(records['look'].attempts).toEqual([monday, tuesday])
  expect({ started, active }).toEqual({ started: '2026-03-01T07:00:00.000Z', active: 90 })
})
