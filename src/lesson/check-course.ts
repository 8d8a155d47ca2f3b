/** Checks a course: its own file, and each of its lessons at its place in the order. */
import * as v from 'valibot'
import type { CheckedLesson } from './check-lesson.ts'
import { checkLesson, outlineOf, placed } from './check-lesson.ts'
import type { Course } from './course.ts'
import { courseSchema } from './course.ts'
import { didYouMean } from './field.ts'
import type { Lesson } from './lesson.ts'
import { glossaryIn } from './language.ts'
import type { Problem } from './source.ts'
import { readSource } from './source.ts'
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
    const issues = parsed.issues.map((issue): Located => {
      const path = (issue.path ?? []).map(({ key }) => key as string | number)
      return { path, message: issue.message, ...(issue.expected === 'never' ? { atKey: true as const } : {}) }
    })
    return { course: undefined, problems: placed(issues, source) }
  }
  const terms = Object.keys(glossaryIn('en'))
  const located = [
    ...parsed.output.everyday.flatMap((term, at) =>
      terms.includes(term)
        ? []
        : [{ path: ['everyday', at], message: `${term} is no term of the glossary${didYouMean(term, terms)}` }],
    ),
    ...parsed.output.lessons.flatMap((id, at, all) =>
      all.indexOf(id) < at ? [{ path: ['lessons', at], message: `the lesson ${id} is listed twice` }] : [],
    ),
  ]
  return { course: parsed.output, problems: placed(located, source) }
}

/** The text of a file beside the course, or in words why it cannot be read. */
export type TextOf = (file: string) => string | { problem: string }

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
    if (typeof given !== 'string') return { file, lesson: undefined, problems: [{ ...top, message: given.problem }] }
    const { lesson, problems: found, placeOf } = checkLesson(given, { everyday, explainedBefore })
    const outline = outlineOf(given)
    for (const term of outline.introduces) explainedBefore.add(term)
    if (!lesson || lesson.id === id) return { file, lesson, problems: found }
    const message = `the id ${lesson.id} is not the name of its file, which is ${id}`
    return { file, lesson, problems: [...found, { ...placeOf(['id']), message }] }
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

const top = { line: 1, col: 1 }
