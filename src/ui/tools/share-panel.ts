/** Sharing: the link to what is shown, its picture for phones, and the text that shows it inside another page. */
import type { PropertyDeclarations } from 'lit'
import { css, html, nothing } from 'lit'
import { addressOf } from '../../report/qr-picture.ts'
import { say } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import './copy-text.ts'
import './embed-panel.ts'
import './link-picture.ts'
import { presentLink, setUpLink } from './present-link.ts'
import { giveAddress, givenAddress, isOnWeb } from './public-address.ts'
import { toolStyles } from './tool-styles.ts'

export class SharePanel extends SessionElement {
  static override properties: PropertyDeclarations = { ...SessionElement.properties, given: { state: true } }
  static override styles = [
    sharedStyles,
    toolStyles,
    css`
      input[aria-invalid='true'] {
        border-width: 2px;
      }
    `,
  ]

  /** the address a person gave for a page that has none */
  declare protected given: string

  constructor() {
    super()
    this.given = givenAddress()
  }

  override render() {
    const onWeb = isOnWeb()
    const page = onWeb ? location.href : this.given
    const { text, roundedTo } = presentLink(this.session)
    const address = addressOf(page, text)
    const shown = address ?? text
    return html`
      <section>
        ${onWeb ? '' : this.#ask(address === null)}
        <tack-copy-text
          .label=${say(address === null ? 'tools.afterAddress' : 'tools.link')}
          .text=${shown}
        ></tack-copy-text>
        <p class="note">${say('tools.linkLength', { length: shown.length, shortened: roundedTo ?? 'none' })}</p>
        ${this.session.look.view === 'lecture' ? html`<p>${say('tools.linkNoScenes')}</p>` : nothing}
      </section>
      <section>
        <h3>${say('tools.picture')}</h3>
        <tack-link-picture
          .address=${address}
          .shorter=${addressOf(page, setUpLink(this.session).text)}
        ></tack-link-picture>
      </section>
      <section>
        <h3>${say('tools.embed')}</h3>
        ${
          address === null
            ? html`<p>${say('tools.noAddress')}</p>`
            : html`<tack-embed-panel .session=${this.session} .page=${page}></tack-embed-panel>`
        }
      </section>
    `
  }

  #ask(missing: boolean) {
    const isWrong = missing && this.given !== ''
    return html`<p>${say('tools.noAddress')}</p>
      <div class="field">
        <label for="address">${say('tools.publicAddress')}</label>
        <input
          id="address"
          type="text"
          inputmode="url"
          autocomplete="url"
          .value=${this.given}
          aria-invalid=${isWrong}
          aria-describedby="wrong"
          @change=${this.#give}
        />
        <span id="wrong" role="status">${isWrong ? say('tools.publicAddressWrong', { given: this.given }) : ''}</span>
      </div>
      <div class="row">
        <button type="button" @click=${() => this.dispatchEvent(new Event('save-instead'))}>
          ${say('tools.saveInstead')}
        </button>
      </div>`
  }

  #give(event: Event): void {
    this.given = (event.target as HTMLInputElement).value.trim()
    giveAddress(this.given)
  }
}

customElements.define('tack-share-panel', SharePanel)
