/** The run in numbers, a page at a time, and all of it as CSV. */
import { css, html } from 'lit'
import { aimedColours } from '../../measure/order-colours.ts'
import { pairs } from '../../press/readings.ts'
import type { Table } from '../../report/csv.ts'
import { mannerOf, writeCsv } from '../../report/csv.ts'
import type { PrintedRun } from '../../session/run-desk.ts'
import type { ChooseEvent } from '../choice.ts'
import '../choice.ts'
import { ordersStyles } from '../orders/orders-styles.ts'
import type { PageEvent } from '../pager.ts'
import '../pager.ts'
import { say, sayNumber } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { saveText } from '../strip/save-text.ts'
import { tableStyles } from '../table-styles.ts'
import { RunElement, eventWords } from './run-element.ts'
import type { RunLine } from './run-lines.ts'
import { colourLines, contaminationLines, patchName, patchesOf, trapLines } from './run-lines.ts'

const groups = ['contamination', 'traps', 'colour'] as const
type Group = (typeof groups)[number]
const onPage = 12

export class RunTable extends RunElement {
  static override properties = {
    printed: { attribute: false },
    _group: { state: true },
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
    `,
  ]

  declare printed: PrintedRun
  declare _group: Group
  declare _from: number

  constructor() {
    super()
    this._group = 'contamination'
    this._from = 0
  }

  override render() {
    const { rows, asked } = this.printed
    const columns = this.#columns()
    const from = this._from < rows.length ? this._from : 0
    return html`
      <h3>${say('run.table')}</h3>
      <p class="note">${say('run.tableHint')}</p>
      <div class="row">
        <tack-choice
          .legend=${say('run.chart')}
          .options=${groups.map((value) => ({ value, label: say(`run.${value}Axis`) }))}
          .value=${this._group}
          @choose=${({ value }: ChooseEvent) => (this._group = value as Group)}
        ></tack-choice>
        <button type="button" @click=${() => this.#save()}>${say('run.csv')}</button>
      </div>
      <div class="scroll" tabindex="0" role="region" aria-label=${say('run.table')}>
        <table>
          <thead>
            <tr>
              <th scope="col">${say('run.sheet')}</th>
              ${columns.map(({ label }) => html`<th scope="col">${label}</th>`)}
              <th scope="col" class="words">${say('run.eventColumn')}</th>
            </tr>
          </thead>
          <tbody>
            ${rows.slice(from, from + onPage).map(
              (row) =>
                html`<tr>
                  <th scope="row">${sayNumber(row.sheet, 0)}</th>
                  ${columns.map(({ value }) => html`<td>${number(value(row))}</td>`)}
                  <td class="words">
                    ${asked
                      .filter(({ sheet }) => sheet === row.sheet)
                      .map(eventWords)
                      .join('; ')}
                  </td>
                </tr>`,
            )}
          </tbody>
        </table>
      </div>
      <tack-pager
        .label=${say('run.table')}
        .from=${from}
        .onPage=${onPage}
        .count=${rows.length}
        @page=${(event: PageEvent) => (this._from = event.from)}
      ></tack-pager>
    `
  }

  #columns(): RunLine[] {
    const { printed } = this
    const { inks } = printed.setUp
    switch (this._group) {
      case 'contamination':
        return [...contaminationLines(printed), { label: say('run.picking'), value: ({ picking }) => 100 * picking }]
      case 'traps':
        return inks.flatMap((_, later) => trapLines(printed, later))
      case 'colour':
        return [
          ...colourLines(printed, 'all'),
          ...colourLines(printed, 'solids'),
          ...colourLines(printed, 'overprints'),
        ]
    }
  }

  #save(): void {
    const { setUp, rows, asked } = this.printed
    const { inks } = setUp
    const patches = aimedColours(setUp) ? patchesOf(setUp) : []
    const table: Table = {
      columns: [
        { heading: say('run.sheet'), unit: null },
        ...inks.map(({ name }) => ({ heading: say('run.csvContamination', { name }), unit: '%' })),
        ...pairs(inks.length).map(([earlier, later]) => ({
          heading: say('run.csvTrap', { later: inks[later].name, earlier: inks[earlier].name }),
          unit: '%',
        })),
        { heading: say('run.csvPicking'), unit: '%' },
        ...patches.map((patch) => ({ heading: say('run.dE00Of', { patch: patchName(patch, setUp) }), unit: null })),
        { heading: say('run.eventColumn'), unit: null },
      ],
      rows: rows.map(({ sheet, contamination, massTraps, picking, differences }) => [
        sheet,
        ...[...contamination, ...massTraps, picking].map((share) => 100 * share),
        ...differences,
        asked
          .filter((event) => event.sheet === sheet)
          .map(eventWords)
          .join('; '),
      ]),
    }
    saveText('run.csv', 'text/csv', writeCsv(table, mannerOf(navigator.language)))
  }
}

function number(value: number): string {
  return Number.isFinite(value) ? sayNumber(value, 2) : ''
}

customElements.define('tack-run-table', RunTable)
