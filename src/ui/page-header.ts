/** The head of the page, in one row: its name, the parts of the page, undo and redo; what has no room is under "Menu". */
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
import './tools/draft-state.ts'
import './tools/page-tools.ts'
import { views } from './views.ts'

export class PageHeader extends SessionElement {
  static override properties: PropertyDeclarations = {
    ...SessionElement.properties,
    view: {},
    _said: { state: true },
    _open: { type: Boolean, reflect: true, attribute: 'open' },
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
      .steps,
      .tools {
        display: flex;
        flex-wrap: wrap;
        gap: 4px;
        align-items: center;
      }
      .steps {
        margin-inline-start: auto;
      }
      .plain {
        padding: 0 4px;
      }
      .menu {
        display: none;
      }
      :host([open]) .menu {
        background: var(--accent-ground);
      }
      /* What has no room in one row is folded away: first the tools, then the parts of the page as well. */
      @media (width < 83em), (pointer: coarse) and (width < 90em) {
        .menu {
          display: inline-block;
        }
        .tools {
          flex-basis: 100%;
        }
        /* Not out of the layout altogether: what the tools have opened over the page stays. */
        :host(:not([open])) .tools {
          position: absolute;
          overflow: hidden;
          visibility: hidden;
          width: 0;
          height: 0;
        }
      }
      @media (width < 62em) {
        nav {
          order: 1;
          flex-basis: 100%;
        }
        .tools {
          order: 1;
        }
        :host(:not([open])) nav {
          display: none;
        }
      }
      @media (width < 24em) {
        h1 span {
          position: absolute;
          overflow: hidden;
          width: 1px;
          height: 1px;
          clip-path: inset(50%);
        }
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
  /** what is folded away is shown */
  declare _open: boolean

  constructor() {
    super()
    this._said = ''
    this._open = false
  }

  override render() {
    const { session } = this
    return html`
      <h1 tabindex="-1">
        <svg viewBox="0 0 26 20" aria-hidden="true"><path d="M0 0h6v5h7v5h6v5h7v5H0z" /></svg>
        <span>${say('page.title')}</span>
      </h1>
      <button type="button" class="menu" aria-expanded=${this._open} @click=${() => (this._open = !this._open)}>
        ${say('page.menu')}
      </button>
      <nav aria-label=${say('page.views')} @click=${this.#fold}>
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
      <div class="steps">
        <tack-draft-state .session=${session}></tack-draft-state>
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
      </div>
      <div class="tools">
        <button type="button" class="plain" @click=${() => this.dispatchEvent(new Event('first-look'))}>
          ${say('page.firstLook')}
        </button>
        <tack-page-tools .session=${session}></tack-page-tools>
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

  /** Who has chosen where to go needs the menu no more; the link that had the focus goes with it. */
  #fold({ target }: Event): void {
    if (!this._open || !(target instanceof Element) || !target.closest('a')) return
    this._open = false
    this.renderRoot.querySelector<HTMLElement>('.menu')?.focus()
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
