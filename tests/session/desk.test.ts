import { expect, it } from 'vitest'
import { deskOf } from '../../src/session/desk.ts'
import { Session } from '../../src/session/session.ts'

it('is one for each session', () => {
  const [first, second] = [new Session(), new Session()]
  deskOf(first).set({ status: 'T' })
  expect(deskOf(first).state.status).toBe('T')
  expect(deskOf(second).state.status).toBe('E')
})

it('tells who listens, until they no longer do', () => {
  const desk = deskOf(new Session())
  let told = 0
  const stop = desk.subscribe(() => (told += 1))
  desk.set({ filter: 'blue' })
  stop()
  desk.set({ filter: null })
  expect(told).toBe(1)
})

it('changes nothing of the press', () => {
  const session = new Session()
  const before = session.setUp
  deskOf(session).set({ patchChosen: true, status: 'T', readings: [{ patch: 'cyan', red: '1,4' }] })
  expect(session.setUp).toBe(before)
  expect(session.canUndo).toBe(false)
})
