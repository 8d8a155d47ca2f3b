/**
 * The result file: what one learner has done, handed in to an instructor. One JSON object, UTF-8.
 *
 *   format    "tackstair result"
 *   version   1
 *   made      when it was written
 *   learner   id: drawn once for each browser, so that two learners of one name stay apart; name and group as typed
 *   course    title, version: a mark of its lessons' texts, so that results of different courses can be told apart
 *   lessons   one entry for each lesson begun, in the order of the course
 *   drills    one entry for each drill in which a cause was named, in the order of their first answer
 *
 * Moments are ISO 8601 in UTC. Times are in seconds and count only while the page was visible (active-time.ts). Names and
 * groups are as typed and prove nothing: the file is plain text in the learner's hands.
 *
 * Fields that are unknown are left out when it is read. A new version adds a step to `steps` in read-result.ts and keeps
 * its predecessor in tests/session/results/.
 */
import * as v from 'valibot'
import { jobIds } from '../drill/jobs.ts'
import { readDrill } from '../drill/link.ts'
import { attemptSchema, moment, mostAttempts } from '../lesson/attempt.ts'
import { drillWaySchema, worth } from './drill-way.ts'

export const resultFormat = 'tackstair result'
export const resultVersion = 1

/** Characters of a name and of a group; elements of the page hold people to it. */
export const longestName = 80

const count = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(1_000_000))
const seconds = v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(1e9))
const share = v.pipe(v.number(), v.minValue(0), v.maxValue(1))
const id = v.pipe(v.string(), v.minLength(1), v.maxLength(60))
const title = v.pipe(v.string(), v.maxLength(6000))
const typed = v.exactOptional(v.pipe(v.string(), v.maxLength(longestName)))

const learnerSchema = v.object({
  id: v.pipe(v.string(), v.minLength(1), v.maxLength(200)),
  name: typed,
  group: typed,
})

const stepSchema = v.object({
  id,
  kind: v.picklist(['say', 'predict', 'do', 'expect']),
  done: v.boolean(),
  /** how often it was handed in and not met; more than the attempts listed where an older program kept it */
  misses: count,
  hints: count,
  /** the first first; src/lesson/attempt.ts has the forms of answers */
  attempts: v.pipe(v.array(attemptSchema), v.maxLength(mostAttempts)),
})

const lessonSchema = v.object({
  id,
  /** a lesson of somebody's own, which may bear the id of one of the course */
  own: v.boolean(),
  title,
  /** a language tag, such as en */
  language: v.pipe(v.string(), v.maxLength(40)),
  started: v.exactOptional(moment),
  finished: v.exactOptional(moment),
  /** whether every step is done; an older program kept no moment of it */
  done: v.boolean(),
  /** s */
  active: seconds,
  /** share of the steps that ask something (do, expect) that were met at the first go without a hint; null: none asks */
  score: v.nullable(share),
  /** every step of the lesson, those not reached as well */
  steps: v.pipe(v.array(stepSchema), v.maxLength(40)),
})

const drillSchema = v.object({
  /** as src/drill/link.ts writes it: level, seed, and the kind asked for, such as "medium-1234" */
  drill: v.pipe(
    v.string(),
    v.maxLength(60),
    v.check((text) => readDrill(text) !== null),
  ),
  job: v.picklist(jobIds),
  /** what the first answer was worth */
  first: worth,
  /** how often a cause was named */
  tries: count,
  /** whether the sheet was good again in the end */
  cured: v.boolean(),
  /** how the learner went about it, with times (drill-way.ts); missing where an older program kept the record */
  way: v.exactOptional(drillWaySchema),
})

export const resultSchema = v.object({
  made: moment,
  learner: learnerSchema,
  course: v.object({ title, version: v.pipe(v.string(), v.maxLength(60)) }),
  lessons: v.pipe(v.array(lessonSchema), v.maxLength(300)),
  drills: v.pipe(v.array(drillSchema), v.maxLength(5000)),
})

export type Result = v.InferOutput<typeof resultSchema>
export type LessonResult = Result['lessons'][number]
export type StepResult = LessonResult['steps'][number]
export type DrillResult = Result['drills'][number]
export type Learner = Result['learner']
