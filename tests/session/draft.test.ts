import fc from 'fast-check'
import { describe, expect, test, vi } from 'vitest'
import { checkSetUp } from '../../src/press/check-setup.ts'
import type { OpenedDraft } from '../../src/session/draft.ts'
import { draftDelay, draftsKept } from '../../src/session/draft.ts'
import { DraftShelf } from '../../src/session/draft-shelf.ts'
import { writeFile } from '../../src/session/file.ts'
import { nothingSaved } from '../../src/session/saved.ts'
import { scenarios } from '../../src/session/scenarios.ts'
import { FakeBrowser } from './fake-browser.ts'

/** ms: enough for a poor machine with other things to do. */
vi.setConfig({ testTimeout: 60_000 })

/** The file of a set-up with this seed, by which it is known again. */
function fileOf(seed: number): string {
  const checked = checkSetUp({ ...scenarios.descending, seed })
  if ('problems' in checked) throw new Error(checked.problems[0].message)
  return writeFile({ ...nothingSaved, setUp: checked.setUp })
}

function seedIn(opened: OpenedDraft): number | undefined {
  return opened.kind === 'draft' ? opened.opened.saved.setUp?.seed : undefined
}

describe('a draft', () => {
  test('is written a moment after the last change, read back, and there again after a reload', async () => {
    const browser = new FakeBrowser()
    const first = browser.tab()
    expect((await first.draft.open()).kind).toBe('none')
    expect(first.draft.state).toBe('not saved')
    for (let seed = 1; seed <= 5; seed++) {
      first.draft.keep(() => fileOf(seed))
      browser.wait(draftDelay / 2)
    }
    expect(browser.storage.entries.size).toBe(0)
    browser.wait(draftDelay)
    expect(first.states).toEqual(['saved'])
    first.draft.keep(() => fileOf(6))
    expect(first.draft.state).toBe('not saved')
    first.close()
    expect(first.draft.state).toBe('saved')

    const reloaded = browser.tab(first.remembered)
    const opened = await reloaded.draft.open()
    expect(seedIn(opened)).toBe(6)
    expect(opened).toMatchObject({ savedAt: browser.now, opened: { problems: [] } })
  })

  test('of a tab that is gone is taken up by a new one, the newest first, and lives until its copy is saved', async () => {
    const browser = new FakeBrowser()
    for (const seed of [1, 2]) {
      const tab = browser.tab()
      await tab.draft.open()
      tab.draft.keep(() => fileOf(seed))
      browser.wait(draftDelay)
      // Both are gone before the third comes, so that neither takes up the other's.
      if (seed === 2) tab.close()
      else browser.held.add('tab1')
    }
    browser.held.clear()
    const next = browser.tab()
    expect(seedIn(await next.draft.open())).toBe(2)
    expect(browser.storage.entries.size).toBe(2)
    next.draft.keep(() => fileOf(3))
    browser.wait(draftDelay)
    expect(browser.storage.entries.size).toBe(2)
    next.close()
    expect(seedIn(await browser.tab().draft.open())).toBe(3)
  })

  test('is forgotten when asked to', async () => {
    const browser = new FakeBrowser()
    const tab = browser.tab()
    await tab.draft.open()
    tab.draft.keep(() => fileOf(1))
    browser.wait(draftDelay)
    tab.draft.forget()
    expect(browser.storage.entries.size).toBe(0)
  })

  test('gives way only when more than a few newer ones are kept', async () => {
    const browser = new FakeBrowser()
    const shelf = new DraftShelf(browser.storage)
    for (let seed = 1; seed <= draftsKept + 3; seed++) {
      shelf.write(`old${seed}`, JSON.stringify({ savedAt: seed, file: fileOf(seed) }))
    }
    expect(seedIn(await browser.tab().draft.open())).toBe(draftsKept + 3)
    expect(shelf.ids()).toEqual(Array.from({ length: draftsKept }, (_, index) => `old${index + 4}`))
  })
})

describe('two tabs', () => {
  test('each keep a draft of their own, also where one is a copy of the other', async () => {
    const browser = new FakeBrowser()
    const first = browser.tab()
    await first.draft.open()
    first.draft.keep(() => fileOf(1))
    browser.wait(draftDelay)
    const copied = browser.tab({ ...first.remembered })
    await copied.draft.open()
    copied.draft.keep(() => fileOf(2))
    first.draft.keep(() => fileOf(3))
    browser.wait(draftDelay)
    first.close()
    copied.close()
    expect(seedIn(await browser.tab(first.remembered).draft.open())).toBe(3)
    expect(seedIn(await browser.tab(copied.remembered).draft.open())).toBe(2)
  })

  test.each([true, false])('never lose what was saved last, in any order of doings (locks: %s)', async (hasLocks) => {
    const doing = fc.record({ tab: fc.nat(2), what: fc.constantFrom('keep', 'wait', 'flush', 'reload', 'copy') })
    await fc.assert(
      fc.asyncProperty(fc.array(doing, { maxLength: 30 }), async (doings) => {
        const browser = new FakeBrowser()
        browser.hasLocks = hasLocks
        const tabs = [browser.tab(), browser.tab(), browser.tab()]
        const lastSeed = new Map<number, number>()
        for (const tab of tabs) await tab.draft.open()
        for (const [seed, { tab, what }] of doings.entries()) {
          if (what === 'keep') {
            tabs[tab].draft.keep(() => fileOf(seed))
            lastSeed.set(tab, seed)
          } else if (what === 'wait') browser.wait(draftDelay)
          else if (what === 'flush') tabs[tab].draft.flush()
          else if (what === 'reload') {
            tabs[tab].close()
            tabs[tab] = browser.tab(tabs[tab].remembered)
            const opened = await tabs[tab].draft.open()
            if (lastSeed.has(tab)) expect(seedIn(opened)).toBe(lastSeed.get(tab))
          } else {
            const other = (tab + 1) % 3
            tabs[other].close()
            tabs[other] = browser.tab({ ...tabs[tab].remembered })
            await tabs[other].draft.open()
            // It may show what another tab saved, but has saved nothing yet itself.
            lastSeed.delete(other)
          }
        }
        // Whatever a tab saved last is still kept, under some id.
        for (const { draft } of tabs) draft.flush()
        const kept = [...browser.storage.entries.values()].join('\n')
        for (const [tab, seed] of lastSeed) {
          if (tabs[tab].draft.state === 'saved') expect(kept).toContain(`\\"seed\\": ${seed}\\n`)
        }
      }),
      { numRuns: 400, endOnFailure: true },
    )
  })
})

describe('a draft that cannot be kept or read', () => {
  test('says so where the storage is full, and what was saved before stays', async () => {
    const browser = new FakeBrowser()
    const tab = browser.tab()
    await tab.draft.open()
    tab.draft.keep(() => fileOf(1))
    browser.wait(draftDelay)
    browser.storage.room = 10
    tab.draft.keep(() => fileOf(2))
    browser.wait(draftDelay)
    expect(tab.states).toEqual(['saved', 'not saved', 'storage full'])
    tab.close()
    expect(seedIn(await browser.tab(tab.remembered).draft.open())).toBe(1)
    browser.storage.room = 1_000_000
    tab.draft.keep(() => fileOf(3))
    browser.wait(draftDelay)
    expect(tab.draft.state).toBe('saved')
  })

  test.each([
    ['is blocked', { blocked: true }, true, 'storage blocked'],
    ['is not there', {}, false, 'storage blocked'],
    ['has no room at all, as in some private windows', { room: 0 }, true, 'private'],
  ])('says so where the storage %s, and the page goes on', async (_, spoilt, hasStorage, state) => {
    const browser = new FakeBrowser()
    browser.hasStorage = hasStorage
    Object.assign(browser.storage, spoilt)
    const tab = browser.tab()
    expect((await tab.draft.open()).kind).toBe('none')
    expect(tab.draft.state).toBe(state)
    tab.draft.keep(() => fileOf(1))
    browser.wait(draftDelay)
    expect(tab.draft.state).not.toBe('saved')
    tab.draft.forget()
  })

  test('is not called saved where the storage loses what it is given', async () => {
    const browser = new FakeBrowser()
    browser.storage.forgetful = true
    const tab = browser.tab()
    await tab.draft.open()
    tab.draft.keep(() => fileOf(1))
    browser.wait(draftDelay)
    expect(tab.draft.state).toBe('storage blocked')
  })

  test.each([
    ['a record cut off in the middle', '{"savedAt": 12, "file": "{', '{"savedAt": 12, "file": "{', 'damaged'],
    [
      'the file of a newer version',
      JSON.stringify({ savedAt: 1, file: '{"format":"tackstair","version":9}' }),
      '{"format":"tackstair","version":9}',
      'newer version',
    ],
    ['no record', '"x"', '"x"', 'damaged'],
  ])('is set aside where it is %s, with one sentence and a fresh start', async (_, text, aside, reason) => {
    const browser = new FakeBrowser()
    new DraftShelf(browser.storage).write('old', text)
    const tab = browser.tab({ id: 'old' })
    const opened = await tab.draft.open()
    expect(opened).toEqual({ kind: 'unreadable', reason: expect.stringContaining(reason) as string })
    expect(tab.draft.setAside).toBe(aside)
    tab.draft.keep(() => fileOf(1))
    browser.wait(draftDelay)
    tab.close()
    const next = browser.tab(tab.remembered)
    expect(seedIn(await next.draft.open())).toBe(1)
    expect(next.draft.setAside).toBe(aside)
    next.draft.dropSetAside()
    expect(next.draft.setAside).toBeNull()
  })
})
