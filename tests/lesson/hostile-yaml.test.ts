/** Files that mean harm, or that no one would write: refused in words, quickly, and never thrown on. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { TextOf } from '../../src/lesson/check-course.ts'
import { checkCourse, readCourse } from '../../src/lesson/check-course.ts'
import { checkLesson } from '../../src/lesson/check-lesson.ts'
import { readSource } from '../../src/lesson/source.ts'
import { said } from '../../src/press/problem.ts'
import { changed, everyday, placeIn, soundLesson } from './sound-lesson.ts'

const bomb = [
  'a: &a [x, x, x, x, x, x, x, x, x]',
  ...'bcdefghi'.split('').map((name, at) => `${name}: &${name} [${Array(9).fill(`*${'abcdefgh'[at]}`).join(', ')}]`),
].join('\n')

const refused: [name: string, text: string, at: string, message: RegExp][] = [
  ['alias bomb', bomb, '[x', /anchor \(&\) is not allowed/],
  ['single alias', 'a: 1\nb: *a\n', '*a', /alias|not YAML/],
  ['key __proto__', '__proto__: { polluted: true }\n', '__proto__', /__proto__ is not allowed as the name of a field/],
  ['nested __proto__', 'start:\n  __proto__: 1\n', '__proto__', /__proto__ is not allowed/],
  ['key constructor', 'constructor: 1\n', 'constructor', /constructor is not allowed/],
  ['binary tag', 'a: !!binary aGk=\n', 'aGk=', /tag \(!\) is not allowed/],
  ['foreign tag', 'a: !run it\n', 'it', /tag \(!\) is not allowed/],
  ['list as the name of a field', '? [a, b]\n: 1\n', '[a, b]', /name of a field is a plain word/],
  ['number as the name of a field', '1: a\n', '1', /name of a field is a plain word/],
  ['control character', 'a: "\\u0000"\n', '"', /control character/],
  ['second document', 'a: 1\n---\nb: 2\n', '---', /a second document starts here; allowed is one/],
  ['tabs', 'a:\n\tb: 1\n', '\tb', /not YAML/],
  ['open bracket', 'a: [1, 2\n', '', /not YAML/],
  ['same key twice', 'a: 1\na: 2\n', 'a: 2', /given twice/],
]

describe('refused before anything is read out of it', () => {
  test.each(refused)('%s', (_, text, at, message) => {
    const { value, problems } = readSource(text)
    expect(value).toBeUndefined()
    const found = problems.find((problem) => message.test(problem.message))
    expect(found, problems.map((problem) => problem.message).join('\n')).toBeDefined()
    if (at) expect({ line: found?.line, col: found?.col }).toEqual(placeIn(text, at))
  })

  test('a file larger than 256 kB, before it is parsed', () => {
    const { problems } = checkLesson(`${soundLesson}# ${'x'.repeat(300_000)}`, { everyday })
    expect(problems).toMatchObject([
      { line: 1, col: 1, message: expect.stringMatching(/kB; allowed are files up to 256 kB/) as string },
    ])
  })

  test.each(['[', '{a: ', '- '])('ten thousand levels of %s', (open) => {
    const { problems } = checkLesson(open.repeat(10_000), { everyday })
    expect(problems.length).toBeGreaterThan(0)
    expect(problems[0]).toMatchObject({ message: expect.stringMatching(/nested too deep|not YAML/) as string })
  })
  // Parsed, these took 80 s and more, or ended the whole program.
  test.each(['&a ', '!x ', '[]', '"', 'a: 1\n'])('256 kB of nothing but %j', (piece) => {
    const text = piece.repeat(Math.floor((256 * 1024) / piece.length))
    expect(checkLesson(text, { everyday }).problems).toMatchObject([
      { line: 1, col: 1, message: 'holds more than 20000 words and signs; a lesson is far shorter' },
    ])
  })

  test('and of very many problems the first hundred are told', () => {
    const { problems } = checkLesson('- *a\n'.repeat(1000), { everyday })
    expect(problems).toHaveLength(101)
    expect(problems[100].message).toBe('900 more problems are not told')
  })
})

describe('refused as a lesson', () => {
  test.each([
    ['an empty file', ''],
    ['a word', 'lesson\n'],
    ['a comment', '# nothing\n'],
  ])('%s', (_, text) => {
    const { lesson, problems } = checkLesson(text, { everyday })
    expect(lesson).toBeUndefined()
    expect(problems.map(({ message }) => message).join()).toMatch(/a lesson has the fields format, id/)
  })

  test('a list of fields', () => {
    const { lesson, problems } = checkLesson('- format: 1\n', { everyday })
    expect(lesson).toBeUndefined()
    expect(problems.map(({ message }) => message).join()).toMatch(/"title" is missing; a lesson needs it/)
  })

  test('a merge key is a field like any other, and unknown', () => {
    const { problems } = checkLesson(changed('minutes: 5', 'minutes: 5\n<<: { title: Other }'), { everyday })
    expect(problems.map(({ message }) => message)).toEqual([expect.stringMatching(/"<<" is no field of a lesson/)])
  })

  test('nothing leaks into the prototype of objects', () => {
    checkLesson('steps:\n  - __proto__: { polluted: yes }\n', { everyday })
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined()
  })
})

/** What YAML makes something of, and a few letters. */
const unlikely = [
  ...Array.from('[]{}:-*&!|>%@`"\'#?,.~= \n\t0aZé\u0000\u0085\u2028\ufeff'),
  '<<',
  '__proto__',
  '\ud800',
]

test('any text at all is answered in words and never thrown on', () => {
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom(...unlikely), maxLength: 200 }), (text) => {
      const { problems } = checkLesson(text, { everyday })
      expect(problems.length).toBeGreaterThan(0)
    }),
    { seed: 7, numRuns: 300 },
  )
}, 30_000)

test('a sound lesson with any one line spoilt or missing is never thrown on', () => {
  const lines = soundLesson.split('\n')
  fc.assert(
    fc.property(
      fc.nat(lines.length - 1),
      fc.constantFrom('', '  x: [', 'steps: 4', '- 3', '      - {}'),
      (at, other) => {
        const { problems } = checkLesson(lines.with(at, other).join('\n'), { everyday })
        expect(problems.every(({ line, col, message }) => line >= 1 && col >= 1 && message.length > 0)).toBe(true)
      },
    ),
    { seed: 11, numRuns: 80 },
  )
}, 30_000)

describe('a course', () => {
  const course = 'format: 1\ntitle: Two\neveryday: [ink, paper]\nlessons: [one, two]\n'

  test('names an everyday word that is no term', () => {
    const { problems } = readCourse(course.replace('paper', 'papper'))
    expect(problems).toMatchObject([
      { ...placeIn(course, 'paper'), message: expect.stringMatching(/did you mean paper/) as string },
    ])
  })

  test('has at most 12 everyday words', () => {
    const words = 'ink, paper, press, sheet, roller, cylinder, unit, plate, blanket, nip, solid, patch, tack'
    const text = course.replace('ink, paper', words)
    expect(readCourse(text).problems).toMatchObject([
      { ...placeIn(text, '[ink'), message: '13 everyday words are not allowed; allowed are 0 to 12' },
    ])
  })

  test('names a lesson listed twice, a lesson that is not there, and an id that is not the file name', () => {
    const files: Record<string, string> = { 'one.lesson.yaml': soundLesson }
    const textOf: TextOf = (file) => files[file] ?? { problem: said('checker.unreadable', { reason: 'ENOENT' }) }
    const text = course.replace('[one, two]', '[one, two, one]').replace('ink, paper', everyday.join(', '))
    const { problems } = checkCourse('course.yaml', text, textOf)
    const lines = problems.map(({ file, message }) => `${file}: ${message}`)
    expect(lines).toContain('course.yaml: the lesson one is listed twice')
    expect(lines).toContain('two.lesson.yaml: cannot be read (ENOENT); give the name of a file')
    expect(lines).toContain('one.lesson.yaml: the id small-lesson is not the name of its file, which is one')
  })

  test('lets a lesson assume only what an earlier one explains', () => {
    const later = changed('introduces: [tack]', 'introduces: []')
      .replace('assumes: [overprint, ink-film]', 'assumes: [overprint, ink-film, tack]')
      .replace('    explains: [tack]\n', '')
      .replaceAll('small-lesson', 'two')
    const files: Record<string, string> = {
      'one.lesson.yaml': soundLesson.replaceAll('small-lesson', 'one').replace('[overprint, ink-film]', '[]'),
      'two.lesson.yaml': later,
    }
    const textOf: TextOf = (file) => files[file] ?? { problem: said('checker.unreadable', { reason: 'ENOENT' }) }
    const { problems } = checkCourse('course.yaml', course.replace('ink, paper', everyday.join(', ')), textOf)
    const ofTwo = problems.filter(({ file }) => file === 'two.lesson.yaml')
    expect(ofTwo.map(({ message }) => message)).toEqual([
      'overprint is assumed, but no earlier lesson of the course explains it',
      'ink-film is assumed, but no earlier lesson of the course explains it',
    ])
    expect(ofTwo[0]).toMatchObject(placeIn(later, 'overprint'))
  })
})
