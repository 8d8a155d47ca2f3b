/**
 * A learner's work as one text that a learning system hands back at the next visit. Some systems have room for no more
 * than a postcard (SCORM 1.2: 4,096 characters), so the text is packed, and where it is still too long, what is worth
 * least is left out first. Whatever the learner did, the least detailed text fits.
 */
import { deflateSync, inflateSync, strFromU8, strToU8 } from 'fflate'
import * as v from 'valibot'
import type { Lesson } from '../../lesson/lesson.ts'
import type { Progress } from '../../lesson/progress.ts'
import { recordOf, resume } from '../../lesson/progress.ts'
import type { DrillEntry } from '../../session/drill-record.ts'
import { readEntry } from '../../session/drill-record.ts'
import { mostDrills } from './launch.ts'
import type { LessonOf, LessonWork, Work } from './work.ts'

/** What goes with the work: where it stands in the story of its attempt. */
export interface Marks {
  /** names the attempt, from its first visit to its last */
  readonly attempt: string
  /** grows with every change, so that of two texts the later one is known */
  readonly revision: number
  /** how many of the entries of the journal the system had when it was handed this text */
  readonly told: number
  /** ids of what may be told once in an attempt, such as that it is completed; by what it is */
  readonly once: Readonly<Record<string, string>>
}

/** What was left out to make it fit, the first first; each includes those before it. */
export const details = ['benches', 'tries', 'old answers', 'open bench', 'all answers', 'old drills', 'counts'] as const
export type Detail = (typeof details)[number]

export interface Suspended {
  readonly text: string
  /** null where all of it is in the text */
  readonly leftOut: Detail | null
}

/** Drills kept once old ones are left out: more than any parcel asks for. */
const recentDrills = 3 * mostDrills
/** Tries and hints beyond this are one and the same to whoever reads them. */
const mostCounted = 99

/** The fullest text of no more than `room` characters. */
export function suspend(marks: Marks, work: Work, lessonOf: LessonOf, room: number): Suspended {
  let text = packed(marks, work)
  if (text.length <= room) return { text, leftOut: null }
  let left = work
  for (const detail of details) {
    left = without[detail](left, lessonOf)
    text = packed(marks, left)
    if (text.length <= room) return { text, leftOut: detail }
  }
  return { text: packed(marks, { open: work.open, lessons: {}, drills: [] }), leftOut: 'counts' }
}

const without: Readonly<Record<Detail, (work: Work, lessonOf: LessonOf) => Work>> = {
  benches: (work) => eachLesson(work, (each, id) => (id === work.open ? each : { ...each, bench: null })),
  tries: (work, lessonOf) => ({
    ...eachLesson(work, (each, id) => ({ ...each, progress: bare(lessonOf(id), each.progress) })),
    drills: work.drills.map(withoutWay),
  }),
  'old answers': (work) => eachLesson(work, (each, id) => (id === work.open ? each : withoutAnswers(each))),
  'open bench': (work) => eachLesson(work, (each) => ({ ...each, bench: null })),
  'all answers': (work) => eachLesson(work, withoutAnswers),
  'old drills': (work) => ({ ...work, drills: work.drills.slice(-recentDrills) }),
  counts: (work) => {
    const drills = work.drills.slice(-mostDrills).map((each) => {
      return { ...each, tries: Math.min(mostCounted, each.tries), taken: Math.min(mostCounted, each.taken) }
    })
    return { ...eachLesson(work, counted), drills }
  },
}

function eachLesson(work: Work, change: (each: LessonWork, id: string) => LessonWork): Work {
  const lessons = Object.entries(work.lessons).map(([id, each]) => [id, change(each, id)])
  return { ...work, lessons: Object.fromEntries(lessons) as Work['lessons'] }
}

function withoutWay({ drill, job, kind, first, tries, taken, cured }: DrillEntry): DrillEntry {
  return { drill, job, kind, first, tries, taken, cured }
}

/** Only what the score and the place hang on, and the last answers. */
function bare(lesson: Lesson, progress: Progress): Progress {
  const { step, records } = resume(lesson, progress) ?? { step: '', records: {} }
  const bareRecords = Object.entries(records).map(([id, { done, misses, hints, answer }]) => {
    return [id, { done, misses, hints, ...(answer === undefined ? {} : { answer }) }]
  })
  return { lesson: lesson.id, step, records: Object.fromEntries(bareRecords) as Progress['records'] }
}

function withoutAnswers(each: LessonWork): LessonWork {
  const records = Object.keys(each.progress.records).map((id) => {
    const { done, misses, hints } = recordOf(each.progress, id)
    return [id, { done, misses, hints }]
  })
  return { ...each, progress: { ...each.progress, records: Object.fromEntries(records) as Progress['records'] } }
}

function counted(each: LessonWork): LessonWork {
  const records = Object.entries(each.progress.records).map(([id, { done, misses, hints }]) => {
    return [id, { done, misses: Math.min(mostCounted, misses), hints: Math.min(mostCounted, hints) }]
  })
  return { ...each, progress: { ...each.progress, records: Object.fromEntries(records) as Progress['records'] } }
}

/** Version of the form below; a text of another one is not read. */
const version = 1

const textSchema = v.strictTuple([
  v.literal(version),
  v.object({ attempt: v.string(), revision: v.number(), told: v.number(), once: v.record(v.string(), v.string()) }),
  v.string(),
  v.array(v.tuple([v.string(), v.unknown(), v.unknown()])),
  v.array(v.unknown()),
])

/** Step ids take most of the room, and the course knows them. */
function packed(marks: Marks, { open, lessons, drills }: Work): string {
  const rows = Object.entries(lessons).map(([id, { progress, bench }]) => [id, progress, bench])
  const json = JSON.stringify([version, marks, open, rows, drills])
  const bytes = deflateSync(strToU8(json), { level: 9 })
  return btoa(strFromU8(bytes, true))
}

/** Reads it back; null where it is no text of ours. Lessons that are no longer in the course are left out. */
export function resumeFrom(text: string, lessonOf: (id: string) => Lesson | null): { marks: Marks; work: Work } | null {
  const parsed = v.safeParse(textSchema, parsedJson(text))
  if (!parsed.success) return null
  const [, marks, open, rows, drills] = parsed.output
  const lessons = rows.flatMap(([id, kept, bench]): [string, LessonWork][] => {
    const lesson = lessonOf(id)
    const progress = lesson && resume(lesson, kept)
    return progress ? [[id, { progress, bench: readBench(bench) }]] : []
  })
  return { marks, work: { open, lessons: Object.fromEntries(lessons), drills: drills.flatMap(readEntry) } }
}

const benchSchema = v.object({ setUp: v.record(v.string(), v.unknown()), patch: v.array(v.string()) })

/** Whether the set-up is legal is for the bench to say, as with everything that is read back. */
function readBench(kept: unknown): LessonWork['bench'] {
  const parsed = v.safeParse(benchSchema, kept)
  return parsed.success ? (parsed.output as unknown as LessonWork['bench']) : null
}

function parsedJson(text: string): unknown {
  try {
    return JSON.parse(strFromU8(inflateSync(strToU8(atob(text), true))))
  } catch (error) {
    // Not base 64, not packed or not JSON: somebody else's text.
    if (error instanceof Error) return undefined
    throw error
  }
}
