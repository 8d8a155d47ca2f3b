/** What the window that shows a lecture and the speaker's window tell each other. Whatever arrives is checked. */
import * as v from 'valibot'
import type { Show, ShowEvent } from './lecture-show.ts'
import { ahead, pressesOf } from './lecture-show.ts'
import type { Scene } from './scene.ts'

const whole = v.pipe(v.number(), v.integer(), v.minValue(0))

const stateSchema = v.object({
  kind: v.literal('state'),
  /** from 0 */
  at: whole,
  of: whole,
  name: v.string(),
  note: v.string(),
  /** null after the last */
  nextName: v.nullable(v.string()),
  press: whole,
  presses: whole,
  ahead: v.picklist(['nip', 'number', 'scene', 'end']),
  blank: v.nullable(v.picklist(['black', 'white'])),
  /** ms since 1970 */
  began: v.number(),
})
export type LectureState = v.InferOutput<typeof stateSchema>

const keySchema = v.object({
  kind: v.literal('key'),
  key: v.picklist(['next', 'back', 'first', 'last', 'black', 'white']),
})
export type SpeakerKey = v.InferOutput<typeof keySchema>['key']

const talkSchema = v.variant('kind', [
  stateSchema,
  keySchema,
  /** the speaker's window is there and wants to know where the lecture is */
  v.object({ kind: v.literal('hello') }),
  /** the lecture is left */
  v.object({ kind: v.literal('left') }),
])
export type LectureTalk = v.InferOutput<typeof talkSchema>

const envelopeSchema = v.object({
  tackstairLecture: v.string(),
  /** which page wrote, and its how manieth message this is */
  from: v.string(),
  serial: whole,
  talk: talkSchema,
})
export type Envelope = v.InferOutput<typeof envelopeSchema>

/** Null for whatever is none of ours, or of another lecture. */
export function readEnvelope(data: unknown, lecture: string): Envelope | null {
  const result = v.safeParse(envelopeSchema, data)
  return result.success && result.output.tackstairLecture === lecture ? result.output : null
}

export function stateOf(show: Show, scenes: readonly Scene[], began: number): LectureState {
  const { at, press, blank } = show
  const { name, note } = scenes[at]
  return {
    kind: 'state',
    at,
    of: scenes.length,
    name,
    note,
    nextName: at + 1 < scenes.length ? scenes[at + 1].name : null,
    press,
    presses: pressesOf(scenes[at]).length,
    ahead: ahead(show, scenes),
    blank,
    began,
  }
}

const events: Readonly<Record<SpeakerKey, ShowEvent>> = {
  next: { kind: 'next' },
  back: { kind: 'back' },
  first: { kind: 'first' },
  last: { kind: 'last' },
  black: { kind: 'blank', colour: 'black' },
  white: { kind: 'blank', colour: 'white' },
}

export function eventOf(key: SpeakerKey): ShowEvent {
  return events[key]
}

/** What the keys of a hand-held clicker mean, by their names in a keyboard event. */
const keys: Readonly<Record<string, SpeakerKey>> = {
  PageDown: 'next',
  ArrowRight: 'next',
  ' ': 'next',
  Enter: 'next',
  PageUp: 'back',
  ArrowLeft: 'back',
  Backspace: 'back',
  Home: 'first',
  End: 'last',
  b: 'black',
  B: 'black',
  '.': 'black',
  w: 'white',
  W: 'white',
  ',': 'white',
}

export function keyMeant(key: string): SpeakerKey | null {
  return Object.hasOwn(keys, key) ? keys[key] : null
}

/** "4:05", "1:04:05" */
export function clockText(ms: number): string {
  const seconds = Math.max(0, Math.floor(ms / 1000))
  const two = (value: number) => String(value).padStart(2, '0')
  const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60]
  return hours > 0 ? `${hours}:${two(minutes)}:${two(seconds % 60)}` : `${minutes}:${two(seconds % 60)}`
}
