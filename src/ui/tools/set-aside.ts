/** What this browser had kept and can no longer be read: what it was, and a way to have its text or to be rid of it. */
import { html, nothing } from 'lit'
import { say } from '../say.ts'
import { saveText } from '../strip/save-text.ts'
import { DraftElement } from './draft-element.ts'

export class SetAside extends DraftElement {
  override render() {
    const { aside } = this.draft
    if (!aside) return nothing
    const { draft, work, reason } = aside
    return html`
      ${draft === null ? nothing : html`<p>${say('tools.aside', { reason: reason ?? say('tools.asideReason') })}</p>`}
      ${work === null ? nothing : html`<p>${say('tools.asideWork')}</p>`}
      <div class="row">
        <button type="button" @click=${() => saveText('unreadable.txt', 'text/plain', textOf(draft, work))}>
          ${say('tools.asideSave')}
        </button>
        <button type="button" @click=${() => this.draft.dropAside()}>${say('tools.asideDrop')}</button>
      </div>
    `
  }
}

function textOf(...texts: readonly (string | null)[]): string {
  return texts.filter((text) => text !== null).join('\n\n')
}

customElements.define('tack-set-aside', SetAside)
