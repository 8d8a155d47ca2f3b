/** Lessons of the course with lines and fields spoilt, and any text at all. */
import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { parse } from 'yaml'
import { checkCourse, readCourse } from '../../src/lesson/check-course.ts'
import { checkLesson } from '../../src/lesson/check-lesson.ts'
import { handoutOf } from '../../src/lesson/handout.ts'
import { begin, resume } from '../../src/lesson/progress.ts'
import type { Problem } from '../../src/lesson/source.ts'
import { everyday, soundLesson } from '../lesson/sound-lesson.ts'
import { ownWords, spoken, tell } from './hold.ts'
import { anyText, spoiltText, textEdits } from './spoil-text.ts'
import { spoiltTree, treeEdits } from './spoil-tree.ts'
import { subject } from './subject.ts'

const folder = new URL('../../lessons/', import.meta.url)
const course = readFileSync(new URL('course.yaml', folder), 'utf8')
const texts = [
  soundLesson,
  ...readdirSync(folder)
    .filter((file) => file.endsWith('.lesson.yaml'))
    .map((file) => readFileSync(new URL(file, folder), 'utf8')),
]
const trees = texts.map((text) => parse(text) as unknown)
// The small one most often: what is wrong with a field shows there at a tenth of the cost.
const trueText = fc.oneof(
  { weight: 2, arbitrary: fc.constant(texts[0]) },
  { weight: 1, arbitrary: fc.constantFrom(...texts) },
)
const trueTree = fc.oneof(
  { weight: 3, arbitrary: fc.constant(trees[0]) },
  { weight: 1, arbitrary: fc.constantFrom(...trees) },
)

/** JSON is YAML, so that a tree needs no other writing. */
const anyLesson = fc.oneof(
  { weight: 4, arbitrary: fc.tuple(trueTree, treeEdits).map(([tree, edits]) => spoiltTree(tree, edits)) },
  { weight: 4, arbitrary: fc.tuple(trueText, textEdits).map(([text, edits]) => spoiltText(text, edits)) },
  { weight: 1, arbitrary: anyText },
)

function told(problems: readonly Problem[], given: string): void {
  for (const { line, col, message, said } of problems) {
    if (!(line >= 1 && col >= 1)) tell(`A problem stands at line ${line}, column ${col}.`)
    spoken(message, given)
    ownWords(said)
  }
}

export const lessons = subject('lessons', 900, anyLesson, (text) => {
  const { lesson, problems } = checkLesson(text, { everyday })
  told(problems, text)
  if (!lesson) return problems.length > 0 ? undefined : tell('There is neither a lesson nor a problem.')
  // What can be run is run: begun, taken up again, printed.
  resume(lesson, begin(lesson))
  handoutOf(lesson)
})

const anyCourse = fc.oneof(
  fc.tuple(fc.constant(parse(course) as unknown), treeEdits).map(([tree, edits]) => spoiltTree(tree, edits)),
  textEdits.map((edits) => spoiltText(course, edits)),
)

export const courses = subject('courses', 500, fc.tuple(anyCourse, anyText), ([text, lesson]) => {
  told(readCourse(text).problems, text)
  told(checkCourse('course.yaml', text, () => lesson).problems, text + lesson)
})
