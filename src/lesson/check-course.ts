/** Checks a course: its own file, and each of its lessons at its place in the order. */
import * as v from 'valibot'
import type { CheckedLesson, Standing } from './check-lesson.ts'
import { checkLesson, introducedBy, placed } from './check-lesson.ts'
import type { Course } from './course.ts'
import { courseSchema } from './course.ts'
import { didYouMean } from './field.ts'
import type { Lesson } from './lesson.ts'
import { glossaryOf } from './language.ts'
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
  const terms = Object.keys(glossaryOf('en'))
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

/** What the lesson `id` may build on: anything where the course does not hold it, else what stands before it. */
export function standingIn({ everyday, lessons }: Course, id: string, textOf: TextOf): Standing {
  const at = lessons.indexOf(id)
  if (at < 0) return { everyday }
  const explained = lessons.slice(0, at).flatMap((earlier) => {
    const text = textOf(lessonFile(earlier))
    return typeof text === 'string' ? introducedBy(text) : []
  })
  return { everyday, explainedBefore: new Set(explained) }
}

/** Checks one lesson of a course from its text: as {@link checkLesson}, and that its id is the name of its file. */
export function checkCourseLesson(course: Course, id: string, text: string, textOf: TextOf): CheckedLesson {
  const checked = checkLesson(text, standingIn(course, id, textOf))
  if (!checked.lesson || checked.lesson.id === id) return checked
  const message = `the id ${checked.lesson.id} is not the name of its file, which is ${id}`
  return { ...checked, problems: [...checked.problems, { ...checked.placeOf(['id']), message }] }
}

/** The course file and all its lessons together. */
export function checkCourse(courseFile: string, text: string, textOf: TextOf): CheckedCourse {
  const { course, problems } = readCourse(text)
  const checked = (course?.lessons ?? []).map((id) => {
    const file = lessonFile(id)
    const given = textOf(file)
    if (typeof given === 'string' && course) return { file, ...checkCourseLesson(course, id, given, textOf) }
    const problem = typeof given === 'string' ? file : given.problem
    return { file, lesson: undefined, problems: [{ line: 1, col: 1, message: problem }] }
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
