/**
 * The speaker's window: the note, what comes next, the clock, and buttons that do in the hall what a clicker does. It
 * holds nothing of its own; what it has heard last stays when the other window goes.
 */
import type { PropertyDeclarations } from 'lit'
import { LitElement, css, html, nothing } from 'lit'
import type { LectureState, LectureTalk, SpeakerKey } from '../../session/lecture-talk.ts'
import { clockText, keyMeant } from '../../session/lecture-talk.ts'
import { keepDressed } from '../dress.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { LectureWire } from './lecture-wire.ts'
import { pressable } from './pressable.ts'
import './press-marks.ts'

/** ms between two questions whether the lecture is still shown, and how long no answer may take. */
const asksEvery = 1000
const patience = 3500

export class SpeakerWindow extends LitElement {
  static override properties: PropertyDeclarations = {
    lecture: {},
    now: { attribute: false },
    _state: { state: true },
    _heardAt: { state: true },
    _left: { state: true },
  }
  static override styles = [
    sharedStyles,
    css`
      main {
        display: grid;
        grid-template-rows: auto auto minmax(0, 1fr) auto auto;
        gap: 12px;
        box-sizing: border-box;
        min-height: 100dvh;
        padding: 16px 20px;
      }
      .top {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 24px;
        align-items: baseline;
        justify-content: space-between;
        font-size: 1.25rem;
      }
      .top b {
        font-size: 2.125rem;
        line-height: 2.5rem;
      }
      h1 {
        margin: 0;
        font-size: 1.5rem;
        font-weight: 650;
        line-height: 1.875rem;
        overflow-wrap: anywhere;
      }
      .note {
        overflow: auto;
        padding: 12px 16px;
        border-radius: var(--corner);
        background: var(--panel);
        color: var(--graphite);
        font-size: 1.5rem;
        line-height: 2.125rem;
        overflow-wrap: anywhere;
      }
      .note p {
        white-space: pre-line;
      }
      .then {
        font-size: 1.125rem;
      }
      .buttons {
        display: flex;
        flex-wrap: wrap;
        gap: 8px;
      }
      .buttons button {
        min-height: 3.5rem;
        padding: 0 20px;
        font-size: 1.25rem;
      }
      .buttons .next {
        flex: 1;
        background: var(--accent);
        color: var(--on-accent);
      }
      .told {
        padding: 8px 12px;
        border: 1px solid var(--edge);
        border-radius: var(--corner);
        background: var(--accent-ground);
        font-size: 1.0625rem;
      }
    `,
  ]

  declare lecture: string
  /** ms since 1970 */
  declare now: () => number
  declare protected _state: LectureState | null
  declare protected _heardAt: number
  declare protected _left: boolean

  #wire: LectureWire | undefined
  #timer = 0
  #undress: (() => void) | undefined

  constructor() {
    super()
    this._state = null
    this._heardAt = 0
    this._left = false
  }

  override connectedCallback(): void {
    super.connectedCallback()
    document.title = `${say('page.title')}: ${say('lecture.speakerTitle')}`
    this.#undress = keepDressed(() => this.requestUpdate())
    this._heardAt = this.now()
    this.#wire = new LectureWire(this.lecture, this.#hear)
    this.#wire.partner = window.opener as Window | null
    this.#wire.say({ kind: 'hello' })
    this.#timer = window.setInterval(() => {
      this.#wire?.say({ kind: 'hello' })
      this.requestUpdate()
    }, asksEvery)
    document.addEventListener('keydown', this.#key)
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#undress?.()
    this.#wire?.end()
    window.clearInterval(this.#timer)
    document.removeEventListener('keydown', this.#key)
  }

  override render() {
    const state = this._state
    const isLost = state !== null && (this._left || this.now() - this._heardAt > patience)
    return html`<main>
      <div class="top">
        <span
          >${state ? say('lecture.speakerScene', { at: state.at + 1, of: state.of }) : say('lecture.speakerTitle')}</span
        >
        ${
          state
            ? html`<span role="timer">${say('lecture.clock')} <b>${clockText(this.now() - state.began)}</b></span>`
            : nothing
        }
      </div>
      <div>
        <h1>${state?.name ?? say('lecture.speakerTitle')}</h1>
        <div role="status">
          ${isLost ? html`<p class="told">${say('lecture.speakerLost')}</p>` : nothing}
          ${state ? nothing : html`<p class="told">${say('lecture.speakerWaits')}</p>`}
          ${state?.blank ? html`<p class="told">${say('lecture.blankNow', { colour: state.blank })}</p>` : nothing}
        </div>
      </div>
      ${state ? this.#lecturing(state) : nothing}
    </main>`
  }

  #lecturing({ note, nextName, ahead, press, presses }: LectureState) {
    return html`<div class="note" tabindex="0" role="region" aria-label=${say('lecture.speakerNote')}>
        <p>${note.trim() || say('lecture.noNote')}</p>
      </div>
      <div class="then">
        <tack-press-marks .made=${press} .count=${presses}></tack-press-marks>
        <p>${nextName === null ? say('lecture.speakerLast') : say('lecture.speakerNext', { name: nextName })}</p>
      </div>
      <div class="buttons">
        <button type="button" @click=${() => this.#press('back')}>${say('lecture.back')}</button>
        <button type="button" class="next" @click=${() => this.#press('next')}>${say(`lecture.next.${ahead}`)}</button>
        <button type="button" @click=${() => this.#press('black')}>${say('lecture.black')}</button>
        <button type="button" @click=${() => this.#press('white')}>${say('lecture.white')}</button>
      </div>`
  }

  #press(key: SpeakerKey): void {
    this.#wire?.say({ kind: 'key', key })
  }

  readonly #hear = (talk: LectureTalk): void => {
    if (talk.kind === 'left') this._left = true
    if (talk.kind !== 'state') return
    this._state = talk
    this._left = false
    this._heardAt = this.now()
  }

  readonly #key = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.altKey || event.metaKey) return
    const key = keyMeant(event.key)
    if (!key || ((event.key === ' ' || event.key === 'Enter') && pressable(event))) return
    event.preventDefault()
    this.#press(key)
  }
}

customElements.define('tack-speaker-window', SpeakerWindow)
