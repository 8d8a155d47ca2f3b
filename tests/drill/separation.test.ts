/** The distance between explanations, held to exact runs of the press instead of curves, and to sums by hand. */
import { describe, expect, it, vi } from 'vitest'
import { casebookOf, curveOf, readingsAt } from '../../src/drill/casebook.ts'
import type { Cause, Fault } from '../../src/drill/cause.ts'
import { causeKey } from '../../src/drill/cause.ts'
import type { Drill } from '../../src/drill/drill.ts'
import { makeDrill, rivalsOf } from '../../src/drill/drill.ts'
import { allEvidence, deviationOf, evidenceKey } from '../../src/drill/evidence.ts'
import { expectedReadings } from '../../src/drill/expected.ts'
import { faultSizes, withFaults } from '../../src/drill/fault.ts'
import { jobIds } from '../../src/drill/jobs.ts'
import { mayMislead } from '../../src/drill/misleading.ts'
import { distance, explanations, ruledOutAt } from '../../src/drill/separation.ts'

/** ms: on a machine that may be busy with other things */
vi.setConfig({ testTimeout: 120_000 })

describe('curves of single faults', () => {
  it('are off by less than one standard deviation in any quantity, between the sizes computed', () => {
    for (const job of jobIds) {
      const book = casebookOf(job)
      for (const cause of book.causes.filter(({ unit }) => unit === null || unit === 1)) {
        const { least, most } = faultSizes[cause.kind]
        const size = least + (most - least) * 0.92
        const exact = expectedReadings(book.ticket, withFaults(book.ticket, [{ ...cause, size }]), book.quantities)
        readingsAt(curveOf(book, cause), size).forEach((reading, index) => {
          const off = Math.abs(reading - exact[index]) / deviationOf(book.quantities[index])
          expect(off, `${job}: ${causeKey(cause)}`).toBeLessThan(1)
        })
      }
    }
  })
})

describe('explanations', () => {
  it('of two faults never hold too high and too low of one thing together', () => {
    const offered = [
      { kind: 'tack too high', unit: 1 },
      { kind: 'tack too low', unit: 1 },
      { kind: 'tack too low', unit: 2 },
    ] as const
    expect(explanations(offered, 2).map((pair) => pair.map(causeKey))).toEqual([
      ['tack too high 2', 'tack too low 3'],
      ['tack too low 2', 'tack too low 3'],
    ])
    expect(explanations(offered, 1)).toHaveLength(3)
  })
})

/** The distance by all evidence, every reading from a run of the press with just these faults. */
function exactDistance(drill: Drill, faults: readonly Fault[]): number {
  const { quantities } = casebookOf(drill.job)
  const readings = expectedReadings(drill.ticket, withFaults(drill.ticket, faults), quantities)
  const parts = new Map<string, number>()
  let worst = 0
  quantities.forEach((quantity, index) => {
    const off = (drill.readings[index] - readings[index]) / deviationOf(quantity)
    const part = (parts.get(evidenceKey(quantity.evidence)) ?? 0) + off * off
    parts.set(evidenceKey(quantity.evidence), part)
    if (mayMislead(quantity.evidence)) worst = Math.max(worst, part)
  })
  return Math.sqrt([...parts.values()].reduce((sum, part) => sum + part, 0) - worst)
}

function faultAt(cause: Cause, share: number): Fault {
  const { least, most } = faultSizes[cause.kind]
  return { ...cause, size: least + (most - least) * share }
}

describe('the distance of a rival', () => {
  it('is what exact runs of the press give, closely tried over all sizes: one fault', () => {
    for (let seed = 0; seed < 6; seed++) {
      const drill = makeDrill({ seed, level: 'medium' })
      for (const [rival] of rivalsOf(drill).slice(0, 2)) {
        const tried = Array.from({ length: 33 }, (_, i) => exactDistance(drill, [faultAt(rival, i / 32)]))
        const apart = distance(casebookOf(drill.job), drill.readings, [rival], allEvidence(drill.ticket))
        expect(Math.abs(apart / Math.min(...tried) - 1)).toBeLessThan(0.03)
        expect(Math.min(...tried)).toBeGreaterThan(0.97 * ruledOutAt)
      }
    }
  })

  it('is what exact runs give to within a tenth where two faults were taken to add up: the nearest rival', () => {
    for (const seed of [2, 5, 8, 11]) {
      const drill = makeDrill({ seed, level: 'hard' })
      const apart = rivalsOf(drill).map((rival) => ({
        rival,
        by: distance(casebookOf(drill.job), drill.readings, rival, allEvidence(drill.ticket)),
      }))
      const { rival, by } = apart.reduce((near, each) => (each.by < near.by ? each : near))
      const at = (shares: readonly number[]) =>
        exactDistance(
          drill,
          rival.map((cause, i) => faultAt(cause, shares[i])),
        )
      let least = { shares: [0, 0], apart: Infinity }
      const tryOut = (shares: number[]) => {
        const there = at(shares)
        if (there < least.apart) least = { shares, apart: there }
      }
      for (let i = 0; i <= 8; i++) for (let j = 0; j <= 8; j++) tryOut([i / 8, j / 8])
      for (let step = 1 / 16; step > 1 / 500; step /= 2) {
        for (const [size, turn] of [
          [0, -step],
          [0, step],
          [1, -step],
          [1, step],
        ] as const) {
          tryOut(least.shares.with(size, Math.min(1, Math.max(0, least.shares[size] + turn))))
        }
      }
      expect(Math.abs(least.apart / by - 1)).toBeLessThan(0.1)
      expect(least.apart).toBeGreaterThan(ruledOutAt * 0.9)
    }
  })

  it('is nearly none for the true cause, and never falls when evidence is added', () => {
    for (let seed = 0; seed < 12; seed++) {
      const drill = makeDrill({ seed, level: seed % 2 ? 'hard' : 'easy' })
      const book = casebookOf(drill.job)
      const all = allEvidence(drill.ticket)
      expect(distance(book, drill.readings, drill.faults, all)).toBeLessThan(2)
      const [rival] = rivalsOf(drill)
      let before = 0
      for (let pieces = 1; pieces <= all.length; pieces++) {
        const apart = distance(book, drill.readings, rival, all.slice(0, pieces))
        // Sizes are closed in on to a thousandth of their range.
        expect(apart).toBeGreaterThan(before * 0.999 - 1e-6)
        before = apart
      }
    }
  })

  it('is none by a single measurement, which may be the one that misleads', () => {
    const drill = makeDrill({ seed: 4, level: 'medium' })
    const [rival] = rivalsOf(drill)
    for (const piece of allEvidence(drill.ticket).filter(mayMislead)) {
      expect(distance(casebookOf(drill.job), drill.readings, rival, [piece])).toBe(0)
    }
  })
})
