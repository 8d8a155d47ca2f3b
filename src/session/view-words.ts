/** The view in a link: one word for each field of a view's state, how it is written and how it is read. */
import type { DrillRequest } from '../drill/drill.ts'
import { levels } from '../drill/level.ts'
import { ranges } from '../press/ranges.ts'
import { closestOf } from './closest.ts'
import { ownKey } from './learning.ts'
import { nameMeant } from './link-paper.ts'
import { allowedNumbers, readNumber } from './link-part.ts'
import type { Report } from './link-said.ts'
import { shown } from './link-said.ts'
import { listed } from './link-text.ts'
import { mostScenes } from './scene.ts'
import { unitNames } from './unit-names.ts'
import type { Hideable, ViewState } from './view-state.ts'
import { hideable, viewNames } from './view-state.ts'

interface ViewWord<Value> {
  /** null where there is nothing to say */
  write: (value: Value, units: number) => [word: string, text: string] | null
  /** by each of its words; undefined where nothing of it can be used */
  read: Readonly<Record<string, (text: string, units: number, report: Report) => Value | undefined>>
}

/** Says that nothing at all is shown; an empty list at the end of a link might be cut off. */
const nothing = 'none'
const faces = ['ink', 'marks'] as const
const measureNames = Object.values(unitNames).flat()

const viewWordsByField: { readonly [Field in keyof ViewState]-?: ViewWord<NonNullable<ViewState[Field]>> } = {
  view: {
    write: (view) => (view === 'bench' ? null : ['view', spaced(view)]),
    read: { view: (text, _, report) => oneOf('view', text, viewNames, report) },
  },
  patch: {
    write: (patch, units) =>
      patch.length === units ? null : ['patch', patch.map((unit) => unit + 1).join(',') || nothing],
    read: { patch: readPatch },
  },
  unit: {
    write: (unit) => ['unit', String(unit + 1)],
    read: { unit: (text, units, report) => readUnit('unit', text, units, report) },
  },
  face: {
    write: (face) => (face === 'ink' ? null : ['face', face]),
    read: { face: (text, _, report) => oneOf('face', text, faces, report) },
  },
  measures: {
    write: (measures) => (measures.length === 0 ? null : ['in', measures.join(',')]),
    read: { in: (text, _, report) => someOf('in', text, measureNames, report) },
  },
  lesson: {
    write: (lesson) => ['lesson', spaced(lesson)],
    read: { lesson: readId },
  },
  drill: {
    write: ({ level, seed }) => ['drill', `${level}:${seed}`],
    read: { drill: readDrill },
  },
  scene: {
    write: (scene) => ['scene', String(scene + 1)],
    read: { scene: readScene },
  },
  hide: {
    // Named is what is fewer, so that a link stays short: what is hidden, or all that is shown.
    write: (hide) => {
      const shown = hideable.filter((part) => !hide.includes(part))
      if (hide.length === 0) return null
      return hide.length <= shown.length
        ? ['hide', hide.map(spaced).join(',')]
        : ['only', shown.map(spaced).join(',') || nothing]
    },
    read: {
      hide: (text, _, report) => someOf('hide', text, hideable, report),
      only: (text, _, report) => {
        const shown: readonly Hideable[] = text === nothing ? [] : (someOf('only', text, hideable, report) ?? [])
        return hideable.filter((part) => !shown.includes(part))
      },
    },
  },
}

const entries = Object.entries(viewWordsByField) as [keyof ViewState, ViewWord<unknown>][]

export const viewWords: readonly string[] = entries.flatMap(([, { read }]) => Object.keys(read))

/** Words and texts of a view; `units` is how many the press has. */
export function writeView(view: ViewState, units: number): [word: string, text: string][] {
  return entries.flatMap(([field, { write }]) => {
    const pair = view[field] === undefined ? null : write(view[field], units)
    return pair ? [pair] : []
  })
}

export function readView(pairs: ReadonlyMap<string, string>, units: number, report: Report): ViewState {
  const fields = entries.flatMap(([field, { read }]) => {
    const [word, readIt] = Object.entries(read).find(([each]) => pairs.has(each)) ?? []
    const value = word === undefined ? undefined : readIt?.(pairs.get(word) ?? '', units, report)
    return value === undefined ? [] : [[field, value] as const]
  })
  return Object.fromEntries(fields)
}

function spaced(name: string): string {
  return name.replaceAll(' ', '+')
}

function oneOf<Name extends string>(word: string, text: string, names: readonly Name[], report: Report) {
  const found = nameMeant(text, names)
  if (found === undefined) report('link.choice', { ...choice(word, text, names), used: 'none' })
  return found
}

function someOf<Name extends string>(word: string, text: string, names: readonly Name[], report: Report) {
  const found = listed(text).flatMap((item) => {
    const name = nameMeant(item, names)
    if (name === undefined) report('link.list', choice(word, item, names))
    return name ?? []
  })
  return found.length === 0 ? undefined : names.filter((name) => found.includes(name))
}

function choice(word: string, text: string, names: readonly string[]) {
  return { word, given: shown(text), near: closestOf(text, names), allowed: names.join(', ') }
}

function readUnit(word: string, text: string, units: number, report: Report): number | undefined {
  if (/^\d+$/.test(text) && Number(text) >= 1 && Number(text) <= units) return Number(text) - 1
  report('link.units', { given: shown(text), field: word, of: 'link', name: '', most: units, used: 'none' })
  return undefined
}

function readPatch(text: string, units: number, report: Report): number[] | undefined {
  if (text === nothing) return []
  const given = listed(text).flatMap((item) => readUnit('patch', item, units, report) ?? [])
  const patch = Array.from({ length: units }, (_, unit) => unit).filter((unit) => given.includes(unit))
  return patch.length === 0 || patch.length === units ? undefined : patch
}

/** Which scenes there are is not known here. */
function readScene(text: string, _: number, report: Report): number | undefined {
  if (/^\d+$/.test(text) && Number(text) >= 1 && Number(text) <= mostScenes) return Number(text) - 1
  report('link.scene', { given: shown(text), most: mostScenes })
  return undefined
}

/** Characters of a lesson's id, and its form (src/lesson/field.ts); before that of one's own lesson stands a mark (learning.ts). */
const longestId = 60
const idForm = /^(own[ +])?([a-z][a-z0-9]*(-[a-z0-9]+)*)$/

function readId(text: string, _: number, report: Report): string | undefined {
  const [, own, id = ''] = idForm.exec(text) ?? []
  if (id !== '' && id.length <= longestId) return own ? ownKey(id) : id
  report('link.id', { word: 'lesson', given: shown(text) })
  return undefined
}

function readDrill(text: string, _: number, report: Report): DrillRequest | undefined {
  const [givenLevel, ...rest] = text.split(':')
  const givenSeed = rest.join(':').trim()
  const level = oneOf('drill', givenLevel, levels, report)
  if (level === undefined) return undefined
  const seed = readNumber(givenSeed, 'seed')
  if (seed === undefined) {
    const given = shown(givenSeed)
    const used = ranges.seed.least
    report('link.number', { given, field: 'drill', of: 'link', name: '', used, ...allowedNumbers('seed') })
  }
  return { level, seed: seed ?? ranges.seed.least }
}
