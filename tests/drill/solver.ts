/**
 * A plain Bayesian that solves drills from their noisy readings: every explanation equally likely beforehand, every
 * size too, and one reading misleading, it could be any. It knows the press model, as the good sheet's readings and
 * the curves of single faults; it never sees what was hidden.
 */
import { casebookOf, curveOf, readingsAtShare } from '../../src/drill/casebook.ts'
import type { Cause } from '../../src/drill/cause.ts'
import type { Drill } from '../../src/drill/drill.ts'
import type { Evidence } from '../../src/drill/evidence.ts'
import { evidenceKey } from '../../src/drill/evidence.ts'
import { directEvidence } from '../../src/drill/misleading.ts'
import { observe } from '../../src/drill/observe.ts'
import { explanations, readingsUnder } from '../../src/drill/separation.ts'

export interface Belief {
  causes: Cause[]
  /** probability, all adding up to 1 */
  share: number
}

/** The explanations from the most to the least probable, given these pieces of evidence. */
export function solve(drill: Drill, evidence: readonly Evidence[]): Belief[] {
  const book = casebookOf(drill.job)
  const keys = book.quantities.map((quantity) => evidenceKey(quantity.evidence))
  const seen = new Map<number, { value: number; deviation: number }>()
  for (const piece of evidence) {
    const places = keys.flatMap((key, index) => (key === evidenceKey(piece) ? [index] : []))
    observe(drill, piece).forEach(({ onScale: value, deviation }, i) => seen.set(places[i], { value, deviation }))
  }
  const taken = [...seen].map(([index, read]) => ({ index, piece: keys[index], ...read }))
  const pieces = [...new Set(taken.map(({ piece }) => piece))]
  const place = taken.map(({ piece }) => pieces.indexOf(piece))
  /** ln of the probability of each piece's readings, if nothing misleads, but for a constant */
  const logByPiece = (expected: Float64Array) => {
    const logs = pieces.map(() => 0)
    taken.forEach(({ index, value, deviation }, i) => {
      logs[place[i]] -= 0.5 * ((value - expected[index]) / deviation) ** 2
    })
    return logs
  }

  // For each reading that could mislead: how probable it is if it does, whatever size of fault it looks like.
  const misleading = drill.offered.flatMap((cause) => {
    const direct = directEvidence(cause)
    if (!direct) return []
    const piece = pieces.indexOf(evidenceKey(direct))
    const curve = Array.from({ length: 25 }, (_, i) => readingsAtShare(curveOf(book, cause), i / 24))
    const log = piece < 0 ? 0 : logMean(curve.map((readings) => logByPiece(readings)[piece]))
    return [{ piece, log, key: evidenceKey(direct) }]
  })

  const logs = explanations(drill.offered, drill.faults.length).map((causes) => {
    const proofs = causes.flatMap((cause) => {
      const direct = directEvidence(cause)
      return direct ? [evidenceKey(direct)] : []
    })
    const others = misleading.filter(({ key }) => !proofs.includes(key))
    const bySize = readingsUnder(book, causes).flatMap((readings) => {
      const terms = logByPiece(readings)
      const all = sum(terms)
      return others.map(({ piece, log }) => all - (piece < 0 ? 0 : terms[piece]) + log)
    })
    return { causes, log: bySize.length > 0 ? logMean(bySize) : -Infinity }
  })
  const top = Math.max(...logs.map(({ log }) => log))
  const total = sum(logs.map(({ log }) => Math.exp(log - top)))
  return logs
    .map(({ causes, log }) => ({ causes, share: Math.exp(log - top) / total }))
    .sort((a, b) => b.share - a.share)
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0)
}

/** ln of the mean of e^value. */
function logMean(values: readonly number[]): number {
  const top = values.reduce((most, value) => Math.max(most, value), -Infinity)
  return top + Math.log(sum(values.map((value) => Math.exp(value - top))) / values.length)
}
