/** The draft in a few sentences, and a way out for what could not be read. */
import { html, nothing } from 'lit'
import { say } from '../say.ts'
import { DraftElement } from './draft-element.ts'
import './set-aside.ts'

export class DraftPanel extends DraftElement {
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
