/**
 * A number to be typed, with its label, unit and range. An entry that cannot be is explained at the field and changes
 * nothing; Escape brings back the value in force. Arrow up and down go one step.
 */
import { LitElement, css, html, nothing } from 'lit'
import { readTyped, say, sayNumber } from './say.ts'
import { sharedStyles } from './shared-styles.ts'

export class NumberField extends LitElement {
  static override properties = {
    label: {},
    compact: { type: Boolean, reflect: true },
    unit: {},
    unitApart: { type: Boolean, attribute: 'unit-apart' },
    least: { type: Number },
    most: { type: Number },
    step: { type: Number },
    decimals: { type: Number },
    value: { attribute: false },
    placeholder: {},
    disabled: { type: Boolean },
    offer: { attribute: false },
    _problem: { state: true },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        position: relative;
      }
      label {
        display: block;
        font-size: 0.875rem;
        line-height: 1.25rem;
      }
      /* The unit goes below where the field would become too narrow for a finger. */
      .box {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 0 4px;
      }
      input {
        flex: 1 1 44px;
        min-width: 0;
        max-width: 5.5rem;
        padding: 0 4px;
        text-align: end;
      }
      input[aria-invalid='true'] {
        border: 2px solid var(--graphite);
      }
      .problem {
        position: absolute;
        z-index: 2;
        top: calc(100% + 4px);
        inset-inline-start: 0;
        width: 15rem;
        padding: 4px 8px;
        border: 1px solid var(--graphite);
        border-inline-start-width: 4px;
        background: var(--field);
        font-size: 0.875rem;
        line-height: 1.25rem;
      }
      :host([end]) .problem {
        inset-inline: auto 0;
      }
      :host([compact]) .problem {
        inset-inline: auto -60px;
      }
      @media (pointer: coarse) and (width < 68.75em), (max-width: 25em) {
        :host([compact]) .problem {
          inset-inline-end: 0;
        }
        :host([compact][start]) .problem {
          inset-inline: 0 auto;
        }
        :host([compact]) input {
          max-width: none;
        }
      }
    `,
  ]

  /** what the number is, as its label says it */
  declare label: string
  /** label and unit are read out but not drawn: the column has them */
  declare compact: boolean
  /** unit as shown; empty for a plain number */
  declare unit: string
  /** the unit stands beside the field already, to be chosen */
  declare unitApart: boolean
  /** the range, in the unit shown */
  declare least: number
  declare most: number
  declare step: number
  declare decimals: number
  /** the value in force, in the unit shown; null while the field is left to its placeholder */
  declare value: number | null
  declare placeholder: string
  declare disabled: boolean
  /** takes a number in range, or null for an emptied field that has a placeholder; returns why not, or null */
  declare offer: (value: number | null) => string | null
  declare _problem: string | null

  constructor() {
    super()
    this.unit = ''
    this.placeholder = ''
    this.compact = false
    this.unitApart = false
    this.disabled = false
    this.value = null
    this.decimals = 2
    this.step = 1
    this._problem = null
  }

  override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('value') || changed.has('unit')) this._problem = null
  }

  override updated(changed: Map<string, unknown>): void {
    if (['value', 'unit', 'decimals', 'language'].some((each) => changed.has(each))) this.#showValue()
  }

  override render() {
    const range = say('bench.range', {
      least: this.#written(this.least),
      most: this.#written(this.most),
      unit: this.unit,
    })
    return html`
      <label for="input" class=${this.compact ? 'unseen' : ''}>${this.label}</label>
      <div class="box">
        <input
          id="input"
          type="text"
          inputmode="decimal"
          autocomplete="off"
          ?disabled=${this.disabled}
          placeholder=${this.placeholder}
          title=${range}
          aria-describedby="range problem"
          aria-invalid=${this._problem === null ? 'false' : 'true'}
          @change=${this.#take}
          @keydown=${this.#key}
        />
        ${this.unit && !this.compact && !this.unitApart ? html`<span class="unit">${this.unit}</span>` : nothing}
      </div>
      <span id="range" class="unseen">${range}</span>
      <div id="problem" aria-live="polite">
        ${this._problem === null ? nothing : html`<p class="problem">${this._problem}</p>`}
      </div>
    `
  }

  get #input(): HTMLInputElement {
    return this.renderRoot.querySelector('input') as HTMLInputElement
  }

  #written(value: number): string {
    return sayNumber(value, 0, this.decimals)
  }

  #showValue(): void {
    this.#input.value = this.value === null ? '' : this.#written(this.value)
  }

  #take(): void {
    const typed = this.#input.value.trim()
    const value = readTyped(typed)
    if (typed === '' && this.placeholder !== '') this.#offer(null)
    else if (value === null) this.#refuse(say('bench.notANumber', { given: typed.slice(0, 20), ...this.#allowed }))
    // An entry that shows the same as the value in force is that value.
    else if (this.value !== null && this.#written(value) === this.#written(this.value)) this.#restore()
    else if (value < this.least - slack || value > this.most + slack)
      this.#refuse(say('bench.outOfRange', { given: typed.slice(0, 20), ...this.#allowed }))
    else this.#offer(value)
  }

  get #allowed() {
    const now = this.value === null ? this.placeholder : this.#written(this.value)
    const [least, most] = [this.#written(this.least), this.#written(this.most)]
    return { label: this.label, least, most, unit: this.unit, now }
  }

  #offer(value: number | null): void {
    const problem = this.offer(value === null ? null : Math.min(this.most, Math.max(this.least, value)))
    if (problem === null) this.#restore()
    else this.#refuse(problem)
  }

  #refuse(problem: string): void {
    this._problem = problem
  }

  #restore(): void {
    this._problem = null
    void this.updateComplete.then(() => this.#showValue())
  }

  #key(event: KeyboardEvent): void {
    if (event.key === 'Escape' && this._problem !== null) {
      event.preventDefault()
      this.#restore()
    }
    if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return
    event.preventDefault()
    const from = readTyped(this.#input.value) ?? this.value ?? this.least
    const next = from + (event.key === 'ArrowUp' ? this.step : -this.step)
    this.#input.value = this.#written(Math.min(this.most, Math.max(this.least, next)))
    this.#take()
  }
}

/** What rounding in a converted unit may cost at the ends of a range. */
const slack = 1e-9

customElements.define('tack-number-field', NumberField)
