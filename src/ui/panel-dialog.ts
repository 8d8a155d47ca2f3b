/** A panel over the page: a real dialog with a heading and a way out. Its content comes in by its slot. */
import { LitElement, css, html } from 'lit'
import { say } from './say.ts'
import { sharedStyles } from './shared-styles.ts'

export class PanelDialog extends LitElement {
  static override properties = { heading: {} }
  static override styles = [
    sharedStyles,
    css`
      dialog {
        width: min(55rem, calc(100vw - 1rem));
        max-height: calc(100dvh - 2rem);
        padding: 0;
        overflow: auto;
        border: 1px solid var(--edge);
        border-radius: var(--corner);
        background: var(--panel);
        color: var(--graphite);
      }
      dialog::backdrop {
        background: rgb(0 0 0 / 45%);
      }
      .head {
        position: sticky;
        z-index: 1;
        top: 0;
        display: flex;
        align-items: center;
        justify-content: space-between;
        padding: 12px 16px;
        border-bottom: 1px solid var(--line);
        background: var(--panel);
      }
      h2 {
        font-size: 1.25rem;
        line-height: 1.75rem;
      }
      .body {
        padding: 12px 16px 24px;
      }
    `,
  ]

  declare heading: string

  show(): void {
    this.#dialog.showModal()
  }

  get #dialog(): HTMLDialogElement {
    return this.renderRoot.querySelector('dialog') as HTMLDialogElement
  }

  override render() {
    return html`<dialog aria-labelledby="heading" @close=${() => this.dispatchEvent(new Event('closed'))}>
      <div class="head">
        <h2 id="heading">${this.heading}</h2>
        <button type="button" @click=${() => this.#dialog.close()}>${say('bench.close')}</button>
      </div>
      <div class="body" tabindex="0" role="region" aria-labelledby="heading"><slot></slot></div>
    </dialog>`
  }
}

customElements.define('tack-panel-dialog', PanelDialog)
