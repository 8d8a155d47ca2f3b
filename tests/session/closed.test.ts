import { expect, test } from 'vitest'
import { controls } from '../../src/lesson/control.ts'
import { Session } from '../../src/session/session.ts'
import { writeSetUp } from '../../src/session/write-setup.ts'

test('a closed control refuses its change in words, and the open ones go on', () => {
  const session = new Session()
  session.lookWith({ closed: ['tack', 'order', 'sheet'] })
  const before = session.setUp
  const [problem] = session.change({ kind: 'edit ink', unit: 0, field: 'tack', value: 12.5 })
  expect(problem.message).toMatch(/lesson keeps this/)
  expect(session.change({ kind: 'move ink', from: 0, to: 1 })).toHaveLength(1)
  expect(session.setUp).toBe(before)
  expect(session.change({ kind: 'edit ink', unit: 0, field: 'film', value: 3 })).toEqual([])
  expect(session.setUp.inks[0].film).toBe(3)
})

test('with every control closed the lesson itself can still load a set-up', () => {
  const session = new Session()
  session.lookWith({ closed: controls })
  const written = writeSetUp(session.setUp)
  const given = { ...written, inks: written.inks.toReversed() }
  expect(session.change({ kind: 'load', given })).toEqual([])
  expect(session.setUp.inks.map(({ name }) => name)).toEqual(given.inks.map(({ name }) => name))
})

test('playing over the last unit leaves the sheet alone where the sheet is closed', () => {
  const session = new Session()
  const { reading } = session.setUp
  session.lookWith({ closed: ['sheet'] })
  session.play({ kind: 'look at unit', unit: session.setUp.inks.length - 1 })
  session.play({ kind: 'scrub', phase: 1 })
  session.play({ kind: 'step nip', atOnce: true })
  expect(session.setUp.reading).toEqual(reading)
})
