/** Trap at every overprint of a press sheet that was read, by three equations, or why there is none. */
import { css, html, nothing } from 'lit'
import type { PressSheet } from '../../measure/press-sheet.ts'
import { isRefused } from '../../measure/said.ts'
import type { SheetTrap } from '../../measure/sheet-traps.ts'
import { sheetTraps } from '../../measure/sheet-traps.ts'
import { trapEquations } from '../../measure/trap-equations.ts'
import { linkedText } from '../linked-text.ts'
import { say, sayNumber } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { tableStyles } from '../table-styles.ts'
import { filterChoice } from './filter-choice.ts'
import { StripElement } from './strip-element.ts'
import { stripStyles } from './strip-styles.ts'
import { patchWords, told } from './told.ts'

export class SheetTrapsTable extends StripElement {
  static override properties = { sheet: { attribute: false } }
  static override styles = [
    sharedStyles,
    tableStyles,
    stripStyles,
    css`
      td[colspan] {
        text-align: center;
      }
      li {
        margin-top: 4px;
        font-size: 0.9375rem;
      }
    `,
  ]

  declare sheet: PressSheet

  override render() {
    const { filter } = this.desk.state
    const isProcess = this.strip.colours.map(({ kind }) => kind === 'process')
    const traps = sheetTraps(this.sheet, isProcess, filter ?? undefined)
    const caution = traps.find((trap) => trap.caution)?.caution
    return html`
      <h3>${linkedText(say('strip.sheetTraps'))}</h3>
      <p class="note">
        ${say('strip.sheetRead', { patches: this.sheet.patches.length, paper: String(this.sheet.paper !== null) })}
      </p>
      <div class="row">${filterChoice(this.desk)}</div>
      ${caution ? html`<p class="mark">${linkedText(told(caution))}</p>` : nothing}
      ${traps.length === 0 ? html`<p>${say('strip.noOverprintRead')}</p>` : this.#table(traps)}
    `
  }

  #table(traps: readonly SheetTrap[]) {
    return html`<div class="scroll" tabindex="0" role="region" aria-label=${say('strip.sheetTrapsRegion')}>
        <table>
          <thead>
            <tr>
              <th scope="col">${say('strip.laterOnBelow')}</th>
              ${(['D1', 'D2', 'D3'] as const).map((symbol) => html`<th scope="col">${symbol}</th>`)}
              ${trapEquations.map((equation) => html`<th scope="col">${say(`strip.name.${equation}`)} %</th>`)}
            </tr>
          </thead>
          <tbody>
            ${traps.map((trap) => this.#row(trap))}
          </tbody>
        </table>
      </div>
      <p class="note">${say('strip.scalesNote')}</p>
      ${this.#whyNone(traps)}`
  }

  #pair(later: number, below: readonly number[]): string {
    const { inks } = this.sheet
    return say('strip.pair', { later: inks[later], below: patchWords(below, inks) })
  }

  #whyNone(traps: readonly SheetTrap[]) {
    const reasons = traps.flatMap(({ apparent, later, below }) =>
      isRefused(apparent) ? [{ pair: this.#pair(later, below), reason: told(apparent.refused) }] : [],
    )
    if (reasons.length === 0) return nothing
    return html`<details>
      <summary>${say('strip.whyNone', { count: reasons.length })}</summary>
      <ul>
        ${reasons.map((reason) => html`<li>${linkedText(say('strip.noneBecause', reason))}</li>`)}
      </ul>
    </details>`
  }

  #row({ later, below, densities, apparent }: SheetTrap) {
    const name = this.#pair(later, below)
    const read = (['D1', 'D2', 'D3'] as const).map(
      (symbol) => html`<td>${densities ? sayNumber(densities[symbol], 2) : ''}</td>`,
    )
    return html`<tr>
      <th scope="row">${name}</th>
      ${read}
      ${
        isRefused(apparent)
          ? html`<td colspan="3">${say('strip.none')}</td>`
          : trapEquations.map((equation) => html`<td>${sayNumber(apparent.percent[equation], 1)}</td>`)
      }
    </tr>`
  }
}

customElements.define('tack-sheet-traps-table', SheetTrapsTable)
