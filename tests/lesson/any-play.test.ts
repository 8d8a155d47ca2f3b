/** Whatever a learner does with the bench, every step of every lesson can be judged, and nothing is thrown. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Action } from '../../src/lesson/action.ts'
import { act } from '../../src/lesson/action.ts'
import type { Bench } from '../../src/lesson/bench.ts'
import { checkCourse } from '../../src/lesson/check-course.ts'
import { judgeStep } from '../../src/lesson/judge.ts'
import { startOf } from '../../src/lesson/replay.ts'
import { sayFinding } from '../../src/lesson/said.ts'
import type { Answer } from '../../src/lesson/step.ts'
import { paperNames } from '../../src/physics/paper.ts'

const folder = join(import.meta.dirname, '../../lessons')
const textOf = (file: string) => readFileSync(join(folder, file), 'utf8')
const { lessons } = checkCourse('course.yaml', textOf('course.yaml'), textOf)

const inkName = fc.constantFrom('black', 'cyan', 'magenta', 'yellow', 'orange', 'gold')
const anyNumber = fc.double({ min: -1, max: 50, noNaN: true })

const anyAction = fc.oneof<fc.Arbitrary<Action>[]>(
  fc.record({ change: fc.constant('order' as const), of: inkName, to: fc.integer({ min: 1, max: 8 }) }),
  fc.record({
    change: fc.constantFrom('tack' as const, 'film' as const, 'coverage' as const),
    of: inkName,
    to: anyNumber,
  }),
  fc.record({ change: fc.constantFrom('speed' as const, 'interval' as const, 'dampening' as const), to: anyNumber }),
  fc.record({ change: fc.constant('paper' as const), to: fc.constantFrom(...paperNames) }),
  fc.record({ change: fc.constant('waterless' as const), to: fc.boolean() }),
  fc.record({ change: fc.constant('kind' as const), to: fc.constantFrom('web' as const, 'sheet-fed' as const) }),
  fc.record({ change: fc.constant('sheet' as const), to: fc.constantFrom('first' as const, 'settled' as const, 3) }),
  fc.record({ change: fc.constant('patch' as const), to: fc.uniqueArray(inkName, { minLength: 1, maxLength: 3 }) }),
)

const anyAnswer = fc.oneof<fc.Arbitrary<Answer | undefined>[]>(
  fc.constant(undefined),
  fc.record({ choose: fc.string() }),
  fc.record({ sequence: fc.array(fc.string()) }),
  fc.record({ enter: fc.double() }),
  fc.record({ cause: fc.string(), because: fc.array(fc.string()) }),
)

/** A change that cannot be made leaves the bench as it is. */
function played(bench: Bench, actions: readonly Action[]): Bench {
  return actions.reduce((now, action) => {
    const next = act(now, action)
    return 'problem' in next ? now : next
  }, bench)
}

test('every step is judged after any play', { timeout: 60_000 }, () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...lessons),
      fc.array(anyAction, { maxLength: 6 }),
      anyAnswer,
      (lesson, actions, answer) => {
        const bench = played(startOf(lesson), actions)
        for (const step of lesson.steps) {
          if (step.kind !== 'do' && step.kind !== 'expect') continue
          const { met, findings } = judgeStep(step, bench, answer)
          expect(met).toBe(findings.every((finding) => finding.met))
          for (const finding of findings) {
            expect(finding.value === undefined || Number.isFinite(finding.value)).toBe(true)
            expect(sayFinding(finding, bench).message).toMatch(/^lesson\./)
          }
        }
      },
    ),
    { seed: 5, numRuns: 60 },
  )
})
