/** The lessons as they are shipped, for the tests of what is told of them. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import * as v from 'valibot'
import { lessonFile, readCourse } from '../../../src/lesson/check-course.ts'
import type { Lesson } from '../../../src/lesson/lesson.ts'
import { lessonSchema } from '../../../src/lesson/lesson.ts'
import { readSource } from '../../../src/lesson/source.ts'

const folder = join(import.meta.dirname, '../../../lessons')
const read = (file: string) => readFileSync(join(folder, file), 'utf8')

export const courseLessons: readonly string[] = readCourse(read('course.yaml')).course?.lessons ?? []

const lessons = new Map(
  courseLessons.map((id) => [id, v.parse(lessonSchema, readSource(read(lessonFile(id))).value)] as const),
)

export function lessonNamed(id: string): Lesson | null {
  return lessons.get(id) ?? null
}

export function lessonOf(id: string): Lesson {
  const lesson = lessons.get(id)
  if (!lesson) throw new Error(`There is no lesson ${id} in the course.`)
  return lesson
}
