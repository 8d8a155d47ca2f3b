/**
 * What a file was saved with of colours, motion, sound and language. It is offered, never put on: whoever opens the file
 * may need their own to be able to read it at all.
 */
import type { PropertyDeclarations } from 'lit'
import { LitElement, html } from 'lit'
import type { Settings } from '../../session/settings.ts'
import { comfort } from '../comfort.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { toolStyles } from './tool-styles.ts'

export class OfferedSettings extends LitElement {
  static override properties: PropertyDeclarations = { offered: { attribute: false }, taken: { state: true } }
  static override styles = [sharedStyles, toolStyles]

  declare offered: Settings
  declare protected taken: boolean

  constructor() {
    super()
    this.taken = false
  }

  override render() {
    if (this.taken) return html`<p tabindex="-1">${say('comfort.takenOver')}</p>`
    return html`<p>${say('comfort.fromFile', { list: this.#list().join('; ') })}</p>
      <div class="row">
        <button type="button" @click=${this.#takeOver}>${say('comfort.takeOver')}</button>
      </div>`
  }

  #list(): string[] {
    const { theme, motion, sound, language } = this.offered
    return [
      ...(theme ? [say('comfort.was.theme', { value: say(`comfort.theme.${theme}`) })] : []),
      ...(motion ? [say('comfort.was.motion', { value: say(`comfort.motion.${motion}`) })] : []),
      ...(sound === undefined
        ? []
        : [say('comfort.was.sound', { value: say(`comfort.sound.${sound ? 'on' : 'off'}`) })]),
      ...(language ? [say('comfort.was.language', { value: languageName(language) })] : []),
    ]
  }

  /** The button is gone afterwards, so the focus goes to what is said in its place. */
  async #takeOver(): Promise<void> {
    comfort().choose(this.offered)
    this.taken = true
    await this.updateComplete
    this.renderRoot.querySelector('p')?.focus()
  }
}

/** The name of a language in its own words; its tag where the browser knows none. */
function languageName(tag: string): string {
  return new Intl.DisplayNames([tag], { type: 'language', fallback: 'code' }).of(tag) ?? tag
}

customElements.define('tack-offered-settings', OfferedSettings)
