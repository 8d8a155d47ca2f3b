/** What became of the draft, in three words; only what a person has to know at once is read out. */
import { css, html, nothing } from 'lit'
import { say } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import type { DraftNews } from './page-draft.ts'
import { draftOf, keepsNoDraft } from './page-draft.ts'

const quiet: readonly DraftNews[] = ['opening', 'empty', 'saved', 'not saved']

export class DraftStateLine extends SessionElement {
  static override styles = [
    sharedStyles,
    css`
      /* Wide enough for every quiet word, so that the head stays as it is from one to the next. */
      :host {
        display: inline-block;
        min-width: 4.5rem;
        margin-inline-end: 4px;
        text-align: end;
        color: var(--soft);
        font-size: 0.875rem;
        line-height: 1.125rem;
      }
      /* A head that is short of room tells only what a person has to know. */
      @media (width < 83em) {
        :host {
          min-width: 0;
        }
        .quiet {
          display: none;
        }
      }
      .quiet {
        white-space: nowrap;
      }
      .loud {
        color: var(--graphite);
        font-weight: 650;
      }
    `,
  ]

  #end: (() => void) | undefined

  override connectedCallback(): void {
    super.connectedCallback()
    this.#end = draftOf(this.session).subscribe(() => this.requestUpdate())
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#end?.()
  }

  override render() {
    if (keepsNoDraft()) return nothing
    const { news } = draftOf(this.session)
    const words = say(`tools.draft.${news}`)
    const isQuiet = quiet.includes(news)
    return html`<span class="quiet">${isQuiet ? words : ''}</span
      ><span class="loud" role="status">${isQuiet ? '' : words}</span>`
  }
}

customElements.define('tack-draft-state', DraftStateLine)
