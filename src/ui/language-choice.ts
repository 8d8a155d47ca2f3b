/** The language of the page, to be chosen; each under its own name, so that everybody finds theirs. */
import { LitElement, css, html, nothing } from 'lit'
import { languageTags, languages } from '../words/languages.ts'
import { comfort } from './comfort.ts'
import { chooseLanguage, language } from './language.ts'
import { say } from './say.ts'
import { sharedStyles } from './shared-styles.ts'
import { didNotArrive } from './did-not-arrive.ts'

export class LanguageChoice extends LitElement {
  static override properties = { _missing: { state: true } }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: inline-flex;
        flex-wrap: wrap;
        gap: 4px;
        align-items: center;
      }
    `,
  ]

  /** name of a language whose words did not arrive */
  declare _missing: string | null

  constructor() {
    super()
    this._missing = null
  }

  override render() {
    return html`<label class="unseen" for="language">${say('language.choose')}</label>
      <select id="language" @change=${this.#choose}>
        ${languageTags.map(
          (tag) =>
            html`<option value=${tag} lang=${tag} ?selected=${tag === language().tag}>${languages[tag]}</option>`,
        )}
      </select>
      <span role="status"
        >${this._missing === null ? nothing : say('language.notLoaded', { name: this._missing })}</span
      >`
  }

  async #choose({ target }: Event): Promise<void> {
    const select = target as HTMLSelectElement
    const tag = select.value as keyof typeof languages
    this._missing = null
    try {
      await chooseLanguage(tag)
      comfort().choose({ language: tag })
    } catch (error) {
      // Words that do not arrive (no network) are told in the page; anything else is a fault of ours.
      if (!didNotArrive(error)) throw error
      this._missing = languages[tag]
      select.value = language().tag
    }
  }
}

customElements.define('tack-language-choice', LanguageChoice)
