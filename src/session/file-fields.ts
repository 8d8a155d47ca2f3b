/** The fields of a file, each read on its own and checked by whoever it belongs to. */
import * as v from 'valibot'
import { levels } from '../drill/level.ts'
import { flag, id, listOf as all, oneOf, wholeNumber } from '../lesson/field.ts'
import { language } from '../lesson/language.ts'
import { checkShelf } from '../measure/check-shelf.ts'
import { sheetColumns } from '../measure/sheet-row.ts'
import { checkSetUp } from '../press/check-setup.ts'
import type { Problem } from '../press/problem.ts'
import { carried, problem } from '../press/problem.ts'
import { inkCount, ranges } from '../press/ranges.ts'
import type { ReadField } from './read-fields.ts'
import { bySchema, fieldsOf, listOf } from './read-fields.ts'
import type { KeptProgress, Saved, Trial } from './saved.ts'
import { nothingSaved } from './saved.ts'
import type { Scene } from './scene.ts'
import { longestNote, longestSentence, mostScenes, scenePictures, sceneReadings } from './scene.ts'
import type { Settings } from './settings.ts'
import { motions, themes } from './settings.ts'
import { unitNames } from './unit-names.ts'
import type { ViewState } from './view-state.ts'
import { hideable, viewNames } from './view-state.ts'

/** Characters of a name, of a note, which fills a page, of a cell of a table and of a file of readings. */
const longest = { name: longestSentence, note: longestNote, cell: 60, file: 1_000_000 }
/** Far more than a course makes; they keep a made-up file from filling the page. */
const most = { scenes: mostScenes, trials: 1000, readings: 1000, lessons: 300 }

const setUp: ReadField<NonNullable<Saved['setUp']>> = (input, path, problems) => {
  const checked = checkSetUp(input)
  if ('setUp' in checked) return checked.setUp
  problems.push(...within(path, checked.problems))
  return undefined
}

const shelf: ReadField<Saved['shelf']> = (input, path, problems) => {
  const checked = checkShelf(input)
  if ('shelf' in checked) return checked.shelf
  problems.push(...within(path, checked.problems))
  return undefined
}

function within(path: string, problems: readonly Problem[]): Problem[] {
  return problems.map((problem) => ({
    ...problem,
    path: [path, problem.path].filter(Boolean).join('.').replaceAll('.[', '['),
  }))
}

function textUpTo(length: number) {
  return bySchema(
    v.pipe(
      v.string(carried('problem.file.text')),
      v.maxLength(length, carried('problem.file.longText', { most: length })),
    ),
  )
}

const unit = wholeNumber('unitFromZero', 0, inkCount.most - 1)
const measures = all(oneOf('measure', Object.values(unitNames).flat()), 'measures', 0, 12)

const view: ReadField<ViewState> = fieldsOf('view', {
  view: bySchema(oneOf('view', viewNames)),
  patch: bySchema(all(unit, 'units', 0, inkCount.most)),
  unit: bySchema(unit),
  face: bySchema(oneOf('face', ['ink', 'marks'])),
  measures: bySchema(measures),
  lesson: bySchema(id),
  drill: bySchema(
    v.strictObject(
      { level: oneOf('level', levels), seed: wholeNumber('seed', ranges.seed.least, ranges.seed.most) },
      carried('problem.file.drill'),
    ),
  ),
  scene: bySchema(wholeNumber('sceneFromZero', 0, mostScenes - 1)),
  hide: bySchema(all(oneOf('part', hideable), 'parts', 0, hideable.length)),
})

const named = { name: textUpTo(longest.name), note: textUpTo(longest.note), setUp }

const words = textUpTo(longest.name)
const sceneFields = fieldsOf('scene', {
  ...named,
  view,
  picture: bySchema(oneOf('picture', scenePictures)),
  number: bySchema(
    v.strictObject(
      {
        of: oneOf('reading', sceneReadings),
        ink: v.exactOptional(v.string(carried('problem.file.text'))),
        below: v.exactOptional(v.string(carried('problem.file.text'))),
      },
      carried('problem.file.sceneNumber'),
    ),
  ),
  plays: bySchema(flag),
  waits: bySchema(flag),
  question: words,
  caption: words,
  beside: fieldsOf('second', { setUp, caption: words }),
})

const scene: ReadField<Scene> = (input, path, problems) => {
  const read = sceneFields(input, path, problems) ?? {}
  const { setUp, name = '', note = '', view: seen = {}, beside, ...rest } = read
  if (!setUp) tellMissing(input, path, problems)
  const second = beside?.setUp && { beside: { setUp: beside.setUp, caption: beside.caption ?? '' } }
  return setUp && { name, note, setUp, view: seen, ...rest, ...second }
}

const row = fieldsOf('row', Object.fromEntries(sheetColumns.map((column) => [column, textUpTo(longest.cell)] as const)))
const trialFields = fieldsOf('trial', {
  ...named,
  prediction: textUpTo(longest.note),
  readings: listOf('rows', most.readings, row),
})
const trial: ReadField<Trial> = (input, path, problems) => {
  const { setUp, name = '', note = '', prediction, readings = [] } = trialFields(input, path, problems) ?? {}
  if (!setUp) tellMissing(input, path, problems)
  return setUp && { name, note, ...(prediction === undefined ? {} : { prediction }), setUp, readings }
}

/** What is wrong with a set-up that is there has been told already. */
function tellMissing(input: unknown, path: string, problems: Problem[]): void {
  if (typeof input === 'object' && input !== null && !Object.hasOwn(input, 'setUp')) {
    problems.push(problem(`${path}.setUp`, 'problem.file.noSetUp'))
  }
}

const readingsFields = fieldsOf('readings', { name: textUpTo(longest.name), text: textUpTo(longest.file) })
const readingsFile: ReadField<NonNullable<Saved['readingsFile']>> = (input, path, problems) => {
  if (input === null) return undefined
  const { name = '', text } = readingsFields(input, path, problems) ?? {}
  return text === undefined ? undefined : { name, text }
}

const settings: ReadField<Settings> = fieldsOf('settings', {
  theme: bySchema(oneOf('theme', themes)),
  measures: bySchema(measures),
  motion: bySchema(oneOf('motion', motions)),
  sound: bySchema(flag),
  language: bySchema(language),
})

/** Levels; an answer to a drill's step takes six. */
const deepestProgress = 20

const progress: ReadField<KeptProgress> = bySchema(
  v.pipe(
    v.looseObject({ lesson: id }, carried('problem.file.progress')),
    v.check((kept) => isPlain(kept, deepestProgress), carried('problem.file.deep', { most: deepestProgress })),
  ),
)

const file = fieldsOf('file', {
  setUp,
  view,
  scenes: listOf('scenes', most.scenes, scene),
  trials: listOf('trials', most.trials, trial),
  readings: listOf('rows', most.readings, row),
  readingsFile,
  shelf,
  progress: listOf('lessons', most.lessons, progress),
  settings,
})

/** Whether it can be written again as it is; whoever writes JSON calls itself for each level. */
function isPlain(value: unknown, levels: number): boolean {
  if (typeof value === 'number') return Number.isFinite(value)
  if (typeof value !== 'object' || value === null) return true
  return levels > 0 && Object.values(value).every((each) => isPlain(each, levels - 1))
}

/** Everything in the file that can be read; the rest is told. */
export function readSaved(input: unknown, problems: Problem[]): Saved {
  return { ...nothingSaved, ...file(input, '', problems) }
}
