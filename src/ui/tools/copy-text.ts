/** A text to be copied: by a button, or where the browser does not let a page copy, by hand. */
import type { PropertyDeclarations } from 'lit'
import { LitElement, css, html } from 'lit'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'

export class CopyText extends LitElement {
  static override properties: PropertyDeclarations = { label: {}, text: {}, said: { state: true } }
  static override styles = [
    sharedStyles,
    css`
      textarea {
        width: 100%;
        min-height: 4.5rem;
        padding: 4px 8px;
        border: 1px solid var(--edge);
        border-radius: var(--corner);
        background: var(--field);
        color: inherit;
        font: inherit;
        font-size: 0.9375rem;
        line-height: 1.25rem;
        overflow-wrap: anywhere;
        resize: vertical;
      }
      div {
        display: flex;
        flex-wrap: wrap;
        gap: 8px;
        align-items: center;
        margin-top: 4px;
      }
    `,
  ]

  declare label: string
  declare text: string
  declare protected said: string

  constructor() {
    super()
    this.said = ''
  }

  override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('text')) this.said = ''
  }

  override render() {
    return html`<label for="text">${this.label}</label>
      <textarea id="text" readonly .value=${this.text}></textarea>
      <div>
        <button type="button" aria-label=${`${say('tools.copy')}: ${this.label}`} @click=${this.#copy}>
          ${say('tools.copy')}
        </button>
        <span role="status">${this.said}</span>
      </div>`
  }

  async #copy(): Promise<void> {
    const copied = await toClipboard(this.text)
    if (!copied) {
      const area = this.renderRoot.querySelector('textarea')
      area?.focus()
      area?.select()
    }
    this.said = say(copied ? 'tools.copied' : 'tools.copySelected')
  }
}

/** False where the browser has no clipboard for this page or refuses it. */
async function toClipboard(text: string): Promise<boolean> {
  const { clipboard } = navigator as Partial<Navigator>
  if (!clipboard) return false
  try {
    await clipboard.writeText(text)
    return true
  } catch (error) {
    if (error instanceof DOMException) return false
    throw error
  }
}

customElements.define('tack-copy-text', CopyText)
