/** Every reading of the sheet in tables, and the film stack of the nip looked at: the pictures in numbers. */
import { css, html, nothing } from 'lit'
import { liftedShares } from '../press/readings.ts'
import { toShown } from '../session/measures.ts'
import { inkDensity } from '../session/unit-names.ts'
import './film-table.ts'
import { say, sayName, sayNumber, sayPercent } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'
import { tableStyles } from './table-styles.ts'

export class AllReadings extends SessionElement {
  static override styles = [
    sharedStyles,
    tableStyles,
    css`
      div {
        overflow-x: auto;
      }
      .note {
        margin-top: 12px;
      }
    `,
  ]

  override render() {
    const above = this.session.results.readings.traps.some(({ massTrap }) => massTrap > 1)
    return html`${this.knows('mass-trap') ? html`<div>${this.#traps()}</div>` : nothing}
      ${above && this.knows('mass-trap') ? html`<p class="note">${say('bench.trapAboveAll')}</p>` : nothing}
      <div>${this.#inks()}</div>
      ${this.knows('lifting') ? html`<div>${this.#lifted()}</div>` : nothing}
      ${
        this.session.look.known
          ? nothing
          : html`<p class="note">${say('bench.inkDensity', { density: sayNumber(inkDensity, 0, 2) })}</p>`
      }`
  }

  get #names(): string[] {
    return this.session.setUp.inks.map((ink) => ink.name)
  }

  /** Rows are later inks, columns the inks below them. */
  #traps() {
    const names = this.#names
    const { traps } = this.session.results.readings
    const cell = (later: number, earlier: number) => {
      const trap = traps.find((each) => each.later === later && each.earlier === earlier)
      return html`<td>${trap ? say('bench.percent', { value: sayNumber(100 * trap.massTrap, 0) }) : ''}</td>`
    }
    return html`<table>
      <caption>
        ${say('bench.trapTable')}
      </caption>
      <thead>
        <tr>
          <th scope="col">${say('bench.laterInk')}</th>
          ${names.slice(0, -1).map((name) => html`<th scope="col">${say('bench.onInk', { name })}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${names.slice(1).map(
          (name, row) =>
            html`<tr>
              <th scope="row">${sayName(name)}</th>
              ${names.slice(0, -1).map((_, earlier) => cell(row + 1, earlier))}
            </tr>`,
        )}
      </tbody>
    </table>`
  }

  #inks() {
    const { results, patch, look } = this.session
    const { readings } = results
    const { film } = look.measures
    const unit = say(`bench.unit.${film.unit}`)
    const shown = (um: number) => sayNumber(toShown(um, film), 2)
    return html`<table>
      <caption>
        ${say('bench.byInk')}
      </caption>
      <thead>
        <tr>
          <th scope="col">${say('bench.ink')}</th>
          <th scope="col">${say('bench.filmHere', { unit })}</th>
          ${this.knows('bare-paper') ? html`<th scope="col">${say('bench.filmOnBare', { unit })}</th>` : nothing}
          ${this.knows('contamination') ? html`<th scope="col">${say('bench.contaminationOf')}</th>` : nothing}
        </tr>
      </thead>
      <tbody>
        ${this.#names.map(
          (name, ink) =>
            html`<tr>
              <th scope="row">${sayName(name)}</th>
              <td>${shown(readings.films[patch][ink])}</td>
              ${this.knows('bare-paper') ? html`<td>${shown(readings.onBare[ink])}</td>` : nothing}
              ${
                this.knows('contamination')
                  ? html`<td>${sayNumber(100 * readings.contamination[ink], 1)}</td>`
                  : nothing
              }
            </tr>`,
        )}
      </tbody>
    </table>`
  }

  #lifted() {
    const names = this.#names
    const { results, patch } = this.session
    return html`<table>
      <caption>
        ${say(this.knows('picking') ? 'bench.liftedTable' : 'bench.liftedTableAlone')}
      </caption>
      <thead>
        <tr>
          <th scope="col">${say('bench.atUnitHead')}</th>
          ${names.slice(0, -1).map((name) => html`<th scope="col">${say('bench.ofInk', { name })}</th>`)}
          ${this.knows('picking') ? html`<th scope="col">${say('bench.pickedShare')}</th>` : nothing}
        </tr>
      </thead>
      <tbody>
        ${results.accounts(patch).map((account, unit) => {
          const lifted = liftedShares(account)
          return html`<tr>
            <th scope="row">${say('picture.unit', { unit: unit + 1, name: names[unit] })}</th>
            ${names.slice(0, -1).map((_, ink) => html`<td>${ink < lifted.length ? sayPercent(lifted[ink]) : ''}</td>`)}
            ${this.knows('picking') ? html`<td>${sayPercent(account.contact * account.torn)}</td>` : nothing}
          </tr>`
        })}
      </tbody>
    </table>`
  }
}

customElements.define('tack-all-readings', AllReadings)
