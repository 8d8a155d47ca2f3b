/** The lessons of the course, read from their files. */
import { readFileSync } from 'node:fs'
import * as v from 'valibot'
import { lessonFile, readCourse } from '../../src/lesson/check-course.ts'
import type { Lesson } from '../../src/lesson/lesson.ts'
import { lessonSchema } from '../../src/lesson/lesson.ts'
import { readSource } from '../../src/lesson/source.ts'

function read(file: string): string {
  return readFileSync(new URL(`../../lessons/${file}`, import.meta.url), 'utf8')
}

export function courseLessons(): Lesson[] {
  const ids = readCourse(read('course.yaml')).course?.lessons ?? []
  return ids.map((id) => v.parse(lessonSchema, readSource(read(lessonFile(id))).value))
}
