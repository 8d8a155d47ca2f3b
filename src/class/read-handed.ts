/** Reads what was handed in: the result file of one learner. */
import { readResult } from '../session/read-result.ts'
import type { BoardSaid } from '../session/read-result.ts'
import type { Result } from '../session/result-format.ts'

export type Handed = { readonly results: readonly Result[] } | { readonly refused: BoardSaid }

export function readHanded(text: string): Promise<Handed> {
  const read = readResult(text)
  return Promise.resolve('result' in read ? { results: [read.result] } : read)
}
