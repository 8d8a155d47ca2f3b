/** Opens the panel that makes packages for learning systems; its code and the lessons are fetched when it is wanted. */
import { LitElement, css, html, nothing } from 'lit'
import '../not-loaded.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { toolStyles } from './tool-styles.ts'
import { didNotArrive } from '../did-not-arrive.ts'

export class PackSection extends LitElement {
  static override properties = { language: { attribute: false }, state: { state: true } }
  static override styles = [
    sharedStyles,
    toolStyles,
    css`
      summary {
        font-size: 1.0625rem;
        font-weight: 650;
        line-height: 1.5rem;
        cursor: pointer;
      }
    `,
  ]

  declare protected state: 'closed' | 'open' | 'failed'

  constructor() {
    super()
    this.state = 'closed'
  }

  override render() {
    return html`<details @toggle=${this.#open}>
      <summary>${say('system.pack')}</summary>
      ${
        this.state === 'open'
          ? html`<tack-pack-panel></tack-pack-panel>`
          : this.state === 'failed'
            ? html`<tack-not-loaded></tack-not-loaded>`
            : nothing
      }
    </details>`
  }

  readonly #open = async (event: Event): Promise<void> => {
    if (this.state === 'open' || !(event.target as HTMLDetailsElement).open) return
    try {
      await import('../learning-system/pack-panel.ts')
      this.state = 'open'
    } catch (error) {
      if (!didNotArrive(error)) throw error
      this.state = 'failed'
    }
  }
}

customElements.define('tack-pack-section', PackSection)
