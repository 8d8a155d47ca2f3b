/** The link as a QR picture that a class reads from the projector, or why there is none. */
import type { PropertyDeclarations } from 'lit'
import { LitElement, css, html } from 'lit'
import { longestPictured, qrPicture } from '../../report/qr-picture.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'

export class LinkPicture extends LitElement {
  static override properties: PropertyDeclarations = { address: {}, shorter: {}, large: { state: true } }
  static override styles = [
    sharedStyles,
    css`
      svg {
        display: block;
        width: 12.5rem;
        max-width: 100%;
        margin: 4px 0 8px;
        background: #ffffff;
        fill: #000000;
        shape-rendering: crispEdges;
        forced-color-adjust: none;
      }
      .large svg {
        width: min(100%, 70dvh);
      }
    `,
  ]

  /** null where the page has no public address */
  declare address: string | null
  /** leads to the set-up alone */
  declare shorter: string | null
  declare protected large: boolean

  constructor() {
    super()
    this.large = false
  }

  override render() {
    const { address, shorter } = this
    if (address === null) return html`<p>${say('tools.noPictureAddress')}</p>`
    const whole = qrPicture(address)
    const picture = whole ?? (shorter === null ? null : qrPicture(shorter))
    if (!picture) return html`<p>${say('tools.noPicture', { length: address.length, most: longestPictured })}</p>`
    const { size, path } = picture
    const { length } = whole ? address : (shorter ?? address)
    return html`<div class=${this.large ? 'large' : ''}>
      <svg viewBox="0 0 ${size} ${size}" role="img" aria-label=${say('tools.pictureOf', { length })}>
        <path d=${path} />
      </svg>
      ${whole ? '' : html`<p>${say('tools.pictureWithoutView')}</p>`}
      <button type="button" @click=${this.#resize}>
        ${say(this.large ? 'tools.pictureSmall' : 'tools.pictureLarge')}
      </button>
    </div>`
  }

  /** Large, it is to be read from afar: it goes where all of it is seen. */
  async #resize(): Promise<void> {
    this.large = !this.large
    await this.updateComplete
    if (this.large) this.renderRoot.querySelector('svg')?.scrollIntoView({ block: 'center' })
  }
}

customElements.define('tack-link-picture', LinkPicture)
