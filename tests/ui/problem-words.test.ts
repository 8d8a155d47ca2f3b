import { afterAll, beforeAll, expect, test } from 'vitest'
import { checkShelf } from '../../src/measure/check-shelf.ts'
import { checkEvents } from '../../src/press/check-events.ts'
import { checkSetUp } from '../../src/press/check-setup.ts'
import type { Problem } from '../../src/press/problem.ts'
import { readFile } from '../../src/session/file.ts'
import { Session } from '../../src/session/session.ts'
import { chooseLanguage } from '../../src/ui/language.ts'
import { sayProblem } from '../../src/ui/problem-words.ts'

beforeAll(() => chooseLanguage('es'))
afterAll(() => chooseLanguage('en'))

const inks = [
  { name: 'black', tack: 16 },
  { name: 'cyan', tack: 14 },
]
const setUpSays = (input: unknown) => {
  const checked = checkSetUp(input)
  return 'problems' in checked ? checked.problems : []
}

test.each([
  [5, '5 no vale aquí; una configuración es un objeto con inks, paper, press, reading, seed'],
  [{ inks: [inks[0]] }, '1 tinta no puede ser; pueden ser de 2 a 8'],
  [{ inks: [inks[0], { name: 'cyan' }] }, 'falta; una tinta lo necesita'],
  [{ inks, press: { speed: 99.5 } }, '99,5 no vale aquí; valen números de 0,3 a 20\u00a0m/s'],
  [{ inks, seed: 0.5 }, '0,5 no vale aquí; valen números enteros de 0 a 4294967295'],
  [
    { inks, paper: 'coatd' },
    '"coatd" no es ningún papel; valen coated, light-weight coated, uncoated, weak uncoated, newsprint; ¿querías decir coated?',
  ],
  [
    { inks, reading: 'nothing' },
    '"nothing" no es ninguna lectura; valen "first", "settled" y {"sheet": N}, con N números enteros de 1 a 100000',
  ],
])('what is wrong with the set-up %j is said in Spanish', (input, sentence) => {
  expect(setUpSays(input).map(sayProblem)).toEqual([sentence])
})

test('whatever is wrong with a shelf, events or a file can be said in it too, and says something else than in English', () => {
  const found: Problem[] = []
  const take = (checked: object) => {
    if ('problems' in checked) found.push(...(checked.problems as Problem[]))
    if ('refused' in checked) found.push(checked.refused as Problem)
  }
  take(checkShelf({ kind: 'x', version: 2, inks: 1, papers: [{}], presses: [{ name: 'a on b' }] }))
  take(
    checkShelf({
      kind: 'tackstair shelf',
      version: 1,
      inks: [inks[0], inks[0]],
      papers: [{ name: 'coated' }],
      presses: [],
    }),
  )
  const bench = new Session()
  for (const list of ['a', [{ kind: 'halt', sheet: 0 }], [{ kind: 'wash-up', sheet: 5, ink: 'red' }]])
    take(checkEvents(list, bench.setUp))
  for (const text of [
    'x',
    '[]',
    '{"format":"y"}',
    '{"format":"tackstair","version":9}',
    '{"format":"tackstair","version":0}',
    '{"format":"tackstair","version":"1"}',
  ])
    take(readFile(text))
  take(
    readFile(
      JSON.stringify({ format: 'tackstair', version: 1, colour: 1, view: 3, scenes: {}, trials: [{}], settings: [] }),
    ),
  )
  bench.lookWith({ closed: ['tack'] })
  found.push(...bench.change({ kind: 'edit ink', unit: 0, field: 'tack', value: 12 }))
  expect(found.length).toBeGreaterThan(20)
  for (const problem of found) {
    expect(problem.said, problem.message).toBeDefined()
    expect(sayProblem(problem)).not.toBe(problem.message)
  }
})
