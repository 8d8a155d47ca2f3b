/** What happens on the way: the list of events, and a form that adds one. */
import { css, html, nothing } from 'lit'
import { ranges } from '../../press/ranges.ts'
import type { AskedEvent } from '../../session/run-desk.ts'
import '../number-field.ts'
import { ordersStyles } from '../orders/orders-styles.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { RunElement, eventWords } from './run-element.ts'

const kinds = ['stop', 'wash-up', 'ink change'] as const
const alterable = ['tack', 'film'] as const

export class RunEvents extends RunElement {
  static override properties = {
    _kind: { state: true },
    _sheet: { state: true },
    _ink: { state: true },
    _what: { state: true },
    _value: { state: true },
  }
  static override styles = [
    sharedStyles,
    ordersStyles,
    css`
      li {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 12px;
        align-items: center;
        padding: 4px 0;
        border-bottom: 1px solid var(--line);
      }
      tack-number-field {
        width: 8.75rem;
      }
    `,
  ]

  declare _kind: AskedEvent['kind']
  declare _sheet: number
  /** name; null for the last ink */
  declare _ink: string | null
  declare _what: (typeof alterable)[number]
  /** what it becomes; null for what the ink has now */
  declare _value: number | null

  constructor() {
    super()
    this._kind = 'wash-up'
    this._sheet = 5000
    this._ink = null
    this._what = 'tack'
    this._value = null
  }

  override render() {
    const { asked, sheets } = this.desk.state
    return html`
      <h3>${say('run.events')}</h3>
      ${asked.length === 0 ? html`<p class="note">${say('run.eventsNone')}</p>` : nothing}
      <ul>
        ${asked.map((event, index) => {
          const words = eventWords(event)
          return html`<li>
            <span>${words} ${event.sheet > sheets ? say('run.beyond') : nothing}</span>
            <button
              type="button"
              aria-label=${say('run.remove', { event: words })}
              @click=${() => this.desk.ask({ asked: asked.filter((_, at) => at !== index) })}
            >
              ${say('run.removeShort')}
            </button>
          </li>`
        })}
      </ul>
      <div class="row">
        <label
          >${say('run.eventKind')}
          <select @change=${(event: Event) => (this._kind = chosen(event) as AskedEvent['kind'])}>
            ${kinds.map(
              (kind) =>
                html`<option value=${kind} ?selected=${kind === this._kind}>${say(`run.event.${kind}`)}</option>`,
            )}
          </select></label
        >
        <tack-number-field
          .label=${say('run.beforeSheet')}
          .least=${2}
          .most=${ranges.sheet.most}
          .step=${100}
          .decimals=${0}
          .value=${this._sheet}
          .offer=${(sheet: number) => {
            this._sheet = Math.round(sheet)
            return null
          }}
        ></tack-number-field>
        ${this._kind === 'stop' ? nothing : this.#inkChoice()}
        ${this._kind === 'ink change' ? this.#alteration() : nothing}
        <button type="button" @click=${() => this.#add()}>${say('run.add')}</button>
      </div>
      <p class="note">${say(`run.explain.${this._kind}`)}</p>
    `
  }

  get #name(): string {
    const { inks } = this.session.setUp
    return inks.find(({ name }) => name === this._ink)?.name ?? inks[inks.length - 1].name
  }

  get #now(): number {
    const ink = this.session.setUp.inks.find(({ name }) => name === this.#name)
    return ink?.[this._what] ?? ranges[this._what].least
  }

  #inkChoice() {
    return html`<label
      >${say('run.unit')}
      <select
        @change=${(event: Event) => {
          this._ink = chosen(event)
          this._value = null
        }}
      >
        ${this.session.setUp.inks.map(
          ({ name }, unit) =>
            html`<option value=${name} ?selected=${name === this.#name}>
              ${say('run.unitNamed', { unit: unit + 1, name })}
            </option>`,
        )}
      </select></label
    >`
  }

  #alteration() {
    const { least, most, step } = ranges[this._what]
    return html`<label
        >${say('run.changeWhat')}
        <select
          @change=${(event: Event) => {
            this._what = chosen(event) as RunEvents['_what']
            this._value = null
          }}
        >
          ${alterable.map(
            (what) =>
              html`<option value=${what} ?selected=${what === this._what}>${say(`run.change.${what}`)}</option>`,
          )}
        </select></label
      >
      <tack-number-field
        .label=${say('run.changeTo')}
        .unit=${say(`run.unitOf.${this._what}`)}
        .least=${least}
        .most=${most}
        .step=${step}
        .value=${this._value ?? this.#now}
        .offer=${(value: number) => {
          this._value = value
          return null
        }}
      ></tack-number-field>`
  }

  #add(): void {
    const { asked } = this.desk.state
    const at = { kind: this._kind, sheet: this._sheet }
    const ofUnit = this._kind === 'stop' ? at : { ...at, ink: this.#name }
    const event: AskedEvent =
      this._kind === 'ink change' ? { ...ofUnit, [this._what]: this._value ?? this.#now } : ofUnit
    this.desk.ask({ asked: [...asked, event] })
  }
}

function chosen(event: Event): string {
  return (event.target as HTMLSelectElement).value
}

customElements.define('tack-run-events', RunEvents)
