/** Which sheet is read: the first, the one with this number, or one after everything has settled. */
import { css, html, nothing } from 'lit'
import { ranges } from '../press/ranges.ts'
import type { ChooseEvent } from './choice.ts'
import './choice.ts'
import './number-field.ts'
import { say } from './say.ts'
import type { Printing } from '../session/printing.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'

/** The sheet taken when a number is first asked for: far enough on for a new press to have changed. */
const usualSheet = 100

export class ReadingSwitch extends SessionElement {
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: flex;
        flex-wrap: wrap;
        gap: 8px;
        align-items: center;
      }
      tack-number-field {
        width: 4.5rem;
      }
    `,
  ]

  override render() {
    const { printing } = this.session
    if (printing) return this.#progress(printing)
    const { reading } = this.session.setUp
    const kind = typeof reading === 'string' ? reading : 'sheet'
    return html`
      <tack-choice
        .legend=${say('bench.reading')}
        .options=${(['first', 'sheet', 'settled'] as const)
          .filter((value) => value !== 'settled' || this.knows('settled'))
          .map((value) => ({ value, label: say(`bench.reading.${value}`) }))}
        .value=${kind}
        @choose=${this.#choose}
      ></tack-choice>
      ${
        typeof reading === 'object'
          ? html`<tack-number-field
              compact
              .label=${say('bench.sheetNumber')}
              .least=${ranges.sheet.least}
              .most=${ranges.sheet.most}
              .decimals=${0}
              .value=${reading.sheet}
              .offer=${(sheet: number) => this.attempt({ kind: 'read', reading: { sheet } })}
            ></tack-number-field>`
          : nothing
      }
    `
  }

  #progress({ sheet, of }: Printing) {
    const text = say('bench.printing', { sheet, of })
    return html`<progress max=${of} .value=${sheet} aria-label=${text}></progress>
      <span>${text}</span>
      <button type="button" @click=${() => this.session.cancelPrinting()}>${say('bench.cancel')}</button>`
  }

  #choose({ value }: ChooseEvent): void {
    const reading = value === 'first' || value === 'settled' ? value : { sheet: usualSheet }
    this.attempt({ kind: 'read', reading })
  }
}

customElements.define('tack-reading-switch', ReadingSwitch)
