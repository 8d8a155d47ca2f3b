/** The course file: the lessons in the order they are taken, and the words everybody knows. */
import type * as v from 'valibot'
import { fields, id, listOf, text } from './field.ts'
import { format } from './lesson.ts'

/** How many terms of the glossary a course may treat as everyday words. */
const mostEverydayWords = 12

export const courseSchema = fields('course', {
  format,
  title: text,
  /** terms of the glossary that need no explanation */
  everyday: listOf(id, 'everyday', 0, mostEverydayWords),
  /** ids of lessons; the lesson two-inks is in two-inks.lesson.yaml beside the course */
  lessons: listOf(id, 'lessons', 1, 200),
})
export type Course = v.InferOutput<typeof courseSchema>
