/** The inks in a link, in unit order: `black:16,cyan:14:film3.5`; name, tack, then what differs from the usual ink. */
import type { ProcessName } from '../press/presets.ts'
import { processNames, usualInk } from '../press/presets.ts'
import { inkCount, longestName } from '../press/ranges.ts'
import type { Ink, PressKind } from '../press/setup.ts'
import type { Style } from './link-part.ts'
import {
  allowedNumbers,
  flagWord,
  labWord,
  numberWord,
  readLegalName,
  readNumber,
  readParts,
  rgbWord,
  writeNumber,
  writeParts,
} from './link-part.ts'
import { writeName } from './link-name.ts'
import type { Report } from './link-said.ts'
import { shown } from './link-said.ts'
import { listed } from './link-text.ts'

/** Graded sets, black first (common practice). */
const gradedTacks: Record<PressKind, readonly number[]> = { 'sheet-fed': [16, 14, 12, 10], web: [12, 11, 10, 9] }
/** tack units, of an ink that is none of the four: the middle of the graded set, as it may run in any unit. */
const otherTack: Record<PressKind, number> = { 'sheet-fed': 13, web: 10.5 }

const inkWords = {
  film: numberWord('film', 'film'),
  coverage: numberWord('cover', 'coverage'),
  temperature: numberWord('temp', 'temperature'),
  dampening: numberWord('water', 'dampening'),
  soiled: numberWord('soiled', 'soiled'),
  dryBefore: flagWord('dry'),
  lab: labWord,
  rgb: rgbWord,
}

/** What an ink has when only its name and tack are given. */
const usual = usualInk('', 0)

/** The four process inks, graded for this kind of press: what stands where a link names no inks. */
export function usualInks(kind: PressKind): Ink[] {
  return processNames.map((name) => usualInk(name, usualTack(name, kind)))
}

function usualTack(name: string, kind: PressKind): number {
  const place = processNames.indexOf(name.toLowerCase() as ProcessName)
  return place < 0 ? otherTack[kind] : gradedTacks[kind][place]
}

export function writeInks(inks: readonly Ink[], style: Style): string {
  return inks.map((ink) => writeInk(ink, style)).join(',')
}

function writeInk({ name, tack, colour, ...rest }: Ink, style: Style): string {
  const coloured = { ...rest, ...(typeof colour === 'string' ? { rgb: colour } : { lab: colour }) }
  const parts = writeParts(coloured, usual, inkWords, style)
  return [writeName(name, style.short), writeNumber(tack, style), ...parts].join(':')
}

export function readInks(text: string, kind: PressKind, report: Report): Ink[] {
  const given = listed(text)
  const { least, most } = inkCount
  if (given.length < least) {
    report('link.tooFewInks', { count: given.length, least, most })
    return usualInks(kind)
  }
  if (given.length > most) report('link.tooManyInks', { count: given.length, least, most })
  const inks: Ink[] = []
  for (const [unit, ink] of given.slice(0, most).entries()) inks.push(readInk(ink, unit + 1, inks, kind, report))
  return inks
}

function readInk(text: string, unit: number, before: readonly Ink[], kind: PressKind, report: Report): Ink {
  const [givenName, ...rest] = text.split(':').map((part) => part.trim())
  const [givenTack = null, ...parts] = rest
  const name = inkName(givenName, unit, before, report)
  const fallback = usualTack(name, kind)
  const tack = givenTack === null ? fallback : readNumber(givenTack, 'tack')
  const owner = { of: 'ink', name } as const
  if (tack === undefined) {
    report('link.number', {
      given: shown(givenTack ?? ''),
      field: 'tack',
      used: fallback,
      ...allowedNumbers('tack'),
      ...owner,
    })
  }
  const { lab, rgb, ...fields } = readParts(parts, usual, inkWords, owner, report)
  const colour = lab ?? rgb
  return {
    ...usualInk(name, tack ?? fallback),
    ...fields,
    ...(colour === undefined ? {} : { colour: colour as string }),
  }
}

/** The name given, or the first of "ink N" that no ink before it has. */
function inkName(text: string, unit: number, before: readonly Ink[], report: Report): string {
  const isTaken = (name: string) => before.some((ink) => ink.name.toLowerCase() === name.toLowerCase())
  const name = readLegalName(text)
  if (name !== undefined && !isTaken(name)) return name
  const numbered = Array.from({ length: inkCount.most + 1 }, (_, more) => `ink ${unit + more}`)
  const used = numbered.find((option) => !isTaken(option)) ?? `ink ${unit}`
  if (name === undefined) report('link.inkName', { given: shown(text), unit, most: longestName, used })
  else report('link.sameName', { given: name, used })
  return used
}
