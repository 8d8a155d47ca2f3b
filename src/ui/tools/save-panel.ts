/** Saving everything as one file. */
import type { PropertyDeclarations } from 'lit'
import { html } from 'lit'
import { fileNameOf, writeFile } from '../../session/file.ts'
import { learnedIn } from '../../session/learned.ts'
import { learningOf } from '../../session/learning.ts'
import { snapshot } from '../../session/snapshot.ts'
import { browserStorage } from '../browser-storage.ts'
import { comfort } from '../comfort.ts'
import { say } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import { saveText } from '../strip/save-text.ts'
import { toolStyles } from './tool-styles.ts'

export class SavePanel extends SessionElement {
  static override properties: PropertyDeclarations = { ...SessionElement.properties, saved: { state: true } }
  static override styles = [sharedStyles, toolStyles]

  /** the name of the file that was saved last */
  declare protected saved: string | null

  constructor() {
    super()
    this.saved = null
  }

  override render() {
    return html`
      <h3>${say('tools.save')}</h3>
      <p>${say('tools.saveWhat')}</p>
      <div class="field">
        <label for="name">${say('tools.fileName')}</label>
        <input id="name" type="text" maxlength="60" .value=${this.#title} />
      </div>
      <div class="row">
        <button type="button" @click=${this.#save}>${say('tools.saveFile')}</button>
        <span role="status">${this.saved === null ? '' : say('tools.saved', { name: this.saved })}</span>
      </div>
    `
  }

  get #title(): string {
    const { name } = this.session.scenario
    return name === null ? say('tools.usualName') : say(`bench.scenario.${name}`)
  }

  #save(): void {
    const progress = learnedIn(learningOf(this.session, browserStorage))
    const beside = { progress, settings: comfort().settings }
    const name = fileNameOf(this.renderRoot.querySelector('input')?.value ?? '')
    saveText(name, 'application/json', writeFile(snapshot(this.session, beside)))
    this.saved = name
  }
}

customElements.define('tack-save-panel', SavePanel)
