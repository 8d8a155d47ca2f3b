/**
 * Stands where a part of the page should be whose code did not arrive. Browsers remember that a piece of code failed and do
 * not ask for it again, so the page has to be loaded anew; while nothing answers, that would leave no page at all.
 */
import { LitElement, css, html } from 'lit'
import { say } from './say.ts'
import { sharedStyles } from './shared-styles.ts'

export class NotLoaded extends LitElement {
  static override properties = { away: { state: true } }
  static override styles = [
    sharedStyles,
    css`
      p {
        max-width: 70ch;
        margin-bottom: 8px;
      }
    `,
  ]

  /** whether the page was asked for again and nothing answered */
  declare protected away: boolean

  constructor() {
    super()
    this.away = false
  }

  override render() {
    return html`<div role="alert">
        <p>${say('page.notLoaded')}</p>
        <button type="button" @click=${this.#again}>${say('page.loadAgain')}</button>
      </div>
      <p role="status">${this.away ? say('page.stillAway') : ''}</p>`
  }

  readonly #again = async (): Promise<void> => {
    this.away = false
    if (await answers()) location.reload()
    else this.away = true
  }
}

async function answers(): Promise<boolean> {
  try {
    const { ok } = await fetch(document.baseURI, { method: 'HEAD', cache: 'no-store' })
    return ok
  } catch (error) {
    // What fetch says of a network that is away.
    if (!(error instanceof TypeError)) throw error
    return false
  }
}

customElements.define('tack-not-loaded', NotLoaded)
