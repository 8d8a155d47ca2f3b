import { describe, expect, it } from 'vitest'
import { writeFile, readFile } from '../../src/session/file.ts'
import { nothingSaved } from '../../src/session/saved.ts'
import { Session } from '../../src/session/session.ts'
import { trialsOf } from '../../src/session/trials.ts'

const said = (name: string) => ({ name, note: `seen in ${name}`, prediction: `expected of ${name}` })

describe('the trials of a session', () => {
  it('pin what is on the bench, and stay as they are when the bench goes on', () => {
    const session = new Session()
    const trials = trialsOf(session)
    trials.pin(session, said('one'))
    const { results } = session
    session.change({ kind: 'take scenario', scenario: 'reversed' })
    trials.pin(session, said('two'))
    const [one, two] = trials.list
    expect(trials.results(one)).toBe(results)
    expect(trials.results(two)).toBe(session.results)
    expect(one.setUp.inks.map(({ name }) => name)).toEqual(two.setUp.inks.map(({ name }) => name).toReversed())
  })

  it('are one list for a session, and another for another', () => {
    const [a, b] = [new Session(), new Session()]
    trialsOf(a).pin(a, said('one'))
    expect(trialsOf(a).list).toHaveLength(1)
    expect(trialsOf(b).list).toHaveLength(0)
  })

  it('are changed and taken away row by row, and tell so', () => {
    const session = new Session()
    const trials = trialsOf(session)
    let told = 0
    const stop = trials.subscribe(() => told++)
    for (const name of ['one', 'two', 'three']) trials.pin(session, said(name))
    trials.edit(1, { note: 'another note' })
    trials.remove(0)
    expect(trials.list.map(({ name, note }) => `${name}: ${note}`)).toEqual([
      'two: another note',
      'three: seen in three',
    ])
    expect(told).toBe(5)
    stop()
    trials.remove(0)
    expect(told).toBe(5)
  })

  it('come back from a file with what was expected of them, and print the same again', () => {
    const session = new Session()
    const trials = trialsOf(session)
    session.change({ kind: 'take scenario', scenario: 'weak' })
    trials.pin(session, said('one'))
    const opened = readFile(writeFile({ ...nothingSaved, trials: trials.list }))
    if (!('saved' in opened)) throw new Error(opened.refused.message)
    expect(opened.problems).toEqual([])
    expect(opened.saved.trials).toEqual(trials.list)
    const again = trialsOf(new Session())
    again.take(opened.saved.trials)
    expect(again.results(again.list[0])?.readings).toEqual(trials.results(trials.list[0])?.readings)
  })

  it('print no sheet that would hold up the page', () => {
    const session = new Session()
    const trials = trialsOf(session)
    trials.take([{ name: 'far', note: '', readings: [], setUp: { ...session.setUp, reading: { sheet: 100_000 } } }])
    expect(trials.results(trials.list[0])).toBeNull()
  })
})
