/** Paper and press in a link: `paper=coated:strength45`, `press=web:speed12`; what is not given is as supplied. */
import type { Paper, PaperName } from '../physics/paper.ts'
import { paperNames, papers } from '../physics/paper.ts'
import { intervalAt, usualPress } from '../press/presets.ts'
import type { Press, PressKind } from '../press/setup.ts'
import { closestOf } from './closest.ts'
import type { Style } from './link-part.ts'
import { flagWord, nameWord, numberWord, readParts, writeParts } from './link-part.ts'
import type { Report } from './link-said.ts'
import { shown } from './link-said.ts'

const paperWords = {
  name: nameWord('name'),
  surfaceStrength: numberWord('strength', 'surfaceStrength'),
  absorbency: numberWord('absorb', 'absorbency'),
  evenness: numberWord('even', 'evenness'),
  contactRate: numberWord('rate', 'contactRate'),
  holdLimit: numberWord('hold', 'holdLimit'),
  freeSplit: numberWord('free', 'freeSplit'),
  settingGain: numberWord('gain', 'settingGain'),
  settingTime: numberWord('time', 'settingTime'),
  wetLoss: numberWord('wet', 'wetLoss'),
}

const pressWords = {
  speed: numberWord('speed', 'speed'),
  interval: numberWord('interval', 'interval'),
  temperature: numberWord('temp', 'temperature'),
  dampening: numberWord('water', 'dampening'),
  waterless: flagWord('waterless'),
}

const pressKinds: readonly PressKind[] = ['sheet-fed', 'web']

export const usualPaper: PaperName = 'coated'
export const usualKind: PressKind = 'sheet-fed'

/** Null for the paper that is there when nothing is said. */
export function writePaper(paper: Paper, style: Style): string | null {
  const base = paper.base.replaceAll(' ', '+')
  const parts = writeParts(paper, papers[paper.base], paperWords, style)
  return parts.length === 0 && paper.base === usualPaper ? null : [base, ...parts].join(':')
}

export function readPaper(text: string, report: Report): Paper {
  const [given, ...parts] = text.split(':')
  const supplied = papers[choose('paper', given, paperNames, usualPaper, report)]
  return { ...supplied, ...readParts(parts, supplied, paperWords, { of: 'paper', name: '' }, report) }
}

/** Null for the press that is there when nothing is said. */
export function writePress(press: Press, style: Style): string | null {
  const { intervalPinned, interval, ...rest } = press
  const written = intervalPinned ? { ...rest, interval } : rest
  const parts = writeParts(written, usualBesidesInterval(press.kind), pressWords, style)
  return parts.length === 0 && press.kind === usualKind ? null : [press.kind, ...parts].join(':')
}

export function readPress(text: string, report: Report): Press {
  const [given, ...parts] = text.split(':')
  const kind = choose('press', given, pressKinds, usualKind, report)
  const usual = usualBesidesInterval(kind)
  const fields: Partial<Press> = readParts(parts, usual, pressWords, { of: 'press', name: '' }, report)
  const press = { ...usual, ...fields }
  return {
    ...press,
    intervalPinned: fields.interval !== undefined,
    interval: fields.interval ?? intervalAt(kind, press.speed),
  }
}

/** The usual press; its time between units follows from the speed and is stated only where it does not. */
function usualBesidesInterval(kind: PressKind): Omit<Press, 'interval'> {
  return Object.fromEntries(Object.entries(usualPress(kind)).filter(([field]) => field !== 'interval')) as Omit<
    Press,
    'interval'
  >
}

/** The one of the names that is meant, whatever its capitals and whatever joins its words; else the usual one. */
function choose<Name extends string>(
  word: string,
  given: string,
  names: readonly Name[],
  usual: Name,
  report: Report,
): Name {
  const found = nameMeant(given, names)
  if (found === undefined) {
    const values = { word, given: shown(given), near: closestOf(given, names), allowed: names.join(', '), used: usual }
    report('link.choice', values)
  }
  return found ?? usual
}

export function nameMeant<Name extends string>(given: string, names: readonly Name[]): Name | undefined {
  const letters = (text: string) => text.toLowerCase().replace(/[^\p{L}\p{N}/]/gu, '')
  return names.find((name) => letters(name) === letters(given))
}
