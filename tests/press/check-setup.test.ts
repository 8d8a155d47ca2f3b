import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { paperNames, papers } from '../../src/physics/paper.ts'
import { checkSetUp } from '../../src/press/check-setup.ts'
import type { RangeName } from '../../src/press/ranges.ts'
import { ranges } from '../../src/press/ranges.ts'

const inks = [
  { name: 'black', tack: 16 },
  { name: 'cyan', tack: 14 },
]

/** Every problem as the commands print it; none for a legal set-up. */
function problemsOf(input: unknown): string[] {
  const checked = checkSetUp(input)
  return 'problems' in checked ? checked.problems.map(({ path, message }) => `${path}: ${message}`) : []
}

/** The legal set-up, or a failed test that names the problems. */
function legal(input: unknown) {
  const checked = checkSetUp(input)
  return 'setUp' in checked ? checked.setUp : expect.fail(problemsOf(input).join('\n'))
}

/** A set-up with one number in one place. */
const places: Record<RangeName, (value: unknown) => object> = {
  tack: (value) => ({ inks: [{ ...inks[0], tack: value }, inks[1]] }),
  film: (value) => ({ inks: [{ ...inks[0], film: value }, inks[1]] }),
  coverage: (value) => ({ inks: [{ ...inks[0], coverage: value }, inks[1]] }),
  soiled: (value) => ({ inks: [{ ...inks[0], soiled: value }, inks[1]] }),
  temperature: (value) => ({ inks, press: { temperature: value } }),
  dampening: (value) => ({ inks, press: { dampening: value } }),
  speed: (value) => ({ inks, press: { speed: value } }),
  interval: (value) => ({ inks, press: { interval: value } }),
  surfaceStrength: (value) => ({ inks, paper: { surfaceStrength: value } }),
  contactRate: (value) => ({ inks, paper: { contactRate: value } }),
  holdLimit: (value) => ({ inks, paper: { holdLimit: value } }),
  freeSplit: (value) => ({ inks, paper: { freeSplit: value } }),
  settingGain: (value) => ({ inks, paper: { settingGain: value } }),
  settingTime: (value) => ({ inks, paper: { settingTime: value } }),
  evenness: (value) => ({ inks, paper: { evenness: value } }),
  absorbency: (value) => ({ inks, paper: { absorbency: value } }),
  wetLoss: (value) => ({ inks, paper: { wetLoss: value } }),
  sheet: (value) => ({ inks, reading: { sheet: value } }),
  seed: (value) => ({ inks, seed: value }),
}

describe.each(Object.entries(ranges))('%s', (name, range) => {
  const place = places[name as RangeName]
  const step = 'whole' in range ? 1 : (range.most - range.least) * 1e-9

  it('is taken at both ends of its range and refused just beyond, naming the range', () => {
    for (const value of [range.least, range.most]) expect(problemsOf(place(value))).toEqual([])
    for (const value of [range.least - step, range.most + step, -1e308, 1e308]) {
      const problems = problemsOf(place(value))
      expect(problems).toHaveLength(1)
      expect(problems[0]).toContain(`${value} is not allowed`)
      expect(problems[0]).toContain(`from ${range.least} to ${range.most}`)
      expect(problems[0]).toMatch(new RegExp(`^[a-z[\\]0-9.]*${name}: `))
    }
  })

  it('is refused where it is no finite number', () => {
    for (const value of [NaN, Infinity, -Infinity, `${range.least}`, null, true, [range.least], {}]) {
      expect(problemsOf(place(value))).toHaveLength(1)
    }
    if ('whole' in range) expect(problemsOf(place(range.least + 0.5))).toHaveLength(1)
  })
})

describe('what a set-up leaves out', () => {
  it('is filled in: coated, sheet-fed at 2.5 m/s, 0.45 s, normal dampening, 4 um, settled, seed 1, equal areas', () => {
    expect(legal({ inks })).toEqual({
      inks: inks.map((ink) => ({ ...ink, film: 4, coverage: 0.5 })),
      paper: papers.coated,
      press: {
        kind: 'sheet-fed',
        speed: 2.5,
        interval: 0.45,
        intervalPinned: false,
        temperature: 25,
        dampening: 1,
        waterless: false,
      },
      reading: 'settled',
      seed: 1,
    })
  })

  it('follows from what is stated: a web runs at 10 m/s with 1.2 m and so 0.12 s between units', () => {
    const { press } = legal({ inks, press: { kind: 'web' } })
    expect([press.speed, press.interval, press.intervalPinned]).toEqual([10, 0.12, false])
    expect(legal({ inks, press: { kind: 'web', speed: 5 } }).press.interval).toBeCloseTo(0.24, 12)
    expect(legal({ inks, press: { speed: 5 } }).press.interval).toBeCloseTo(0.225, 12)
  })

  it('does not override an interval that is stated', () => {
    const { press } = legal({ inks, press: { speed: 5, interval: 1 } })
    expect([press.interval, press.intervalPinned]).toEqual([1, true])
  })

  it('takes a paper by name, or changed from a named one, coated where none is named', () => {
    for (const name of paperNames) expect(legal({ inks, paper: name }).paper).toEqual(papers[name])
    expect(legal({ inks, paper: { base: 'newsprint', evenness: 5 } }).paper).toEqual({
      ...papers.newsprint,
      evenness: 5,
    })
    expect(legal({ inks, paper: { surfaceStrength: 40 } }).paper).toEqual({ ...papers.coated, surfaceStrength: 40 })
  })

  it('never gets into the papers supplied', () => {
    const before = structuredClone(papers)
    legal({ inks, paper: { base: 'newsprint', evenness: 5, name: 'our own' } })
    expect(papers).toEqual(before)
  })
})

describe('a set-up that is none', () => {
  const whole = 'a set-up is an object with inks, paper, press, reading, seed'
  it.each([
    [[], `: a list is not allowed; ${whole}`],
    [[1, 2], `: a list is not allowed; ${whole}`],
    [5, `: 5 is not allowed; ${whole}`],
    [null, `: null is not allowed; ${whole}`],
    [undefined, `: nothing is not allowed; ${whole}`],
    ['coated', `: "coated" is not allowed; ${whole}`],
    [true, `: true is not allowed; ${whole}`],
    [Symbol('x'), `: a symbol is not allowed; ${whole}`],
    [{}, 'inks: is missing; a set-up needs it'],
    [{ inks: 5 }, 'inks: 5 is not allowed; allowed is a list of inks in unit order'],
    [{ inks: {} }, 'inks: an object is not allowed; allowed is a list of inks in unit order'],
    [{ inks: [] }, 'inks: 0 inks are not allowed; allowed are 2 to 8'],
    [{ inks: inks.slice(1) }, 'inks: 1 ink is not allowed; allowed are 2 to 8'],
    [{ inks: Array(9).fill(inks[0]) }, 'inks: 9 inks are not allowed; allowed are 2 to 8'],
    [{ inks, reading: [] }, 'reading: a list is not allowed; a reading is an object with sheet'],
    [
      { inks, reading: 'last' },
      'reading: "last" is no reading; allowed are "first", "settled" and {"sheet": N}, N whole numbers from 1 to 100000',
    ],
    [{ inks, reading: {} }, 'reading.sheet: is missing; a reading needs it'],
    [
      { inks, press: null },
      'press: null is not allowed; a press is an object with kind, speed, interval, temperature, dampening, waterless',
    ],
    [{ inks, press: { waterless: 1 } }, 'press.waterless: 1 is not allowed; allowed are true and false'],
    [
      { inks, press: { kind: 'sheet' } },
      'press.kind: "sheet" is no kind of press; allowed are sheet-fed, web; did you mean sheet-fed?',
    ],
    [
      { inks: [inks[0], { name: 'Black ', tack: 3 }] },
      'inks[1].name: "Black" is already loaded; every ink needs a name of its own',
    ],
    [{ inks: [inks[0], { name: 'cyan' }] }, 'inks[1].tack: is missing; an ink needs it'],
    [
      { inks, papper: 'coated' },
      'papper: not known here (did you mean paper?); allowed are inks, paper, press, reading, seed',
    ],
    [
      { inks: [inks[0], { ...inks[1], tak: 3 }] },
      'inks[1].tak: not known here (did you mean tack?); allowed are name, tack, film, coverage, temperature, dampening, colour, soiled, dryBefore',
    ],
  ])('is refused in words, case %#', (input, problem) => {
    expect(problemsOf(input)).toEqual([problem])
  })

  it.each(['coatd', 'constructor', '__proto__', 'toString', 'hasOwnProperty', ''])('knows no paper "%s"', (paper) => {
    for (const given of [paper, { base: paper }]) {
      expect(problemsOf({ inks, paper: given })[0]).toContain(
        `"${paper}" is no paper; allowed are coated, light-weight coated, uncoated, weak uncoated, newsprint`,
      )
    }
  })

  it('is told of every problem at once, each at its place', () => {
    const paths = problemsOf({
      inks: [
        { name: '', tack: 1 },
        { name: 'cyan', tack: 14, colour: 'blue', extra: 1 },
      ],
      press: { speed: 99 },
      seed: 0.5,
    }).map((problem) => problem.split(': ')[0])
    expect(paths).toEqual(['inks[0].name', 'inks[0].tack', 'inks[1].colour', 'inks[1].extra', 'press.speed', 'seed'])
  })

  it('has no field that rides in on a prototype', () => {
    const input: unknown = JSON.parse('{"inks":[{"name":"a","tack":9},{"name":"b","tack":9}],"__proto__":{"seed":7}}')
    expect(problemsOf(input)[0]).toMatch(/^__proto__: not known here/)
    expect(({} as { seed?: number }).seed).toBeUndefined()
  })
})

describe('names', () => {
  it.each(['__proto__', 'constructor', '7', 'Ünser Rot', '紅', 'onion', 'x'.repeat(40)])('may be "%s"', (name) => {
    expect(legal({ inks: [{ name, tack: 9 }, inks[1]] }).inks[0].name).toBe(name)
  })

  it.each(['', '   ', 'x'.repeat(41), 'y'.repeat(100_000), 'a on b', 'two\nlines', 'nul\0', 'line\u2028break'])(
    'may not be %j',
    (name) => {
      const problems = problemsOf({ inks: [{ name, tack: 9 }, inks[1]] })
      expect(problems).toHaveLength(1)
      expect(problems[0]).toMatch(/^inks\[0\]\.name: [^]* is no name; allowed is a text of 1 to 40 characters/)
      expect(problems[0].length).toBeLessThan(250)
    },
  )
})

describe('colours', () => {
  it.each(['#a1B2c3', [50, 0, 0], [0, -150, 150]])('may be %j', (colour) => {
    expect(legal({ inks: [{ ...inks[0], colour }, inks[1]] }).inks[0].colour).toEqual(colour)
  })

  it.each(['red', '#12345', '#ffgg00', [50, 0], [101, 0, 0], [50, 0, 151], [50, 0, NaN], [50, 0, 0, 0], 3, null, {}])(
    'may not be %j',
    (colour) => {
      const problems = problemsOf({ inks: [{ ...inks[0], colour }, inks[1]] })
      expect(problems).toHaveLength(1)
      expect(problems[0]).toMatch(/^inks\[0\]\.colour: .* is no colour; allowed are "#rrggbb" and \[L, a, b\]/)
    },
  )
})

describe('anything at all', () => {
  it('is answered with a set-up or with problems in words, never an exception', () => {
    fc.assert(
      fc.property(
        fc.anything({ withBigInt: true, withDate: true, withMap: true, withNullPrototype: true }),
        (input) => {
          for (const given of [
            input,
            { inks: input },
            { inks: [input, inks[1]] },
            { inks, paper: input },
            { inks, press: input },
          ]) {
            const checked = checkSetUp(given)
            if ('problems' in checked) {
              expect(checked.problems.length).toBeGreaterThan(0)
              for (const { message } of checked.problems) expect(message).toMatch(/allowed|needs it|own$/)
            }
          }
        },
      ),
      { numRuns: 300, seed: 1 },
    )
  })

  it('is answered at once, also where it is huge or deep', () => {
    let deep: unknown = 1
    for (let level = 0; level < 100_000; level++) deep = [deep]
    for (const input of [deep, { inks: deep }, { inks: [deep, deep] }, { inks, paper: { name: deep } }]) {
      expect(problemsOf(input).length).toBeGreaterThan(0)
    }
    expect(problemsOf({ inks: Array(100_000).fill(inks[0]) })).toHaveLength(1)
    expect(
      problemsOf({ inks: [Object.fromEntries(Array.from({ length: 5000 }, (_, i) => [`k${i}`, i])), inks[1]] }).length,
    ).toBeGreaterThan(1)
  })
})
