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
  const { data, meta } = Papa.parse<Record<string, string>>(text.replace(/^\ufeff/, ''), {
    header: true,
    skipEmptyLines: true,
  })
  const needed = ['timestamp', 'verb.id', 'object.id'] satisfies Column[]
  if (!needed.every((column) => meta.fields?.includes(column) === true)) return null
  return data.map((row) =>
    statement((column) => (Object.hasOwn(row, column) && row[column] !== '' ? row[column] : undefined)),
  )
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
