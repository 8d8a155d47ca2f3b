/** An equation, typeset by the browser's own MathML; the typesetter is fetched when the first one is shown. */
import { LitElement, css, html } from 'lit'
import { language } from './language.ts'
import { texNumbers } from './tex-numbers.ts'

export class Formula extends LitElement {
  static override properties = { tex: {} }
  static override styles = css`
    :host {
      display: block;
      overflow-x: auto;
      overflow-y: hidden;
      padding: 4px 0;
      font-size: 1.0625rem;
    }
  `

  declare tex: string

  override render() {
    return html`<div></div>`
  }

  override updated(): void {
    void this.#typeset(this.tex)
  }

  async #typeset(tex: string): Promise<void> {
    const { default: temml } = await import('temml')
    const host = this.renderRoot.querySelector('div')
    if (host && tex === this.tex) temml.render(texNumbers(tex, language().tag), host, { displayMode: true })
  }
}

customElements.define('tack-formula', Formula)
