/** Running the press: play and pause, one nip, one sheet, slow motion, and a nip moved by hand. */
import type { PropertyDeclarations } from 'lit'
import { css, html, nothing } from 'lit'
import type { ChooseEvent } from './choice.ts'
import './choice.ts'
import { prefersStill } from './motion.ts'
import { say } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'

export class Transport extends SessionElement {
  static override properties: PropertyDeclarations = { ...SessionElement.properties, once: { type: Boolean } }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: flex;
        flex-wrap: wrap;
        gap: 8px;
        align-content: start;
      }
      .buttons,
      .nip {
        display: flex;
        flex-wrap: wrap;
        gap: 4px;
        align-items: center;
      }
      .nip {
        flex: 1 1 16.25rem;
        gap: 8px;
      }
      .play {
        min-width: 5.25rem;
        background: var(--accent);
        color: var(--on-accent);
      }
      .play:hover:not(:disabled) {
        background: var(--accent);
        text-decoration: underline;
      }
      button {
        min-height: 2rem;
        white-space: nowrap;
      }
      @media (pointer: coarse) {
        button {
          min-height: 44px;
        }
      }
      .slow {
        display: flex;
        gap: 4px;
        align-items: center;
        padding: 0 8px;
        font-size: 0.9375rem;
        font-weight: 600;
        white-space: nowrap;
        cursor: pointer;
      }
      /* As wide with either word, so that nothing beside it moves. */
      .slow span {
        min-width: 4.25rem;
      }
      .scrub {
        display: flex;
        flex: 1 1 7.5rem;
        gap: 8px;
        align-items: center;
        min-width: 0;
        font-size: 0.875rem;
      }
      .scrub input {
        flex: 1;
        min-width: 3.75rem;
        padding: 0;
        border: 0;
        background: none;
      }
    `,
  ]

  /** one sheet runs through at a time, as in a lesson */
  declare once: boolean
  #unsubscribeFrames: (() => void) | undefined

  constructor() {
    super()
    this.once = false
  }

  override connectedCallback(): void {
    super.connectedCallback()
    this.#unsubscribeFrames = this.session.subscribeToFrames(() => this.#showPhase())
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#unsubscribeFrames?.()
  }

  override render() {
    const { session } = this
    const { playing, slow, stopsAfter } = session.playback
    const { reading } = session.setUp
    const running = playing && stopsAfter !== 'nip'
    return html`
      <div class="buttons">
        <button
          type="button"
          class="play"
          @click=${() => session.play(running ? { kind: 'pause' } : { kind: 'play', once: this.once })}
        >
          ${say(running ? 'bench.pause' : 'bench.play')}
        </button>
        ${
          this.knows('nip')
            ? html`<button type="button" @click=${() => session.play({ kind: 'step nip', atOnce: prefersStill() })}>
                ${say('bench.stepNip')}
              </button>`
            : nothing
        }
        ${
          !this.isShown('sheet')
            ? nothing
            : html`<button
                type="button"
                ?disabled=${reading === 'settled' || this.isClosed('sheet')}
                title=${reading === 'settled' ? say('bench.settledSame') : nothing}
                @click=${() => this.attempt({ kind: 'run on' })}
              >
                ${say('bench.stepSheet')}
              </button>`
        }
        <label class="slow"
          ><input
            type="checkbox"
            role="switch"
            aria-label=${say('bench.slow')}
            .checked=${slow}
            @change=${() => session.play({ kind: 'slow', slow: !slow })}
          /><span aria-hidden="true">${say('bench.slowNow', { on: String(slow) })}</span></label
        >
      </div>
      ${this.knows('nip') ? this.#nip() : nothing}
    `
  }

  #nip() {
    const { session } = this
    const { inks } = session.setUp
    return html`<div class="nip">
      <tack-choice
        .legend=${say('bench.nipOfUnit')}
        .options=${inks.map((ink, index) => ({
          value: String(index),
          label: String(index + 1),
          name: say('bench.nipOf', { unit: index + 1, name: ink.name }),
        }))}
        .value=${String(session.playback.unit)}
        @choose=${(event: ChooseEvent) => session.play({ kind: 'look at unit', unit: Number(event.value) })}
      ></tack-choice>
      <label class="scrub"
        >${say('bench.nip')}
        <input
          type="range"
          min="0"
          max="100"
          step="1"
          @input=${(event: Event) =>
            session.play({ kind: 'scrub', phase: Number((event.target as HTMLInputElement).value) / 100 })}
        />
      </label>
    </div>`
  }

  override updated(): void {
    this.#showPhase()
  }

  #showPhase(): void {
    const scrub = this.renderRoot.querySelector<HTMLInputElement>('input[type=range]')
    if (!scrub) return
    const percent = Math.round(100 * this.session.playback.phase)
    scrub.value = String(percent)
    scrub.setAttribute('aria-valuetext', say('bench.phase', { percent }))
  }
}

customElements.define('tack-transport', Transport)
