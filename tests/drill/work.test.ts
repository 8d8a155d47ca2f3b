import { describe, expect, it, vi } from 'vitest'
import { makeDrill } from '../../src/drill/drill.ts'
import { allEvidence } from '../../src/drill/evidence.ts'
import { enoughEvidence } from '../../src/drill/judge.ts'
import type { Work } from '../../src/drill/work.ts'
import { attemptOf, cure, diagnose, judgeWork, noWork, take } from '../../src/drill/work.ts'

/** ms: on a machine that may be busy with other things */
vi.setConfig({ testTimeout: 120_000 })

const drill = makeDrill({ seed: 30, level: 'medium' })
const [fault] = drill.faults
const enough = enoughEvidence(drill)
const taken = enough.reduce<Work>((work, piece) => take(work, piece), noWork)

describe('work on a drill', () => {
  it('keeps what was taken, once each, and averages what is read again', () => {
    const again = take(take(taken, enough[0], 3), enough[0], 50)
    expect(again.taken).toHaveLength(enough.length)
    expect(again.taken[0].readings).toBe(16)
    expect(taken.taken[0].readings).toBe(1)
  })

  it('is found, proven and cured with the right cause, enough evidence and the cause put right', () => {
    const done = cure(diagnose(taken, [fault], enough), { kind: 'put right', cause: fault })
    const verdict = judgeWork(drill, done)
    expect(verdict).toMatchObject({ found: true, proven: true, cured: true })
    expect(attemptOf(drill, verdict)).toEqual({ kind: fault.kind, found: true })
  })

  it('is found but not proven by evidence that was never taken', () => {
    const verdict = judgeWork(drill, diagnose(noWork, [fault], enough))
    expect(verdict).toMatchObject({ found: true, proven: false, cured: false })
    expect(attemptOf(drill, verdict).found).toBe(false)
  })

  it('is not found when a wrong cause is named, alone or beside the right one', () => {
    const { looksLike } = drill.misleading
    for (const causes of [[looksLike], [fault, looksLike]]) {
      const work = take(taken, allEvidence(drill.ticket)[0])
      expect(judgeWork(drill, diagnose(work, causes, enough))).toMatchObject({
        found: false,
        proven: false,
        cured: false,
      })
    }
  })

  it('touches nothing before there is a diagnosis', () => {
    const applied = cure(taken, { kind: 'put right', cause: fault })
    expect(applied.cures).toEqual([])
    expect(judgeWork(drill, applied)).toEqual({
      diagnosis: null,
      cure: null,
      found: false,
      proven: false,
      cured: false,
    })
  })

  it('goes through JSON unharmed', () => {
    const done = cure(diagnose(taken, [fault], enough), { kind: 'put right', cause: fault })
    expect(judgeWork(drill, JSON.parse(JSON.stringify(done)) as Work)).toEqual(judgeWork(drill, done))
  })
})
