/** The draft in a few sentences, and a way out for one that could not be read. */
import type { PropertyDeclarations } from 'lit'
import { LitElement, html, nothing } from 'lit'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import type { PageDraft } from './page-draft.ts'
import './set-aside.ts'
import { toolStyles } from './tool-styles.ts'

export class DraftPanel extends LitElement {
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

  override render() {
    const { news, aside } = this.draft
    return html`
      <h3>${say('tools.draftHead')}</h3>
      <p>${say(`tools.draftMeans.${news}`)}</p>
      ${aside ? html`<div class="set-off"><tack-set-aside .draft=${this.draft}></tack-set-aside></div>` : nothing}
    `
  }
}

customElements.define('tack-draft-panel', DraftPanel)
