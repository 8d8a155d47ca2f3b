/** The section with what belongs to it: which inks print in the patch that is cut open. */
import type { PropertyDeclarations } from 'lit'
import { css, html, nothing } from 'lit'
import './panel-button.ts'
import './patch-switch.ts'
import { say } from './say.ts'
import './section-picture.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'

export class SectionPanel extends SessionElement {
  static override properties: PropertyDeclarations = { ...SessionElement.properties, untitled: { type: Boolean } }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: flex;
        flex-direction: column;
        gap: 4px;
      }
      .title {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 12px;
        align-items: center;
      }
      tack-patch-switch {
        margin-inline-start: auto;
      }
      tack-section-picture {
        flex: 1;
        min-height: 10rem;
      }
    `,
  ]

  /** its name stands elsewhere, where it was chosen */
  declare untitled: boolean

  constructor() {
    super()
    this.untitled = false
  }

  override render() {
    return html`
      <div class="title">
        <h2 class=${this.untitled ? 'unseen' : nothing}>${say('bench.section')}</h2>
        <tack-panel-button .session=${this.session} .panel=${'stack'}></tack-panel-button>
        <tack-patch-switch .session=${this.session}></tack-patch-switch>
      </div>
      <tack-section-picture .session=${this.session}></tack-section-picture>
    `
  }
}

customElements.define('tack-section-panel', SectionPanel)
