/** The command as an author meets it: lines to click on, and an exit code to build on. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { checkLesson } from '../../src/command/check-lesson.ts'
import { placeIn } from '../lesson/sound-lesson.ts'
import { endOf, endOfProcess } from './end-of.ts'

const root = join(import.meta.dirname, '../..')
let folder = ''

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tackstair-lessons-'))
  cpSync(join(root, 'lessons'), folder, { recursive: true })
})

afterAll(() => {
  rmSync(folder, { recursive: true })
})

async function check(...files: string[]): Promise<{ code: number | null; lines: string[]; err: string }> {
  const { code, out, err } = await endOf(checkLesson, files)
  return { code, lines: out.trimEnd().split('\n'), err }
}

test('a sound lesson gives one line and exit code 0', async () => {
  expect(await check(join(folder, 'tack.lesson.yaml'))).toEqual({
    code: 0,
    lines: ['OK: 1 lesson, no problems'],
    err: '',
  })
})

test('every problem of several files, each with file, line and column, and exit code 1', async () => {
  const file = join(folder, 'tack.lesson.yaml')
  const text = readFileSync(file, 'utf8')
    .replace('minutes: 12', 'minutes: 1200')
    .replace('kind: predict', 'kind: guess')
  writeFileSync(file, text)
  const missing = join(folder, 'none.lesson.yaml')
  const { code, lines, err } = await check(file, missing)
  const minutes = placeIn(text, '1200')
  const kind = placeIn(text, 'guess\n    text')
  expect(err).toBe('')
  expect(code).toBe(1)
  expect(lines).toHaveLength(3)
  expect(lines[0]).toMatch(`${file}:${String(minutes.line)}:${String(minutes.col)}: 1200 is no number of minutes`)
  expect(lines[1]).toMatch(`${file}:${String(kind.line)}:${String(kind.col)}: "guess" is no kind of step`)
  expect(lines[2]).toMatch(`${missing}:1:1: cannot be read`)
})

test('two files with one id are told apart', async () => {
  const file = join(folder, 'press-sheet.lesson.yaml')
  const copy = join(folder, 'copy.lesson.yaml')
  writeFileSync(copy, readFileSync(file))
  const { code, lines } = await check(file, copy)
  expect(code).toBe(1)
  expect(lines).toContain(`${copy}:1:1: the id press-sheet is also that of ${file}; every lesson has its own`)
})

test('a lesson is checked at its place in the course, whatever its file is called', async () => {
  const file = join(folder, 'renamed.yaml')
  const sound = readFileSync(join(folder, 'two-inks-right-order.lesson.yaml'), 'utf8')
  writeFileSync(file, sound)
  expect((await check(file)).lines).toEqual(['OK: 1 lesson, no problems'])
  const text = sound.replace(/assumes:\s*\[/, 'assumes: [mottle, ').replace('Grass in a', 'Mottle in a')
  writeFileSync(file, text)
  const { line, col } = placeIn(text, 'mottle')
  expect((await check(file)).lines).toEqual([
    `${file}:${String(line)}:${String(col)}: mottle is assumed, but no earlier lesson of the course explains it`,
  ])
})

test('a process of its own ends as it does here', async () => {
  const files = [join(folder, 'none.lesson.yaml'), join(folder, 'none/course.yaml')]
  const here = await endOf(checkLesson, files)
  expect(here).toMatchObject({ code: 1, err: '' })
  expect(here.out.split('\n').map((line) => line.replace(/ \(.*/, ''))).toEqual([
    ...files.map((file) => `${file}:1:1: cannot be read`),
    '',
  ])
  expect(await endOfProcess('check:lesson', files)).toEqual(here)
})

test('what is wrong in a lesson of a course is told under the lesson’s own name', async () => {
  const file = join(folder, 'contamination.lesson.yaml')
  const text = readFileSync(file, 'utf8').replace(/minutes: \d+/, 'minutes: 0')
  writeFileSync(file, text)
  const { line, col } = placeIn(text, '0')
  const { code, lines } = await check(join(folder, 'course.yaml'))
  expect(code).toBe(1)
  expect(
    lines.filter((each) => each.startsWith(`${file}:${String(line)}:${String(col)}: 0 is no number`)),
  ).toHaveLength(1)
})

test('a file that is far too large for a lesson is not read', async () => {
  const file = join(folder, 'large.lesson.yaml')
  writeFileSync(file, ' '.repeat(300 * 1024))
  expect((await check(file)).lines).toEqual([`${file}:1:1: is 300 kB; allowed are files up to 256 kB`])
})

test('a lesson beside a course that cannot be read is not checked without its everyday words', async () => {
  const own = mkdtempSync(join(folder, 'own-'))
  const file = join(own, 'tack.lesson.yaml')
  cpSync(join(root, 'lessons/tack.lesson.yaml'), file)
  writeFileSync(join(own, 'course.yaml'), 'lessons: 3')
  const { code, err } = await check(file)
  expect(code).toBe(2)
  expect(err).toMatch(/course\.yaml: is needed for the everyday words and cannot be read; check it first/)
})

test('no file at all is answered with the usage and exit code 2', async () => {
  expect(await check()).toMatchObject({ code: 2, err: expect.stringMatching(/give the files/) as string })
})

test('a lesson and the same in another language may be checked together', async () => {
  const { code, lines } = await check(
    join(folder, 'film-on-paper.lesson.yaml'),
    join(folder, 'es/film-on-paper.lesson.yaml'),
  )
  expect(lines).toEqual(['OK: 2 lessons, no problems'])
  expect(code).toBe(0)
})
