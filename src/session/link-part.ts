/**
 * What belongs to one thing in a link: words with values, `film3.5:cover=0.4:dry`. The = may be left out before a number,
 * and a word may be cut to any beginning that no other word has.
 */
import type { RangeName, Range } from '../press/ranges.ts'
import { longestName, ranges } from '../press/ranges.ts'
import type { LinkKey } from '../words/en/link.ts'
import { closestOf } from './closest.ts'
import { readName, writeName } from './link-name.ts'
import type { LinkSaid, Report } from './link-said.ts'
import { shown } from './link-said.ts'

/** How a link is written: in full, or as short as can be. */
export interface Style {
  /** decimals kept of every number; null for all */
  readonly decimals: number | null
  readonly short: boolean
}

/** One word: how its value is written and read back (undefined where it is not legal), and what is said then. */
export interface Word {
  readonly word: string
  readonly write: (value: unknown, style: Style) => string | undefined
  readonly read: (text: string) => unknown
  readonly refused: LinkKey
  readonly allowed: LinkSaid['values']
}

export type Words = Readonly<Record<string, Word>>

/** Whose words they are, for what is told. */
export interface Owner {
  readonly of: 'ink' | 'paper' | 'press' | 'link'
  readonly name: string
}

/** The fields of a thing as link parts; a field that is undefined or at its default is left out. */
export function writeParts(thing: object, usual: object, words: Words, style: Style): string[] {
  const all = Object.values(words).map(({ word }) => word)
  return Object.entries(words).flatMap(([field, { word, write }]) => {
    const value = valueOf(thing, field)
    if (value === undefined || value === valueOf(usual, field)) return []
    const text = write(value, style)
    return text === undefined ? [] : [`${style.short ? shortest(word, all) : word}${text}`]
  })
}

/** The fields that link parts give; what is wrong is told, and its field left out. */
export function readParts(
  parts: readonly string[],
  usual: object,
  words: Words,
  owner: Owner,
  report: Report,
): Record<string, unknown> {
  const found = new Map<string, unknown>()
  const all = Object.values(words).map(({ word }) => word)
  for (const part of parts) {
    if (part.trim() === '') continue
    const [, given, value] = /^\s*([a-z]*)\s*=?(.*)$/is.exec(cut(part)) as unknown as [string, string, string]
    const word = meant(given.toLowerCase(), all)
    const entry = Object.entries(words).find(([, each]) => each.word === word)
    if (!entry) {
      const near = closestOf(given, all)
      report('link.unknownPart', { given: shown(part), near, allowed: all.join(', '), ...owner })
      continue
    }
    const [field, { read, refused, allowed }] = entry
    if (found.has(field)) {
      report('link.twice', { word: entry[1].word })
      continue
    }
    const result = read(value.trim())
    if (result !== undefined) found.set(field, result)
    else {
      const used = valueOf(usual, field)
      const usedInstead = typeof used === 'number' || typeof used === 'string' ? used : 'none'
      report(refused, { given: shown(value), field: entry[1].word, used: usedInstead, ...allowed, ...owner })
    }
  }
  return Object.fromEntries(found)
}

/** A part with its = put in where it was left out. */
function cut(part: string): string {
  return part.replace(/^(\s*[a-z]+)(?=[-+.\d])/i, '$1=')
}

function valueOf(thing: object, field: string): unknown {
  return Object.hasOwn(thing, field) ? (thing as Record<string, unknown>)[field] : undefined
}

/** The word that the text is, or is the beginning of, if it is only one. */
function meant(text: string, words: readonly string[]): string | undefined {
  if (words.includes(text)) return text
  const possible = words.filter((word) => text !== '' && word.startsWith(text))
  return possible.length === 1 ? possible[0] : undefined
}

function shortest(word: string, words: readonly string[]): string {
  const beginnings = Array.from(word, (_, index) => word.slice(0, index + 1))
  return beginnings.find((text) => meant(text, words) === word) ?? word
}

export function writeNumber(value: number, { decimals }: Style): string {
  return String(decimals === null ? value : Number(value.toFixed(decimals)))
}

/** Undefined where it is no number of that range; its unit may stand behind it. */
export function readNumber(text: string, name: RangeName): number | undefined {
  const { least, most, unit, whole }: Range = ranges[name]
  const bare = unit !== null && text.endsWith(unit) ? text.slice(0, -unit.length).trim() : text
  if (!/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(bare)) return undefined
  const value = Number(bare)
  return value >= least && value <= most && (!whole || Number.isInteger(value)) ? value : undefined
}

/** What a message about a number says is allowed. */
export function allowedNumbers(name: RangeName): LinkSaid['values'] {
  const { least, most, unit, whole }: Range = ranges[name]
  return { least, most, unit: unit ?? 'none', whole: whole ? 'yes' : 'no' }
}

export function numberWord(word: string, name: RangeName): Word {
  return {
    word,
    write: (value, style) => (typeof value === 'number' ? writeNumber(value, style) : undefined),
    read: (text) => readNumber(text, name),
    refused: 'link.number',
    allowed: allowedNumbers(name),
  }
}

export function flagWord(word: string): Word {
  return {
    word,
    write: (value) => (value === true ? '' : '=no'),
    read: (text) => (/^(|yes|true|1)$/i.test(text) ? true : /^(no|false|0)$/i.test(text) ? false : undefined),
    refused: 'link.flag',
    allowed: {},
  }
}

export function nameWord(word: string): Word {
  return {
    word,
    write: (value, { short }) => (typeof value === 'string' ? `=${writeName(value, short)}` : undefined),
    read: (text) => readLegalName(text),
    refused: 'link.name',
    allowed: { most: longestName },
  }
}

/** A name as a set-up may hold it (the rule of src/press/check-setup.ts). */
export function readLegalName(text: string): string | undefined {
  const name = readName(text)?.trim()
  if (name === undefined || name === '' || name.length > longestName) return undefined
  return /\p{Cc}|[\u2028\u2029]/u.test(name) || name.includes(' on ') ? undefined : name
}

export const labWord: Word = {
  word: 'lab',
  // A colour's numbers are a hundred times as large as most others', so that two decimals less round as little.
  write: (value, { decimals, short }) => {
    const style = { decimals: decimals && decimals - 2, short }
    return Array.isArray(value)
      ? `=${(value as number[]).map((number) => writeNumber(number, style)).join('/')}`
      : undefined
  },
  read: (text) => {
    const numbers = text.split('/').map((part) => (/^[+-]?[\d.]+(e[+-]?\d+)?$/i.test(part) ? Number(part) : NaN))
    const [lightness, ...chroma] = numbers
    const legal = lightness >= 0 && lightness <= 100 && chroma.every((value) => Math.abs(value) <= 150)
    return legal && chroma.length === 2 ? numbers : undefined
  },
  refused: 'link.lab',
  allowed: {},
}

export const rgbWord: Word = {
  word: 'rgb',
  write: (value) => (typeof value === 'string' ? `=${value.slice(1)}` : undefined),
  read: (text) => (/^#?[0-9a-f]{6}$/i.test(text) ? `#${text.replace('#', '')}` : undefined),
  refused: 'link.rgb',
  allowed: {},
}
