/**
 * The first ten seconds: two inks, one large button. It prints the second ink on the first, then the same two the other
 * way round, and says what was computed. Fires `done` when the bench is asked for.
 */
import type { PropertyDeclarations } from 'lit'
import { css, html, nothing } from 'lit'
import { liftedShares } from '../press/readings.ts'
import { inkLetters } from '../session/letters.ts'
import { runClock } from './clock.ts'
import { miniStair, miniStairStyles } from './mini-stair.ts'
import { prefersStill } from './motion.ts'
import { addressOf } from './address.ts'
import { say, sayNumber, sayPercent } from './say.ts'
import './section-picture.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'

/** The first lesson of the course (lessons/course.yaml). */
const firstLesson = 'press-sheet'

/** Where the sentence changes: shares of the area in which the second film was pulled apart. */
const most = 0.9
const little = 0.25

export class FirstLook extends SessionElement {
  static override properties: PropertyDeclarations = { ...SessionElement.properties, _answered: { state: true } }
  static override styles = [
    sharedStyles,
    miniStairStyles,
    css`
      main {
        display: grid;
        grid-template-columns: minmax(0, 50rem);
        gap: 16px;
        align-content: center;
        justify-content: center;
        min-height: 100dvh;
        padding: 16px;
        text-align: center;
      }
      h1 {
        display: flex;
        gap: 8px;
        align-items: center;
        justify-content: center;
        margin: 0;
        font-size: 1.25rem;
        line-height: 1.75rem;
      }
      h1 svg {
        width: 1.625rem;
        height: 1.25rem;
        fill: var(--graphite);
      }
      tack-section-picture {
        height: clamp(13.75rem, calc(100dvh - 28.5rem), 30rem);
        background: var(--panel);
      }
      figure {
        margin: 0;
      }
      figcaption {
        margin-top: 2px;
        color: var(--soft);
        font-size: 0.875rem;
        line-height: 1.125rem;
      }
      .inks {
        display: flex;
        gap: 16px;
        align-items: center;
        justify-content: center;
        text-align: start;
      }
      .inks p {
        max-width: 60ch;
      }
      .said {
        min-height: 6rem;
        font-size: 1.5rem;
        line-height: 2rem;
      }
      .buttons {
        display: flex;
        flex-wrap: wrap;
        gap: 8px 16px;
        justify-content: center;
      }
      .large {
        min-height: 4.5rem;
        padding: 8px 40px;
        background: var(--accent);
        color: var(--on-accent);
        font-size: 1.5rem;
        line-height: 1.75rem;
      }
      .large:hover:not(:disabled) {
        background: var(--accent);
        text-decoration: underline;
      }
      .why {
        border: 2px solid var(--accent);
        background: var(--panel);
        color: var(--accent);
      }
      .why:hover:not(:disabled) {
        background: var(--accent-ground);
      }
      .large[aria-disabled='true'] {
        opacity: 0.6;
        cursor: default;
        text-decoration: none;
      }
      /* Room for the answer from the start, so that nothing moves when it comes. */
      .small {
        min-height: 4.875rem;
        font-size: 1.125rem;
        line-height: 1.625rem;
      }
      .small a {
        color: var(--accent);
        font-weight: 600;
      }
      @media (max-width: 30em), (max-height: 40em) {
        main {
          gap: 8px;
          align-content: start;
          padding: 8px 16px;
        }
        tack-section-picture {
          height: clamp(8.75rem, calc(100dvh - 26.875rem), 20rem);
        }
        figcaption {
          display: none;
        }
        .inks {
          font-size: 0.9375rem;
          line-height: 1.25rem;
        }
        .said {
          min-height: 0;
          font-size: 1.125rem;
          line-height: 1.5rem;
        }
        .large {
          min-height: 3.5rem;
          padding: 8px 20px;
          font-size: 1.25rem;
          line-height: 1.5rem;
        }
        .small {
          min-height: 1.75rem;
          font-size: 1rem;
          line-height: 1.375rem;
        }
      }
      @media (pointer: coarse) {
        .small a,
        .small button {
          display: inline-flex;
          align-items: center;
          min-height: 44px;
          padding: 0 12px;
        }
      }
    `,
  ]

  /** whether the question why has been asked */
  declare protected _answered: boolean
  #stopClock: (() => void) | undefined

  constructor() {
    super()
    this._answered = false
  }

  override connectedCallback(): void {
    super.connectedCallback()
    this.#stopClock = runClock(this.session)
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#stopClock?.()
  }

  override firstUpdated(): void {
    this.#button.focus()
  }

  override render() {
    const { session } = this
    const [, second] = session.setUp.inks
    const label = !this.#printed ? 'first.print' : this.#swapped ? 'first.open' : 'first.swap'
    return html`<main>
      <h1>
        <svg viewBox="0 0 26 20" aria-hidden="true"><path d="M0 0h6v5h7v5h6v5h7v5H0z" /></svg>
        ${say('page.title')}
      </h1>
      <figure>
        <tack-section-picture .session=${session}></tack-section-picture>
        <figcaption>${say('first.scale')}</figcaption>
      </figure>
      ${this.#inks()}
      <p class="said" id="said" role="status">${this.#sentence()}</p>
      <div class="buttons">
        <button
          type="button"
          class="large"
          aria-describedby="said"
          aria-disabled=${session.playback.playing ? 'true' : nothing}
          @click=${this.#press}
        >
          ${say(label, { second: second.name })}
        </button>
        ${this.#printed && this.#swapped ? this.#why() : nothing}
      </div>
      <div class="small">${this.#after()}</div>
    </main>`
  }

  /** What is turned round between the two prints: the order, and with it the tacks. */
  #inks() {
    const { setUp, colours } = this.session
    const letters = inkLetters(setUp.inks.map(({ name }) => name))
    const [first, second] = setUp.inks
    return html`<div class="inks">
      ${miniStair(setUp.inks.map(({ tack }, unit) => ({ tack, letter: letters[unit], colour: colours.solids[unit] })))}
      <p>
        ${say('first.inks', {
          first: first.name,
          firstTack: sayNumber(first.tack, 0, 1),
          second: second.name,
          secondTack: sayNumber(second.tack, 0, 1),
          falls: String(first.tack > second.tack),
        })}
      </p>
    </div>`
  }

  /** As large as the way on, and where it was once it is answered, so that nothing moves. */
  #why() {
    return html`<button
      type="button"
      class="large why"
      aria-expanded=${this._answered}
      @click=${() => (this._answered = true)}
    >
      ${say('first.why')}
    </button>`
  }

  /** Below the buttons: a way past all this; in the end the answer to the question why. */
  #after() {
    if (!this.#printed || !this.#swapped) {
      return html`<button type="button" class="plain" @click=${this.#done}>${say('first.skip')}</button>`
    }
    if (!this._answered) return nothing
    const [first, second] = this.session.setUp.inks
    return html`<p role="status">${say('first.because', { first: first.name, second: second.name })}</p>
      <a href=${`${addressOf('lessons')}&lesson=${firstLesson}`}>${say('first.lesson')}</a>`
  }

  get #button(): HTMLElement {
    return this.renderRoot.querySelector('.large') as HTMLElement
  }

  /** Whether the second ink has been through its nip. */
  get #printed(): boolean {
    const { phase, playing } = this.session.playback
    return phase === 1 && !playing
  }

  get #swapped(): boolean {
    return this.session.canUndo && this.session.setUp.inks[0].name !== this.#firstName
  }

  /** the ink that was first when the page opened */
  #firstName = ''

  override willUpdate(): void {
    this.#firstName ||= this.session.setUp.inks[0].name
  }

  /** What is about to happen, or what did: the shares are those of the computed sheet. */
  #sentence(): string {
    const { setUp, results, patch, playback } = this.session
    const [first, second] = setUp.inks.map(({ name }) => name)
    if (playback.playing) return ''
    if (!this.#printed) return say('first.before', { first, second })
    const [{ massTrap }] = results.readings.traps
    const account = results.accounts(patch)[1]
    const [lifted] = liftedShares(account)
    const { broke } = account.blanket
    const share = broke >= most ? 'most' : broke >= little ? 'part' : 'little'
    return say('first.after', { first, second, share, stayed: sayPercent(massTrap), lifted: sayPercent(lifted) })
  }

  #press(): void {
    const { session } = this
    if (session.playback.playing) return
    if (this.#printed && this.#swapped) {
      this.#done()
      return
    }
    if (this.#printed) this.attempt({ kind: 'move ink', from: 0, to: 1 })
    session.play({ kind: 'scrub', phase: 0 })
    session.play({ kind: 'step nip', atOnce: prefersStill() })
    // A nip that is over at once has moved nothing but the phase, of which only pictures hear.
    this.requestUpdate()
  }

  #done(): void {
    this.dispatchEvent(new Event('done'))
  }
}

customElements.define('tack-first-look', FirstLook)
