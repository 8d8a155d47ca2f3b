/** What happened at the nip looked at, in words, and why: the pulls of everything in the stack, side by side. */
import type { PropertyDeclarations } from 'lit'
import { css, html } from 'lit'
import { keyed } from 'lit/directives/keyed.js'
import { tellNip } from '../press/tell.ts'
import { linkedTerms, linkedText } from './linked-text.ts'
import './panel-button.ts'
import './pull-bars.ts'
import { say } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'

export class Telling extends SessionElement {
  static override properties: PropertyDeclarations = { ...SessionElement.properties, half: { reflect: true } }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: grid;
        grid-template-columns: minmax(min(17.5rem, 50% - 12px), 5fr) minmax(min(17.5rem, 50% - 12px), 4fr);
        gap: 8px 24px;
      }
      :host([half]) {
        grid-template-columns: minmax(0, 1fr);
      }
      .said {
        margin-top: 4px;
        font-size: 1.0625rem;
        line-height: 1.375rem;
      }
      .title {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 8px;
        align-items: center;
        justify-content: space-between;
      }
      section {
        min-height: 0;
        overflow-y: auto;
      }
      @media (min-width: 106.25em) and (min-height: 56.25em) {
        .said {
          font-size: 1.375rem;
          line-height: 1.875rem;
        }
      }
      @media (min-width: 68.75em) and (height < 50em) {
        .said {
          font-size: 1rem;
          line-height: 1.25rem;
        }
      }
      @media (max-width: 45em) {
        :host {
          grid-template-columns: minmax(0, 1fr);
        }
      }
    `,
  ]

  /** the half that stands here, where the other one stands elsewhere */
  declare half: 'what' | 'why' | undefined

  override render() {
    const { half } = this
    if (half === 'what') return this.#what()
    if (half === 'why') return this.#why()
    return html`${this.#what()}${this.#why()}`
  }

  /** A paragraph that comes in as the press stops is read out once, and nothing is while it runs. */
  #what() {
    const { setUp, results, playback, patch } = this.session
    const names = setUp.inks.map((ink) => ink.name)
    const account = results.accounts(patch)[playback.unit]
    const sentences = tellNip(account, names)
      .map(({ message, values }) => say(message, { ...values }))
      .filter((sentence) => this.knows(...linkedTerms(sentence)))
    return html`<section aria-labelledby="what">
      <h2 id="what">${say('bench.whatHappened', { unit: playback.unit + 1, name: names[playback.unit] })}</h2>
      <div aria-live=${playback.playing ? 'off' : 'polite'} aria-atomic="true">
        ${keyed(playback.playing, html`<p class="said">${linkedText(sentences.join(' '))}</p>`)}
      </div>
    </section>`
  }

  #why() {
    return html`<section aria-labelledby="why">
      <div class="title">
        <h2 id="why">${linkedText(say('bench.why'))}</h2>
        <tack-panel-button .session=${this.session} .panel=${'how'}></tack-panel-button>
      </div>
      <tack-pull-bars .session=${this.session}></tack-pull-bars>
    </section>`
  }
}

customElements.define('tack-telling', Telling)
