/** Reads a result file of unknown origin (result-format.ts). Never throws; what cannot be read is told in words. */
import * as v from 'valibot'
import type { BoardKey } from '../words/en/board.ts'
import type { Steps } from './migrate.ts'
import { migrate } from './migrate.ts'
import type { Result } from './result-format.ts'
import { resultFormat, resultSchema, resultVersion } from './result-format.ts'

/** Characters; all lessons and some hundred drills of one learner are a twentieth of it. */
export const largestResult = 4_000_000

/** From each version to the next. There has been no version before the first. */
const resultSteps: Steps = {}

export interface BoardSaid {
  readonly message: BoardKey
  readonly values: Readonly<Record<string, string | number>>
}

export type ReadResult = { readonly result: Result } | { readonly refused: BoardSaid }

export function readResult(text: string): ReadResult {
  if (text.length > largestResult) return refuse('board.refused.long', { length: text.length, most: largestResult })
  const data = parsed(text)
  return data === undefined ? refuse('board.refused.noJson') : readResultData(data)
}

/** The same from data, as it comes out of JSON. */
export function readResultData(data: unknown, steps = resultSteps, present = resultVersion): ReadResult {
  if (!isObject(data) || data['format'] !== resultFormat) return refuse('board.refused.format')
  const { version } = data
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) return refuse('board.refused.version')
  if (version > present) return refuse('board.refused.newer', { version, most: present })
  const migrated = migrate(data, version, present, steps)
  if (!migrated) return refuse('board.refused.version')
  const checked = v.safeParse(resultSchema, migrated, { abortEarly: true })
  if (checked.success) return { result: checked.output }
  return refuse('board.refused.field', { field: placeOf(checked.issues[0]) })
}

/** Where in the file, such as lessons[2].steps[0].done. */
function placeOf({ path = [] }: { path?: readonly { key: unknown }[] | undefined }): string {
  return path.reduce((place, { key }) => {
    const name = String(key).slice(0, 40)
    return typeof key === 'number' ? `${place}[${name}]` : place === '' ? name : `${place}.${name}`
  }, '')
}

/** Undefined where it is no JSON. */
export function parsed(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\ufeff/, ''))
  } catch (error) {
    // Some browsers give up on data nested too deeply with a RangeError.
    if (error instanceof SyntaxError || error instanceof RangeError) return undefined
    throw error
  }
}

function refuse(message: BoardKey, values: BoardSaid['values'] = {}): { refused: BoardSaid } {
  return { refused: { message, values } }
}

function isObject(data: unknown): data is Record<string, unknown> {
  return typeof data === 'object' && data !== null && !Array.isArray(data)
}
