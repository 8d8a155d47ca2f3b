/** Reads what was handed in: the result file of one learner, or an export of statements of many, as JSON or CSV. */
import { parsed, readResult } from '../session/read-result.ts'
import type { BoardSaid } from '../session/read-result.ts'
import type { HandedResult } from './roll.ts'

export type Handed =
  /** `passedOver`: statements of others, or without anything to count */
  { readonly results: readonly HandedResult[]; readonly passedOver: number } | { readonly refused: BoardSaid }

/** What an export begins with: a list, or the answer of a store with its list of statements. */
const exportStart = /^\ufeff?\s*(?:\[|\{\s*"(?:statements|more)")/

/** A heading that every table of statements has, however its words are parted (statement-table.ts). */
const tableStart = /verb[^a-z0-9\n]{0,3}id/i

export async function readHanded(text: string): Promise<Handed> {
  if (exportStart.test(text)) return ofStatements(listIn(parsed(text)))
  if (/^\ufeff?\s*\{/.test(text)) {
    const read = readResult(text)
    return 'result' in read ? { results: [read.result], passedOver: 0 } : read
  }
  if (!tableStart.test(text.slice(0, 4000))) return readRefused(text)
  const { statementRows } = await import('./statement-table.ts')
  return ofStatements(statementRows(text))
}

function readRefused(text: string): Handed {
  const read = readResult(text)
  return 'result' in read ? { results: [read.result], passedOver: 0 } : read
}

function listIn(data: unknown): unknown[] | null {
  if (Array.isArray(data)) return data as unknown[]
  const { statements } = (data ?? {}) as { statements?: unknown }
  return Array.isArray(statements) ? (statements as unknown[]) : null
}

async function ofStatements(list: readonly unknown[] | null): Promise<Handed> {
  const { resultsOf } = await import('./statements.ts')
  const stated = resultsOf(list ?? [])
  return stated.results.length > 0 ? stated : { refused: { message: 'board.refused.statements', values: {} } }
}
