/** The unit in which one quantity is shown and typed. */
import { html } from 'lit'
import { measureIn } from '../session/measures.ts'
import type { Quantity, UnitName } from '../session/unit-names.ts'
import { unitNames } from '../session/unit-names.ts'
import { comfort } from './comfort.ts'
import { say } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'

export class MeasureChoice extends SessionElement {
  static override properties = { quantity: {} }
  static override styles = sharedStyles

  declare quantity: Quantity

  override render() {
    const { unit } = this.session.look.measures[this.quantity]
    return html`<label class="unseen" for="unit">${say(`bench.unitFor.${this.quantity}`)}</label>
      <select id="unit" @change=${this.#take}>
        ${unitNames[this.quantity].map(
          (name) => html`<option value=${name} ?selected=${name === unit}>${say(`bench.unit.${name}`)}</option>`,
        )}
      </select>`
  }

  async #take(event: Event): Promise<void> {
    const measure = await measureIn((event.target as HTMLSelectElement).value as UnitName)
    const measures = { ...this.session.look.measures, [this.quantity]: measure }
    this.session.lookWith({ measures })
    comfort().choose({ measures: Object.values(measures).map(({ unit }) => unit) })
  }
}

customElements.define('tack-measure-choice', MeasureChoice)
