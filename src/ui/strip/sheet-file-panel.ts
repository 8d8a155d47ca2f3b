/** Readings from a file: what its columns are, a template to fill in, and a place to choose or drop it. */
import { css, html } from 'lit'
import { separators, sheetTemplate } from '../../measure/sheet-file.ts'
import { sheetColumns } from '../../measure/sheet-row.ts'
import { linkedText } from '../linked-text.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { saveText } from './save-text.ts'
import { StripElement } from './strip-element.ts'
import { stripStyles } from './strip-styles.ts'

const separatorNames = { ',': 'comma', ';': 'semicolon', '\t': 'tab' } as const

export class SheetFilePanel extends StripElement {
  static override properties = { _over: { state: true } }
  static override styles = [
    sharedStyles,
    stripStyles,
    css`
      .drop {
        margin-top: 8px;
        padding: 12px;
        border: 2px dashed var(--edge);
      }
      .over {
        background: var(--accent-ground);
      }
      dl {
        display: grid;
        grid-template-columns: auto minmax(0, 1fr);
        gap: 4px 12px;
      }
      dt {
        font-weight: 600;
      }
    `,
  ]

  declare _over: boolean

  constructor() {
    super()
    this._over = false
  }

  override render() {
    const { file } = this.desk.state
    return html`
      <h3>${say('strip.file')}</h3>
      <div
        class="drop ${this._over ? 'over' : ''}"
        @dragover=${(event: DragEvent) => {
          event.preventDefault()
          this._over = true
        }}
        @dragleave=${() => (this._over = false)}
        @drop=${this.#drop}
      >
        ${
          file
            ? html`<p>${say('strip.fileRead', { name: file.name })}</p>
                <button type="button" @click=${() => this.desk.set({ file: null })}>${say('strip.fileAway')}</button>`
            : html`<label
                >${say('strip.fileChoose')}<br /><input
                  type="file"
                  accept=".csv,.txt,.tsv,text/csv,text/plain"
                  @change=${this.#choose}
              /></label>`
        }
      </div>
      <details>
        <summary>${say('strip.columns')}</summary>
        <dl>
          ${sheetColumns.map(
            (column) =>
              html`<dt>${column}</dt>
                <dd>${linkedText(say(`strip.column.${column}`))}</dd>`,
          )}
        </dl>
        <p>${say('strip.columnsNote')}</p>
      </details>
      <div class="row" role="group" aria-label=${say('strip.template')}>
        <span>${say('strip.template')}</span>
        ${separators.map(
          (separator) =>
            html`<button
              type="button"
              @click=${() => saveText('press-sheet.csv', 'text/csv', sheetTemplate(this.inkNames, separator))}
            >
              ${say(`strip.template.${separatorNames[separator]}`)}
            </button>`,
        )}
      </div>
    `
  }

  readonly #choose = (event: Event): void => {
    const file = (event.target as HTMLInputElement).files?.[0]
    if (file) void this.#take(file)
  }

  readonly #drop = (event: DragEvent): void => {
    event.preventDefault()
    this._over = false
    const file = event.dataTransfer?.files[0]
    if (file) void this.#take(file)
  }

  async #take(file: File): Promise<void> {
    this.desk.set({ file: { name: file.name, text: await file.text() } })
  }
}

customElements.define('tack-sheet-file-panel', SheetFilePanel)
