/** Statements from a CSV export, whose columns are named by the path of each value in the statement. */
import Papa from 'papaparse'

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
  | 'object.definition.interactionType'
  | 'object.definition.correctResponsesPattern'
  | 'result.success'
  | 'result.score.scaled'
  | 'result.duration'

/** Null where the text is no such table. */
export function statementRows(text: string): unknown[] | null {
  // The library's own reading of headings speaks on the console where two are alike.
  const { data } = Papa.parse<string[]>(text.replace(/^\ufeff/, ''), { skipEmptyLines: true })
  const [headings = [], ...rows] = data
  const needed = ['timestamp', 'verb.id', 'object.id'] satisfies Column[]
  if (!needed.every((column) => headings.includes(column))) return null
  return rows.map((row) => statement((column) => row[headings.indexOf(column)] || undefined))
}

function statement(cell: (column: Column) => string | undefined): unknown {
  const account = cell('actor.account.name')
  const scaled = cell('result.score.scaled')
  const success = cell('result.success')?.toLowerCase()
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
        ...own('interactionType', cell('object.definition.interactionType')),
        correctResponsesPattern: patterns(cell('object.definition.correctResponsesPattern')),
      },
    },
    result: {
      ...own('response', cell('result.response')),
      ...own('duration', cell('result.duration')),
      ...(success === 'true' || success === 'false' ? { success: success === 'true' } : {}),
      ...(scaled === undefined ? {} : { score: { scaled: Number(scaled) } }),
    },
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
