import fc from 'fast-check'
import { expect, test } from 'vitest'
import { accountOf } from '../../../src/report/learning-system/account.ts'
import { details, resumeFrom, suspend } from '../../../src/report/learning-system/suspended.ts'
import { noWork } from '../../../src/report/learning-system/work.ts'
import { anyMarks, anyWork, mostWork } from './any-work.ts'
import { courseLessons, lessonNamed, lessonOf } from './course.ts'

/** SCORM 1.2 Run-Time Environment, cmi.suspend_data: CMIString4096. The page stays below it. */
const postcard = 4095

const whole = { lessons: courseLessons, drills: 20, mastery: 0.8 }
const marks = { attempt: 'one', revision: 3, told: 2, once: {} }

function account(work: Parameters<typeof accountOf>[1]) {
  return accountOf(whole, work, lessonOf, (number) => `drill ${number}`)
}

test('whatever a learner did in all lessons and drills, the text fits SCORM 1.2, is plain ASCII and can be read back', () => {
  fc.assert(
    fc.property(fc.oneof(anyWork, mostWork), anyMarks, (work, given) => {
      const { text, leftOut } = suspend(given, work, lessonOf, postcard)
      expect(text.length).toBeLessThan(4096)
      expect(text).toMatch(/^[A-Za-z0-9+/=]*$/)
      const back = resumeFrom(text, lessonNamed)
      expect(back?.marks).toEqual(given)
      expect(back?.work.open).toBe(work.open)
      if (leftOut === null) expect(back?.work).toEqual(JSON.parse(JSON.stringify(work)))
    }),
    { numRuns: 30 },
  )
})

test('the place, what is done and the score of every lesson survive, whatever else was left out', () => {
  fc.assert(
    fc.property(fc.oneof(anyWork, mostWork), anyMarks, (work, given) => {
      const { text } = suspend(given, work, lessonOf, postcard)
      const back = resumeFrom(text, lessonNamed)?.work ?? noWork
      const lessonsOnly = (each: typeof work) => accountOf({ ...whole, drills: 0 }, each, lessonOf, () => '')
      expect(lessonsOnly(back)).toEqual(lessonsOnly(work))
    }),
    { numRuns: 20 },
  )
})

test('a room without a limit takes everything, the bench of every lesson included', () => {
  fc.assert(
    fc.property(mostWork, (work) => {
      const { text, leftOut } = suspend(marks, work, lessonOf, Infinity)
      expect(leftOut).toBeNull()
      expect(resumeFrom(text, lessonNamed)?.work).toEqual(JSON.parse(JSON.stringify(work)))
      expect(account(resumeFrom(text, lessonNamed)?.work ?? noWork)).toEqual(account(work))
    }),
    { numRuns: 5 },
  )
})

test('the less room there is, the more is left out, in the order of its worth', () => {
  fc.assert(
    fc.property(mostWork, (work) => {
      const worth = [64000, 20000, 8000, 4095].map((room) => {
        const { leftOut } = suspend(marks, work, lessonOf, room)
        return leftOut === null ? -1 : details.indexOf(leftOut)
      })
      expect(worth).toEqual(worth.toSorted((a, b) => a - b))
    }),
    { numRuns: 5 },
  )
})

test('a text of somebody else is no work of ours', () => {
  for (const text of ['', 'hello', '{"a":1}', 'AAAA', btoa('[1]')]) expect(resumeFrom(text, lessonNamed)).toBeNull()
})
