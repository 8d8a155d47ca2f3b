/**
 * The wire between the window that shows a lecture and the speaker's. A page from a server has a channel for this; a
 * page from a file may have none, and then the two windows speak to each other directly, as one has opened the other.
 * Both ways are always used, and what comes twice is heard once.
 */
import type { LectureTalk } from '../../session/lecture-talk.ts'
import { readEnvelope } from '../../session/lecture-talk.ts'
import { newId } from '../draft-ports.ts'

export class LectureWire {
  /** the other window, once it is known */
  partner: Window | null = null

  readonly #lecture: string
  readonly #heard: (talk: LectureTalk) => void
  readonly #from = newId()
  #serial = 0
  readonly #last = new Map<string, number>()
  readonly #channel: BroadcastChannel | null

  constructor(lecture: string, heard: (talk: LectureTalk) => void) {
    this.#lecture = lecture
    this.#heard = heard
    this.#channel =
      typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(`tackstair lecture ${lecture}`)
    this.#channel?.addEventListener('message', this.#hear)
    window.addEventListener('message', this.#hear)
  }

  say(talk: LectureTalk): void {
    const envelope = { tackstairLecture: this.#lecture, from: this.#from, serial: this.#serial++, talk }
    this.#channel?.postMessage(envelope)
    if (this.partner && !this.partner.closed) this.partner.postMessage(envelope, originOfPage())
  }

  end(): void {
    this.#channel?.close()
    window.removeEventListener('message', this.#hear)
  }

  readonly #hear = ({ data, source }: MessageEvent): void => {
    // A lecture's id is known to its own two windows alone.
    const envelope = readEnvelope(data, this.#lecture)
    if (!envelope) return
    const { from, serial, talk } = envelope
    if (from === this.#from || serial <= (this.#last.get(from) ?? -1)) return
    this.#last.set(from, serial)
    if (isWindow(source)) this.partner = source
    this.#heard(talk)
  }
}

/** A window of another page is no instance of this page's own class. */
function isWindow(source: MessageEventSource | null): source is Window {
  return source !== null && 'closed' in source
}

/** Files have no origin that could be named. */
function originOfPage(): string {
  return location.protocol === 'file:' ? '*' : location.origin
}
