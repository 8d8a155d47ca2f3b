/** Everything that can be taken along or brought back: the file, the draft, tables, pictures and paper. */
import type { PropertyDeclarations } from 'lit'
import { html } from 'lit'
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
  static override styles = [sharedStyles, toolStyles]

  declare draft: PageDraft

  override render() {
    const { session } = this
    return html`
      <section><tack-save-panel .session=${session}></tack-save-panel></section>
      <section><tack-open-panel .session=${session}></tack-open-panel></section>
      <section><tack-draft-panel .draft=${this.draft}></tack-draft-panel></section>
      <section><tack-tables-panel .session=${session}></tack-tables-panel></section>
      <section><tack-pictures-panel .session=${session}></tack-pictures-panel></section>
      <section><tack-report-panel .session=${session}></tack-report-panel></section>
      <section><tack-pack-section></tack-pack-section></section>
    `
  }

  async lookInto(file: File): Promise<void> {
    await this.updateComplete
    await this.renderRoot.querySelector<OpenPanel>('tack-open-panel')?.lookInto(file)
  }
}

customElements.define('tack-file-panel', FilePanel)
