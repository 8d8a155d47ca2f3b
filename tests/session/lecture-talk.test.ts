import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { startShow } from '../../src/session/lecture-show.ts'
import { clockText, eventOf, keyMeant, readEnvelope, stateOf } from '../../src/session/lecture-talk.ts'
import { benchForScene } from '../../src/session/scene-session.ts'
import { Session } from '../../src/session/session.ts'

const bench = benchForScene(new Session())
const scenes = ['one', 'two'].map((name) => ({ name, note: `say ${name}`, ...bench }))

describe('what the two windows tell each other', () => {
  it('holds all the speaker needs: where the lecture is, the note, and what comes next', () => {
    const [first, last] = [0, 1].map((at) => stateOf(startShow(at), scenes, 5))
    expect(first).toMatchObject({
      at: 0,
      of: 2,
      name: 'one',
      note: 'say one',
      nextName: 'two',
      ahead: 'scene',
      began: 5,
    })
    expect(last).toMatchObject({ name: 'two', nextName: null, ahead: 'end' })
  })

  it('is read again as it was written, by the windows of the same lecture alone', () => {
    const envelope = { tackstairLecture: 'a', from: 'hall', serial: 3, talk: stateOf(startShow(0), scenes, 5) }
    expect(readEnvelope(structuredClone(envelope), 'a')).toEqual(envelope)
    expect(readEnvelope(envelope, 'b')).toBeNull()
  })

  it('is ignored where it comes from anything else', () => {
    const ours = { tackstairLecture: 'a', from: 'hall', serial: 0 }
    expect(readEnvelope({ ...ours, talk: { kind: 'key', key: 'format' } }, 'a')).toBeNull()
    expect(readEnvelope({ ...ours, talk: { kind: 'state', at: -1 } }, 'a')).toBeNull()
    fc.assert(
      fc.property(fc.anything(), (data) => {
        expect(readEnvelope(data, 'a')).toBeNull()
      }),
    )
  })
})

it.each([
  ['PageDown', 'next'],
  ['ArrowRight', 'next'],
  [' ', 'next'],
  ['Enter', 'next'],
  ['PageUp', 'back'],
  ['ArrowLeft', 'back'],
  ['Backspace', 'back'],
  ['Home', 'first'],
  ['End', 'last'],
  ['b', 'black'],
  ['.', 'black'],
  ['w', 'white'],
  [',', 'white'],
])('the key %j means %s', (key, meant) => {
  expect(keyMeant(key)).toBe(meant)
})

it('a key that is none of a clicker’s means nothing', () => {
  for (const key of ['Tab', 'a', 'constructor', '5', 'F11']) expect(keyMeant(key)).toBeNull()
  expect(eventOf('white')).toEqual({ kind: 'blank', colour: 'white' })
})

it.each([
  [0, '0:00'],
  [65_900, '1:05'],
  [3_845_000, '1:04:05'],
  [-5, '0:00'],
])('%d ms are told as %s', (ms, text) => {
  expect(clockText(ms)).toBe(text)
})
