/** What can be opened over or below the picture: the film stack in numbers, all readings, and how it is computed. */
import { css, html, nothing } from 'lit'
import './all-readings.ts'
import './film-table.ts'
import './measure-choice.ts'
import type { PanelDialog } from './panel-dialog.ts'
import './panel-dialog.ts'
import { inkDensity } from '../session/measures.ts'
import { say, sayNumber } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'
import './workings.ts'

const panels = ['stack', 'readings', 'how'] as const
type Panel = (typeof panels)[number]

export class BenchPanels extends SessionElement {
  static override properties = { _open: { state: true } }
  static override styles = [
    sharedStyles,
    css`
      .buttons {
        display: flex;
        flex-wrap: wrap;
        gap: 4px;
        align-items: center;
      }
      label {
        margin-left: 8px;
        font-size: 14px;
      }
      .note {
        margin-top: 12px;
      }
    `,
  ]

  declare _open: Panel | null

  constructor() {
    super()
    this._open = null
  }

  override render() {
    const open = this._open
    return html`
      <div class="buttons">
        ${panels.map(
          (panel) =>
            html`<button type="button" aria-haspopup="dialog" @click=${() => (this._open = panel)}>
              ${say(`bench.panel.${panel}`)}
            </button>`,
        )}
      </div>
      <tack-panel-dialog
        .heading=${open === null ? '' : say(`bench.panel.${open}`)}
        @closed=${() => (this._open = null)}
      >
        ${open === null ? nothing : this.#content(open)}
      </tack-panel-dialog>
    `
  }

  #content(panel: Panel) {
    const { session } = this
    switch (panel) {
      case 'stack':
        return html`<tack-film-table .session=${session}></tack-film-table>`
      case 'readings':
        return html`<tack-all-readings .session=${session}></tack-all-readings>
          <p class="note">${say('bench.inkDensity', { density: sayNumber(inkDensity, 0, 2) })}</p>`
      case 'how':
        return html`<tack-workings .session=${session}></tack-workings>`
    }
  }

  override updated(changed: Map<string, unknown>): void {
    if (changed.has('_open') && this._open !== null)
      this.renderRoot.querySelector<PanelDialog>('tack-panel-dialog')?.show()
  }
}

customElements.define('tack-bench-panels', BenchPanels)
