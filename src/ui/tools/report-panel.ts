/** Prints the report. */
import { html } from 'lit'
import { say } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import { ReportSheet } from './report-sheet.ts'
import { toolStyles } from './tool-styles.ts'

export class ReportPanel extends SessionElement {
  static override styles = [sharedStyles, toolStyles]

  override render() {
    return html`
      <h3>${say('tools.report')}</h3>
      <p>${say('tools.reportHow')}</p>
      <div class="row">
        <button type="button" @click=${this.#print}>${say('tools.print')}</button>
      </div>
    `
  }

  /** The report stands in the page only while it is printed. */
  async #print(): Promise<void> {
    const sheet = new ReportSheet()
    sheet.session = this.session
    document.body.append(sheet)
    await sheet.updateComplete
    window.addEventListener('afterprint', () => sheet.remove(), { once: true })
    window.print()
  }
}

customElements.define('tack-report-panel', ReportPanel)
