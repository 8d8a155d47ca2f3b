/** The orders, best first, a page at a time; only those with one ink on one unit, where that is asked for. */
import type { PropertyValues } from 'lit'
import { css, html, nothing } from 'lit'
import type { Ink } from '../../press/setup.ts'
import type { OrderList, Weighed } from '../../session/order-list.ts'
import { KeptFocus } from '../kept-focus.ts'
import { say, sayName, sayNumber } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import { tableStyles } from '../table-styles.ts'
import { colourSolids } from './colour-solids.ts'
import { miniStair } from '../mini-stair.ts'
import type { Drawing } from '../../view/svg-file.ts'
import { stairsForPaper } from '../pictures/stairs-for-paper.ts'
import { OrderEvent } from './order-event.ts'
import { inPercent, orderNames, orderTreads } from './order-words.ts'
import { ordersStyles } from './orders-styles.ts'
import '../pager.ts'
import type { PageEvent } from '../pager.ts'

/** Orders on one page. */
const onPage = 12

export class OrderTable extends SessionElement {
  static override properties = {
    inks: { attribute: false },
    list: { attribute: false },
    weighed: { attribute: false },
    pair: { attribute: false },
    loadable: { type: Boolean },
    _ink: { state: true },
    _unit: { state: true },
    _from: { state: true },
  }
  static override styles = [
    sharedStyles,
    ordersStyles,
    tableStyles,
    css`
      h3 {
        margin-top: 0;
      }
      tbody :is(th, td) {
        vertical-align: middle;
      }
      td .note {
        display: block;
        font-size: 0.8125rem;
        white-space: nowrap;
      }
      td button {
        margin: 2px 0;
      }
    `,
  ]

  /** as ranked */
  declare inks: readonly Ink[]
  declare list: OrderList
  declare weighed: Weighed
  declare pair: readonly number[]
  /** whether the inks are still those on the bench */
  declare loadable: boolean
  /** name of the ink the filter asks for, or null */
  declare _ink: string | null
  /** the unit (from 0) it asks for */
  declare _unit: number
  /** index of the first order shown, among those that pass */
  declare _from: number
  /** indices into `weighed.best` of the orders that pass */
  #passing: readonly number[] = []

  constructor() {
    super()
    new KeptFocus(this)
    this._ink = null
    this._unit = 0
    this._from = 0
  }

  override willUpdate(changed: PropertyValues): void {
    if (!['weighed', '_ink', '_unit', 'list'].some((each) => changed.has(each))) return
    const { best } = this.weighed
    const place = this.inks.findIndex(({ name }) => name === this._ink)
    this.#passing = Array.from(best, (_, rank) => rank).filter(
      (rank) => place < 0 || this.list.inkAt(best[rank], this._unit) === place,
    )
    if (this._from >= this.#passing.length) this._from = 0
  }

  get pictureName(): string {
    return say('orders.table')
  }

  get summary(): string {
    const [first] = this.#shown
    const names = orderNames(this.list.order(this.weighed.best[first]), this.inks)
    return say('orders.tablePicture', { count: this.#shown.length, place: first + 1, order: names })
  }

  /** The orders on the page that is open, as a picture; where none passes the filter there is none. */
  get printed(): (() => Drawing) | undefined {
    return this.#shown.length > 0 ? () => stairsForPaper(this.#shown.map((rank) => this.#paperRow(rank))) : undefined
  }

  get #shown(): readonly number[] {
    return this.#passing.slice(this._from, this._from + onPage)
  }

  #paperRow(rank: number) {
    const number = this.weighed.best[rank]
    const order = this.list.order(number)
    const { trap, contamination, picking } = this.list.terms(number)
    return {
      place: sayNumber(rank + 1, 0),
      treads: orderTreads(order, this.inks, colourSolids(this.session)),
      title: orderNames(order, this.inks),
      lines: [
        `${say('orders.scoreHead')}: ${sayNumber(this.weighed.scores[number], 2)}`,
        say('orders.tableReadings', {
          trap: inPercent(trap),
          contamination: inPercent(contamination),
          picking: inPercent(picking),
        }),
      ],
    }
  }

  override render() {
    const shown = this.#shown
    return html`
      <h3>${say('orders.table')}</h3>
      <div class="row">${this.#filter()}</div>
      <div class="scroll" tabindex="0" role="region" aria-label=${say('orders.table')}>
        <table>
          <thead>
            <tr>
              <th scope="col">${say('orders.place')}</th>
              <th scope="col" class="words">${say('orders.order')}</th>
              <th scope="col">${say('orders.scoreHead')}</th>
              <th scope="col">${say('orders.trap')}</th>
              <th scope="col">${say('orders.contamination')}</th>
              <th scope="col">${say('orders.picking')}</th>
              <th scope="col">${say('orders.colour')}</th>
              <th scope="col" class="words">${say('orders.act')}</th>
            </tr>
          </thead>
          <tbody>
            ${shown.map((rank) => this.#row(rank))}
          </tbody>
        </table>
      </div>
      <tack-pager
        .label=${say('orders.table')}
        .from=${this._from}
        .onPage=${onPage}
        .count=${this.#passing.length}
        @page=${(event: PageEvent) => (this._from = event.from)}
      ></tack-pager>
    `
  }

  #filter() {
    const units = this.inks.map((_, unit) => unit)
    const hasBlack = this.inks.some(({ name }) => name === 'black')
    const blackFirst = this._ink === 'black' && this._unit === 0
    return html`
      <label
        >${say('orders.filter')}
        <select @change=${(event: Event) => (this._ink = (event.target as HTMLSelectElement).value || null)}>
          <option value="" ?selected=${this._ink === null}>${say('orders.anyInk')}</option>
          ${this.inks.map(({ name }) => html`<option value=${name} ?selected=${this._ink === name}>${sayName(name)}</option>`)}
        </select>
      </label>
      <label
        >${say('orders.filterUnit')}
        <select
          ?disabled=${this._ink === null}
          @change=${(event: Event) => (this._unit = Number((event.target as HTMLSelectElement).value))}
        >
          ${units.map(
            (unit) =>
              html`<option value=${unit} ?selected=${this._unit === unit}>
                ${say('orders.unit', { unit: unit + 1 })}
              </option>`,
          )}
        </select>
      </label>
      ${
        hasBlack
          ? html`<button
              type="button"
              aria-pressed=${blackFirst}
              @click=${() => {
                this._ink = blackFirst ? null : 'black'
                this._unit = 0
              }}
            >
              ${say('orders.blackFirst')}
            </button>`
          : nothing
      }
    `
  }

  #row(rank: number) {
    const number = this.weighed.best[rank]
    const order = this.list.order(number)
    const { trap, contamination, picking, colour } = this.list.terms(number)
    const names = orderNames(order, this.inks)
    const values = { rank: rank + 1, order: names }
    const compared = this.pair.includes(number)
    return html`<tr>
      <th scope="row">${sayNumber(rank + 1, 0)}</th>
      <td class="words">
        ${miniStair(orderTreads(order, this.inks, colourSolids(this.session)))}<span class="note">${names}</span>
      </td>
      <td>${sayNumber(this.weighed.scores[number], 2)}</td>
      <td>${inPercent(trap)}</td>
      <td>${inPercent(contamination)}</td>
      <td>${inPercent(picking)}</td>
      <td>${Number.isNaN(colour) ? '' : sayNumber(colour, 2)}</td>
      <td class="words">
        <button
          type="button"
          aria-pressed=${compared}
          aria-label=${say('orders.compareNamed', values)}
          @click=${() => this.dispatchEvent(new OrderEvent('compare', number))}
        >
          ${say('orders.compare')}
        </button>
        ${
          this.#isLoaded(names)
            ? html`<span>${say('orders.now')}</span>`
            : html`<button
                type="button"
                ?disabled=${!this.loadable}
                aria-label=${say('orders.loadNamed', values)}
                @click=${() => this.dispatchEvent(new OrderEvent('load', number))}
              >
                ${say('orders.load')}
              </button>`
        }
      </td>
    </tr>`
  }

  #isLoaded(names: string): boolean {
    return this.loadable && names === this.session.setUp.inks.map(({ name }) => name).join(', ')
  }
}

customElements.define('tack-order-table', OrderTable)
