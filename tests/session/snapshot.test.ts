import fc from 'fast-check'
import { expect, test, vi } from 'vitest'
import { emptyShelf } from '../../src/measure/shelf.ts'
import { deskOf } from '../../src/session/desk.ts'
import { readFile, writeFile } from '../../src/session/file.ts'
import { lectureOf } from '../../src/session/lecture.ts'
import { readLink, writeLink } from '../../src/session/link.ts'
import { nothingSaved } from '../../src/session/saved.ts'
import { benchForScene } from '../../src/session/scene-session.ts'
import { Session } from '../../src/session/session.ts'
import { restore, showView, snapshot, viewOf } from '../../src/session/snapshot.ts'
import { trialsOf } from '../../src/session/trials.ts'
import { anyChange } from './any-change.ts'
import { anyView } from './any-linked.ts'

/** ms: enough for a poor machine with other things to do. */
vi.setConfig({ testTimeout: 60_000 })

/** A session in some state of use. */
const used = fc
  .tuple(fc.array(anyChange, { maxLength: 10 }), anyView(8))
  .map(([changes, view]) => ({ changes: changes.filter(({ kind }) => kind !== 'load'), view }))

async function inUse({
  changes,
  view,
}: {
  changes: Parameters<Session['change']>[0][]
  view: Parameters<typeof showView>[1]
}) {
  const session = new Session()
  for (const change of changes) session.change(change)
  await showView(session, view)
  return session
}

test('a link brings another session to the same set-up and view', async () => {
  await fc.assert(
    fc.asyncProperty(used, async (use) => {
      const session = await inUse(use)
      const { text, roundedTo } = writeLink(session.setUp, viewOf(session))
      fc.pre(roundedTo === null)
      const link = readLink(text)
      if (!link) throw new Error('The text was not taken for a link.')
      expect(link.problems).toEqual([])
      const other = new Session()
      expect(await restore(other, { ...nothingSaved, setUp: link.setUp, view: link.view })).toEqual([])
      expect(other.setUp).toEqual(session.setUp)
      expect(other.patch).toBe(session.patch)
      expect(other.playback.unit).toBe(session.playback.unit)
      expect(viewOf(other)).toEqual(viewOf(session))
    }),
    { numRuns: 60, endOnFailure: true },
  )
})

test('a file brings another session to the same set-up, view, lecture, trials and desk', async () => {
  await fc.assert(
    fc.asyncProperty(used, async (use) => {
      const session = await inUse(use)
      trialsOf(session).pin(session, { name: 'first try', note: 'too much lifted', prediction: 'it will take' })
      lectureOf(session).add({ name: 'One order', note: 'slowly', ...benchForScene(session), plays: true })
      const shelf = { ...emptyShelf, inks: session.setUp.inks.slice(0, 1) }
      const file = { name: 'sheet.csv', text: 'patch,red,green,blue\r\nblack,1.7,1.7,1.7\r\n' }
      deskOf(session).set({ readings: [{ patch: 'black', red: '1,7' }], file, shelf })
      const result = readFile(writeFile(snapshot(session)))
      if ('refused' in result) throw new Error(result.refused.message)
      expect(result.problems).toEqual([])
      const other = new Session()
      expect(await restore(other, result.saved)).toEqual([])
      expect(snapshot(other)).toEqual(snapshot(session))
    }),
    { numRuns: 60, endOnFailure: true },
  )
})

test('what is as it opens is left out of the view', () => {
  const session = new Session()
  expect(viewOf(session)).toEqual({})
  expect(writeLink(session.setUp, viewOf(session)).text).toBe(
    '#v=1&inks=black:16,cyan:14,magenta:12,yellow:10&sheet=first',
  )
})
