/** Goes through a long table a page at a time. Fires `page` with the first row to be shown. */
import { LitElement, css, html, nothing } from 'lit'
import { KeptFocus } from './kept-focus.ts'
import { say } from './say.ts'
import { sharedStyles } from './shared-styles.ts'

export class PageEvent extends Event {
  /** from 0 */
  readonly from: number

  constructor(from: number) {
    super('page')
    this.from = from
  }
}

export class Pager extends LitElement {
  static override properties = {
    label: {},
    from: { type: Number },
    onPage: { type: Number },
    count: { type: Number },
  }
  static override styles = [
    sharedStyles,
    css`
      nav {
        display: flex;
        flex-wrap: wrap;
        gap: 8px;
        align-items: center;
        margin-top: 8px;
      }
    `,
  ]

  /** what is gone through */
  declare label: string
  /** first row shown, from 0 */
  declare from: number
  declare onPage: number
  declare count: number

  constructor() {
    super()
    new KeptFocus(this)
  }

  override render() {
    const { from, onPage, count } = this
    if (count <= onPage) return nothing
    const last = Math.floor((count - 1) / onPage) * onPage
    const steps = [
      { word: 'orders.first', to: 0, open: from > 0 },
      { word: 'orders.previous', to: Math.max(0, from - onPage), open: from > 0 },
      { word: 'orders.next', to: from + onPage, open: from < last },
      { word: 'orders.last', to: last, open: from < last },
    ] as const
    return html`<nav aria-label=${this.label}>
      ${steps.map(
        ({ word, to, open }) =>
          html`<button type="button" ?disabled=${!open} @click=${() => this.dispatchEvent(new PageEvent(to))}>
            ${say(word)}
          </button>`,
      )}
      <span>${say('orders.tableRange', { from: from + 1, to: Math.min(count, from + onPage), count })}</span>
    </nav>`
  }
}

customElements.define('tack-pager', Pager)
