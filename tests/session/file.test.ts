import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test, vi } from 'vitest'
import { emptyShelf, writeShelf } from '../../src/measure/shelf.ts'
import { checkSetUp } from '../../src/press/check-setup.ts'
import type { Opened } from '../../src/session/file.ts'
import { fileNameOf, fileVersion, largestFile, readFile, writeFile } from '../../src/session/file.ts'
import type { Steps } from '../../src/session/migrate.ts'
import { migrate } from '../../src/session/migrate.ts'
import type { Saved } from '../../src/session/saved.ts'
import { nothingSaved } from '../../src/session/saved.ts'
import { scenarios } from '../../src/session/scenarios.ts'
import { writeSetUp } from '../../src/session/write-setup.ts'
import { anySetUp } from './any-linked.ts'
import { anySaved } from './any-saved.ts'

/** ms: enough for a poor machine with other things to do. */
vi.setConfig({ testTimeout: 60_000 })

function opened(text: string): Extract<Opened, { saved: Saved }> {
  const result = readFile(text)
  if ('refused' in result) throw new Error(result.refused.message)
  return result
}

function refusal(text: string): string {
  const result = readFile(text)
  if ('saved' in result) throw new Error('The file was opened.')
  return result.refused.message
}

/** A file of the present version with these fields. */
function withFields(fields: object): string {
  return JSON.stringify({ format: 'tackstair', version: fileVersion, ...fields })
}

function fixture(name: string): string {
  return readFileSync(new URL(`files/${name}`, import.meta.url), 'utf8')
}

const text = fc.string({ unit: 'binary', maxLength: 60 })

describe('a file', () => {
  test('brings back everything that was saved', () => {
    fc.assert(
      fc.property(anySaved, (saved) => {
        expect(opened(writeFile(saved))).toEqual({ saved, problems: [] })
      }),
      { numRuns: 60, endOnFailure: true },
    )
  })

  test('of version 1, as it was first published, opens with all it holds', () => {
    const { saved, problems } = opened(fixture('version-1.tackstair.json'))
    expect(problems).toEqual([])
    expect(saved.setUp?.inks.map(({ name, tack }) => [name, tack])).toEqual([
      ['black', 16],
      ['cyan', 14.5],
      ['reed green', 12],
    ])
    expect(saved.setUp?.paper).toMatchObject({ base: 'newsprint', name: 'market bulletin', surfaceStrength: 40 })
    expect(saved.setUp?.press).toMatchObject({ kind: 'web', speed: 8, interval: 0.2, intervalPinned: true })
    expect(saved.view).toEqual({ view: 'run chart', patch: [0, 2], unit: 2 })
    expect(saved.scenes.map(({ name }) => name)).toEqual(['Right order', 'Order reversed'])
    expect(saved.trials[0].readings).toEqual([
      { patch: 'black + cyan', red: '1.32', green: '0,55', blue: '0.3', sheet: '1' },
    ])
    expect(saved.readings).toEqual([{ patch: 'paper', red: '0.07', green: '0.08', blue: '0.1' }])
    expect(saved.readingsFile).toEqual({ name: 'old-web.csv', text: 'patch,red,green,blue\r\nblack,1.6,1.62,1.58\r\n' })
    expect(saved.shelf.inks[0].name).toBe('reed green')
    expect(saved.progress).toEqual([
      { lesson: 'tack', step: 'two', records: { one: { done: true, misses: 0, hints: 1 } } },
    ])
    expect(saved.settings).toEqual({
      theme: 'dark',
      measures: ['m/min'],
      motion: 'reduced',
      sound: false,
      language: 'en',
    })
  })

  test('may be a bare shelf, or a bare set-up as the commands take it', () => {
    const inks = [{ name: 'reed green', tack: 12, film: 4, coverage: 0.5 }]
    expect(opened(writeShelf({ ...emptyShelf, inks })).saved.shelf.inks).toEqual(inks)
    expect(checkSetUp(scenarios.fast)).toEqual({ setUp: opened(JSON.stringify(scenarios.fast)).saved.setUp })
  })
})

describe('a file that cannot be opened', () => {
  test.each([
    ['', 'not JSON'],
    ['{"format": "tackst', 'not JSON'],
    ['[1, 2]', 'holds no object'],
    ['null', 'holds no object'],
    ['{}', 'nothing is no format'],
    ['{"format": "poster", "version": 1}', '"poster" is no format'],
    ['{"format": "tackstair"}', 'nothing is no version'],
    ['{"format": "tackstair", "version": "1"}', '"1" is no version'],
    ['{"format": "tackstair", "version": 2}', 'made by a newer version'],
    ['{"format": "tackstair", "version": 0}', 'no version 0'],
  ])('%s is refused in words', (text, words) => {
    expect(refusal(text)).toContain(words)
  })

  test('is refused by its size before it is read', () => {
    expect(refusal(' '.repeat(largestFile + 1))).toContain(`allowed are ${largestFile}`)
  })
})

describe('what is wrong in a file', () => {
  const good = { inks: [{ name: 'black', tack: 16 }, { name: 'cyan', tack: 14 }] } // prettier-ignore
  const bad = { inks: [{ name: 'black', tack: 99 }, { name: 'cyan', tack: 14 }] } // prettier-ignore

  test.each([
    [{ setup: good }, 'setup', 'is no field of a file and is left out', 'did you mean setUp?'],
    [{ scenes: [{ name: 'a', setUp: good, colour: 1 }] }, 'scenes[0].colour', 'is no field of a scene', ''],
    [{ setUp: bad }, 'setUp.inks[0].tack', '99 is not allowed', '2 to 40 tack units'],
    [{ trials: [{ setUp: good }, { setUp: bad }] }, 'trials[1].setUp.inks[0].tack', '99 is not allowed', ''],
    [
      { scenes: [{ setUp: good, picture: 'loop' }] },
      'scenes[0].picture',
      '"loop" is no picture',
      'did you mean loupe?',
    ],
    [{ scenes: [{ setUp: good, beside: { setUp: bad } }] }, 'scenes[0].beside.setUp.inks[0].tack', '99 is not', ''],
    [{ scenes: [{ name: 'a' }] }, 'scenes[0].setUp', 'is missing', ''],
    [{ scenes: {} }, 'scenes', 'a list of scenes', ''],
    [{ view: { view: 'bnech' } }, 'view.view', '"bnech" is no view', 'did you mean bench?'],
    [{ shelf: { kind: 'tackstair shelf', version: 1, inks: [], papers: [] } }, 'shelf.presses', 'is missing', ''],
    [{ settings: { sound: 'loud' } }, 'settings.sound', 'true and false', ''],
    [{ progress: [{ step: 1 }] }, 'progress[0]', '', ''],
    [{ ['__proto__x']: 1 }, '__proto__x', 'is no field of a file', ''],
  ])('%j is told with its place', (fields, path, ...words) => {
    const { problems } = opened(withFields(fields))
    expect(problems).toHaveLength(1)
    expect(problems[0].path).toContain(path)
    for (const part of words) expect(problems[0].message).toContain(part)
  })

  test('takes nothing else with it', () => {
    const fields = {
      setUp: bad,
      scenes: [{ setUp: bad }, { name: 'kept', setUp: good }],
      settings: { theme: 'dark', motion: 1 },
    }
    const { saved, problems } = opened(withFields(fields))
    expect(problems).toHaveLength(3)
    expect(saved.setUp).toBeNull()
    expect(saved.scenes.map(({ name }) => name)).toEqual(['kept'])
    expect(saved.settings).toEqual({ theme: 'dark' })
  })

  test('never throws, never lets an illegal set-up in, and leaves prototypes alone', () => {
    const keys = ['setUp', 'view', 'scenes', 'trials', 'shelf', 'progress', 'settings', '__proto__', 'constructor']
    const hostile = fc.dictionary(
      fc.constantFrom(...keys),
      fc.oneof(fc.anything(), fc.jsonValue(), anySetUp.map(writeSetUp)),
    )
    const before = Reflect.ownKeys(Object.prototype).length
    fc.assert(
      fc.property(hostile, fc.nat(), text, (fields, at, put) => {
        const whole = withFields(fields)
        const place = at % whole.length
        for (const given of [whole, whole.slice(0, place) + put + whole.slice(place + put.length)]) {
          const result = readFile(given)
          if ('refused' in result) continue
          const { setUp, scenes } = result.saved
          const shownSetUps = scenes.flatMap((scene) => [scene.setUp, ...(scene.beside ? [scene.beside.setUp] : [])])
          for (const each of [...(setUp ? [setUp] : []), ...shownSetUps]) {
            expect(checkSetUp(writeSetUp(each))).toEqual({ setUp: each })
          }
          expect(Object.getPrototypeOf(result.saved)).toBe(Object.prototype)
          for (const { message } of result.problems) expect(message).toMatch(/\S/)
        }
      }),
      { numRuns: 400, endOnFailure: true },
    )
    expect(Reflect.ownKeys(Object.prototype).length).toBe(before)
  })
})

test('a file nested 20,000 levels deep opens without the part that is', () => {
  const deep = `${'['.repeat(20_000)}${']'.repeat(20_000)}`
  const { saved, problems } = opened(
    `{"format":"tackstair","version":1,"scenes":${deep},"progress":[{"lesson":"tack","step":${deep}},{"lesson":"tack"}]}`,
  )
  expect(saved.progress).toEqual([{ lesson: 'tack' }])
  expect(problems.map(({ path }) => path)).toEqual(expect.arrayContaining(['scenes[0]', 'progress[0]']))
  expect(opened(writeFile(saved)).saved).toEqual(saved)
})

describe('migration', () => {
  // Two versions that never were, made up to try the machinery: `title` became `name`, then `name` a list of names.
  const madeUp: Steps = {
    7: ({ title, ...rest }) => ({ ...rest, name: title }),
    8: ({ name, ...rest }) => ({ ...rest, names: [name] }),
  }
  const old = { version: 7, title: 'poster' }

  test('takes every step between the versions, in order', () => {
    expect(migrate(old, 7, 9, madeUp)).toEqual({ version: 9, names: ['poster'] })
    expect(migrate({ version: 8, name: 'poster' }, 8, 9, madeUp)).toEqual({ version: 9, names: ['poster'] })
    expect(migrate({ version: 9, names: [] }, 9, 9, madeUp)).toEqual({ version: 9, names: [] })
  })

  test('leaves what it was handed as it was, and stops where a step is missing', () => {
    expect(migrate(old, 7, 10, madeUp)).toBeNull()
    expect(old).toEqual({ version: 7, title: 'poster' })
  })
})

test('an empty file is one that saves nothing', () => {
  expect(opened(writeFile(nothingSaved)).saved).toEqual(nothingSaved)
})

test.each([
  ['Harvest market, week 2', 'Harvest market week 2.tackstair.json'],
  ['Grün über Gelb', 'Grün über Gelb.tackstair.json'],
  ['../../etc/passwd', 'etc passwd.tackstair.json'],
  ['a\u202ecod.exe', 'a cod.exe.tackstair.json'],
  ['CON', 'set-up.tackstair.json'],
  ['  ', 'set-up.tackstair.json'],
  ['x'.repeat(300), `${'x'.repeat(60)}.tackstair.json`],
])('a file titled %j is called %s', (title, name) => {
  expect(fileNameOf(title)).toBe(name)
})
