/** The buttons of a lecture being shown. Each does what a key does, and those that have no key do what only they can. */
import type { PropertyDeclarations } from 'lit'
import { css, html } from 'lit'
import { tellNip } from '../../press/tell.ts'
import type { Show, ShowEvent, ahead } from '../../session/lecture-show.ts'
import type { Session } from '../../session/session.ts'
import { comfort } from '../comfort.ts'
import { dressWanted } from '../dress.ts'
import '../film-table.ts'
import { linkedText } from '../linked-text.ts'
import type { PanelDialog } from '../panel-dialog.ts'
import '../panel-dialog.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { LectureElement } from './lecture-element.ts'

type Control = ShowEvent | { kind: 'leave' | 'speaker' | 'notes' | 'full screen' } | { kind: 'carry'; by: -1 | 1 }

export class ControlEvent extends Event {
  readonly control: Control

  constructor(control: Control) {
    super('control')
    this.control = control
  }
}

export class ShowControls extends LectureElement {
  static override properties: PropertyDeclarations = {
    ...LectureElement.properties,
    show: { attribute: false },
    ahead: {},
    notes: { type: Boolean },
    bench: { attribute: false },
    _inWords: { state: true },
    unfolded: { type: Boolean, reflect: true },
  }
  static override styles = [
    sharedStyles,
    css`
      .row,
      .spots {
        display: flex;
        flex-wrap: wrap;
        gap: 6px;
        align-items: center;
      }
      .spots {
        gap: 2px;
      }
      .spots button {
        min-width: 2rem;
      }
      button,
      select {
        min-height: 2.25rem;
        font-size: 1rem;
      }
      select {
        max-width: 11.25rem;
      }
      .next {
        min-width: 8.75rem;
        background: var(--accent);
        color: var(--on-accent);
      }
      .next:hover:not(:disabled) {
        background: var(--accent);
        text-decoration: underline;
      }
      .end {
        margin-inline-start: auto;
      }
      #rest {
        display: contents;
      }
      :host(:not([crowded])) .more {
        display: none;
      }
      :host([crowded]) #rest {
        display: none;
      }
      :host([crowded][unfolded]) #rest {
        display: flex;
        flex: 1 0 100%;
        flex-wrap: wrap;
        gap: 6px;
        order: 1;
      }
      :host([crowded]) select {
        max-width: 7.5rem;
      }
      @media (width < 45em), (height < 31.25em) {
        .row,
        .spots {
          flex-wrap: nowrap;
        }
        .row {
          overflow-x: auto;
          padding: 4px;
        }
        .row > *,
        .spots > *,
        #rest > * {
          flex: none;
        }
        .end {
          position: sticky;
          inset-inline-end: 0;
          box-shadow: 0 0 0 6px var(--ground);
        }
      }
      @media (pointer: coarse) {
        button,
        select {
          min-height: 44px;
        }
        .spots button {
          min-width: 44px;
        }
      }
    `,
  ]

  declare show: Show
  /** what the next press does */
  declare ahead: ReturnType<typeof ahead>
  /** whether the speaker's note stands below the picture */
  declare notes: boolean
  /** the first bench of the scene */
  declare bench: Session
  declare protected _inWords: boolean
  /** whether a second row is asked for, where one is all there is room for beside the scene's number */
  declare unfolded: boolean

  #observer: ResizeObserver | undefined

  constructor() {
    super()
    this._inWords = false
    this.unfolded = false
  }

  override connectedCallback(): void {
    super.connectedCallback()
    this.#observer = new ResizeObserver(() => this.#measure())
    this.#observer.observe(this)
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#observer?.disconnect()
  }

  override updated(): void {
    this.#measure()
  }

  override render() {
    const { show, bench } = this
    return html`<div class="row" role="group" aria-label=${say('lecture.controls')}>
        ${this.#button('lecture.back', { kind: 'back' })}
        <button type="button" class="next" @click=${(event: Event) => this.#fire(event, { kind: 'next' })}>
          ${say(`lecture.next.${this.ahead}`)}
        </button>
        <label class="unseen" for="scene">${say('lecture.goTo')}</label>
        <select id="scene" @change=${this.#goTo}>
          ${this.lecture.scenes.map(
            ({ name }, place) =>
              html`<option value=${place} ?selected=${place === show.at}>${place + 1} · ${name}</option>`,
          )}
        </select>
        <div class="spots" role="group" aria-label=${say('lecture.spot')}>
          ${bench.setUp.inks.map(
            ({ name }, unit) =>
              html`<button
                type="button"
                aria-pressed=${show.spot === unit}
                aria-label=${say('lecture.spotOn', { unit: unit + 1, name })}
                @click=${(event: Event) => this.#fire(event, { kind: 'spot', unit })}
              >
                ${unit + 1}
              </button>`,
          )}
          ${this.#carry(-1)} ${this.#carry(1)}
        </div>
        ${this.#button('lecture.black', { kind: 'blank', colour: 'black' })}
        ${this.#button('lecture.white', { kind: 'blank', colour: 'white' })}
        <button type="button" class="more" aria-expanded=${this.unfolded} aria-controls="rest" @click=${this.#unfold}>
          ${say('lecture.more')}
        </button>
        <div id="rest">${this.#rest()}</div>
        <button type="button" class="end" @click=${(event: Event) => this.#fire(event, { kind: 'leave' })}>
          ${say('lecture.leave')}
        </button>
      </div>
      <tack-panel-dialog .heading=${say('lecture.words')} @closed=${() => (this._inWords = false)}>
        ${this._inWords ? this.#words() : ''}
      </tack-panel-dialog>`
  }

  /** What a lecture is seldom led by: where there is room for one row alone, it waits to be asked for. */
  #rest() {
    const isDark = dressWanted().endsWith('dark')
    return html`<button type="button" aria-haspopup="dialog" @click=${this.#showWords}>${say('lecture.words')}</button>
      <button type="button" aria-pressed=${this.notes} @click=${(event: Event) => this.#fire(event, { kind: 'notes' })}>
        ${say('lecture.notes')}
      </button>
      ${this.#button('lecture.speaker', { kind: 'speaker' })}
      <button type="button" @click=${() => comfort().choose({ theme: isDark ? 'light' : 'dark' })}>
        ${say(isDark ? 'lecture.light' : 'lecture.dark')}
      </button>
      <button
        type="button"
        aria-pressed=${document.fullscreenElement !== null}
        @click=${(event: Event) => this.#fire(event, { kind: 'full screen' })}
      >
        ${say('lecture.fullScreen')}
      </button>`
  }

  #button(label: 'lecture.back' | 'lecture.black' | 'lecture.white' | 'lecture.speaker', control: Control) {
    return html`<button type="button" @click=${(event: Event) => this.#fire(event, control)}>${say(label)}</button>`
  }

  /** For a question from the floor: moves the ink in the light, which stays there. */
  #carry(by: -1 | 1) {
    const { show, bench } = this
    const { inks } = bench.setUp
    const label = say(`lecture.carry.${by < 0 ? 'earlier' : 'later'}`, { name: inks.at(show.spot ?? 0)?.name ?? '' })
    return html`<button
      type="button"
      title=${label}
      ?disabled=${show.spot === null || !(show.spot + by in inks)}
      @click=${(event: Event) => this.#fire(event, { kind: 'carry', by })}
    >
      <span aria-hidden="true">${by < 0 ? '◀' : '▶'}</span>
    </button>`
  }

  /** The picture of the scene in words and numbers, as the bench tells it. */
  #words() {
    const { bench } = this
    const { setUp, results, patch, playback } = bench
    const names = setUp.inks.map(({ name }) => name)
    const told = tellNip(results.accounts(patch)[playback.unit], names)
    return html`<h3>${say('bench.whatHappened', { unit: playback.unit + 1, name: names[playback.unit] })}</h3>
      <p>${linkedText(told.map(({ message, values }) => say(message, { ...values })).join(' '))}</p>
      <tack-film-table .session=${bench}></tack-film-table>`
  }

  async #showWords(): Promise<void> {
    this._inWords = true
    await this.updateComplete
    this.renderRoot.querySelector<PanelDialog>('tack-panel-dialog')?.show()
  }

  #unfold({ currentTarget, detail }: MouseEvent): void {
    if (detail > 0) (currentTarget as HTMLElement).blur()
    this.unfolded = !this.unfolded
  }

  /** A second row would lie on the scene's number: whether all has room in one. */
  #measure(): void {
    this.toggleAttribute('crowded', false)
    const row = this.renderRoot.querySelector('.row')
    const [first, last] = ['button', '.end'].map((each) => row?.querySelector<HTMLElement>(each)?.offsetTop)
    this.toggleAttribute('crowded', first !== last)
  }

  #goTo(event: Event): void {
    const select = event.target as HTMLSelectElement
    this.dispatchEvent(new ControlEvent({ kind: 'go to', at: Number(select.value) }))
    // The keys of a clicker would move on in the list of choices.
    select.blur()
  }

  /** What was pressed by a pointer gives the focus back, so that Space and Enter go on with the lecture. */
  #fire(event: Event, control: Control): void {
    if (event instanceof MouseEvent && event.detail > 0) (event.currentTarget as HTMLElement).blur()
    this.dispatchEvent(new ControlEvent(control))
  }
}

customElements.define('tack-show-controls', ShowControls)
