/**
 * A set-up and a view as the part of an address after its #, to be read and even typed by a person:
 *
 *   #v=1&inks=black:16,cyan:14:film3.5,magenta:12,yellow:10&paper=newsprint:strength30&press=web:speed12&sheet=first
 *
 * v       the version of this format
 * inks    in unit order: name, tack, then film, cover, temp, water, soiled, dry, lab or rgb where they are not usual
 * paper   its name as supplied, then name, strength, absorb, even, rate, hold, free, gain, time, wet where it differs
 * press   sheet-fed or web, then speed, interval, temp, water, waterless where it differs
 * sheet   first, settled or a number
 * seed    of every draw of local strength
 * view, patch, unit, face, in, lesson, drill, scene, hide, only   what is looked at (see view-state.ts)
 * language  the language the page opens in for somebody who has chosen none
 *
 * Numbers are in the set-up's own units. Whatever stands at its default is left out. Reading never fails: what is wrong is
 * told and its default put in its place.
 */
import type { Reading, SetUp } from '../press/setup.ts'
import { closestOf } from './closest.ts'
import { readInks, usualInks, writeInks } from './link-inks.ts'
import { nameMeant, readPaper, readPress, usualKind, usualPaper, writePaper, writePress } from './link-paper.ts'
import type { Style } from './link-part.ts'
import { allowedNumbers, readNumber } from './link-part.ts'
import type { LinkSaid, Report } from './link-said.ts'
import { shown } from './link-said.ts'
import { takeApart } from './link-text.ts'
import type { ViewState } from './view-state.ts'
import { readView, viewWords, writeView } from './view-words.ts'

const linkVersion = 1
const usualReading = 'settled' satisfies Reading
const usualSeed = 1
/** What a link that carries a set-up has at least one of; a written one always has its version. */
const setUpWords = ['v', 'inks', 'paper', 'press', 'sheet', 'seed']
/** The language the page opens in is the page's to read (ui/wanted-language.ts). */
const words = [...setUpWords, ...viewWords, 'language']

/** Characters, the # included: below 2,000 browsers, mail programs and learning systems keep an address whole. */
export const longestLink = 1999

/**
 * A link says every number in full and every word out. Only the odd set-up, eight inks with all there is to state about an
 * ink, is longer than allowed then; it is rounded, and if need be its words cut.
 */
const styles: readonly Style[] = [
  { decimals: null, short: false },
  { decimals: 4, short: false },
  { decimals: 4, short: true },
  { decimals: 2, short: true },
]

export interface WrittenLink {
  /** from the # on */
  readonly text: string
  /** decimals its numbers were rounded to so that it stays short; null where they are exact */
  readonly roundedTo: number | null
}

export interface ReadLink {
  readonly setUp: SetUp
  /** whether the link says anything of a set-up; one that only names a view or a task leaves the present one alone */
  readonly namesSetUp: boolean
  readonly view: ViewState
  /** everything that was wrong, in the order of the link */
  readonly problems: readonly LinkSaid[]
}

/** The link to a legal set-up. */
export function writeLink(setUp: SetUp, view: ViewState = {}): WrittenLink {
  const written = styles.map((style) => ({ text: inStyle(setUp, view, style), roundedTo: style.decimals }))
  return written.find(({ text }) => text.length <= longestLink) ?? written[written.length - 1]
}

function inStyle({ inks, paper, press, reading, seed }: SetUp, view: ViewState, style: Style): string {
  const pairs: [word: string, text: string | null][] = [
    ['v', String(linkVersion)],
    ['inks', writeInks(inks, style)],
    ['paper', writePaper(paper, style)],
    ['press', writePress(press, style)],
    ['sheet', reading === usualReading ? null : typeof reading === 'object' ? String(reading.sheet) : reading],
    ['seed', seed === usualSeed ? null : String(seed)],
    ...writeView(view, inks.length),
  ]
  return `#${pairs.flatMap(([word, text]) => (text === null ? [] : `${word}=${text}`)).join('&')}`
}

/** Reads the part of an address from the # on; null where it is none of ours and there is nothing to load. Never throws. */
export function readLink(text: string): ReadLink | null {
  const problems: LinkSaid[] = []
  const report: Report = (message, values = {}) => problems.push({ message, values })
  const pairs = takeApart(text, words, report)
  if (pairs === null) return null
  checkVersion(pairs.get('v'), report)
  const press = readPress(pairs.get('press') ?? usualKind, report)
  const inks = pairs.get('inks')
  const setUp: SetUp = {
    inks: inks === undefined ? usualInks(press.kind) : readInks(inks, press.kind, report),
    paper: readPaper(pairs.get('paper') ?? usualPaper, report),
    press,
    reading: readSheet(pairs.get('sheet'), report),
    seed: readSeed(pairs.get('seed'), report),
  }
  const namesSetUp = setUpWords.some((word) => pairs.has(word))
  return { setUp, namesSetUp, view: readView(pairs, setUp.inks.length, report), problems }
}

/** A link without a version has been typed by hand and is read as this one. */
function checkVersion(text: string | undefined, report: Report): void {
  if (text === undefined || text === String(linkVersion)) return
  const isNewer = /^\d+$/.test(text) && Number(text) > linkVersion
  report(isNewer ? 'link.newer' : 'link.version', { given: shown(text), known: linkVersion })
}

function readSheet(text: string | undefined, report: Report): Reading {
  if (text === undefined) return usualReading
  const names = ['first', 'settled'] as const
  const named = nameMeant(text, names)
  if (named) return named
  const sheet = readNumber(text, 'sheet')
  if (sheet !== undefined) return { sheet }
  if (/^[-+.\d]/.test(text)) {
    const allowed = allowedNumbers('sheet')
    report('link.number', { given: shown(text), field: 'sheet', of: 'link', name: '', used: usualReading, ...allowed })
  } else {
    const near = closestOf(text, names)
    report('link.choice', { word: 'sheet', given: shown(text), near, allowed: names.join(', '), used: usualReading })
  }
  return usualReading
}

function readSeed(text: string | undefined, report: Report): number {
  const seed = text === undefined ? usualSeed : readNumber(text, 'seed')
  if (seed !== undefined) return seed
  const allowed = allowedNumbers('seed')
  report('link.number', { given: shown(text ?? ''), field: 'seed', of: 'link', name: '', used: usualSeed, ...allowed })
  return usualSeed
}
