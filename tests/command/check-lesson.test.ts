/** The command as an author meets it: lines to click on, and an exit code to build on. */
import { spawnSync } from 'node:child_process'
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { placeIn } from '../lesson/sound-lesson.ts'

const root = join(import.meta.dirname, '../..')
let folder = ''

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tackstair-lessons-'))
  cpSync(join(root, 'lessons'), folder, { recursive: true })
})

afterAll(() => {
  rmSync(folder, { recursive: true })
})

function check(...files: string[]): { status: number | null; lines: string[]; errors: string } {
  const tsx = join(root, 'node_modules/.bin/tsx')
  const { status, stdout, stderr } = spawnSync(tsx, [join(root, 'src/command/check-lesson.ts'), ...files], {
    encoding: 'utf8',
  })
  return { status, lines: stdout.trimEnd().split('\n'), errors: stderr }
}

test('a sound lesson gives one line and exit code 0', { timeout: 60_000 }, () => {
  expect(check(join(folder, 'tack.lesson.yaml'))).toEqual({
    status: 0,
    lines: ['OK: 1 lesson, no problems'],
    errors: '',
  })
})

test('every problem of several files, each with file, line and column, and exit code 1', { timeout: 60_000 }, () => {
  const file = join(folder, 'tack.lesson.yaml')
  const text = readFileSync(file, 'utf8')
    .replace('minutes: 12', 'minutes: 1200')
    .replace('kind: predict', 'kind: guess')
  writeFileSync(file, text)
  const missing = join(folder, 'none.lesson.yaml')
  const { status, lines, errors } = check(file, missing)
  const minutes = placeIn(text, '1200')
  const kind = placeIn(text, 'guess\n    text')
  expect(errors).toBe('')
  expect(status).toBe(1)
  expect(lines).toHaveLength(3)
  expect(lines[0]).toMatch(`${file}:${String(minutes.line)}:${String(minutes.col)}: 1200 is no number of minutes`)
  expect(lines[1]).toMatch(`${file}:${String(kind.line)}:${String(kind.col)}: "guess" is no kind of step`)
  expect(lines[2]).toMatch(`${missing}:1:1: cannot be read`)
})

test('two files with one id are told apart', { timeout: 60_000 }, () => {
  const file = join(folder, 'press-sheet.lesson.yaml')
  const copy = join(folder, 'copy.lesson.yaml')
  writeFileSync(copy, readFileSync(file))
  const { status, lines } = check(file, copy)
  expect(status).toBe(1)
  expect(lines).toContain(`${copy}:1:1: the id press-sheet is also that of ${file}; every lesson has its own`)
})

test('a lesson is checked at its place in the course, whatever its file is called', { timeout: 60_000 }, () => {
  const file = join(folder, 'renamed.yaml')
  const sound = readFileSync(join(folder, 'two-inks-right-order.lesson.yaml'), 'utf8')
  writeFileSync(file, sound)
  expect(check(file).lines).toEqual(['OK: 1 lesson, no problems'])
  const text = sound.replace(/assumes:\s*\[/, 'assumes: [mottle, ').replace('Grass in a', 'Mottle in a')
  writeFileSync(file, text)
  const { line, col } = placeIn(text, 'mottle')
  expect(check(file).lines).toEqual([
    `${file}:${String(line)}:${String(col)}: mottle is assumed, but no earlier lesson of the course explains it`,
  ])
})

test('no file at all is answered with the usage and exit code 2', { timeout: 60_000 }, () => {
  expect(check()).toMatchObject({ status: 2, errors: expect.stringMatching(/give the files/) as string })
})

test('a lesson and the same in another language may be checked together', { timeout: 60_000 }, () => {
  const { status, lines } = check(
    join(folder, 'film-on-paper.lesson.yaml'),
    join(folder, 'es/film-on-paper.lesson.yaml'),
  )
  expect(lines).toEqual(['OK: 2 lessons, no problems'])
  expect(status).toBe(0)
})
