/** Adds an ink that is not loaded yet: a process ink or one of the spot inks that come with the program. */
import { css, html, nothing } from 'lit'
import { processNames, usualInk } from '../press/presets.ts'
import { inkCount } from '../press/ranges.ts'
import { spotInks } from '../session/spot-inks.ts'
import { say, sayName } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'

/** tack units of a process ink that is added last: a last unit of a graded sheet-fed set. */
const addedTack = 10

const supplied = [...processNames.map((name) => usualInk(name, addedTack)), ...spotInks]

export class AddInk extends SessionElement {
  static override styles = [
    sharedStyles,
    css`
      .add {
        display: flex;
        gap: 4px;
        margin-top: 4px;
      }
      select {
        flex: 1;
        min-width: 0;
      }
    `,
  ]

  override render() {
    const loaded = new Set(this.session.setUp.inks.map((ink) => ink.name.toLowerCase()))
    const free = supplied.filter((ink) => !loaded.has(ink.name))
    if (this.isClosed('inks') || loaded.size >= inkCount.most || free.length === 0) return nothing
    return html`<div class="add">
      <label class="unseen" for="ink">${say('bench.addInkLabel')}</label>
      <select id="ink">
        ${free.map((ink) => html`<option value=${ink.name}>${sayName(ink.name)}</option>`)}
      </select>
      <button type="button" @click=${this.#add}>${say('bench.addInk')}</button>
    </div>`
  }

  #add(): void {
    const { value } = this.renderRoot.querySelector('select') as HTMLSelectElement
    const ink = supplied.find(({ name }) => name === value)
    if (ink) this.attempt({ kind: 'add ink', ink })
  }
}

customElements.define('tack-add-ink', AddInk)
