import { expect, test } from 'vitest'
import { deskOf } from '../../src/session/desk.ts'
import { draftDelay } from '../../src/session/draft.ts'
import { keepDraft } from '../../src/session/keep-draft.ts'
import { lectureOf } from '../../src/session/lecture.ts'
import { benchForScene } from '../../src/session/scene-session.ts'
import { Session } from '../../src/session/session.ts'
import { snapshot } from '../../src/session/snapshot.ts'
import { trialsOf } from '../../src/session/trials.ts'
import type { ViewName } from '../../src/session/view-state.ts'
import { FakeBrowser } from './fake-browser.ts'

test('whatever is done on the bench, the desk, the lecture or the trials is there again after a reload', async () => {
  const browser = new FakeBrowser()
  const tab = browser.tab()
  const session = new Session()
  await keepDraft(session, tab.draft)
  const doings = [
    () => session.change({ kind: 'move ink', from: 0, to: 3 }),
    () => session.lookWith({ leftOut: ['cyan'], face: 'marks' }),
    () => session.play({ kind: 'look at unit', unit: 1 }),
    () => deskOf(session).set({ readings: [{ patch: 'black', red: '1.7' }] }),
    () => trialsOf(session).pin(session, { name: 'moved', note: '', prediction: 'worse' }),
    () => lectureOf(session).add({ name: 'moved', note: 'look here', ...benchForScene(session), waits: true }),
    () => session.undo(),
  ]
  for (const doing of doings) {
    doing()
    expect(tab.draft.state).toBe('not saved')
    browser.wait(draftDelay)
    expect(tab.draft.state).toBe('saved')
  }
  tab.close()

  const again = new Session()
  const { found } = await keepDraft(again, browser.tab(tab.remembered).draft)
  expect(found.kind).toBe('draft')
  expect(snapshot(again)).toEqual(snapshot(session))
})

test('while a lesson has the bench, the draft keeps what is the person’s own', async () => {
  const browser = new FakeBrowser()
  const tab = browser.tab()
  const session = new Session()
  await keepDraft(session, tab.draft)
  session.change({ kind: 'seed', seed: 7 })
  session.lend()
  session.change({ kind: 'take scenario', scenario: 'reversed' })
  session.lookWith({ leftOut: ['cyan'] })
  browser.wait(draftDelay)
  tab.close()

  const again = new Session()
  // The lesson may have been opened again before the draft is found.
  const opening = keepDraft(again, browser.tab(tab.remembered).draft)
  again.lend()
  await opening
  expect(again.setUp.seed).toBe(7)
  expect(again.setUp.inks.map(({ name }) => name)).toEqual(['black', 'cyan', 'magenta', 'yellow'])
  expect(again.look.leftOut).toEqual([])
})

test('what the address asks to look at goes before what the draft looked at, and the rest of the draft stays', async () => {
  const browser = new FakeBrowser()
  const tab = browser.tab()
  const session = new Session()
  await keepDraft(session, tab.draft)
  session.change({ kind: 'seed', seed: 7 })
  session.lookWith({ view: 'strip', leftOut: ['cyan'], face: 'marks' })
  browser.wait(draftDelay)
  tab.close()

  const again = new Session()
  let view: ViewName = 'glossary'
  const opening = keepDraft(again, browser.tab(tab.remembered).draft, { asked: () => ({ view }) })
  // The person has gone on by the time the draft is found.
  view = 'orders'
  await opening
  expect(again.setUp.seed).toBe(7)
  expect(again.look).toMatchObject({ view: 'orders', leftOut: ['cyan'], face: 'marks' })
})

test('where no draft is found, what is looked at meanwhile stays', async () => {
  const session = new Session()
  const opening = keepDraft(session, new FakeBrowser().tab().draft, { asked: () => ({ view: 'lessons' }) })
  session.lend()
  session.lookWith({ leftOut: ['cyan'] })
  session.play({ kind: 'look at unit', unit: 1 })
  await opening
  expect(session.look.leftOut).toEqual(['cyan'])
  expect(session.playback.unit).toBe(1)
})

test('a press that plays writes nothing, and an ended tie neither', async () => {
  const browser = new FakeBrowser()
  const tab = browser.tab()
  const session = new Session()
  const tie = await keepDraft(session, tab.draft)
  session.change({ kind: 'read', reading: 'settled' })
  browser.wait(draftDelay)
  session.play({ kind: 'play' })
  browser.wait(draftDelay)
  for (let frame = 0; frame < 200; frame++) session.play({ kind: 'tick', seconds: 0.1 })
  expect(tab.draft.state).toBe('saved')
  tie.end()
  session.change({ kind: 'seed', seed: 5 })
  expect(tab.draft.state).toBe('saved')
})

test('a draft stays where a link goes before it, and what is kept beside the session is kept too', async () => {
  const browser = new FakeBrowser()
  const tab = browser.tab()
  const first = await keepDraft(new Session(), tab.draft, { beside: () => ({ settings: { theme: 'dark' } }) })
  first.changed()
  tab.close()
  const session = new Session()
  session.change({ kind: 'seed', seed: 9 })
  const { found } = await keepDraft(session, browser.tab(tab.remembered).draft, { takeUp: false })
  expect(session.setUp.seed).toBe(9)
  if (found.kind !== 'draft') throw new Error('No draft was found.')
  expect(found.opened.saved.settings).toEqual({ theme: 'dark' })
  expect(found.opened.saved.setUp?.seed).toBe(1)
})

test('what has been done before the draft was found is not undone by it, and is kept', async () => {
  const browser = new FakeBrowser()
  const tab = browser.tab()
  const tie = await keepDraft(new Session(), tab.draft)
  tie.changed()
  tab.close()
  const session = new Session()
  const next = browser.tab(tab.remembered)
  const opening = keepDraft(session, next.draft)
  session.change({ kind: 'take scenario', scenario: 'reversed' })
  expect((await opening).found.kind).toBe('draft')
  expect(session.scenario.name).toBe('reversed')

  // Nor is it lost where nothing more is done.
  browser.wait(draftDelay)
  expect(next.draft.state).toBe('saved')
  next.close()
  const again = new Session()
  await keepDraft(again, browser.tab(next.remembered).draft)
  expect(again.setUp).toEqual(session.setUp)
})

test('a trial pinned before the draft was found is not replaced by those of the draft', async () => {
  const browser = new FakeBrowser()
  const tab = browser.tab()
  const first = new Session()
  await keepDraft(first, tab.draft)
  const pin = (session: Session, name: string) =>
    trialsOf(session).pin(session, { name, note: '', prediction: 'worse' })
  pin(first, 'of before')
  browser.wait(draftDelay)
  tab.close()
  const session = new Session()
  const opening = keepDraft(session, browser.tab(tab.remembered).draft)
  pin(session, 'of now')
  await opening
  expect(trialsOf(session).list.map(({ name }) => name)).toEqual(['of now'])
})
