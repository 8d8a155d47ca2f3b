/** Everything that can be taken along or brought back: the file, the draft, tables, pictures and paper. */
import type { PropertyDeclarations } from 'lit'
import { css, html } from 'lit'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import './draft-panel.ts'
import type { OpenPanel } from './open-panel.ts'
import './open-panel.ts'
import './pack-section.ts'
import type { PageDraft } from './page-draft.ts'
import './pictures-panel.ts'
import './report-panel.ts'
import './save-panel.ts'
import './tables-panel.ts'
import { toolStyles } from './tool-styles.ts'

export class FilePanel extends SessionElement {
  static override properties: PropertyDeclarations = { ...SessionElement.properties, draft: { attribute: false } }
  static override styles = [
    sharedStyles,
    toolStyles,
    css`
      @media (min-width: 56.25em) {
        .sides {
          display: grid;
          grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
          gap: 40px;
        }
        .side + .side {
          margin: 0;
          padding: 0;
          border: 0;
        }
      }
    `,
  ]

  declare draft: PageDraft

  override render() {
    const { session } = this
    return html`
      <div class="sides">
        <div class="side">
          <section><tack-save-panel .session=${session}></tack-save-panel></section>
          <section><tack-open-panel .session=${session}></tack-open-panel></section>
          <section><tack-draft-panel .draft=${this.draft}></tack-draft-panel></section>
        </div>
        <div class="side">
          <section><tack-tables-panel .session=${session}></tack-tables-panel></section>
          <section><tack-pictures-panel .session=${session}></tack-pictures-panel></section>
          <section><tack-report-panel .session=${session}></tack-report-panel></section>
        </div>
      </div>
      <section><tack-pack-section></tack-pack-section></section>
    `
  }

  async lookInto(file: File): Promise<void> {
    await this.updateComplete
    await this.renderRoot.querySelector<OpenPanel>('tack-open-panel')?.lookInto(file)
  }
}

customElements.define('tack-file-panel', FilePanel)
