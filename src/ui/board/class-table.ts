/** A table of the class: sorted by any column, a page at a time, shares with a bar beside the number, saved as CSV. */
import type { PropertyValues } from 'lit'
import { LitElement, css, html, nothing, svg } from 'lit'
import type { Table } from '../../report/csv.ts'
import { mannerOf, writeCsv } from '../../report/csv.ts'
import { language } from '../language.ts'
import type { PageEvent } from '../pager.ts'
import '../pager.ts'
import { say, sayNumber } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { saveText } from '../strip/save-text.ts'
import { tableStyles } from '../table-styles.ts'
import { boardStyles } from './board-styles.ts'
import type { SortWish } from './sorted-rows.ts'
import { sortedRows } from './sorted-rows.ts'

/** Rows on one page; printed are all. */
const onPage = 50

/** Of a bar, in the units of its picture. */
const barWidth = 60

export class ClassTable extends LitElement {
  static override properties = {
    label: {},
    file: {},
    table: { attribute: false },
    bars: { attribute: false },
    _sort: { state: true },
    _from: { state: true },
  }
  static override styles = [
    sharedStyles,
    tableStyles,
    boardStyles,
    css`
      th,
      td {
        text-align: start;
      }
      .number {
        text-align: end;
        white-space: nowrap;
      }
      th button {
        min-height: 1.75rem;
        margin: 0 -4px;
        padding: 0 4px;
        border: 0;
        background: none;
        font-size: 0.875rem;
        text-align: inherit;
      }
      tbody th {
        font-weight: 600;
      }
      .row {
        margin-top: 8px;
      }
      tbody th {
        min-width: 9.375rem;
      }
      .words {
        min-width: 6.875rem;
        max-width: 46ch;
        overflow-wrap: anywhere;
      }
      svg {
        width: 3.75rem;
        height: 0.625rem;
        margin-inline-start: 8px;
        fill: var(--soft);
        stroke: none;
      }
      .track {
        fill: var(--edge);
      }
      @media (pointer: coarse) {
        th button {
          min-height: 44px;
        }
      }
      @media (forced-colors: active) {
        svg {
          fill: CanvasText;
        }
      }
    `,
  ]

  /** what the table is, for its region */
  declare label: string
  /** name of the CSV file, without its ending */
  declare file: string
  declare table: Table
  /** columns in percent that get a bar, from 0 */
  declare bars: readonly number[]
  declare _sort: SortWish | null
  declare _from: number
  #sorted: Table['rows'] = []

  constructor() {
    super()
    this.bars = []
    this._sort = null
    this._from = 0
  }

  override willUpdate(changed: PropertyValues): void {
    const { columns, rows } = this.table
    if (this._sort && this._sort.column >= columns.length) this._sort = null
    if (changed.has('table') || changed.has('_sort')) this.#sorted = sortedRows(rows, this._sort, language().tag)
    if (this._from >= rows.length) this._from = 0
  }

  override render() {
    const { columns, rows } = this.table
    const shown = this.#sorted.slice(this._from, this._from + onPage)
    return html`
      <div class="scroll" tabindex="0" role="region" aria-label=${this.label}>
        <table>
          <thead>
            <tr>
              ${columns.map((_, column) => this.#head(column))}
            </tr>
          </thead>
          <tbody>
            ${shown.map(
              (row) =>
                html`<tr>
                  ${row.map((cell, column) =>
                    column === 0
                      ? html`<th scope="row">${cell}</th>`
                      : html`<td class=${this.#classOf(cell)}>${this.#cell(cell, column)}</td>`,
                  )}
                </tr>`,
            )}
          </tbody>
        </table>
      </div>
      <tack-pager
        .label=${this.label}
        .from=${this._from}
        .onPage=${onPage}
        .count=${rows.length}
        @page=${(event: PageEvent) => (this._from = event.from)}
      ></tack-pager>
      <div class="row on-screen">
        <button type="button" @click=${this.#save} aria-label=${`${say('board.saveCsv')}: ${this.label}`}>
          ${say('board.saveCsv')}
        </button>
      </div>
    `
  }

  #head(column: number) {
    const { heading, unit } = this.table.columns[column]
    const sort = this._sort?.column === column ? this._sort : null
    const isNumber = this.table.rows.some((row) => typeof row[column] === 'number')
    return html`<th
      scope="col"
      class=${isNumber ? 'number' : ''}
      aria-sort=${sort ? (sort.down ? 'descending' : 'ascending') : nothing}
    >
      <button type="button" title=${say('board.sortBy', { column: heading })} @click=${() => this.#sortBy(column)}>
        ${unit === null ? heading : `${heading} (${unit})`}
        <span aria-hidden="true">${sort ? (sort.down ? '▼' : '▲') : ''}</span>
      </button>
    </th>`
  }

  #classOf(cell: Table['rows'][number][number]): string {
    return typeof cell === 'number' ? 'number' : cell ? 'words' : ''
  }

  #cell(cell: Table['rows'][number][number], column: number) {
    if (typeof cell !== 'number') return cell
    const { unit } = this.table.columns[column]
    const shown = sayNumber(cell, 0, unit === null || cell >= 10 ? 0 : 1)
    return html`${shown}${this.bars.includes(column) ? bar(cell) : nothing}`
  }

  /** Upwards first for texts, downwards for numbers; then the other way round. */
  #sortBy(column: number): void {
    const isNumber = this.table.rows.some((row) => typeof row[column] === 'number')
    const before = this._sort?.column === column ? this._sort : null
    this._sort = { column, down: before ? !before.down : isNumber }
    this._from = 0
  }

  readonly #save = (): void => {
    const { columns } = this.table
    saveText(`${this.file}.csv`, 'text/csv', writeCsv({ columns, rows: this.#sorted }, mannerOf(language().tag)))
  }
}

/** `share` in percent; the number stands beside it. */
function bar(share: number) {
  const width = (barWidth * Math.min(100, Math.max(0, share))) / 100
  return html`<svg viewBox="0 0 60 10" aria-hidden="true">
    ${svg`<rect class="track" y="4" width=${barWidth} height="2"></rect><rect width=${width} height="10"></rect>`}
  </svg>`
}

customElements.define('tack-class-table', ClassTable)
