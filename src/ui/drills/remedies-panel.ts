/** The trade's remedies tried on the set-up of the bench: caution first, then gain and cost as computed. */
import type { PropertyDeclarations } from 'lit'
import { css, html, nothing } from 'lit'
import type { RemedyName, Trial } from '../../press/remedies.ts'
import { remedies, remedyNames, tryRemedy } from '../../press/remedies.ts'
import type { SetUp } from '../../press/setup.ts'
import { writeSetUp } from '../../session/write-setup.ts'
import { say, sayName } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import { tableStyles } from '../table-styles.ts'
import { cautionList } from './caution-list.ts'
import { drillStyles } from './drill-styles.ts'
import { effectTables } from './effect-tables.ts'

interface Tried extends Trial {
  readonly name: RemedyName
  /** the set-up it was tried on */
  readonly on: SetUp
}

export class RemediesPanel extends SessionElement {
  static override properties: PropertyDeclarations = {
    ...SessionElement.properties,
    _unit: { state: true },
    _tried: { state: true },
    _said: { state: true },
  }
  static override styles = [
    sharedStyles,
    tableStyles,
    drillStyles,
    css`
      .remedies {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(100%, 25rem), 1fr));
        gap: 8px 24px;
        margin-top: 8px;
      }
      section {
        padding: 8px 0;
        border-top: 1px solid var(--line);
      }
    `,
  ]

  /** unit of the remedies at a later unit; the last where there are fewer */
  declare _unit: number
  declare _tried: readonly Tried[]
  declare _said: string

  constructor() {
    super()
    this._unit = Infinity
    this._tried = []
    this._said = ''
  }

  override render() {
    const { inks } = this.session.setUp
    return html`
      <p>${say('room.remedies.about')}</p>
      <label class="field"
        >${say('room.remedies.unit')}
        <select @change=${(event: Event) => (this._unit = Number((event.target as HTMLSelectElement).value))}>
          ${inks.map(({ name }, unit) =>
            unit === 0
              ? nothing
              : html`<option value=${unit} ?selected=${unit === this.#unit}>${sayName(name)}</option>`,
          )}
        </select>
      </label>
      <p class="unseen" aria-live="polite">${this._said}</p>
      <div class="remedies">${remedyNames.map((name) => this.#remedy(name))}</div>
    `
  }

  get #unit(): number {
    return Math.min(this._unit, this.session.setUp.inks.length - 1)
  }

  #words(name: RemedyName): string {
    const { inks } = this.session.setUp
    return say(`remedy.${name}`, { ink: inks[this.#unit].name })
  }

  #remedy(name: RemedyName) {
    const { setUp } = this.session
    const tried = this._tried.find((each) => each.name === name && each.on === setUp)
    return html`<section>
      <h3>${this.#words(name)}</h3>
      ${cautionList(remedies[name].cautions)}
      <p class="row">
        <button
          type="button"
          aria-label=${say('room.remedies.try', { name: this.#words(name) })}
          @click=${() => this.#try(name)}
        >
          ${say('room.remedies.tryShort')}
        </button>
      </p>
      ${tried ? this.#outcome(tried) : nothing}
    </section>`
  }

  #outcome({ name, setUp, on, gains, costs }: Tried) {
    if (JSON.stringify(setUp) === JSON.stringify(on)) return html`<p>${say('room.remedies.same')}</p>`
    return html`${effectTables(gains, costs)}
      <p>${say('room.remedies.told', { cost: say(`remedy.${name}.cost`) })}</p>
      <p class="row">
        <button type="button" @click=${() => this.#take(setUp)}>${say('room.remedies.take')}</button>
      </p>`
  }

  #try(name: RemedyName): void {
    const { setUp } = this.session
    const tried = { name, on: setUp, ...tryRemedy(setUp, name, this.#unit) }
    this._tried = [...this._tried.filter((each) => each.name !== name), tried]
    const { gains, costs } = tried
    this._said = say('room.remedies.tried', {
      name: this.#words(name),
      gains: gains.length,
      costs: costs.length,
    })
  }

  #take(setUp: SetUp): void {
    this._said = this.attempt({ kind: 'load', given: writeSetUp(setUp) }) ?? say('room.remedies.taken')
  }
}

customElements.define('tack-remedies-panel', RemediesPanel)
