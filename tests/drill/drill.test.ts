import { describe, expect, it, vi } from 'vitest'
import { allCauses, causeKey, faultFamilies, faultKinds } from '../../src/drill/cause.ts'
import { makeDrill } from '../../src/drill/drill.ts'
import { allEvidence, seenEvidence } from '../../src/drill/evidence.ts'
import { readDrill, writeDrill } from '../../src/drill/link.ts'
import { levels } from '../../src/drill/level.ts'
import { mostReadings, observe } from '../../src/drill/observe.ts'

/** ms: on a machine that may be busy with other things */
vi.setConfig({ testTimeout: 120_000 })

describe('a drill', () => {
  it('is the same for all who ask for it, and another for another seed or level', () => {
    const one = makeDrill({ seed: 12, level: 'medium' })
    expect(makeDrill({ seed: 12, level: 'medium' })).toEqual(one)
    expect(makeDrill({ seed: 13, level: 'medium' }).press).not.toEqual(one.press)
    expect(makeDrill({ seed: 12, level: 'easy' }).press).not.toEqual(one.press)
  })

  it.each(faultKinds)('can be asked for by kind: %s', (kind) => {
    for (const level of levels) {
      const { faults } = makeDrill({ seed: 5, level, kind })
      expect(faults[0].kind).toBe(kind)
    }
  })

  it('lets everything be seen before anything is measured', () => {
    const kinds = allEvidence(makeDrill({ seed: 3, level: 'easy' }).ticket).map(({ kind }) => kind)
    expect(kinds.slice(0, seenEvidence.length)).toEqual([...seenEvidence])
  })

  it('leaves the ticket as it was', () => {
    const { ticket, press } = makeDrill({ seed: 3, level: 'hard' })
    expect(press).not.toEqual(ticket)
    expect(makeDrill({ seed: 4, level: 'hard' }).ticket.reading).toBe('first')
  })
})

describe('causes', () => {
  it('come in families that hold every kind once', () => {
    expect(faultFamilies.flat().sort()).toEqual([...faultKinds].sort())
  })

  it('are told apart by their keys', () => {
    const keys = allCauses(4).map(causeKey)
    expect(new Set(keys).size).toBe(keys.length)
    expect(keys).toContain('unit too warm 4')
    expect(keys).not.toContain('order swapped 4')
  })
})

describe('observing', () => {
  const drill = makeDrill({ seed: 21, level: 'medium' })

  it('gives the same reading again, and nearer ones when more are averaged', () => {
    for (const piece of allEvidence(drill.ticket)) {
      const once = observe(drill, piece)
      expect(once.length).toBeGreaterThan(0)
      expect(observe(drill, piece)).toEqual(once)
      observe(drill, piece, mostReadings).forEach((many, i) => {
        expect(many.deviation).toBeLessThanOrEqual(once[i].deviation)
        expect(Number.isFinite(many.value)).toBe(true)
        expect(many.usual[0]).toBeLessThanOrEqual(many.good)
        expect(many.usual[1]).toBeGreaterThanOrEqual(many.good)
      })
    }
  })

  it('scatters by the stated deviation, over many drills', () => {
    // The good job's readings would do as well: what counts is how far observed and true ones are apart.
    const offs = Array.from({ length: 60 }, (_, seed) => ({ ...drill, request: { ...drill.request, seed } })).flatMap(
      (each) => {
        const pieces = allEvidence(each.ticket)
        const observed = pieces.flatMap((piece) => observe(each, piece))
        const far = pieces.flatMap((piece) => observe(drill, piece, mostReadings))
        return observed.map(
          ({ onScale, deviation }, i) => (onScale - far[i].onScale) / Math.hypot(deviation, far[i].deviation),
        )
      },
    )
    const deviation = Math.sqrt(offs.reduce((sum, off) => sum + off * off, 0) / offs.length)
    expect(deviation).toBeGreaterThan(0.85)
    expect(deviation).toBeLessThan(1.15)
  })
})

describe('a drill in a link', () => {
  it.each([
    { seed: 0, level: 'easy' },
    { seed: 4294967295, level: 'medium' },
    { seed: 7, level: 'hard', kind: 'paper weak' },
  ] as const)('comes back as it was: %o', (request) => {
    expect(readDrill(writeDrill(request))).toEqual(request)
  })

  it.each([
    '',
    'easy',
    'easy-',
    'easy-x',
    'easy--1',
    'easy-1.5',
    'simple-1',
    'easy-4294967296',
    'easy-1-bad luck',
    'easy-1-',
  ])('is refused when it is none: %s', (text) => {
    expect(readDrill(text)).toBeNull()
  })
})
