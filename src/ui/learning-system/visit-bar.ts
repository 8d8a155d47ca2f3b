/** One line above the page: where the results go, and whether they have arrived. */
import { LitElement, css, html, nothing } from 'lit'
import type { Visit } from '../../report/learning-system/visit.ts'
import type { Session } from '../../session/session.ts'
import { saveResultFile } from '../lessons/hand-in.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import './aside-list.ts'

export class VisitBar extends LitElement {
  static override properties = {
    visit: { attribute: false },
    session: { attribute: false },
    language: { attribute: false },
    ended: { state: true },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 12px;
        align-items: center;
        padding: 4px 12px;
        border-bottom: 1px solid var(--edge);
        background: var(--accent-ground);
        font-size: 0.9375rem;
      }
      p {
        flex: 1 1 20rem;
      }
      tack-aside-list {
        flex: 1 1 100%;
      }
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ]

  declare visit: Visit
  declare session: Session
  declare protected ended: boolean
  /** takes the work in as it stands */
  look: () => void = () => undefined
  readonly #size = new ResizeObserver(() => this.#makeRoom())
  #end: (() => void) | undefined

  constructor() {
    super()
    this.ended = false
    this.role = 'region'
  }

  override connectedCallback(): void {
    super.connectedCallback()
    this.#end = this.visit.subscribe(() => {
      this.requestUpdate()
      // It is the same visit all along, so that the list has to be told itself.
      this.renderRoot.querySelector<LitElement>('tack-aside-list')?.requestUpdate()
    })
    this.#size.observe(this)
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#end?.()
    this.#size.disconnect()
  }

  override render() {
    const { state } = this.visit
    this.ariaLabel = say('system.label')
    const where = this.visit.keeps ? 'browser' : 'page'
    const looksRound = state.kind === 'looking round'
    return html`
      <p>
        ${say(looksRound ? 'system.hereLooking' : 'system.here')}
        <span role="status"
          >${
            this.ended && !this.visit.wouldLose
              ? say('system.state.ended')
              : state.kind === 'looking round'
                ? nothing
                : say(`system.state.${state.kind}`, { where })
          }</span
        >
        ${state.leftOut === null || looksRound ? nothing : say(`system.leftOut.${state.leftOut}`)}
      </p>
      ${
        state.kind === 'waiting' || state.kind === 'opening'
          ? html`<button type="button" @click=${() => void this.visit.flush()}>${say('system.tryNow')}</button>`
          : nothing
      }
      <button type="button" @click=${this.#download}>${say('system.download')}</button>
      ${this.ended ? nothing : html`<button type="button" @click=${this.#leave}>${say('system.end')}</button>`}
      <tack-aside-list .visit=${this.visit}></tack-aside-list>
    `
  }

  /** The views fill what is left of the window. */
  #makeRoom(): void {
    document.documentElement.style.setProperty('--above', `${this.offsetHeight}px`)
  }

  readonly #leave = (): void => {
    const { opened } = this.visit
    this.look()
    this.visit.leave()
    this.ended = true
    if (opened?.returnTo && /^https?:/.test(opened.returnTo)) location.assign(opened.returnTo)
  }

  readonly #download = (): void => {
    this.look()
    saveResultFile(this.session)
  }
}

customElements.define('tack-visit-bar', VisitBar)
