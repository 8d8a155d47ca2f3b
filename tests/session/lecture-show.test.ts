import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { printsIn } from '../../src/press/patches.ts'
import type { Show, ShowEvent } from '../../src/session/lecture-show.ts'
import { ahead, pressesOf, seenAfter, startShow, step } from '../../src/session/lecture-show.ts'
import type { Scene } from '../../src/session/scene.ts'
import { benchForScene, openScene, restingPhase } from '../../src/session/scene-session.ts'
import { openingPhase } from '../../src/session/playback.ts'
import { Session } from '../../src/session/session.ts'

const bench = benchForScene(new Session())
const plain: Scene = { name: 'plain', note: '', ...bench }
const number = { of: 'picked' } as const
const staged: Scene = { ...plain, name: 'staged', number, plays: true, waits: true }

const press = (show: Show, scenes: readonly Scene[], ...kinds: ('next' | 'back')[]) =>
  kinds.reduce((at, kind) => step(at, { kind }, scenes), show)

describe('a scene', () => {
  it('takes a press for the nip and one for a number that waits, where there are such', () => {
    expect(pressesOf(plain)).toEqual([])
    expect(pressesOf(staged)).toEqual(['nip', 'number'])
    expect(pressesOf({ ...staged, picture: 'ladder' })).toEqual(['number'])
    expect(pressesOf({ ...plain, plays: true, waits: true })).toEqual(['nip'])
  })

  it('shows its number at once, with the nip, or at its own press', () => {
    expect(seenAfter({ ...plain, number }, 0)).toEqual({ nip: true, number: true })
    const played = { ...plain, number, plays: true }
    expect([0, 1].map((made) => seenAfter(played, made).number)).toEqual([false, true])
    expect([0, 1, 2].map((made) => seenAfter(staged, made))).toEqual([
      { nip: false, number: false },
      { nip: true, number: false },
      { nip: true, number: true },
    ])
    expect(seenAfter(plain, 0).number).toBe(false)
  })

  it('rests before the nip, after it, or where its films are seen best', () => {
    expect([0, 1, 2].map((made) => restingPhase(staged, made))).toEqual([0, 1, 1])
    expect(restingPhase(plain, 0)).toBe(openingPhase)
    expect(restingPhase({ ...plain, picture: 'loupe' }, 0)).toBe(1)
  })
})

describe('the keys of a clicker', () => {
  const scenes = [plain, staged, plain]

  it('lead through every press of every scene and stop at the last', () => {
    const seen = [startShow(0)]
    while (ahead(seen[seen.length - 1], scenes) !== 'end') seen.push(press(seen[seen.length - 1], scenes, 'next'))
    expect(seen.map(({ at, press: made }) => [at, made])).toEqual([[0, 0], [1, 0], [1, 1], [1, 2], [2, 0]]) // prettier-ignore
    expect(seen.map((show) => ahead(show, scenes))).toEqual(['scene', 'nip', 'number', 'scene', 'end'])
    expect(press(seen[4], scenes, 'next')).toEqual(seen[4])
  })

  it('lead back the same way, into a scene at its end', () => {
    const back = press(startShow(2), scenes, 'back')
    expect([back.at, back.press]).toEqual([1, 2])
    expect(press(startShow(0), scenes, 'back')).toEqual(startShow(0))
    const anywhere = fc
      .constantFrom([0, 0], [1, 0], [1, 1], [1, 2])
      .map(([at, made]) => ({ ...startShow(at), press: made }))
    fc.assert(
      fc.property(anywhere, (show) => {
        expect(press(show, scenes, 'next', 'back')).toEqual(show)
      }),
    )
  })

  it('blank the screen; then the next press brings the picture back and moves nothing', () => {
    const show = startShow(1)
    const blank = step(show, { kind: 'blank', colour: 'black' }, scenes)
    expect(blank.blank).toBe('black')
    expect(press(blank, scenes, 'next')).toEqual(show)
    expect(press(blank, scenes, 'back')).toEqual(show)
    expect(step(blank, { kind: 'blank', colour: 'white' }, scenes).blank).toBe('white')
    expect(step(blank, { kind: 'blank', colour: 'black' }, scenes)).toEqual(show)
  })

  it('put a unit in the light until it is asked for again, and only one that is there', () => {
    const spot = (show: Show, unit: number | null) => step(show, { kind: 'spot', unit }, scenes)
    expect(spot(startShow(0), 3).spot).toBe(3)
    expect(spot(spot(startShow(0), 3), 3).spot).toBeNull()
    expect(spot(spot(startShow(0), 3), null).spot).toBeNull()
    expect(spot(startShow(0), 4).spot).toBeNull()
    expect(press(spot(startShow(0), 3), scenes, 'next').spot).toBeNull()
  })

  it('never lead out of the list', () => {
    const event: fc.Arbitrary<ShowEvent> = fc.oneof(
      fc.record({ kind: fc.constantFrom('next' as const, 'back' as const, 'first' as const, 'last' as const) }),
      fc.record({ kind: fc.constant('go to' as const), at: fc.integer({ min: -3, max: 9 }) }),
      fc.record({ kind: fc.constant('blank' as const), colour: fc.constantFrom('black' as const, 'white' as const) }),
    )
    fc.assert(
      fc.property(fc.array(event), (events) => {
        const show = events.reduce((at, each) => step(at, each, scenes), startShow(0))
        expect(show.at in scenes).toBe(true)
        expect(show.press).toBeLessThanOrEqual(pressesOf(scenes[show.at]).length)
      }),
    )
  })
})

describe('the benches of a scene', () => {
  it('show the set-ups as the scene looks at them, and leave the bench of the page alone', () => {
    const page = new Session()
    page.change({ kind: 'take scenario', scenario: 'reversed' })
    const beside = { setUp: page.setUp, caption: '' }
    const scene: Scene = { ...plain, view: { unit: 1, patch: [0, 1], face: 'marks' }, beside }
    const [one, two] = openScene(scene, page.look)
    expect([one.setUp, two.setUp]).toEqual([plain.setUp, page.setUp])
    for (const each of [one, two]) {
      expect(each.playback.unit).toBe(1)
      const printing = each.setUp.inks.filter((_, unit) => printsIn(each.patch, unit)).map(({ name }) => name)
      expect(printing.toSorted()).toEqual(['black', 'cyan'])
      expect(each.look.face).toBe('marks')
    }
    one.play({ kind: 'step nip', atOnce: true })
    expect(page.playback.unit).toBe(3)
    expect(openScene(plain, page.look)).toHaveLength(1)
  })
})
