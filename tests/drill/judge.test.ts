import { describe, expect, it, vi } from 'vitest'
import { colourDifference } from '../../src/colour/colour-difference.ts'
import { noticedDifference } from '../../src/drill/casebook.ts'
import { causeKey } from '../../src/drill/cause.ts'
import { cautionsOf, curesFor } from '../../src/drill/cure.ts'
import { contradiction } from '../../src/drill/contradiction.ts'
import { identifies, makeDrill, rivalsOf } from '../../src/drill/drill.ts'
import type { Evidence } from '../../src/drill/evidence.ts'
import { allEvidence, readPatches } from '../../src/drill/evidence.ts'
import { enoughEvidence, judgeCure, judgeDiagnosis, worseBy } from '../../src/drill/judge.ts'
import { levels } from '../../src/drill/level.ts'
import { isRefused } from '../../src/measure/said.ts'
import { readPatch, stripOf } from '../../src/measure/strip.ts'
import { patchOf, unitsIn } from '../../src/press/patches.ts'
import { readSheet } from '../../src/press/readings.ts'
import { runPress } from '../../src/press/run.ts'
import type { SetUp } from '../../src/press/setup.ts'

/** ms: on a machine that may be busy with other things */
vi.setConfig({ testTimeout: 120_000 })

const drills = Array.from({ length: 12 }, (_, seed) => makeDrill({ seed: 900 + seed, level: levels[seed % 3] }))

/** How far a press's first sheet is from the ticket's, by the strip itself: dE00 of the worst patch, share torn. */
function offFrom(ticket: SetUp, press: SetUp): { colour: number; torn: number } {
  const [good, print] = [ticket, press].map((setUp) => stripOf(runPress(setUp)))
  const lab = (setUp: SetUp, strip: typeof good, patch: number) => {
    const units = unitsIn(patch, ticket.inks.length).map((unit) =>
      setUp.inks.findIndex((ink) => ink.name === ticket.inks[unit].name),
    )
    const { colour } = readPatch(strip, patchOf(units))
    if (isRefused(colour)) throw new Error('a job without colours')
    return colour.Lab
  }
  const differences = readPatches(ticket.inks).map((patch) =>
    colourDifference(lab(ticket, good, patch), lab(press, print, patch)),
  )
  return { colour: Math.max(...differences), torn: readSheet(print.run).torn.at(-1) ?? 0 }
}

describe('a diagnosis', () => {
  it('is proven when the true causes are named with evidence that is enough, and then nothing is needless', () => {
    for (const drill of drills) {
      const enough = enoughEvidence(drill)
      expect(identifies(drill, enough)).toBe(true)
      expect(judgeDiagnosis(drill, drill.faults, enough)).toMatchObject({
        wrong: [],
        missed: [],
        leftOpen: [],
        needless: [],
        misled: false,
      })
    }
  })

  it('finds nothing against the truth, and something against every other cause, but never the misleading reading', () => {
    for (const drill of drills) {
      const all = allEvidence(drill.ticket)
      expect(contradiction(drill, drill.faults, all)).toBe(null)
      const [other] = rivalsOf(drill)
      const verdict = judgeDiagnosis(drill, other, [], all)
      expect(verdict.against).not.toBe(null)
      expect(verdict.against?.quantity.evidence).not.toEqual(drill.misleading.evidence)
      expect(verdict.next).toBe(null)
    }
  })

  it('names further evidence until the cause is proven by it', () => {
    for (const drill of drills.slice(0, 6)) {
      const taken: Evidence[] = []
      for (;;) {
        const { leftOpen, next } = judgeDiagnosis(drill, drill.faults, taken)
        if (leftOpen.length === 0) break
        expect(next).not.toBe(null)
        if (next) taken.push(next)
      }
      expect(taken.length).toBeLessThanOrEqual(allEvidence(drill.ticket).length)
    }
  })

  it('says what is left open by a part of that evidence', () => {
    for (const drill of drills) {
      const [, ...part] = enoughEvidence(drill)
      expect(judgeDiagnosis(drill, drill.faults, part).leftOpen.length).toBeGreaterThan(0)
    }
  })

  it('says which causes are wrong, which are missed, and whether the misleading reading was believed', () => {
    for (const drill of drills) {
      const { looksLike } = drill.misleading
      const verdict = judgeDiagnosis(drill, [looksLike], [drill.misleading.evidence])
      expect(verdict.wrong).toEqual([looksLike])
      expect(verdict.missed.map(causeKey)).toEqual(drill.faults.map(causeKey))
      expect(verdict.misled).toBe(true)
      expect(verdict.right).toEqual([])
    }
  })

  it('rests on nothing when no evidence is named', () => {
    const [drill] = drills
    expect(judgeDiagnosis(drill, drill.faults, []).leftOpen).not.toEqual([])
    expect(judgeDiagnosis(drill, drill.faults, allEvidence(drill.ticket)).leftOpen).toEqual([])
  })
})

describe('putting the true causes right', () => {
  it('brings back the good sheet, whatever misled', () => {
    for (const drill of drills) {
      const cures = drill.faults.map((cause) => ({ kind: 'put right', cause }) as const)
      const verdict = judgeCure(drill, cures)
      expect(verdict).toMatchObject({ back: true, worse: false, idle: false, atTheRoot: true })
      const { colour } = offFrom(drill.ticket, verdict.press)
      expect(colour).toBeLessThan(0.01)
      expect(verdict.after.colour).toBeCloseTo(colour, 6)
    }
  })
})

describe('any cure that a drill offers', () => {
  it('never makes it worse in silence', () => {
    let worsened = 0
    for (const drill of drills) {
      const before = offFrom(drill.ticket, drill.press)
      expect(before.colour >= noticedDifference || before.torn > 0.005).toBe(true)
      for (const cure of curesFor(drill)) {
        const verdict = judgeCure(drill, [cure])
        const after = offFrom(drill.ticket, verdict.press)
        const isWorse = after.colour > before.colour + worseBy.colour || after.torn > before.torn + worseBy.torn
        expect(verdict.worse).toBe(isWorse)
        if (isWorse) worsened++
      }
    }
    // The check would prove nothing if no cure ever did.
    expect(worsened).toBeGreaterThan(10)
  })

  it('carries its cautions, the last always that this is a teaching model', () => {
    for (const drill of drills) {
      for (const cure of curesFor(drill)) {
        expect(cautionsOf(cure).at(-1)).toBe('teaching-model')
        expect(judgeCure(drill, [cure]).cautions).toEqual(cautionsOf(cure))
      }
    }
  })

  it('tells its side effects: a slower press puts out less', () => {
    for (const drill of drills) {
      const { sideEffects, atTheRoot } = judgeCure(drill, [{ kind: 'remedy', remedy: 'slow down', unit: null }])
      expect(sideEffects.map(({ name }) => name)).toContain('speed')
      expect(atTheRoot).toBe(false)
    }
  })

  it('is idle where there is nothing to put right and nothing misleads', () => {
    const drill = drills.find(({ offered }) => offered.some(({ kind }) => kind === 'paper weak'))
    const cause = { kind: 'paper weak', unit: null } as const
    const isFault = drill?.faults.some(({ kind }) => kind === 'paper weak')
    if (!drill || isFault) throw new Error('the seeds no longer hold such a drill; choose others')
    expect(judgeCure(drill, [{ kind: 'put right', cause }]).idle).toBe(true)
  })
})
