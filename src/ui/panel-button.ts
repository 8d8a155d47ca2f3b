/** A button that opens one panel over the page: the film stack in numbers, all readings, or how it is computed. */
import type { PropertyValues } from 'lit'
import { css, html, nothing } from 'lit'
import './all-readings.ts'
import './film-table.ts'
import type { PanelDialog } from './panel-dialog.ts'
import './panel-dialog.ts'
import { say } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'
import './workings.ts'

export type Panel = 'stack' | 'readings' | 'how'

export class PanelButton extends SessionElement {
  static override properties = { panel: {}, _open: { state: true } }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: inline-block;
      }
      button {
        min-height: 24px;
        font-size: 0.875rem;
      }
      @media (pointer: coarse) {
        button {
          min-height: 44px;
        }
      }
    `,
  ]

  declare panel: Panel
  declare _open: boolean

  constructor() {
    super()
    this._open = false
  }

  override render() {
    const { hide, known } = this.session.look
    // The workings use words of the whole course.
    if (this.panel === 'how' && (hide.includes('workings') || known)) return nothing
    const heading = say(`bench.panel.${this.panel}`)
    return html`
      <button type="button" aria-haspopup="dialog" @click=${() => (this._open = true)}>${heading}</button>
      <tack-panel-dialog .heading=${heading} @closed=${() => (this._open = false)}>
        ${this._open ? this.#content() : nothing}
      </tack-panel-dialog>
    `
  }

  #content() {
    const { session } = this
    switch (this.panel) {
      case 'stack':
        return html`<tack-film-table .session=${session}></tack-film-table>`
      case 'readings':
        return html`<tack-all-readings .session=${session}></tack-all-readings>`
      case 'how':
        return html`<tack-workings .session=${session}></tack-workings>`
    }
  }

  override updated(changed: PropertyValues): void {
    if (changed.has('_open') && this._open) this.renderRoot.querySelector<PanelDialog>('tack-panel-dialog')?.show()
  }
}

customElements.define('tack-panel-button', PanelButton)
