/** Opening a file. What is wrong with it is told before anything changes; what was opened can be taken back. */
import type { PropertyDeclarations } from 'lit'
import { css, html, nothing } from 'lit'
import type { Problem } from '../../press/problem.ts'
import { problemLine } from '../problem-words.ts'
import { say } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import type { Found, Opening } from './file-opening.ts'
import { lookIntoFile, openSaved } from './file-opening.ts'
import './offered-settings.ts'
import { toolStyles } from './tool-styles.ts'

type State =
  | { kind: 'nothing' }
  | { kind: 'refused' | 'asking'; found: Found }
  | ({ kind: 'opened'; name: string } & Opening)
  | { kind: 'taken back' }

/** More are counted, not listed. */
const problemsShown = 20

export class OpenPanel extends SessionElement {
  static override properties: PropertyDeclarations = { ...SessionElement.properties, state: { state: true } }
  static override styles = [
    sharedStyles,
    toolStyles,
    css`
      input[type='file'] {
        display: block;
        max-width: 100%;
        padding: 4px;
      }
    `,
  ]

  declare protected state: State

  constructor() {
    super()
    this.state = { kind: 'nothing' }
  }

  override render() {
    return html`
      <h3>${say('tools.open')}</h3>
      <p>${say('tools.openHow')}</p>
      <label>
        ${say('tools.openChoose')}
        <input type="file" accept=".json,application/json" @change=${this.#choose} />
      </label>
      <div aria-live="polite">${this.#outcome(this.state)}</div>
    `
  }

  /** Opens a file that is sound; asks first where something in it is not. */
  async lookInto(file: File): Promise<void> {
    const found = await lookIntoFile(file)
    if (found.kind === 'refused') this.state = { kind: 'refused', found }
    else if (found.problems.length > 0) this.state = { kind: 'asking', found }
    else await this.#open(found)
  }

  #outcome(state: State) {
    switch (state.kind) {
      case 'nothing':
        return nothing
      case 'refused':
        return html`<div class="set-off">
          <p>${say('tools.refused', { name: state.found.name })}</p>
          ${this.#problems(state.found.problems)}
        </div>`
      case 'asking':
        return html`<div class="set-off">
          <p>${say('tools.partly', { name: state.found.name, count: state.found.problems.length })}</p>
          ${this.#problems(state.found.problems)}
          <div class="row">
            <button type="button" @click=${() => this.#open(state.found)}>${say('tools.openRest')}</button>
            <button type="button" @click=${() => (this.state = { kind: 'nothing' })}>${say('tools.leave')}</button>
          </div>
        </div>`
      case 'opened':
        return html`<div class="set-off">
          <p>${say('tools.opened', { name: state.name })}</p>
          ${this.#problems(state.problems)}
          ${Object.keys(state.offered).length > 0 ? html`<tack-offered-settings .offered=${state.offered}></tack-offered-settings>` : nothing}
          <div class="row">
            <button type="button" @click=${() => this.#takeBack(state.takeBack)}>${say('tools.takeBack')}</button>
          </div>
        </div>`
      case 'taken back':
        return html`<p class="set-off">${say('tools.takenBack')}</p>`
    }
  }

  #problems(problems: readonly Problem[]) {
    const more = problems.length - problemsShown
    return html`<ul class="problems">
      ${problems.slice(0, problemsShown).map((found) => html`<li>${problemLine(found)}</li>`)}
      ${more > 0 ? html`<li>${say('tools.moreProblems', { count: more })}</li>` : nothing}
    </ul>`
  }

  async #open(found: Found): Promise<void> {
    if (found.kind === 'refused') return
    const opening = await openSaved(this.session, found.saved)
    this.state = { kind: 'opened', name: found.name, ...opening }
  }

  async #takeBack(takeBack: () => Promise<void>): Promise<void> {
    await takeBack()
    this.state = { kind: 'taken back' }
  }

  async #choose(event: Event): Promise<void> {
    const input = event.target as HTMLInputElement
    const file = input.files?.item(0)
    if (!file) return
    await this.lookInto(file)
    // The same file can be chosen again once it has been mended.
    input.value = ''
  }
}

customElements.define('tack-open-panel', OpenPanel)
