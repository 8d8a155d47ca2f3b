/** The report: the set-up, what it reads, and the link to it, on paper alone. */
import { css, html } from 'lit'
import { addressOf } from '../../report/qr-picture.ts'
import type { Table } from '../../report/csv.ts'
import { inksTable, trapsTable } from '../../report/sheet-tables.ts'
import { say, sayName, sayNumber } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import { tableStyles } from '../table-styles.ts'
import './link-picture.ts'
import { presentLink, setUpLink } from './present-link.ts'
import { givenAddress, isOnWeb } from './public-address.ts'

export class ReportSheet extends SessionElement {
  static override styles = [
    sharedStyles,
    tableStyles,
    css`
      :host {
        display: none;
        background: #ffffff;
        color: #1c1b1a;
      }
      h2 {
        font-size: 1.375rem;
        line-height: 1.875rem;
      }
      h3 {
        margin-top: 16px;
      }
      table {
        width: 100%;
        break-inside: avoid;
      }
      .link {
        overflow-wrap: anywhere;
        font-size: 0.8125rem;
      }
      @media print {
        :host {
          display: block;
        }
      }
    `,
  ]

  override render() {
    const { setUp, results } = this.session
    const { paper, press, reading } = setUp
    const page = isOnWeb() ? location.href : givenAddress()
    const { text } = presentLink(this.session)
    const address = addressOf(page, text)
    const speed = { speed: sayNumber(press.speed, 0, 2), unit: 'm/s' }
    const interval = say('tools.reportInterval', { seconds: sayNumber(press.interval, 0, 3) })
    const pressWords = { kind: say(`bench.press.${press.kind}`), waterless: String(press.waterless), ...speed }
    return html`<article>
      <h2>${say('tools.reportTitle')}</h2>
      <p>${say('tools.reportFrom')}</p>
      <dl>
        <dt>${say('tools.reportPaper')}</dt>
        <dd>${sayName(paper.name)}</dd>
        <dt>${say('tools.reportPress')}</dt>
        <dd>${say('bench.pressNow', pressWords)}; ${interval}</dd>
        <dt>${say('tools.reportSheet')}</dt>
        <dd>${say('tools.reportSheetIs', { reading: typeof reading === 'string' ? reading : reading.sheet })}</dd>
      </dl>
      <h3>${say('tools.table.inks')}</h3>
      ${tableView(inksTable(setUp, results.readings, say))}
      <h3>${say('tools.table.traps')}</h3>
      ${tableView(trapsTable(setUp, results.readings, say))}
      <h3>${say('tools.reportLink')}</h3>
      <p class="link">${address ?? text}</p>
      <tack-link-picture
        .address=${address}
        .shorter=${addressOf(page, setUpLink(this.session).text)}
      ></tack-link-picture>
    </article>`
  }
}

function tableView({ columns, rows }: Table) {
  return html`<table>
    <thead>
      <tr>
        ${columns.map(({ heading, unit }) => html`<th scope="col">${unit === null ? heading : `${heading} (${unit})`}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${rows.map(
        (row) =>
          html`<tr>
            ${row.map((cell) => html`<td>${typeof cell === 'number' ? sayNumber(cell, 0, 2) : sayName(cell ?? '')}</td>`)}
          </tr>`,
      )}
    </tbody>
  </table>`
}

customElements.define('tack-report-sheet', ReportSheet)
