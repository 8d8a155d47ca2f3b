/** Where result files are put: chosen, or dropped, also a whole folder; and how far their reading has come. */
import { LitElement, css, html, nothing } from 'lit'
import type { ClassBoard } from '../../class/board.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { boardStyles } from './board-styles.ts'
import { droppedFiles, isMeant } from './dropped-files.ts'

export class FileDrop extends LitElement {
  static override properties = {
    board: { attribute: false },
    _over: { state: true },
  }
  static override styles = [
    sharedStyles,
    boardStyles,
    css`
      .drop {
        display: grid;
        gap: 8px;
        padding: 12px;
        border: 2px dashed var(--edge);
        border-radius: var(--corner);
      }
      .over {
        background: var(--accent-ground);
      }
      label {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 8px;
        align-items: center;
      }
      input {
        max-width: 100%;
        border: 0;
        background: none;
      }
      progress {
        flex: 1;
        min-width: 7.5rem;
        accent-color: var(--accent);
      }
    `,
  ]

  declare board: ClassBoard
  /** files are held over it */
  declare _over: boolean
  #unsubscribe: (() => void) | undefined

  constructor() {
    super()
    this._over = false
  }

  override connectedCallback(): void {
    super.connectedCallback()
    if (this.hasUpdated) this.#follow()
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#unsubscribe?.()
  }

  override firstUpdated(): void {
    this.#follow()
  }

  override render() {
    const { reading, stopped } = this.board.state
    return html`<div
      class="drop ${this._over ? 'over' : ''}"
      @dragover=${this.#dragOver}
      @dragleave=${() => (this._over = false)}
      @drop=${this.#drop}
    >
      ${
        reading
          ? html`<div class="row">
              <progress
                max=${reading.all}
                .value=${reading.read}
                aria-label=${say('board.reading', reading)}
              ></progress>
              <span>${say('board.reading', reading)}</span>
              <button type="button" @click=${() => this.board.cancel()}>${say('board.cancel')}</button>
            </div>`
          : html`<div class="row">
                <label
                  >${say('board.choose')} <input type="file" multiple accept=".json,.csv" @change=${this.#choose}
                /></label>
                <label
                  >${say('board.chooseFolder')} <input type="file" webkitdirectory @change=${this.#choose}
                /></label>
              </div>
              <p>${say('board.orDrop')}</p>
              <p class="note">${say('board.kinds')}</p>`
      }
      <p role="status">${stopped ? say('board.cancelled', stopped) : nothing}</p>
    </div>`
  }

  #follow(): void {
    this.#unsubscribe = this.board.subscribe(() => this.requestUpdate())
  }

  readonly #choose = (event: Event): void => {
    const input = event.target as HTMLInputElement
    this.#read(Array.from(input.files ?? []).filter(isMeant))
    // So that the same files can be chosen again.
    input.value = ''
  }

  readonly #dragOver = (event: DragEvent): void => {
    event.preventDefault()
    this._over = true
  }

  readonly #drop = (event: DragEvent): void => {
    event.preventDefault()
    this._over = false
    if (event.dataTransfer) void droppedFiles(event.dataTransfer).then((files) => this.#read(files))
  }

  #read(files: readonly File[]): void {
    void this.board.read(files, {
      now: () => performance.now(),
      pause: () => new Promise((resolve) => setTimeout(resolve)),
    })
  }
}

customElements.define('tack-file-drop', FileDrop)
