/** The head of the page: its name, the parts of the page, undo and redo. */
import type { PropertyDeclarations } from 'lit'
import { css, html, nothing } from 'lit'
import type { ViewName } from '../session/view-state.ts'
import { learningOf } from '../session/learning.ts'
import { addressOf, addressOfLesson } from './address.ts'
import { browserStorage } from './browser-storage.ts'
import './language-choice.ts'
import { say } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'
import './tools/page-tools.ts'
import { views } from './views.ts'

export class PageHeader extends SessionElement {
  static override properties: PropertyDeclarations = {
    ...SessionElement.properties,
    view: {},
    _said: { state: true },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 8px;
        align-items: center;
      }
      h1 {
        display: flex;
        gap: 8px;
        align-items: center;
        margin: 0;
        font-size: 1.25rem;
        font-weight: 700;
        line-height: 1.75rem;
      }
      h1:focus {
        outline: none;
      }
      svg {
        width: 1.625rem;
        height: 1.25rem;
        fill: var(--graphite);
      }
      nav ul {
        display: flex;
        flex-wrap: wrap;
        gap: 0 2px;
      }
      a {
        display: inline-flex;
        align-items: center;
        min-height: 1.75rem;
        padding: 0 4px;
        border-bottom: 3px solid transparent;
        color: var(--accent);
        font-size: 0.9375rem;
        font-weight: 600;
        text-decoration: none;
      }
      a:hover {
        background: var(--accent-ground);
      }
      a[aria-current] {
        border-color: var(--accent);
        color: var(--graphite);
      }
      .right {
        display: flex;
        flex-wrap: wrap;
        gap: 4px;
        align-items: center;
        margin-inline-start: auto;
      }
      @media (forced-colors: active) {
        a:not([aria-current]) {
          border-color: Canvas;
        }
      }
      @media (pointer: coarse) {
        a {
          justify-content: center;
          min-width: 44px;
          min-height: 44px;
        }
      }
    `,
  ]

  /** the view that is open */
  declare view: ViewName
  /** what is read out */
  declare protected _said: string

  constructor() {
    super()
    this._said = ''
  }

  override render() {
    const { session } = this
    return html`
      <h1 tabindex="-1">
        <svg viewBox="0 0 26 20" aria-hidden="true"><path d="M0 0h6v5h7v5h6v5h7v5H0z" /></svg>
        ${say('page.title')}
      </h1>
      <nav aria-label=${say('page.views')}>
        <ul>
          ${views
            .filter(({ aside }) => aside !== true)
            .map(
              ({ name, label }) =>
                html`<li>
                  <a href=${this.#addressOf(name)} aria-current=${name === this.view ? 'page' : nothing}
                    >${say(label)}</a
                  >
                </li>`,
            )}
        </ul>
      </nav>
      <p class="unseen" role="status">${this._said}</p>
      <div class="right">
        <button type="button" class="plain" @click=${() => this.dispatchEvent(new Event('first-look'))}>
          ${say('page.firstLook')}
        </button>
        <tack-page-tools .session=${session}></tack-page-tools>
        <button
          type="button"
          class="step"
          ?disabled=${!session.canUndo}
          @click=${(event: Event) => this.#step(event, 'undo')}
        >
          ${say('bench.undo')}
        </button>
        <button
          type="button"
          class="step"
          ?disabled=${!session.canRedo}
          @click=${(event: Event) => this.#step(event, 'redo')}
        >
          ${say('bench.redo')}
        </button>
        <tack-language-choice></tack-language-choice>
      </div>
    `
  }

  #unsubscribe: (() => void) | undefined

  override connectedCallback(): void {
    super.connectedCallback()
    this.#unsubscribe = learningOf(this.session, browserStorage).subscribe(() => this.requestUpdate())
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#unsubscribe?.()
  }

  /** The lessons are gone to where they were left. */
  #addressOf(name: ViewName): string {
    return name === 'lessons' ? addressOfLesson(learningOf(this.session, browserStorage).open) : addressOf(name)
  }

  /** For when what had the focus is gone: reading goes on from the top of the page. */
  focusTitle(): void {
    void this.updateComplete.then(() => this.renderRoot.querySelector('h1')?.focus())
  }

  /** Undoes or redoes, and says so: what it changes may stand far from whoever is read to. */
  step(way: 'undo' | 'redo'): void {
    const { session } = this
    if (!(way === 'undo' ? session.canUndo : session.canRedo)) return
    if (way === 'undo') session.undo()
    else session.redo()
    // The same words once more are read only where they have been away.
    this._said = ''
    void this.updateComplete.then(() => (this._said = say(`page.${way}ne`)))
  }

  /** A button with nothing left to undo gives its focus to the one that brings it back. */
  #step({ currentTarget }: Event, way: 'undo' | 'redo'): void {
    const button = currentTarget as HTMLButtonElement
    this.step(way)
    void this.updateComplete.then(() => {
      if (button.disabled) this.renderRoot.querySelector<HTMLElement>('.step:enabled')?.focus()
    })
  }
}

customElements.define('tack-page-header', PageHeader)
