/** What is promised of every drill, held over 500 seeds, all levels in turn. */
import { describe, expect, it, vi } from 'vitest'
import { casebookOf, isNoticed } from '../../src/drill/casebook.ts'
import { causeKey, faultKinds } from '../../src/drill/cause.ts'
import { identifies, makeDrill } from '../../src/drill/drill.ts'
import { allEvidence, evidenceKinds, sheetEvidence } from '../../src/drill/evidence.ts'
import { levels } from '../../src/drill/level.ts'
import { problemsOf } from '../press/problems-of.ts'
import { solve } from './solver.ts'

/** ms: some seconds of work, on a machine that may be busy with other things */
vi.setConfig({ testTimeout: 120_000 })

const drills = Array.from({ length: 500 }, (_, seed) => makeDrill({ seed, level: levels[seed % levels.length] }))
const ofKinds = (drill: (typeof drills)[number], kinds: readonly string[]) =>
  allEvidence(drill.ticket).filter(({ kind }) => kinds.includes(kind))

describe('500 drills', () => {
  it('hide every kind of fault, and one fault or two by their level', () => {
    expect(new Set(drills.flatMap(({ faults }) => faults.map(({ kind }) => kind)))).toEqual(new Set(faultKinds))
    drills.forEach(({ faults, request }) => expect(faults).toHaveLength(request.level === 'hard' ? 2 : 1))
  })

  it('show on the sheet, and on a legal press', () => {
    for (const drill of drills) {
      expect(isNoticed(casebookOf(drill.job), drill.readings), String(drill.request.seed)).toBe(true)
      expect(problemsOf(drill.press)).toEqual([])
    }
  })

  it('offer the true causes and the one that the misleading reading speaks for, each once', () => {
    for (const { offered, faults, misleading } of drills) {
      const keys = offered.map(causeKey)
      expect(new Set(keys).size).toBe(keys.length)
      expect(keys).toEqual(expect.arrayContaining([...faults, misleading.looksLike].map(causeKey)))
      expect(faults.map(causeKey)).not.toContain(causeKey(misleading.looksLike))
    }
  })

  it('can be solved: all evidence rules out every other explanation by 5 standard deviations', () => {
    expect(drills.filter((drill) => !identifies(drill, allEvidence(drill.ticket)))).toEqual([])
  })

  it('need two different kinds of evidence in at least half of all cases', () => {
    const needTwo = drills.filter((drill) => !evidenceKinds.some((kind) => identifies(drill, ofKinds(drill, [kind]))))
    expect(needTwo.length).toBeGreaterThanOrEqual(250)
  })

  it('are told by the sheet alone, even with loupe and densitometer, in fewer than half', () => {
    const bySheet = drills.filter((drill) => identifies(drill, ofKinds(drill, sheetEvidence)))
    expect(bySheet.length).toBeLessThan(250)
    const byEye = drills.filter((drill) => identifies(drill, ofKinds(drill, ['eye'])))
    expect(byEye.length).toBeLessThanOrEqual(bySheet.length)
  })

  it('are solved from noisy readings by a plain Bayesian in at least 95 of 100', () => {
    const solved = drills.filter((drill) => {
      const [first] = solve(drill, allEvidence(drill.ticket))
      return first.causes.map(causeKey).sort().join() === drill.faults.map(causeKey).sort().join()
    })
    expect(solved.length).toBeGreaterThanOrEqual(475)
  })

  it('leave it in doubt in more than half of all cases when it only compares the sheets by eye', () => {
    const sure = drills.filter((drill) => {
      const [{ causes, share }] = solve(drill, ofKinds(drill, ['eye']))
      return share >= 0.95 && causes.every((cause) => drill.faults.some((fault) => causeKey(fault) === causeKey(cause)))
    })
    expect(sure.length).toBeLessThan(250)
  })

  it('leave it in doubt in more than half of all cases by everything that is on the sheet', () => {
    const sure = drills.filter((drill) => {
      const [{ causes, share }] = solve(drill, ofKinds(drill, sheetEvidence))
      return share >= 0.95 && causes.every((cause) => drill.faults.some((fault) => causeKey(fault) === causeKey(cause)))
    })
    expect(sure.length).toBeLessThan(250)
  })

  it('were found without many draws', () => {
    expect(Math.max(...drills.map(({ drawnBefore }) => drawnBefore))).toBeLessThan(100)
  })
})
