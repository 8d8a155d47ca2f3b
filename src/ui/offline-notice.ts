/** Offers a newer version of the page when there is one; never loads it by itself. */
import { LitElement, css, html, nothing } from 'lit'
import type { MessageKey } from './say.ts'
import { say } from './say.ts'
import { sharedStyles } from './shared-styles.ts'
import { keepOffline } from './offline.ts'

export class OfflineNotice extends LitElement {
  static override properties = { news: { state: true } }
  static override styles = [
    sharedStyles,
    css`
      :host {
        position: fixed;
        z-index: 2;
        inset: auto 0 0;
        pointer-events: none;
      }
      div.notice {
        display: flex;
        flex-wrap: wrap;
        gap: 8px 16px;
        align-items: center;
        width: fit-content;
        max-width: calc(100vw - 1rem);
        margin: 0 auto 8px;
        padding: 8px 16px;
        border: 1px solid var(--edge);
        border-radius: var(--corner);
        background: var(--accent-ground);
        color: var(--graphite);
        pointer-events: auto;
      }
    `,
  ]

  declare protected news: { message: MessageKey; take?: () => void } | null

  constructor() {
    super()
    this.news = null
  }

  override connectedCallback(): void {
    super.connectedCallback()
    void keepOffline({
      newVersion: (take) => (this.news = { message: 'offline.newVersion', take }),
      replaced: () => (this.news = { message: 'offline.replaced' }),
    })
  }

  override render() {
    return html`<div role="status">${this.news ? this.#notice(this.news) : nothing}</div>`
  }

  #notice({ message, take }: NonNullable<OfflineNotice['news']>) {
    const close = () => (this.news = null)
    return html`<div class="notice">
      <p>${say(message)}</p>
      ${take ? html`<button type="button" @click=${take}>${say('offline.take')}</button>` : nothing}
      <button type="button" @click=${close}>${say(take ? 'offline.later' : 'offline.close')}</button>
    </div>`
  }
}

customElements.define('tack-offline-notice', OfflineNotice)
