/**
 * What speaks most against an explanation, so that a learner who named a wrong one knows where to look. The misleading
 * reading is left out: it would speak against the truth as well.
 */
import { casebookOf } from './casebook.ts'
import type { Cause } from './cause.ts'
import type { Drill } from './drill.ts'
import type { Evidence, Quantity } from './evidence.ts'
import { deviationOf, evidenceKey } from './evidence.ts'
import { distance, readingsUnder } from './separation.ts'

export interface Contradiction {
  readonly quantity: Quantity
  /** how this quantity would read under the explanation, compared with how it does read */
  readonly would: 'higher' | 'lower'
}

/** Standard deviations from which one reading speaks against an explanation: chosen, as noise does so 1 time in 370. */
const speaksAt = 3

/** The quantity farthest from what the explanation gives at its best size; null where all of this evidence fits it. */
export function contradiction(
  drill: Drill,
  causes: readonly Cause[],
  evidence: readonly Evidence[],
): Contradiction | null {
  const book = casebookOf(drill.job)
  const keys = evidence.map(evidenceKey).filter((key) => key !== evidenceKey(drill.misleading.evidence))
  const places = book.keys.flatMap((key, index) => (keys.includes(key) ? [index] : []))
  const fits = readingsUnder(book, causes).map((readings) => {
    const offs = places.map((at) => (readings[at] - drill.readings[at]) / deviationOf(book.quantities[at]))
    return { offs, squared: offs.reduce((sum, off) => sum + off * off, 0) }
  })
  const { offs } = fits.reduce((best, fit) => (fit.squared < best.squared ? fit : best))
  const most = offs.reduce((so, off, at) => (Math.abs(off) > Math.abs(offs[so]) ? at : so), 0)
  if (places.length === 0 || Math.abs(offs[most]) < speaksAt) return null
  return { quantity: book.quantities[places[most]], would: offs[most] > 0 ? 'higher' : 'lower' }
}

/** Of further evidence, the piece that together with what was named speaks most against an explanation left open. */
export function furtherProof(
  drill: Drill,
  open: readonly Cause[],
  named: readonly Evidence[],
  further: readonly Evidence[],
): Evidence | null {
  const book = casebookOf(drill.job)
  const offs = further.map((piece) => distance(book, drill.readings, open, [...named, piece]))
  return further.at(offs.indexOf(Math.max(...offs))) ?? null
}
