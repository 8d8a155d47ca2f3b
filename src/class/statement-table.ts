/**
 * Statements from a CSV export, whose columns are named by the path of each value in the statement. Stores write the path
 * in many ways (verb.id, Verb/ID, "Verb ID"), so headings count by their letters and digits alone.
 */
import Papa from 'papaparse'
import { parsed } from '../session/read-result.ts'
import { extensionIds } from '../session/statement-extensions.ts'

/** Moment, verb and object are needed, and one of account and mailbox. */
type Column =
  | 'timestamp'
  | 'actor.account.name'
  | 'verb.id'
  | 'object.id'
  | 'result.response'
  | 'actor.name'
  | 'actor.mbox'
  | 'actor.account.homePage'
  | 'object.definition.type'
  | 'object.definition.interactionType'
  | 'object.definition.correctResponsesPattern'
  | 'result.success'
  | 'result.score.scaled'
  | 'result.duration'
  | Extensions
  | `${Extensions}.${(typeof extensionIds)[keyof typeof extensionIds]}`
type Extensions = 'result.extensions' | 'context.extensions'
type Cell = (column: Column) => string | undefined

/** Null where the text is no such table. */
export function statementRows(text: string): unknown[] | null {
  // The library's own reading of headings speaks on the console where two are alike.
  const { data } = Papa.parse<string[]>(text.replace(/^\ufeff/, ''), { skipEmptyLines: true })
  const [first = [], ...rows] = data
  const headings = first.map(lettersOf)
  const places = new Map<Column, number>()
  const placeOf = (column: Column) => {
    const place = places.get(column) ?? headings.indexOf(lettersOf(column))
    places.set(column, place)
    return place
  }
  const needed = ['timestamp', 'verb.id', 'object.id'] satisfies Column[]
  if (!needed.every((column) => placeOf(column) >= 0)) return null
  return rows.map((row) => statement((column) => row[placeOf(column)]?.trim() || undefined))
}

function lettersOf(heading: string): string {
  return heading.toLowerCase().replaceAll(/[^a-z0-9]/g, '')
}

/** Stores, data bases and spreadsheets in the page's two languages. */
const yes = ['true', '1', 'yes', 'y', 'sí', 'si', 'verdadero']
const no = ['false', '0', 'no', 'n', 'falso']

/** Any other word is passed on, so that its statement is refused: a blank alone says that nothing was judged. */
function successOf(cell: string): boolean | string {
  const word = cell.toLowerCase()
  return yes.includes(word) || (no.includes(word) ? false : cell)
}

function statement(cell: Cell): unknown {
  const account = cell('actor.account.name')
  const scaled = cell('result.score.scaled')
  const success = cell('result.success')
  return {
    timestamp: cell('timestamp'),
    actor: {
      ...own('name', cell('actor.name')),
      ...own('mbox', cell('actor.mbox')),
      ...(account === undefined
        ? {}
        : { account: { name: account, ...own('homePage', cell('actor.account.homePage')) } }),
    },
    verb: { id: cell('verb.id') },
    object: {
      id: cell('object.id'),
      definition: {
        ...own('type', cell('object.definition.type')),
        ...own('interactionType', cell('object.definition.interactionType')),
        correctResponsesPattern: patterns(cell('object.definition.correctResponsesPattern')),
      },
    },
    result: {
      ...own('response', cell('result.response')),
      ...own('duration', cell('result.duration')),
      ...(success === undefined ? {} : { success: successOf(success) }),
      // Some spreadsheets write a decimal comma.
      ...(scaled === undefined ? {} : { score: { scaled: Number(scaled.replace(',', '.')) } }),
      extensions: extensionsIn('result.extensions', cell),
    },
    context: { extensions: extensionsIn('context.extensions', cell) },
  }
}

/** Stores give each a column of its own, or all of them one with JSON in it. */
function extensionsIn(path: Extensions, cell: Cell): Record<string, unknown> {
  const each = Object.values(extensionIds).map((id): [string, unknown] => {
    const text = cell(`${path}.${id}`)
    return [id, text === undefined ? undefined : (parsed(text) ?? text)]
  })
  const all = parsed(cell(path) ?? '')
  return {
    ...(typeof all === 'object' ? all : {}),
    ...Object.fromEntries(each.filter(([, value]) => value !== undefined)),
  }
}

function own(field: string, value: string | undefined): Record<string, string> {
  return value === undefined ? {} : { [field]: value }
}

/** Stores write the list as JSON, or its only pattern as it is. */
function patterns(cell: string | undefined): string[] {
  if (cell === undefined) return []
  const inBrackets = /^\["(.*)"\]$/.exec(cell)
  return [inBrackets ? inBrackets[1] : cell]
}
