/** Work that a learner may have done: far more of it than any learner would. */
import fc from 'fast-check'
import { faultKinds } from '../../../src/drill/cause.ts'
import { jobIds } from '../../../src/drill/jobs.ts'
import { levels } from '../../../src/drill/level.ts'
import { mostAttempts } from '../../../src/lesson/attempt.ts'
import { isQuestion } from '../../../src/lesson/expectation.ts'
import type { Lesson } from '../../../src/lesson/lesson.ts'
import type { StepRecord } from '../../../src/lesson/progress.ts'
import type { Answer, Step } from '../../../src/lesson/step.ts'
import type { Marks } from '../../../src/report/learning-system/suspended.ts'
import type { LessonWork, Work } from '../../../src/report/learning-system/work.ts'
import type { DrillEntry } from '../../../src/session/drill-record.ts'
import { writeSetUp } from '../../../src/session/write-setup.ts'
import { anySetUp } from '../../press/legal-setups.ts'
import { courseLessons, lessonOf } from './course.ts'

function anyAnswer(step: Step): fc.Arbitrary<Answer> {
  const question = step.kind === 'predict' ? step : step.kind === 'expect' ? step.expect.find(isQuestion) : undefined
  const number = fc.double({ noNaN: true, noDefaultInfinity: true }).map((enter) => ({ enter }))
  if (!question) return number
  if (!('is' in question) || question.is === 'choice') {
    return fc.constantFrom(...question.choices).map(({ id }) => ({ choose: id }))
  }
  if (question.is === 'number') return number
  if (question.is === 'sequence') {
    const ids = question.items.map(({ id }) => id)
    return fc.shuffledSubarray(ids, { minLength: ids.length }).map((sequence) => ({ sequence }))
  }
  return fc.record({
    cause: fc.constantFrom(...question.causes.map(({ id }) => id)),
    because: fc.subarray(question.evidence.map(({ id }) => id)),
  })
}

const anyMoment = fc.integer({ min: Date.UTC(2024, 0), max: Date.UTC(2030, 0) }).map((at) => new Date(at).toISOString())

const anyReading = fc.record({
  form: fc.constant('reading' as const),
  entered: fc.double({ noNaN: true, noDefaultInfinity: true }),
  read: fc.double({ noNaN: true, noDefaultInfinity: true }),
  tolerance: fc.constant(0.02),
  unit: fc.constant('%'),
})

const anyAttempt = fc.record({ at: anyMoment, met: fc.boolean(), answer: anyReading })

function anyRecord(step: Step): fc.Arbitrary<StepRecord> {
  return fc.record(
    {
      done: fc.boolean(),
      misses: fc.nat(2 ** 31 - 1),
      hints: fc.nat(2 ** 31 - 1),
      answer: anyAnswer(step),
      attempts: fc.array(anyAttempt, { maxLength: mostAttempts }),
    },
    { requiredKeys: ['done', 'misses', 'hints'] },
  )
}

function anyLessonWork({ id, steps }: Lesson): fc.Arbitrary<LessonWork> {
  const records = Object.fromEntries(steps.map((step) => [step.id, anyRecord(step)]))
  return fc.record({
    progress: fc.record({
      lesson: fc.constant(id),
      step: fc.constantFrom(...steps.map((step) => step.id)),
      records: fc.record(records, { requiredKeys: [] }) as fc.Arbitrary<Record<string, StepRecord>>,
    }),
    bench: fc.option(
      anySetUp(2, 8).map((setUp) => ({ setUp: writeSetUp(setUp), patch: setUp.inks.map(({ name }) => name) })),
    ),
  })
}

const anyDrill: fc.Arbitrary<DrillEntry> = fc.record({
  drill: fc
    .tuple(fc.constantFrom(...levels), fc.nat(2 ** 31 - 1), fc.constantFrom(...faultKinds))
    .map(([level, seed, kind]) => `${level}-${seed}-${kind}`),
  job: fc.constantFrom(...jobIds),
  kind: fc.constantFrom(...faultKinds),
  first: fc.constantFrom('proven' as const, 'found' as const, 'missed' as const),
  tries: fc.nat(2 ** 31 - 1),
  taken: fc.nat(2 ** 31 - 1),
  cured: fc.boolean(),
  way: fc.record({
    active: fc.nat(),
    hidden: fc.constant(['paper weak']),
    offered: fc.constant(['paper weak', 'unit too warm 2', 'speed too high']),
    named: fc.array(
      fc.record({
        at: anyMoment,
        causes: fc.constant(['speed too high']),
        evidence: fc.constant(['speed counter']),
        worth: fc.constantFrom('proven' as const, 'found' as const, 'missed' as const),
      }),
      { maxLength: 5 },
    ),
    measured: fc.constant([]),
    cures: fc.constant([]),
  }),
})

/** Any lessons, any steps of them. */
export const anyWork: fc.Arbitrary<Work> = fc.record({
  open: fc.constantFrom('', ...courseLessons),
  lessons: fc.record(Object.fromEntries(courseLessons.map((id) => [id, anyLessonWork(lessonOf(id))])), {
    requiredKeys: [],
  }) as fc.Arbitrary<Work['lessons']>,
  drills: fc.uniqueArray(anyDrill, { selector: ({ drill }) => drill, maxLength: 400, size: 'max' }),
})

/** Every step of every lesson done, with as much to keep of each as the page can make. */
export const mostWork: fc.Arbitrary<Work> = fc
  .tuple(...courseLessons.map((id) => anyLessonWork(lessonOf(id)).filter(({ bench }) => bench !== null)))
  .chain((all) =>
    fc.record({
      open: fc.constantFrom(...courseLessons),
      lessons: fc.constant(Object.fromEntries(all.map((each) => [each.progress.lesson, each]))),
      drills: fc.uniqueArray(anyDrill, { selector: ({ drill }) => drill, minLength: 200, maxLength: 400, size: 'max' }),
    }),
  )

export const anyMarks: fc.Arbitrary<Marks> = fc.record({
  attempt: fc.uuid(),
  revision: fc.nat(),
  told: fc.nat(),
  once: fc.record({ completed: fc.uuid(), passed: fc.uuid(), failed: fc.uuid() }, { requiredKeys: [] }),
})
