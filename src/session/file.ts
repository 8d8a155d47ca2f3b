/**
 * The file of this program: one JSON object.
 *
 *   format    "tackstair"
 *   version   1
 *   setUp     the set-up on the bench, as src/press/check-setup.ts reads it
 *   view      what is looked at (view-state.ts)
 *   scenes    a lecture's list, each with name, note, setUp, view and how it is shown (scene.ts)
 *   trials    what was tried, each with name, note, prediction, setUp, readings: rows of patch, red, green, blue, sheet as typed
 *   readings, readingsFile   the press sheet on the measuring desk, as typed and as a file {name, text}
 *   shelf     own inks, papers and presses, as src/measure/check-shelf.ts reads it
 *   progress  what was kept of each lesson (src/lesson/progress.ts)
 *   settings  theme, measures, motion, sound, language
 *
 * All but format and version may be missing. A bare shelf and a bare set-up, as the commands take it, are read as well.
 * A file of an older version is brought up to date first (migrate.ts); one of a newer version is refused.
 */
import { checkShelf } from '../measure/check-shelf.ts'
import { shelfKind } from '../measure/shelf.ts'
import { checkSetUp } from '../press/check-setup.ts'
import type { Problem, ProblemSaid } from '../press/problem.ts'
import { given, problem } from '../press/problem.ts'
import { readSaved } from './file-fields.ts'
import type { Json, Steps } from './migrate.ts'
import { migrate } from './migrate.ts'
import type { Saved } from './saved.ts'
import { nothingSaved } from './saved.ts'
import type { Scene } from './scene.ts'
import { writeSetUp } from './write-setup.ts'

const fileFormat = 'tackstair'
export const fileVersion = 1
const fileEnding = '.tackstair.json'

/** Characters; a course of lectures with all trials of a year is a tenth of it. */
export const largestFile = 5_000_000

/** From each version to the next. There has been no version before the first. */
const steps: Steps = {}

/** A file that can be opened, with all in it that could not be read; or why it cannot be opened at all. */
export type Opened = { saved: Saved; problems: Problem[] } | { refused: Problem }

/** Characters of a file's name before its ending. */
const longestFileName = 60

/** What a file of this title may be called on any system. */
export function fileNameOf(title: string, ending = fileEnding): string {
  const plain = title
    .normalize('NFC')
    .replace(/[^\p{L}\p{M}\p{N} ._-]+/gu, ' ')
    .replace(/\s+/g, ' ')
    .slice(0, longestFileName)
    .replace(/^[ .]+|[ .]+$/g, '')
  // Some systems keep these names for their own devices, whatever the ending.
  const isKept = /^(con|prn|aux|nul|com\d|lpt\d)$/i.test(plain.split('.')[0])
  return `${plain === '' || isKept ? 'set-up' : plain}${ending}`
}

/** The text of a file. */
export function writeFile({ setUp, scenes, trials, ...rest }: Saved): string {
  const written = {
    format: fileFormat,
    version: fileVersion,
    ...(setUp ? { setUp: writeSetUp(setUp) } : {}),
    ...rest,
    scenes: scenes.map(writeScene),
    trials: trials.map((trial) => ({ ...trial, setUp: writeSetUp(trial.setUp) })),
  }
  return `${JSON.stringify(written, null, 1)}\n`
}

function writeScene({ setUp, beside, ...rest }: Scene) {
  const second = beside && { beside: { ...beside, setUp: writeSetUp(beside.setUp) } }
  return { ...rest, setUp: writeSetUp(setUp), ...second }
}

/** Reads the text of a file of unknown origin. Never throws. */
export function readFile(text: string): Opened {
  if (text.length > largestFile) {
    return refuse('problem.file.tooLong', { count: text.length, most: largestFile })
  }
  let data: unknown
  try {
    data = JSON.parse(text.replace(/^\ufeff/, ''))
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error
    return refuse('problem.file.json')
  }
  return readData(data)
}

function readData(data: unknown): Opened {
  if (!isObject(data)) return refuse('problem.file.noObject')
  if (data['kind'] === shelfKind) return ofShelf(data)
  if (data['format'] === undefined && data['inks'] !== undefined) return ofSetUp(data)
  if (data['format'] !== fileFormat) {
    return refuse('problem.file.format', { given: given(data['format']), allowed: fileFormat }, 'format')
  }
  const { version } = data
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 0) {
    return refuse('problem.file.version', { given: given(version), most: fileVersion }, 'version')
  }
  if (version > fileVersion) {
    return refuse('problem.file.newer', { version, most: fileVersion }, 'version')
  }
  const present = migrate(data, version, fileVersion, steps)
  if (!present) {
    return refuse('problem.file.neverWas', { version, most: fileVersion }, 'version')
  }
  const problems: Problem[] = []
  return { saved: readSaved(withoutHead(present), problems), problems }
}

function ofShelf(data: Json): Opened {
  const checked = checkShelf(data)
  if ('problems' in checked) return { saved: nothingSaved, problems: checked.problems }
  return { saved: { ...nothingSaved, shelf: checked.shelf }, problems: [] }
}

function ofSetUp(data: Json): Opened {
  const checked = checkSetUp(data)
  if ('problems' in checked) return { saved: nothingSaved, problems: checked.problems }
  return { saved: { ...nothingSaved, setUp: checked.setUp }, problems: [] }
}

function withoutHead(data: Json): Json {
  return Object.fromEntries(Object.entries(data).filter(([field]) => field !== 'format' && field !== 'version'))
}

function refuse(message: ProblemSaid['message'], values: ProblemSaid['values'] = {}, path = ''): Opened {
  return { refused: problem(path, message, values) }
}

function isObject(data: unknown): data is Json {
  return typeof data === 'object' && data !== null && !Array.isArray(data)
}
