import fc from 'fast-check'
import { describe, expect, test, vi } from 'vitest'
import { ownKey } from '../../src/session/learning.ts'
import { checkSetUp } from '../../src/press/check-setup.ts'
import type { Press, SetUp } from '../../src/press/setup.ts'
import type { ReadLink } from '../../src/session/link.ts'
import { longestLink, readLink, writeLink } from '../../src/session/link.ts'
import { scenarioNames, scenarios } from '../../src/session/scenarios.ts'
import { writeSetUp } from '../../src/session/write-setup.ts'
import { link as words } from '../../src/words/en/link.ts'
import { anySetUp, anyView, longestSetUp, longestView } from './any-linked.ts'
import { IntlMessageFormat } from 'intl-messageformat'

function read(text: string): ReadLink {
  const link = readLink(text)
  if (link === null) throw new Error(`"${text}" was not taken for a link.`)
  return link
}

/** The problems of a link as they are shown. */
function told(text: string): string[] {
  return read(text).problems.map(({ message, values }) =>
    String(new IntlMessageFormat(words[message], 'en').format<string>({ ...values })),
  )
}

function checked(given: unknown): SetUp {
  const result = checkSetUp(given)
  if ('problems' in result) throw new Error(result.problems[0].message)
  return result.setUp
}

/** ms: enough for a poor machine with other things to do. */
vi.setConfig({ testTimeout: 60_000 })

const anyLinked = anySetUp.chain((setUp) => anyView(setUp.inks.length).map((view) => ({ setUp, view })))

describe('a link', () => {
  test("names a lesson of the course, or one of the person's own", () => {
    expect(read('#view=lessons&lesson=tack').view.lesson).toBe('tack')
    expect(read('#view=lessons&lesson=own+tack').view.lesson).toBe(ownKey('tack'))
    expect(told('#lesson=owned+tack')).toHaveLength(1)
  })

  test('that only names a view or a task says nothing of a set-up; one that was written always does', () => {
    expect(read('#view=drills&drill=easy:3').namesSetUp).toBe(false)
    expect(read('#lesson=two-inks').namesSetUp).toBe(false)
    expect(read('#press=web').namesSetUp).toBe(true)
    fc.assert(
      fc.property(anyLinked, ({ setUp, view }) => {
        expect(read(writeLink(setUp, view).text).namesSetUp).toBe(true)
      }),
      { numRuns: 50 },
    )
  })

  test('brings back every legal set-up and view, exactly unless it says that it rounds', () => {
    let exact = 0
    fc.assert(
      fc.property(anyLinked, ({ setUp, view }) => {
        const { text, roundedTo } = writeLink(setUp, view)
        const back = read(text)
        expect(back.problems).toEqual([])
        expect(back.view).toEqual(view)
        if (roundedTo !== null) {
          expectNear(back.setUp, setUp, roundedTo)
          return
        }
        exact++
        expect(back.setUp).toEqual(setUp)
      }),
      { numRuns: 300, endOnFailure: true },
    )
    expect(exact).toBeGreaterThan(60)
  })

  test('stays below 2,000 characters, whatever the set-up and the view', () => {
    fc.assert(
      fc.property(anyLinked, ({ setUp, view }) => {
        expect(writeLink(setUp, view).text.length).toBeLessThanOrEqual(longestLink)
      }),
      { endOnFailure: true },
    )
    const { text } = writeLink(checked(writeSetUp(longestSetUp)), longestView)
    expect(text.length).toBeLessThan(2000)
    const back = read(text)
    expect(back.problems).toEqual([])
    expect(back.setUp.inks.map(({ name }) => name)).toEqual(longestSetUp.inks.map(({ name }) => name))
    expect(back.view).toEqual(longestView)
  })

  test('holds only signs that an address keeps as they are', () => {
    fc.assert(
      fc.property(anyLinked, ({ setUp, view }) => {
        const { text } = writeLink(setUp, view)
        expect(text).toMatch(/^#[\w.~=&:,+/%-]*[\w/-]$/)
        expect(new URL(`https://example.org/${text}`).hash).toBe(text)
      }),
      { endOnFailure: true },
    )
  })

  test('comes back the same after being escaped whole, twice, or in the manner of markup', () => {
    fc.assert(
      fc.property(anyLinked, ({ setUp, view }) => {
        const { text } = writeLink(setUp, view)
        const plain = read(text)
        const once = encodeURIComponent(text.slice(1))
        expect(read(once)).toEqual(plain)
        expect(read(encodeURIComponent(once))).toEqual(plain)
        expect(read(text.replaceAll('&', '&amp;'))).toEqual(plain)
      }),
      { endOnFailure: true },
    )
  })

  test('of a usual set-up of four inks is short enough for a picture a phone can read', () => {
    for (const name of scenarioNames) {
      const { text, roundedTo } = writeLink(checked(scenarios[name]), { unit: 3 })
      expect(text.length).toBeLessThan(150)
      expect(roundedTo).toBeNull()
    }
  })

  test('can be read by a person', () => {
    expect(writeLink(checked(scenarios.reversed)).text).toBe(
      '#v=1&inks=yellow:10,magenta:12,cyan:14,black:16&sheet=first',
    )
    expect(writeLink(checked(scenarios.weak), { view: 'run chart', patch: [0, 2] }).text).toBe(
      '#v=1&inks=black:12,cyan:11,magenta:10,yellow:9&paper=weak+uncoated&press=web&view=run+chart&patch=1,3',
    )
    const { inks, ...rest } = checked(scenarios.descending)
    const [black, ...others] = inks
    const changed = { ...rest, inks: [{ ...black, film: 3.5, dryBefore: true, colour: '#202020' }, ...others] }
    expect(writeLink({ ...changed, seed: 7 }).text).toBe(
      '#v=1&inks=black:16:film3.5:dry:rgb=202020,cyan:14,magenta:12,yellow:10&sheet=first&seed=7',
    )
  })

  test('can be typed: words may be cut, written large, in any order, with an equals sign and a unit', () => {
    const typed = read(
      '#PRESS=Web:Speed=12 m/s&paper=Light-Weight-Coated:str=45&inks=Cyan:14:fi3,black : 16 : TEMP=30degC',
    )
    expect(typed.problems).toEqual([])
    expect(typed.setUp).toEqual(
      checked({
        inks: [
          { name: 'Cyan', tack: 14, film: 3 },
          { name: 'black', tack: 16, temperature: 30 },
        ],
        paper: { base: 'light-weight coated', surfaceStrength: 45 },
        press: { kind: 'web', speed: 12 },
      }),
    )
  })

  test('that names no inks loads the four of its kind of press', () => {
    const inks = read('#press=web').setUp.inks.map(({ name, tack }) => `${name} ${tack}`)
    expect(inks).toEqual(['black 12', 'cyan 11', 'magenta 10', 'yellow 9'])
  })

  test('is none where the text is the name of a place on the page', () => {
    for (const text of ['', '#', '#ladder', '   ', '#%', 'https:']) expect(readLink(text)).toBeNull()
  })
})

describe('a bad value', () => {
  test.each([
    [
      '#inks=cyan:99,black:16',
      'The link gives “99” for the tack of cyan; allowed are numbers from 2 to 40 tack units. 14 is used instead.',
    ],
    [
      '#inks=cyan:14:film9,black',
      'The link gives “9” for the film of cyan; allowed are numbers from 1 to 8 um. 4 is used instead.',
    ],
    [
      '#inks=cyan:14:temp=hot,black',
      'The link gives “hot” for the temperature of cyan; allowed are numbers from 10 to 60 degC. It is left out.',
    ],
    [
      '#inks=cyan:14:flim3,black',
      'The link has “flim3” for the ink cyan, which is not known there (did you mean film?); allowed are film, cover, temp, water, soiled, dry, lab, rgb. It is left out.',
    ],
    [
      '#inks=cyan:14:dry=perhaps,black',
      'The link gives “perhaps” for whether the sheet is dry before it of cyan; allowed are yes and no. It is left out.',
    ],
    [
      '#inks=cyan:14:rgb=blue,black',
      'The link gives “blue” for the colour of cyan; allowed are six hexadecimal digits, such as e3711b. It is left out.',
    ],
    [
      '#inks=cyan:14:lab=50/0,black',
      'The link gives “50/0” for the colour of cyan; allowed is L/a/b, such as 60/-20/35, with L from 0 to 100, a and b from -150 to 150. It is left out.',
    ],
    ['#inks=cyan:14', 'The link gives one ink; allowed are 2 to 8. The usual four are loaded.'],
    ['#inks=a,b,c,d,e,f,g,h,i', 'The link gives 9 inks; allowed are 2 to 8. Those after the 8th are left out.'],
    [
      '#inks=cyan,CYAN',
      'The link gives two inks the name CYAN; every ink needs a name of its own. The second is called ink 2.',
    ],
    [
      '#inks=cyan,~!!',
      'The link gives “~!!” as the name of ink 2; allowed is a text of 1 to 40 characters on one line, without the word “on” standing alone. It is called ink 2.',
    ],
    [
      '#paper=cotaed',
      'The link gives “cotaed” for paper (did you mean coated?); allowed are coated, light-weight coated, uncoated, weak uncoated, newsprint. coated is used instead.',
    ],
    [
      '#paper=newsprint:strength=1',
      'The link gives “1” for the surface strength of the paper; allowed are numbers from 5 to 200 tack units. 32 is used instead.',
    ],
    [
      '#press=web:speed=fast',
      'The link gives “fast” for the speed of the press; allowed are numbers from 0.3 to 20 m/s. 10 is used instead.',
    ],
    [
      '#sheet=2.5',
      'The link gives “2.5” for the sheet; allowed are whole numbers from 1 to 100000. settled is used instead.',
    ],
    [
      '#sheet=frist',
      'The link gives “frist” for sheet (did you mean first?); allowed are first, settled. settled is used instead.',
    ],
    [
      '#seed=-1',
      'The link gives “-1” for the seed; allowed are whole numbers from 0 to 4294967295. 1 is used instead.',
    ],
    [
      '#v=2&seed=2',
      'The link was made by a newer version of this program (format 2; this one reads format 1). What is understood of it is shown.',
    ],
    ['#v=one', 'The link gives “one” as the version of its format; allowed is 1. It is read as that.'],
    ['#seed=2&seed=3', 'The link gives seed twice; the first is used.'],
    ['#view=bnech', 'bench?'],
    ['#unit=5', 'The link gives “5” for the unit looked at; allowed are units of this press, 1 to 4. It is left out.'],
    [
      '#patch=1,0',
      'The link gives “0” for the units that print; allowed are units of this press, 1 to 4. It is left out.',
    ],
    [
      '#lesson=../x',
      'The link gives “../x” for lesson; allowed are small letters and digits in words joined by hyphens. It is left out.',
    ],
    [
      '#drill=easy:x',
      'The link gives “x” for the number of the drill; allowed are whole numbers from 0 to 4294967295. 0 is used instead.',
    ],
    ['#hide=paper,pepar', 'The link gives “pepar” for hide (did you mean paper?); allowed are'],
    ['#papers=coated', 'The link has “papers”, which is not known here (did you mean paper?); allowed are'],
  ])('in %s is told in words', (text, sentence) => {
    const sentences = told(text)
    expect(sentences).toHaveLength(1)
    expect(sentences[0]).toContain(sentence)
  })

  test('takes nothing else with it', () => {
    const { setUp } = read(
      '#inks=cyan:99:film3,black:16:cover0.3&paper=newsprint:strength=1:absorb=2&press=web:speed=x:temp=30',
    )
    expect(setUp).toEqual(
      checked({
        inks: [
          { name: 'cyan', tack: 11, film: 3 },
          { name: 'black', tack: 16, coverage: 0.3 },
        ],
        paper: { base: 'newsprint', absorbency: 2 },
        press: { kind: 'web', temperature: 30 },
      }),
    )
  })
})

describe('a hostile link', () => {
  const signs = fc.constantFrom(
    ...'&=:,;+%~#/\\<>"\'{}[]()0123456789.-e'.split(''),
    '__proto__',
    'constructor',
    'toString',
    'inks',
    'paper',
    'press',
    'v',
    'hide',
    'patch',
    'sheet',
    'name',
    'film',
    '%00',
    '%F0%9F',
    '\ud800',
    '\u202e',
  )
  const pairs = fc
    .array(
      fc.tuple(
        fc.oneof(signs, fc.string()),
        fc.oneof(
          fc.array(signs).map((all) => all.join('')),
          fc.string({ unit: 'binary' }),
        ),
      ),
    )
    .map((all) => all.map(([word, value]) => `${word}=${value}`).join('&'))

  /** A true link with a piece of it replaced by anything. */
  const broken = fc
    .tuple(anyLinked, fc.nat(), fc.nat(60), fc.array(signs, { maxLength: 20 }))
    .map(([{ setUp, view }, at, length, put]) => {
      const { text } = writeLink(setUp, view)
      const from = at % text.length
      return text.slice(0, from) + put.join('') + text.slice(from + length)
    })

  test('never throws, gives a legal set-up, tells every problem in words, and leaves prototypes alone', () => {
    const before = [Object.prototype, Array.prototype, Map.prototype].map((each) => Reflect.ownKeys(each).length)
    let problems = 0
    fc.assert(
      fc.property(fc.oneof(pairs, broken, fc.string({ unit: 'binary' })), (text) => {
        const link = readLink(text)
        if (link === null) return
        expect(checkSetUp(writeSetUp(link.setUp))).toEqual({ setUp: link.setUp })
        expect(Object.getPrototypeOf(link.setUp.paper)).toBe(Object.prototype)
        expect(Object.getPrototypeOf(link.view)).toBe(Object.prototype)
        expect(read(writeLink(link.setUp, link.view).text).problems).toEqual([])
        for (const sentence of told(text)) expect(sentence).toMatch(/\S.*\.$/s)
        problems += link.problems.length
      }),
      { numRuns: 800, endOnFailure: true },
    )
    expect(problems).toBeGreaterThan(400)
    expect([Object.prototype, Array.prototype, Map.prototype].map((each) => Reflect.ownKeys(each).length)).toEqual(
      before,
    )
  })

  test('of a million characters is cut short and told so', () => {
    const sentences = told(`#inks=${'a:1,'.repeat(250_000)}`)
    expect(sentences[0]).toContain('characters long')
    expect(sentences.length).toBeLessThan(30)
  })
})

/** Colours, whose numbers are a hundred times as large, are rounded to two decimals less. */
function expectNear(actual: unknown, wanted: unknown, decimals: number): void {
  if (typeof wanted === 'number') {
    expect(Math.abs((actual as number) - wanted)).toBeLessThanOrEqual(0.5000001 * 10 ** -decimals)
  } else if (typeof wanted === 'object' && wanted !== null) {
    expect(Object.keys(actual as object).toSorted()).toEqual(Object.keys(wanted).toSorted())
    for (const [key, value] of Object.entries(wanted)) {
      // A time between units that follows from the speed has no decimals of its own.
      if (key === 'interval' && !(wanted as Press).intervalPinned) continue
      const places = key === 'colour' ? decimals - 2 : decimals
      expectNear((actual as Record<string, unknown>)[key], value, places)
    }
  } else expect(actual).toBe(wanted)
}
