/** What shows the draft of the page: drawn anew whenever something has become of it. */
import type { PropertyDeclarations } from 'lit'
import { LitElement } from 'lit'
import { sharedStyles } from '../shared-styles.ts'
import type { PageDraft } from './page-draft.ts'
import { toolStyles } from './tool-styles.ts'

export class DraftElement extends LitElement {
  static override properties: PropertyDeclarations = { draft: { attribute: false } }
  static override styles = [sharedStyles, toolStyles]

  declare draft: PageDraft

  #end: (() => void) | undefined

  override connectedCallback(): void {
    super.connectedCallback()
    this.#end = this.draft.subscribe(() => this.requestUpdate())
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#end?.()
  }
}
