/**
 * `npm run --silent check:lesson -- FILE...`: checks lesson files, and a course.yaml with all its lessons. Prints every
 * problem as file:line:col: message and ends with 1, or one line and 0.
 */
import { existsSync, readFileSync, statSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import type { ProblemSaid } from '../press/problem.ts'
import { said } from '../press/problem.ts'
import { checkCourse, checkInCourse, readCourse } from '../lesson/check-course.ts'
import type { FileProblem, TextOf } from '../lesson/check-course.ts'
import type { Lesson } from '../lesson/lesson.ts'
import { largestFile, toldAt, tooLarge, top } from '../lesson/source.ts'
import type { Command } from './command.ts'
import { InputProblem } from './read-input.ts'

const ownCourse = join(import.meta.dirname, '../../lessons/course.yaml')

export const checkLesson: Command = {
  usage: 'check:lesson: give the files of lessons, or of a course',
  work: (files, { out }) => {
    const checked = files.map((file) => (basename(file) === 'course.yaml' ? wholeCourse(file) : oneLesson(file)))
    const lessons = checked.flatMap(({ ids }) => ids)
    const problems = [...checked.flatMap((each) => each.problems), ...givenTwice(checked)]
    for (const { file, line, col, message } of problems) {
      out(`${file}:${String(line)}:${String(col)}: ${message}`)
    }
    if (problems.length === 0)
      out(`OK: ${lessons.length === 1 ? '1 lesson' : `${lessons.length} lessons`}, no problems`)
    return problems.length === 0 ? 0 : 1
  },
}

interface CheckedFile {
  file: string
  /** ids of the sound lessons in it */
  ids: string[]
  problems: FileLine[]
}

/** What is printed of a problem. */
type FileLine = Omit<FileProblem, 'said'>

function wholeCourse(file: string): CheckedFile {
  const text = read(file)
  if (typeof text !== 'string') return unreadable(file, text.problem)
  const folder = dirname(file)
  const { lessons, problems } = checkCourse(basename(file), text, textIn(folder))
  return {
    file,
    ids: lessons.map(idIn),
    problems: problems.map((problem) => ({ ...problem, file: join(folder, problem.file) })),
  }
}

function oneLesson(file: string): CheckedFile {
  const text = read(file)
  if (typeof text !== 'string') return unreadable(file, text.problem)
  const beside = join(dirname(file), 'course.yaml')
  const courseFile = existsSync(beside) ? beside : ownCourse
  const courseText = read(courseFile)
  const { course } = typeof courseText === 'string' ? readCourse(courseText) : { course: undefined }
  if (!course)
    throw new InputProblem(`${courseFile}: is needed for the everyday words and cannot be read; check it first`)
  const { lesson, problems } = checkInCourse(course, text, textIn(dirname(courseFile)))
  return { file, ids: lesson ? [idIn(lesson)] : [], problems: problems.map((problem) => ({ file, ...problem })) }
}

function unreadable(file: string, problem: ProblemSaid): CheckedFile {
  return { file, ids: [], problems: [{ file, ...toldAt(top, problem) }] }
}

function textIn(folder: string): TextOf {
  return (file) => read(join(folder, file))
}

function read(file: string): ReturnType<TextOf> {
  try {
    const { size } = statSync(file)
    if (size > largestFile) return { problem: tooLarge(size) }
    return readFileSync(file, 'utf8')
  } catch (error) {
    const reason = error instanceof Error && 'code' in error ? String(error.code) : String(error)
    return { problem: said('checker.unreadable', { reason }) }
  }
}

/** A lesson in another language has the same id, so the language is a part of it here. */
function idIn({ id, language }: Lesson): string {
  return language === 'en' ? id : `${id} (${language})`
}

/** Two files given that carry the same id in one language. */
function givenTwice(checked: readonly CheckedFile[]): FileLine[] {
  const single = checked.filter(({ file }) => basename(file) !== 'course.yaml')
  return single.flatMap(({ file, ids }, at) => {
    const [id] = ids.length > 0 ? ids : ['']
    const first = single.findIndex((other) => other.ids.includes(id))
    if (first < 0 || first === at) return []
    return [
      {
        file,
        ...top,
        message: `the id ${id} is also that of ${single[first].file}; every lesson has its own`,
      },
    ]
  })
}
