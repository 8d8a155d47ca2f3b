/** Checks a course: its own file, and each of its lessons at its place in the order. */
import * as v from 'valibot'
import type { ProblemSaid } from '../press/problem.ts'
import { said } from '../press/problem.ts'
import type { CheckedLesson } from './check-lesson.ts'
import { checkLesson, locate, outlineOf, placed } from './check-lesson.ts'
import type { Course } from './course.ts'
import { courseSchema } from './course.ts'
import type { Lesson } from './lesson.ts'
import { glossaryIn } from './language.ts'
import type { Problem } from './source.ts'
import { noSuch } from './references.ts'
import { readSource, toldAt, top } from './source.ts'
import type { Located } from './term-order.ts'

/** A problem and the file it is in. */
export interface FileProblem extends Problem {
  file: string
}

export interface CheckedCourse {
  course: Course | undefined
  /** the sound lessons, in order */
  lessons: Lesson[]
  problems: FileProblem[]
}

/** The file a lesson is in. */
export function lessonFile(id: string): string {
  return `${id}.lesson.yaml`
}

/** Reads a course file alone; the lessons it names are checked apart. */
export function readCourse(text: string): { course: Course | undefined; problems: Problem[] } {
  const source = readSource(text)
  if (source.problems.length > 0) return { course: undefined, problems: source.problems }
  const parsed = v.safeParse(courseSchema, source.value)
  if (!parsed.success) {
    return { course: undefined, problems: placed(parsed.issues.map(locate), source) }
  }
  const terms = Object.keys(glossaryIn('en'))
  const located: Located[] = [
    ...parsed.output.everyday.flatMap((term, at) =>
      terms.includes(term) ? [] : [{ path: ['everyday', at], said: noSuch(term, 'term', terms) }],
    ),
    ...parsed.output.lessons.flatMap((id, at, all) =>
      all.indexOf(id) < at ? [{ path: ['lessons', at], said: said('checker.lessonTwice', { id }) }] : [],
    ),
  ]
  return { course: parsed.output, problems: placed(located, source) }
}

/** The text of a file beside the course, or why it cannot be read. */
export type TextOf = (file: string) => string | { problem: ProblemSaid }

/** Checks one lesson from its text, at the place its id has in the course; one the course does not hold stands alone. */
export function checkInCourse(course: Course, text: string, textOf: TextOf): CheckedLesson {
  const { everyday, lessons } = course
  const at = lessons.indexOf(outlineOf(text).id)
  if (at < 0) return checkLesson(text, { everyday })
  const earlier = lessons.slice(0, at).map((id) => textOf(lessonFile(id)))
  const explained = earlier.flatMap((given) => (typeof given === 'string' ? outlineOf(given).introduces : []))
  return checkLesson(text, { everyday, explainedBefore: new Set(explained) })
}

/** The course file and all its lessons together. */
export function checkCourse(courseFile: string, text: string, textOf: TextOf): CheckedCourse {
  const { course, problems } = readCourse(text)
  const everyday = course?.everyday ?? []
  const explainedBefore = new Set<string>()
  const checked = (course?.lessons ?? []).map((id) => {
    const file = lessonFile(id)
    const given = textOf(file)
    if (typeof given !== 'string') return { file, lesson: undefined, problems: [toldAt(top, given.problem)] }
    const { lesson, problems: found, placeOf } = checkLesson(given, { everyday, explainedBefore })
    const outline = outlineOf(given)
    for (const term of outline.introduces) explainedBefore.add(term)
    if (!lesson || lesson.id === id) return { file, lesson, problems: found }
    const misnamed = said('checker.idNotFile', { id: lesson.id, otherId: id })
    return { file, lesson, problems: [...found, toldAt(placeOf(['id']), misnamed)] }
  })
  return {
    course,
    lessons: checked.flatMap(({ lesson }) => (lesson ? [lesson] : [])),
    problems: [
      ...problems.map((problem) => ({ file: courseFile, ...problem })),
      ...checked.flatMap(({ file, problems: found }) => found.map((problem) => ({ file, ...problem }))),
    ],
  }
}
