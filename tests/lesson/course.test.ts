/** The shipped lessons: each is sound, each is proved on the model, and the course covers what it sets out to. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { checkCourse, checkInCourse, lessonFile } from '../../src/lesson/check-course.ts'
import { controls } from '../../src/lesson/control.ts'
import type { Lesson } from '../../src/lesson/lesson.ts'
import { lessonSchema } from '../../src/lesson/lesson.ts'
import { readingNames } from '../../src/lesson/reading.ts'
import { lessonJsonSchema } from '../../src/lesson/json-schema.ts'
import { glossary } from '../../src/words/en/glossary.ts'

const folder = join(import.meta.dirname, '../../lessons')
const textOf = (file: string) => readFileSync(join(folder, file), 'utf8')
const { course, lessons, problems } = checkCourse('course.yaml', textOf('course.yaml'), textOf)

test('the course and all its lessons pass the checker', () => {
  expect(problems).toEqual([])
})

test('the course has at least 14 lessons, and every lesson file is in it', () => {
  expect(lessons.length).toBeGreaterThanOrEqual(14)
  const files = readdirSync(folder).filter((file) => file.endsWith('.lesson.yaml'))
  expect(course?.lessons.map(lessonFile).toSorted()).toEqual(files.toSorted())
})

describe('lessons in other languages', () => {
  const editions = ['es'].flatMap((tag) =>
    readdirSync(join(folder, tag)).map((file) => ({ tag, file, text: textOf(join(tag, file)) })),
  )

  test('the first five lessons are there in Spanish', () => {
    const spanish = editions.filter(({ tag }) => tag === 'es').map(({ file }) => file)
    expect(spanish.toSorted()).toEqual(course?.lessons.slice(0, 5).map(lessonFile).toSorted())
  })

  test.each(editions)('$tag/$file is sound, and is the same lesson in other words', ({ tag, text }) => {
    if (!course) throw new Error('the course cannot be read')
    const { lesson, problems: found } = checkInCourse(course, text, textOf)
    expect(found).toEqual([])
    const english = lessons.find(({ id }) => id === lesson?.id)
    expect(lesson?.language).toBe(tag)
    expect(lesson?.introduces).toEqual(english?.introduces)
    expect(lesson?.start).toEqual(english?.start)
    expect(lesson?.solution).toEqual(english?.solution)
    expect(lesson?.steps.map(tasksOf)).toEqual(english?.steps.map(tasksOf))
  })
})

/** What a step asks and proves, without its words. */
function tasksOf({ id, kind, explains, claims, ...rest }: Lesson['steps'][number]): unknown {
  const expect = 'expect' in rest ? rest.expect.filter((each) => !('choices' in each) && !('items' in each)) : []
  return { id, kind, explains, claims, expect }
}

test('no term is explained in two lessons', () => {
  const introduced = lessons.flatMap((lesson) => lesson.introduces)
  expect(introduced.length).toBe(new Set(introduced).size)
})

describe.each(lessons)('$id', (lesson) => {
  test('says where it comes from and cautions against setting a press by it', () => {
    expect(lesson.sources.length).toBeGreaterThan(0)
    expect(lesson.cautions).toContain('teaching-model')
  })

  test('proves its figures: what it says the bench reads is claimed and replayed', () => {
    const claims = lesson.steps.flatMap((step) => step.claims ?? [])
    expect(claims.length).toBeGreaterThan(0)
  })

  test('answers every wrong choice', () => {
    const silent = lesson.steps.flatMap((step) => {
      const questions = step.kind === 'predict' ? [step] : step.kind === 'say' ? [] : step.expect
      return questions.flatMap((question) => {
        const wrong = 'choices' in question ? question.choices : 'causes' in question ? question.causes : []
        const right = 'right' in question ? question.right : ''
        return wrong
          .filter(({ id, feedback }) => id !== right && feedback === undefined)
          .map(({ id }) => `${step.id}/${id}`)
      })
    })
    expect(silent).toEqual([])
  })

  test('explains and assumes only terms of the glossary', () => {
    for (const term of [...lesson.introduces, ...lesson.assumes]) expect(Object.keys(glossary)).toContain(term)
  })
})

test('the JSON Schema beside the lessons is the one the checker uses', () => {
  expect(JSON.parse(textOf('lesson.schema.json'))).toEqual(lessonJsonSchema())
})

describe('the guide for authors', () => {
  const guide = textOf('README.md')

  test('shows a lesson that is sound', () => {
    const example = /```yaml\n([\s\S]*?)```/.exec(guide)?.[1] ?? ''
    expect(course && checkInCourse(course, example, textOf).problems).toEqual([])
  })

  test('names every field, reading, control and kind of expectation', () => {
    const names = [
      ...Object.keys(lessonSchema.entries),
      ...readingNames,
      ...controls,
      ...[
        'say',
        'predict',
        'do',
        'expect',
        'choice',
        'sequence',
        'diagnosis',
        'number',
        'within',
        'at least',
        'at most',
      ],
    ]
    expect(names.filter((name) => !guide.includes(`\`${name}\``))).toEqual([])
  })
})
