import { describe, expect, it } from 'vitest'
import { liftedShares } from '../../src/press/readings.ts'
import { numbersOf, readSceneNumber } from '../../src/session/scene-number.ts'
import { Session } from '../../src/session/session.ts'

function reversed(): Session {
  const session = new Session()
  session.change({ kind: 'take scenario', scenario: 'reversed' })
  return session
}

describe('the number of a scene', () => {
  it('is the mass trap of two inks, whichever of them prints first', () => {
    for (const session of [new Session(), reversed()]) {
      const names = session.setUp.inks.map(({ name }) => name)
      const read = readSceneNumber(session, { of: 'trap', ink: 'black', below: 'yellow' })
      const [earlier, later] = [names.indexOf('black'), names.indexOf('yellow')].toSorted((a, b) => a - b)
      const trap = session.results.readings.traps.find((each) => each.earlier === earlier && each.later === later)
      expect(read).toMatchObject({ ink: names[later], below: names[earlier], value: trap?.massTrap })
    }
  })

  it('is what stays of an ink in the patch looked at, against bare paper', () => {
    const session = new Session()
    const { films, onBare } = session.results.readings
    expect(readSceneNumber(session, { of: 'kept', ink: 'cyan' })?.value).toBe(films[0b1111][1] / onBare[1])
    session.lookWith({ leftOut: ['black', 'magenta', 'yellow'] })
    expect(readSceneNumber(session, { of: 'kept', ink: 'cyan' })?.value).toBe(films[0b0010][1] / onBare[1])
    expect(readSceneNumber(session, { of: 'kept', ink: 'black' })).toBeNull()
    expect(readSceneNumber(session, { of: 'film', ink: 'cyan' })?.value).toBe(films[0b0010][1])
  })

  it('is the most that is lifted at the unit looked at, and none at the first', () => {
    const session = reversed()
    const lifted = liftedShares(session.results.accounts(session.patch)[3])
    const most = Math.max(...lifted)
    expect(readSceneNumber(session, { of: 'lifted' })).toMatchObject({
      value: most,
      ink: session.setUp.inks[lifted.indexOf(most)].name,
      unit: 4,
    })
    session.play({ kind: 'look at unit', unit: 0 })
    expect(readSceneNumber(session, { of: 'lifted' })).toBeNull()
  })

  it('is not there where the ink is not', () => {
    const session = new Session()
    for (const of of ['trap', 'kept', 'film', 'contamination'] as const)
      expect(readSceneNumber(session, { of, ink: 'reed green', below: 'cyan' })).toBeNull()
  })

  it('can be had of everything a set-up offers', () => {
    const session = reversed()
    const offered = numbersOf(session.setUp)
    expect(offered).toHaveLength(6 + 4 + 4 + 1 + 1 + 4)
    for (const number of offered) expect(readSceneNumber(session, number)?.value).toBeGreaterThanOrEqual(0)
  })
})
