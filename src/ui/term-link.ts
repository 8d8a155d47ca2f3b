/** A word of the trade in running text: pressed, it shows the one sentence that explains it. */
import { LitElement, css, html, nothing } from 'lit'
import type { GlossaryTerm } from '../words/glossary-term.ts'
import { language } from './language.ts'
import { say } from './say.ts'
import { sharedStyles } from './shared-styles.ts'

export class TermLink extends LitElement {
  static override properties = { term: {}, text: {}, opens: {}, closes: {}, entry: { attribute: false } }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: inline;
      }
      .whole {
        white-space: nowrap;
      }
      button {
        display: inline;
        min-width: 0;
        min-height: 0;
        padding: 0;
        border: 0;
        border-bottom: 1px dotted var(--accent);
        border-radius: 0;
        background: none;
        font: inherit;
        color: var(--accent);
        white-space: normal;
      }
      div {
        inset: auto;
        width: min(20rem, calc(100vw - 1rem));
        margin: 0;
        padding: 12px 16px;
        border: 1px solid var(--edge);
        border-radius: var(--corner);
        background: var(--field);
        color: var(--graphite);
        font-size: 1rem;
        font-weight: 400;
        line-height: 1.375rem;
        text-align: start;
        white-space: normal;
      }
      p + p {
        margin-top: 8px;
        color: var(--soft);
        font-size: 0.9375rem;
      }
      /* There text has a ground of its own, which covers the lower edge of what stands in the line above. */
      @media (forced-colors: active) {
        button {
          border-bottom: 0;
          color: LinkText;
          text-decoration: underline dotted;
        }
      }
    `,
  ]

  /** id in the glossary; a term it does not hold is plain text */
  declare term: string
  declare text: string
  /** marks that stand close to the word on either side, so that no line begins with a comma or ends with a bracket */
  declare opens: string
  declare closes: string
  /** what it means where a lesson brings a glossary of its own */
  declare entry: GlossaryTerm | undefined

  constructor() {
    super()
    this.opens = ''
    this.closes = ''
  }

  override render() {
    const { glossary } = language()
    const entry = this.entry ?? (Object.hasOwn(glossary, this.term) ? glossary[this.term] : undefined)
    if (!entry) return html`${this.opens}${this.text}${this.closes}`
    // Two templates, so that no blank stands between the word and what follows it.
    return [
      html`<span class="whole"
        >${this.opens}<button type="button" popovertarget="meaning" aria-haspopup="dialog">${this.text}</button
        >${this.closes}</span
      >`,
      html`<div
        id="meaning"
        popover
        role="dialog"
        aria-label=${say('bench.meaningOf', { term: entry.term })}
        @toggle=${this.#place}
      >
        <p><strong>${entry.term}</strong>: ${entry.sentence}</p>
        ${entry.see === '' ? nothing : html`<p>${entry.see}</p>`}
      </div>`,
    ]
  }

  /** Puts the explanation below its word, or above: where there is no room below, and at the head of what it belongs to. */
  #place(event: ToggleEvent): void {
    if (event.newState !== 'open') return
    const meaning = event.currentTarget as HTMLElement
    const word = (this.renderRoot.querySelector('button') as HTMLElement).getBoundingClientRect()
    const box = meaning.getBoundingClientRect()
    const left = Math.max(8, Math.min(word.left, window.innerWidth - box.width - 8))
    const below = word.bottom + 4
    const above = word.top - box.height - 4
    const coversTable = this.closest('thead') !== null && above >= 8
    const top = below + box.height <= window.innerHeight && !coversTable ? below : Math.max(8, above)
    meaning.style.left = `${left}px`
    meaning.style.top = `${top}px`
  }
}

customElements.define('tack-term', TermLink)
