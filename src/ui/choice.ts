/** One of a few, side by side: real radio buttons, drawn as a strip. Fires `choose` with the value chosen. */
import { LitElement, css, html } from 'lit'
import { sharedStyles } from './shared-styles.ts'

export interface Option {
  value: string
  label: string
  /** read out instead of a short label */
  name?: string
}

export class ChooseEvent extends Event {
  readonly value: string

  constructor(value: string) {
    super('choose')
    this.value = value
  }
}

export class Choice extends LitElement {
  static override properties = {
    legend: {},
    drawLegend: { type: Boolean },
    options: { attribute: false },
    value: {},
    disabled: { type: Boolean },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: inline-block;
      }
      legend {
        margin-bottom: 2px;
        font-size: 0.875rem;
        font-weight: 400;
      }
      .strip {
        display: inline-flex;
        flex-wrap: wrap;
        max-width: 100%;
        border: var(--hairline) solid var(--accent);
        border-radius: var(--corner);
        background: var(--field);
      }
      label {
        position: relative;
        display: flex;
        align-items: center;
        min-width: 1.625rem;
        min-height: 1.625rem;
        padding: 0 8px;
        color: var(--accent);
        font-size: 0.9375rem;
        font-weight: 600;
        flex: 1 1 auto;
        justify-content: center;
        text-align: center;
        cursor: pointer;
      }
      label + label {
        border-inline-start: 1px solid var(--accent);
      }
      label:hover {
        background: var(--accent-ground);
      }
      fieldset:disabled :is(label, .strip) {
        border-color: var(--line);
        color: var(--soft);
      }
      fieldset:disabled label:has(:checked) {
        background: var(--line);
        color: var(--graphite);
      }
      label:has(:checked) {
        background: var(--accent);
        color: var(--on-accent);
      }
      label:has(:focus-visible) {
        outline: var(--focus) solid var(--accent);
        outline-offset: 2px;
        z-index: 1;
      }
      input[type='radio'] {
        position: absolute;
        inset: 0;
        width: 100%;
        height: 100%;
        margin: 0;
        opacity: 0;
        cursor: pointer;
      }
      @media (pointer: coarse) {
        label {
          min-width: 44px;
          min-height: 44px;
        }
      }
      @media (forced-colors: active) {
        label:has(:checked) {
          forced-color-adjust: none;
          background: Highlight;
          color: HighlightText;
        }
        label:has(:focus-visible) {
          outline-color: CanvasText;
        }
      }
    `,
  ]

  declare legend: string
  declare drawLegend: boolean
  declare options: readonly Option[]
  declare value: string
  declare disabled: boolean

  override render() {
    return html`<fieldset ?disabled=${this.disabled}>
      <legend class=${this.drawLegend ? '' : 'unseen'}>${this.legend}</legend>
      <div class="strip">
        ${this.options.map(
          ({ value, label, name }) =>
            html`<label title=${name ?? ''}
              ><input
                type="radio"
                name="choice"
                value=${value}
                aria-label=${name ?? label}
                .checked=${value === this.value}
                @change=${() => this.dispatchEvent(new ChooseEvent(value))}
              />${label}</label
            >`,
        )}
      </div>
    </fieldset>`
  }
}

customElements.define('tack-choice', Choice)
