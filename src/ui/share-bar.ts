/** A share drawn as a bar; the number stands beside it, so the bar itself says nothing to a screen reader. */
import { LitElement, css, html } from 'lit'

export class ShareBar extends LitElement {
  static override properties = { share: { type: Number } }
  static override styles = css`
    :host {
      display: block;
      /* Above the ground that forced colours lay behind the number. */
      position: relative;
      height: 8px;
      min-width: 4rem;
      border: 1px solid var(--edge);
      background: var(--field);
    }
    div {
      height: 100%;
      width: calc(100% * var(--share));
      background: var(--graphite);
      forced-color-adjust: none;
    }
  `

  /** of 1; more than 1 fills the bar */
  declare share: number

  override render() {
    return html`<div></div>`
  }

  override updated(): void {
    this.style.setProperty('--share', String(Math.min(1, Math.max(0, this.share))))
  }
}

customElements.define('tack-share-bar', ShareBar)
