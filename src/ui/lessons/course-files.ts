/** The lessons that come with the program, as texts, and how a lesson of unknown origin is read beside them. */
import * as v from 'valibot'
import courseText from '../../../lessons/course.yaml?raw'
import readme from '../../../lessons/README.md?raw'
import type { CautionId } from '../../lesson/caution.ts'
import type { TextOf } from '../../lesson/check-course.ts'
import { checkInCourse, lessonFile, readCourse } from '../../lesson/check-course.ts'
import type { CheckedLesson } from '../../lesson/check-lesson.ts'
import type { Course } from '../../lesson/course.ts'
import type { Lesson } from '../../lesson/lesson.ts'
import { lessonSchema } from '../../lesson/lesson.ts'
import { readSource } from '../../lesson/source.ts'
import { textMark } from '../../lesson/text-mark.ts'
import { said } from '../../press/problem.ts'
import type { Learning } from '../../session/learning.ts'
import { language } from '../language.ts'

const texts = import.meta.glob<string>('../../../lessons/*.lesson.yaml', {
  query: '?raw',
  import: 'default',
  eager: true,
})

const editions = import.meta.glob<string>('../../../lessons/*/*.lesson.yaml', {
  query: '?raw',
  import: 'default',
  eager: true,
})

export const course: Course = readCourse(courseText).course ?? { format: 1, title: '', everyday: [], lessons: [] }

/** Ids of the lessons that are on offer: all of the course, or those of a package. */
let offered: readonly string[] = course.lessons

export function offeredLessons(): readonly string[] {
  return offered
}

export function offerOnly(lessons: readonly string[]): void {
  offered = lessons
}

/** Text of a lesson of the course in the page's language; in English where there is no edition in it. */
export function lessonText(id: string): string {
  return editions[`../../../lessons/${language().tag}/${lessonFile(id)}`] ?? englishText(id)
}

function englishText(id: string): string {
  return texts[`../../../lessons/${lessonFile(id)}`]
}

const textOf: TextOf = (file) =>
  texts[`../../../lessons/${file}`] ?? { problem: said('checker.notThere', { word: file }) }

/** by their texts */
const read = new Map<string, Lesson>()

/** A lesson of the course; its text has been proved by the tests, so only its fields are read. */
export function courseLesson(id: string): Lesson {
  const text = lessonText(id)
  let lesson = read.get(text)
  if (!lesson) read.set(text, (lesson = v.parse(lessonSchema, readSource(text).value)))
  return lesson
}

/** What the lessons before this one, as far as they have been begun, have cautioned against. */
export function cautionsHeard(id: string, learning: Learning): ReadonlySet<CautionId> {
  const at = course.lessons.indexOf(id)
  const begun = course.lessons.slice(0, Math.max(0, at)).filter((each) => learning.lesson(each) !== undefined)
  return new Set(begun.flatMap((each) => courseLesson(each).cautions))
}

/** Reads all that is on offer, and lets the page answer after each: together they would hold it up for too long. */
export async function readAhead(): Promise<void> {
  for (const id of offered) {
    courseLesson(id)
    await new Promise((resolve) => setTimeout(resolve))
  }
}

/** Terms that the course has explained before this lesson; null for a lesson that stands alone. */
export function termsKnownBefore(id: string): ReadonlySet<string> | null {
  const at = course.lessons.indexOf(id)
  if (at < 0) return null
  const introduced = course.lessons.slice(0, at).flatMap((each) => courseLesson(each).introduces)
  return new Set([...course.everyday, ...introduced])
}

/** Everything the checker says of a text, which may be anything. */
export function checked(text: string): CheckedLesson {
  return checkInCourse(course, text, textOf)
}

/** A whole small lesson to start writing from: the one in the guide for authors, which the tests check. */
export function exampleText(): string {
  return /```yaml\n([^]*?)```/.exec(readme)?.[1] ?? ''
}

let mark: string | undefined

/** Tells this course from one whose lessons were changed. */
export function courseMark(): string {
  return (mark ??= textMark([courseText, ...course.lessons.map(englishText)]))
}
