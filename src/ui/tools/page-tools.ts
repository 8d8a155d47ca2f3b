/** Sharing, files and a person's comfort in the head of the page, and files dropped anywhere on it. What the panels need is fetched when asked for. */
import type { PropertyDeclarations } from 'lit'
import { css, html, nothing } from 'lit'
import type { PanelDialog } from '../panel-dialog.ts'
import '../panel-dialog.ts'
import '../not-loaded.ts'
import { say } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import type { FilePanel } from './file-panel.ts'
import { draftOf } from './page-draft.ts'
import { didNotArrive } from '../did-not-arrive.ts'

type Tool = 'share' | 'file' | 'comfort'

const load: Readonly<Record<Tool, () => Promise<unknown>>> = {
  share: () => import('./share-panel.ts'),
  file: () => import('./file-panel.ts'),
  comfort: () => import('./comfort-panel.ts'),
}

const headings = { share: 'tools.shareHead', file: 'tools.fileHead', comfort: 'comfort.head' } as const

export class PageTools extends SessionElement {
  static override properties: PropertyDeclarations = {
    ...SessionElement.properties,
    open: { state: true },
    failed: { state: true },
    over: { state: true },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: flex;
        flex-wrap: wrap;
        gap: 4px;
        align-items: center;
      }
      .over,
      tack-panel-dialog {
        visibility: visible;
      }
      .over {
        position: fixed;
        z-index: 3;
        inset: 0;
        display: grid;
        place-items: center;
        padding: 24px;
        border: 4px dashed var(--accent);
        background: var(--accent-ground);
        font-size: 1.25rem;
        text-align: center;
        pointer-events: none;
      }
    `,
  ]

  declare protected open: Tool | null
  declare protected failed: boolean
  /** a file is held over the page */
  declare protected over: boolean

  #listening: AbortController | undefined

  constructor() {
    super()
    this.open = null
    this.failed = false
    this.over = false
  }

  override connectedCallback(): void {
    super.connectedCallback()
    this.#listening = new AbortController()
    const { signal } = this.#listening
    window.addEventListener('dragover', this.#dragOver, { signal })
    window.addEventListener('dragleave', this.#dragLeave, { signal })
    window.addEventListener('drop', this.#drop, { signal })
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#listening?.abort()
  }

  override render() {
    const { open } = this
    return html`
      <button type="button" aria-haspopup="dialog" @click=${() => this.show('share')}>${say('tools.share')}</button>
      <button type="button" aria-haspopup="dialog" @click=${() => this.show('file')}>${say('tools.file')}</button>
      <button type="button" aria-haspopup="dialog" @click=${() => this.show('comfort')}>
        ${say('comfort.button')}
      </button>
      ${this.over ? html`<p class="over" role="status">${say('tools.dropHere')}</p>` : nothing}
      <tack-panel-dialog .heading=${say(headings[open ?? 'file'])} @closed=${() => (this.open = null)}>
        ${open === null ? nothing : this.failed ? html`<tack-not-loaded></tack-not-loaded>` : this.#content(open)}
      </tack-panel-dialog>
    `
  }

  #content(open: Tool) {
    const { session } = this
    switch (open) {
      case 'share':
        return html`<tack-share-panel .session=${session} @save-instead=${() => this.show('file')}></tack-share-panel>`
      case 'file':
        return html`<tack-file-panel .session=${session} .draft=${draftOf(session)}></tack-file-panel>`
      case 'comfort':
        return html`<tack-comfort-panel .session=${session}></tack-comfort-panel>`
    }
  }

  /** Opens a panel once its code is there. */
  async show(tool: Tool): Promise<void> {
    try {
      await load[tool]()
      this.failed = false
    } catch (error) {
      // Code that does not arrive (no network) is told in the panel; anything else is a fault of ours.
      if (!didNotArrive(error)) throw error
      this.failed = true
    }
    const wasOpen = this.open !== null
    this.open = tool
    await this.updateComplete
    if (!wasOpen) this.renderRoot.querySelector<PanelDialog>('tack-panel-dialog')?.show()
  }

  async #lookInto(file: File): Promise<void> {
    await this.show('file')
    await this.renderRoot.querySelector<FilePanel>('tack-file-panel')?.lookInto(file)
  }

  /** Where a view takes files itself, it has said so already. */
  readonly #dragOver = (event: DragEvent): void => {
    if (event.defaultPrevented || !event.dataTransfer?.types.includes('Files')) {
      this.over = false
      return
    }
    event.preventDefault()
    this.over = true
  }

  readonly #dragLeave = (event: DragEvent): void => {
    if (event.relatedTarget === null) this.over = false
  }

  readonly #drop = (event: DragEvent): void => {
    this.over = false
    const file = event.dataTransfer?.files.item(0)
    if (event.defaultPrevented || !file) return
    event.preventDefault()
    void this.#lookInto(file)
  }
}

customElements.define('tack-page-tools', PageTools)
