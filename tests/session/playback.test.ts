import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Playback, PlaybackEvent } from '../../src/session/playback.ts'
import { nipSeconds, play } from '../../src/session/playback.ts'

const still: Playback = { unit: 0, phase: 0, playing: false, slow: true, stopsAfter: null }

function after(start: Playback, units: number, events: PlaybackEvent[]): { playback: Playback; sheets: number } {
  return events.reduce(
    ({ playback, sheets }, event) => {
      const next = play(playback, event, units)
      return { playback: next.playback, sheets: sheets + next.sheets }
    },
    { playback: start, sheets: 0 },
  )
}

test('one nip takes 4 s in slow motion', () => {
  const frames = Array.from({ length: 99 }, () => ({ kind: 'tick', seconds: 0.04 }) as const)
  const { playback } = after(still, 4, [{ kind: 'play' }, ...frames])
  expect(playback.unit).toBe(0)
  expect(playback.phase).toBeCloseTo(3.96 / 4, 9)
  expect(play(playback, { kind: 'tick', seconds: 0.05 }, 4).playback.unit).toBe(1)
})

test('a sheet sent through once begins at the first unit, goes on after a pause, and stops behind the last', () => {
  const second = { kind: 'tick', seconds: nipSeconds.slow } as const
  const start = { ...still, unit: 1, phase: 1 }
  const begun = after(start, 2, [
    { kind: 'play', once: true },
    { kind: 'tick', seconds: nipSeconds.slow / 2 },
  ])
  expect(begun.playback).toEqual({ ...still, phase: 0.5, playing: true, stopsAfter: 'sheet' })
  const paused = play(begun.playback, { kind: 'pause' }, 2).playback
  expect(play(paused, { kind: 'tick', seconds: 9 }, 2).playback).toEqual(paused)
  const ended = after(paused, 2, [{ kind: 'play', once: true }, second, second, second])
  expect(ended).toEqual({ playback: { ...still, unit: 1, phase: 1 }, sheets: 0 })
  const elsewhere = play(paused, { kind: 'look at unit', unit: 1 }, 2).playback
  expect(play(elsewhere, { kind: 'play', once: true }, 2).playback).toMatchObject({ unit: 0, phase: 0 })
})

test('a paused clock does not move', () => {
  expect(play(still, { kind: 'tick', seconds: 1 }, 4).playback).toEqual(still)
})

test('after the last unit the next sheet arrives at the first', () => {
  const { playback, sheets } = after({ ...still, unit: 3, phase: 0.9, slow: false }, 4, [
    { kind: 'play' },
    { kind: 'tick', seconds: nipSeconds.usual * 0.2 },
  ])
  expect(playback.unit).toBe(0)
  expect(playback.phase).toBeCloseTo(0.1, 9)
  expect(sheets).toBe(1)
})

test('stepping a nip shows it to its end and stops there; the next step is the next nip', () => {
  const half = after({ ...still, phase: 0.5 }, 2, [
    { kind: 'step nip', atOnce: false },
    { kind: 'tick', seconds: 1 },
    { kind: 'tick', seconds: 1 },
    { kind: 'tick', seconds: 1 },
  ])
  expect(half.playback).toEqual({ ...still, phase: 1 })
  expect(play(half.playback, { kind: 'step nip', atOnce: true }, 2).playback).toEqual({ ...still, unit: 1, phase: 1 })
})

test('a nip moved by hand stops the clock and stays within the nip', () => {
  const playing = { ...still, playing: true }
  expect(play(playing, { kind: 'scrub', phase: 0.25 }, 4).playback).toEqual({ ...still, phase: 0.25 })
  expect(play(playing, { kind: 'scrub', phase: Number.NaN }, 4).playback.phase).toBe(0)
  expect(play(playing, { kind: 'scrub', phase: 9 }, 4).playback.phase).toBe(1)
})

test('whatever happens, unit and phase exist', () => {
  const event: fc.Arbitrary<PlaybackEvent> = fc.oneof(
    fc.constantFrom<PlaybackEvent>({ kind: 'play' }, { kind: 'play', once: true }, { kind: 'pause' }),
    fc.record({ kind: fc.constant('slow' as const), slow: fc.boolean() }),
    fc.record({ kind: fc.constant('tick' as const), seconds: fc.double({ min: 0, max: 100, noNaN: true }) }),
    fc.record({ kind: fc.constant('step nip' as const), atOnce: fc.boolean() }),
    fc.record({ kind: fc.constant('scrub' as const), phase: fc.double() }),
    fc.record({ kind: fc.constant('look at unit' as const), unit: fc.integer({ min: -3, max: 12 }) }),
  )
  fc.assert(
    fc.property(fc.array(event), fc.integer({ min: 2, max: 8 }), (events, units) => {
      const { playback } = after(still, units, events)
      expect(playback.phase).toBeGreaterThanOrEqual(0)
      expect(playback.phase).toBeLessThanOrEqual(1)
      expect(playback.unit).toBeGreaterThanOrEqual(0)
      expect(playback.unit).toBeLessThan(units)
    }),
  )
})
