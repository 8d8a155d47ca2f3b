/** Readings are those of the bench, in the unit they name. */
import { expect, test } from 'vitest'
import { benchOf } from '../../src/lesson/bench.ts'
import type { ReadingRef } from '../../src/lesson/reading.ts'
import { inEnglish } from '../../src/press/problem.ts'
import { nameOfReading, read, readingNames, readings } from '../../src/lesson/reading.ts'
import { nipAccount } from '../../src/press/account.ts'
import { checkSetUp } from '../../src/press/check-setup.ts'
import { readSheet } from '../../src/press/readings.ts'
import { isRefused } from '../../src/measure/said.ts'
import { readPatch, stripOf } from '../../src/measure/strip.ts'
import { runPress } from '../../src/press/run.ts'

const checked = checkSetUp({
  inks: [
    { name: 'black', tack: 10 },
    { name: 'cyan', tack: 12, film: 3, coverage: 0.3 },
    { name: 'magenta', tack: 14, temperature: 31 },
  ],
  paper: 'weak uncoated',
  press: { speed: 4, dampening: 0.8 },
  reading: { sheet: 60 },
})
if ('problems' in checked) throw new Error('the set-up of this test is refused')
const bench = benchOf(checked.setUp)
const sheet = readSheet(runPress(checked.setUp))

const run = runPress(checked.setUp)
// The magenta unit, in the patch of cyan and magenta (0b110) and in that of cyan alone (0b010).
const printing = nipAccount(run, 2, 0b110)
const idle = nipAccount(run, 2, 0b010)

const strip = stripOf(run)

/** Density of a patch through green, minus paper; process inks all have a colour. */
function throughGreen(patch: number): number {
  const { colour } = readPatch(strip, patch)
  if (isRefused(colour)) throw new Error('an ink without colour')
  return colour.densitiesMinusPaper.T.green
}

const sum = (amounts: readonly number[]) => amounts.reduce((total, um) => total + um, 0)

const cyanAlone = throughGreen(0b010)
const magentaAlone = throughGreen(0b100)
const both = throughGreen(0b110)

// Patches are told by the bits of their units: black 1, cyan 2, magenta 4.
const expected: [ReadingRef, number | undefined, string][] = [
  [
    { what: 'mass trap', of: 'magenta', on: 'cyan' },
    sheet.traps.find((t) => t.earlier === 1 && t.later === 2)?.massTrap,
    '%',
  ],
  [{ what: 'film', of: 'cyan', in: ['magenta', 'cyan'] }, sheet.films[0b110][1], 'um'],
  [{ what: 'lifted', of: 'black', by: 'magenta' }, sheet.lifted[2][0], '%'],
  [{ what: 'picked' }, sheet.worstTorn, '%'],
  [{ what: 'picked', in: ['black', 'cyan'] }, sheet.torn[0b011], '%'],
  [{ what: 'contamination', of: 'magenta' }, sheet.contamination[2], '%'],
  [{ what: 'pull', of: 'cyan', by: 'magenta', in: ['cyan', 'magenta'] }, printing.films[1].pull ?? NaN, 'tack units'],
  [{ what: 'pull', of: 'magenta', by: 'magenta', in: ['cyan', 'magenta'] }, printing.blanket.pull ?? NaN, 'tack units'],
  [
    { what: 'gave way', of: 'cyan', by: 'magenta', in: ['cyan', 'magenta'] },
    printing.contact * printing.films[1].broke,
    '%',
  ],
  [{ what: 'torn', by: 'magenta', in: ['cyan', 'magenta'] }, printing.contact * printing.torn, '%'],
  [{ what: 'brought', of: 'magenta', in: ['cyan', 'magenta'] }, printing.blanket.thickness, 'um'],
  [{ what: 'taken up', by: 'magenta', in: ['cyan'] }, sum(idle.lifted), 'um'],
  [{ what: 'given back', by: 'magenta', in: ['cyan'] }, sum(idle.laid), 'um'],
  [{ what: 'density', in: ['cyan', 'magenta'], through: 'green' }, both, 'density'],
  [{ what: 'apparent trap', of: 'magenta', on: 'cyan' }, (both - cyanAlone) / magentaAlone, '%'],
  [{ what: 'tack', of: 'cyan' }, 12, 'tack units'],
  [{ what: 'form roller film', of: 'cyan' }, 3, 'um'],
  [{ what: 'coverage', of: 'cyan' }, 0.3, '%'],
  [{ what: 'temperature', of: 'magenta' }, 31, 'degC'],
  [{ what: 'temperature', of: 'black' }, 25, 'degC'],
  [{ what: 'dampening', of: 'black' }, 0.8, 'times normal'],
  [{ what: 'speed' }, 4, 'm/s'],
  [{ what: 'interval' }, 1.125 / 4, 's'],
  [{ what: 'surface strength' }, 26, 'tack units'],
]

test.each(expected)('%j', (reading, value, unit) => {
  expect(readings[reading.what].unit).toBe(unit)
  expect(read(bench, reading)).toBeCloseTo((value ?? NaN) * (unit === '%' ? 100 : 1), 10)
})

test('every kind of reading is tried above', () => {
  expect(new Set(expected.map(([{ what }]) => what))).toEqual(new Set(readingNames))
})

test.each<[ReadingRef, RegExp]>([
  [{ what: 'mass trap', of: 'cyan', on: 'magenta' }, /cyan does not print after magenta, so no trap can be read/],
  [{ what: 'lifted', of: 'magenta', by: 'cyan' }, /cyan does not print after magenta, so it lifts none of it/],
  [{ what: 'pull', of: 'magenta', by: 'cyan', in: ['cyan', 'magenta'] }, /no film of that ink can give way/],
  [{ what: 'gave way', of: 'black', by: 'cyan', in: ['cyan'] }, /no film of that ink can give way/],
  [{ what: 'contamination', of: 'gold' }, /no ink is called gold/],
  [{ what: 'film', of: 'cyan', in: ['cyan', 'gold'] }, /no ink is called gold/],
])('%j cannot be read, and says why', (reading, message) => {
  const unread = read(bench, reading)
  expect(typeof unread === 'object' && inEnglish(unread.problem)).toMatch(message)
})

test('a reading is named in full', () => {
  expect(inEnglish(nameOfReading({ what: 'mass trap', of: 'yellow', on: 'cyan' }))).toBe('mass trap of yellow on cyan')
  expect(inEnglish(nameOfReading({ what: 'film', of: 'cyan', in: ['cyan', 'yellow'] }))).toBe(
    'film of cyan in the patch of cyan, yellow',
  )
})
