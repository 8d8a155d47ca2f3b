import { describe, expect, it } from 'vitest'
import type { Study } from '../../src/measure/study.ts'
import { study } from '../../src/measure/study.ts'
import { RunDesk } from '../../src/session/run-desk.ts'
import type { startStudy } from '../../src/session/studying.ts'
import { checkSetUp } from '../press/legal-setups.ts'

const setUp = checkSetUp([16, 14, 12])
const [first] = setUp.inks.map(({ name }) => name)

/** Studies that go on only when told to. */
function studies() {
  const running: { go: () => void; asked: Study; cancelled: boolean }[] = []
  const start = ((asked: Study, told: { step: (share: number) => void; done: (found: unknown) => void }) => {
    const here = { asked, cancelled: false, go: (): void => undefined }
    here.go = () => {
      const steps = study(asked)
      let step = steps.next()
      while (!step.done) {
        if (here.cancelled) return
        told.step(step.value)
        step = steps.next()
      }
      told.done(step.value)
    }
    running.push(here)
    return () => (here.cancelled = true)
  }) as unknown as typeof startStudy
  return { start, running }
}

describe('the long run of a session', () => {
  it('is printed with its events in the order of their sheets', () => {
    const { start, running } = studies()
    const desk = new RunDesk(start)
    const shares: number[] = []
    desk.ask({ sheets: 400 })
    desk.ask({
      asked: [
        { kind: 'stop', sheet: 300 },
        { kind: 'wash-up', sheet: 100, ink: first },
      ],
    })
    desk.start(setUp)
    desk.subscribe(() => shares.push(desk.state.share ?? 1))
    running[0].go()
    const { printed } = desk.state
    expect(printed?.events).toEqual([
      { kind: 'wash-up', sheet: 100, unit: 0 },
      { kind: 'stop', sheet: 300 },
    ])
    expect(printed?.rows.at(0)?.sheet).toBe(1)
    expect(printed?.rows.at(-1)?.sheet).toBe(400)
    expect(shares).toEqual(shares.toSorted((a, b) => a - b))
    expect(desk.state.share).toBeNull()
  })

  it('refuses an event of an ink that is not loaded, in words, and starts nothing', () => {
    const { start, running } = studies()
    const desk = new RunDesk(start)
    desk.ask({ asked: [{ kind: 'wash-up', sheet: 100, ink: 'an ink that is not loaded' }] })
    desk.start(setUp)
    expect(running).toHaveLength(0)
    expect(desk.state.problem?.message).toContain('is no loaded ink')
  })

  it('calls the last run off when another is started, and keeps what was printed when it is cancelled', () => {
    const { start, running } = studies()
    const desk = new RunDesk(start)
    desk.ask({ sheets: 50 })
    desk.start(setUp)
    desk.start(setUp)
    expect(running.map(({ cancelled }) => cancelled)).toEqual([true, false])
    running[1].go()
    const { printed } = desk.state
    desk.start(setUp)
    desk.cancel()
    running[2].go()
    expect(desk.state.printed).toBe(printed)
    expect(desk.state.share).toBeNull()
  })
})
