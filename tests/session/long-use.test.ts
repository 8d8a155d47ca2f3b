/** A day of use without a page: ten thousand steps to take back, and clocks that jump. */
import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { describe, expect, test } from 'vitest'
import { ActiveTime } from '../../src/session/active-time.ts'
import { draftDelay } from '../../src/session/draft.ts'
import { writeFile } from '../../src/session/file.ts'
import { stepsKept } from '../../src/session/history.ts'
import { Lecture } from '../../src/session/lecture.ts'
import type { Playback } from '../../src/session/playback.ts'
import { play } from '../../src/session/playback.ts'
import { nothingSaved } from '../../src/session/saved.ts'
import { Session } from '../../src/session/session.ts'
import { FakeBrowser } from './fake-browser.ts'

setFlagsFromString('--expose-gc')
const collect = runInNewContext('gc') as () => void

/** MB on the heap once what nobody holds is gone. */
function heap(): number {
  collect()
  return process.memoryUsage().heapUsed / 1e6
}

const steps = 10_000

function undone(thing: { canUndo: boolean; undo: () => void }): number {
  let count = 0
  for (; thing.canUndo; count++) thing.undo()
  return count
}

describe('ten thousand steps', () => {
  test('of the bench are forgotten beyond the last 200, which go back and forth, and leave nothing on the heap', () => {
    const session = new Session()
    const step = (n: number) => {
      expect(session.change({ kind: 'edit ink', unit: n % 4, field: 'tack', value: 5 + (n % 300) / 10 })).toEqual([])
      // The results are what is large: they are worked out for every step, as on the page.
      expect(session.results.run.setUp).toBe(session.setUp)
    }
    for (let n = 0; n < 1000; n++) step(n)
    const before = heap()
    for (let n = 1000; n < steps; n++) step(n)
    const grown = heap() - before
    expect(grown).toBeLessThan(2)
    const { setUp } = session
    expect(undone(session)).toBe(stepsKept)
    while (session.canRedo) session.redo()
    expect(session.setUp).toEqual(setUp)
    for (let n = 0; n < steps; n++) {
      if (n % 3 === 0) session.redo()
      else session.undo()
    }
    expect(undone(session)).toBeLessThanOrEqual(stepsKept)
  })

  test('of a lecture are too', () => {
    const lecture = new Lecture()
    const { setUp } = new Session()
    lecture.add({ name: 'first', note: '', setUp, view: {} })
    for (let n = 0; n < steps; n++) lecture.edit(0, { name: `${n}`, note: `${n}` })
    expect(lecture.scenes[0].name).toBe(`${steps - 1}`)
    expect(undone(lecture)).toBe(stepsKept)
  })
})

/** ms: back and forth by hours, a year, and by more than there are dates. */
const hour = 3_600_000
const jumps = [0, 20, -3 * hour, 5 * hour, 5 * hour + 16, -1e15, 9e15, 365 * 24 * hour, 0, 40, 60]

const { setUp } = new Session()

describe('a clock that jumps', () => {
  const playing: Playback = { unit: 1, phase: 0.4, playing: true, slow: false, stopsAfter: null }

  test('moves the sheet by one nip at most, never back, and never out of the press', () => {
    let now = playing
    jumps.slice(1).forEach((time, at) => {
      const { playback, sheets } = play(now, { kind: 'tick', seconds: (time - jumps[at]) / 1000 }, 4)
      expect(playback.phase).toBeGreaterThanOrEqual(0)
      expect(playback.phase).toBeLessThan(1)
      expect(sheets).toBeLessThanOrEqual(1)
      const passed = playback.unit - now.unit + 4 * sheets
      expect(passed === 0 ? playback.phase >= now.phase : passed === 1).toBe(true)
      now = playback
    })
  })

  test.each([-1, -1e9, NaN, -Infinity])('back (%d s) leaves the sheet where it is', (seconds) => {
    expect(play(playing, { kind: 'tick', seconds }, 4)).toEqual({ playback: playing, sheets: 0 })
  })

  test('counts no time that was not worked, and none below 0', () => {
    let now = 0
    const time = new ActiveTime(() => now)
    time.resume()
    for (const jump of jumps) {
      now = jump
      time.move()
      const seconds = time.take()
      expect(seconds).toBeGreaterThanOrEqual(0)
      expect(seconds).toBeLessThanOrEqual(600)
    }
    now = 60
    time.move()
    time.take()
    now = 1060
    expect(time.take()).toBe(1)
  })

  test('loses no draft: the last text kept is there after a reload', async () => {
    const browser = new FakeBrowser()
    let tab = browser.tab()
    await tab.draft.open()
    for (const [at, jump] of jumps.entries()) {
      tab.draft.keep(() => writeFile({ ...nothingSaved, scenes: [{ name: `${at}`, note: '', setUp, view: {} }] }))
      // Half of them wait for their timer, which then may never come; the page is left, and writes what waits.
      if (at % 2 === 0) browser.wait(draftDelay)
      browser.now = jump
      tab.close()
      tab = browser.tab(tab.remembered)
      const opened = await tab.draft.open()
      expect(opened.kind === 'draft' && opened.opened.saved.scenes[0].name).toBe(`${at}`)
    }
  })
})
