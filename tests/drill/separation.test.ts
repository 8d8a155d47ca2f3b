/** The distance between explanations, held to exact runs of the press instead of curves, and to sums by hand. */
import { describe, expect, it, vi } from 'vitest'
import { casebookOf, curveOf, readingsAt } from '../../src/drill/casebook.ts'
import { causeKey } from '../../src/drill/cause.ts'
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

describe('the distance of a rival', () => {
  it('is what exact runs of the press give, closely tried over all sizes', () => {
    for (let seed = 0; seed < 6; seed++) {
      const drill = makeDrill({ seed, level: 'medium' })
      const book = casebookOf(drill.job)
      for (const [rival] of rivalsOf(drill).slice(0, 2)) {
        const { least, most } = faultSizes[rival.kind]
        const exact = Array.from({ length: 33 }, (_, i) => {
          const size = least + ((most - least) * i) / 32
          const readings = expectedReadings(
            drill.ticket,
            withFaults(drill.ticket, [{ ...rival, size }]),
            book.quantities,
          )
          const parts = new Map<string, number>()
          let worst = 0
          book.quantities.forEach((quantity, index) => {
            const key = evidenceKey(quantity.evidence)
            const off = (drill.readings[index] - readings[index]) / deviationOf(quantity)
            parts.set(key, (parts.get(key) ?? 0) + off * off)
            if (mayMislead(quantity.evidence)) worst = Math.max(worst, parts.get(key) ?? 0)
          })
          return Math.sqrt([...parts.values()].reduce((sum, part) => sum + part, 0) - worst)
        })
        const apart = distance(book, drill.readings, [rival], allEvidence(drill.ticket))
        expect(Math.abs(apart / Math.min(...exact) - 1)).toBeLessThan(0.03)
        expect(Math.min(...exact)).toBeGreaterThan(0.97 * ruledOutAt)
      }
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
