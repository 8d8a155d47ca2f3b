/** Every word of the trade with its one sentence, what to see of it on the bench, and a field to find one. */
import type { PropertyDeclarations } from 'lit'
import { css, html, nothing } from 'lit'
import type { GlossaryTerm } from '../../words/glossary-term.ts'
import { language } from '../language.ts'
import { say } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import { findTerms } from './find-terms.ts'

export class GlossaryView extends SessionElement {
  static override properties: PropertyDeclarations = { ...SessionElement.properties, wanted: { state: true } }
  static override styles = [
    sharedStyles,
    css`
      main {
        display: grid;
        gap: 8px;
        align-content: start;
        padding: 8px;
      }
      .head {
        display: flex;
        flex-wrap: wrap;
        gap: 8px 24px;
        align-items: center;
      }
      h2 {
        font-size: 1.25rem;
        line-height: 1.75rem;
      }
      input {
        width: 13.75rem;
        max-width: 100%;
        padding: 0 8px;
      }
      dl {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(21.25rem, 100%), 1fr));
        gap: 8px;
      }
      dl > div {
        padding: 8px 12px;
        border: var(--hairline) solid var(--panel-edge);
        border-radius: var(--corner);
        background: var(--panel);
      }
      dt {
        font-weight: 650;
      }
      dd + dd {
        margin-top: 4px;
        color: var(--soft);
        font-size: 0.9375rem;
      }
      dd button {
        margin-inline-end: 4px;
      }
    `,
  ]

  /** what has been typed to find a word */
  declare protected wanted: string

  constructor() {
    super()
    this.wanted = ''
  }

  override render() {
    const { glossary, tag } = language()
    const found = findTerms(glossary, this.wanted).sort(([, one], [, other]) => one.term.localeCompare(other.term, tag))
    return html`<main>
      <div class="head">
        <h2>${say('glossary.heading')}</h2>
        <label>
          ${say('glossary.find')}
          <input type="search" .value=${this.wanted} @input=${this.#find} />
        </label>
        <p role="status" class="note">${say('glossary.count', { count: found.length })}</p>
      </div>
      <dl>${found.map(([id, entry]) => this.#entry(id, entry))}</dl>
    </main>`
  }

  #entry(id: string, { term, sentence, see, related, source }: GlossaryTerm) {
    const others = related.map((other) => language().glossary[other].term)
    return html`<div id=${id}>
      <dt>${term}</dt>
      <dd>${sentence}</dd>
      <dd>${say('glossary.see', { see })}</dd>
      ${
        others.length > 0
          ? html`<dd>
              ${say('glossary.related')}
              ${others.map((other) => html`<button type="button" @click=${() => this.#follow(other)}>${other}</button>`)}
            </dd>`
          : nothing
      }
      ${source === undefined ? nothing : html`<dd>${say('glossary.source', { source })}</dd>`}
    </div>`
  }

  /** The word that was pressed may be gone from the list, so the focus goes to where it now stands written. */
  #follow(term: string): void {
    this.wanted = term
    this.renderRoot.querySelector('input')?.focus()
  }

  #find(event: Event): void {
    this.wanted = (event.target as HTMLInputElement).value
  }
}

customElements.define('tack-glossary-view', GlossaryView)
