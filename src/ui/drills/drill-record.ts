/** The record of the drills done. */
import { css, html } from 'lit'
import { readDrill } from '../../drill/link.ts'
import type { DrillEntry } from '../../session/drill-record.ts'
import { addressOf } from '../address.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { tableStyles } from '../table-styles.ts'
import { DrillElement } from './drill-element.ts'
import { drillStyles } from './drill-styles.ts'

const columns = ['drill', 'job', 'first', 'tries', 'evidence', 'cured'] as const

export class DrillRecord extends DrillElement {
  static override styles = [
    sharedStyles,
    tableStyles,
    drillStyles,
    css`
      th:first-child {
        white-space: nowrap;
      }
      a {
        color: var(--accent);
      }
      .job {
        min-width: 12.5rem;
        text-align: start;
        white-space: normal;
      }
    `,
  ]

  override render() {
    const { record, keeps } = this.desk.state
    const kept = html`<p class="note">${say(keeps ? 'room.record.kept' : 'room.record.notKept')}</p>`
    if (record.length === 0)
      return html`<p>${say('room.record.about')}</p>
        <p>${say('room.record.none')}</p>
        ${kept}`
    return html`
      <p>${say('room.record.about')}</p>
      <div class="scroll" tabindex="0" role="region" aria-label=${say('room.part.record')}>
        <table>
          <thead>
            <tr>
              ${columns.map((column) => html`<th scope="col">${say(`room.record.${column}`)}</th>`)}
            </tr>
          </thead>
          <tbody>
            ${record.map((entry) => this.#row(entry))}
          </tbody>
        </table>
      </div>
      ${kept}
      <p class="row">
        <button type="button" @click=${() => this.desk.clearRecord()}>${say('room.record.clear')}</button>
      </p>
      <p><a href=${addressOf('lessons')}>${say('board.handInAt')}</a></p>
    `
  }

  #row({ drill, job, first, tries, taken, cured }: DrillEntry) {
    return html`<tr>
      <th scope="row">
        <button
          type="button"
          class="plain"
          aria-label=${say('room.record.reopen', { code: drill })}
          @click=${() => this.#open(drill)}
        >
          ${drill}
        </button>
      </th>
      <td class="job">${say(`drill.job.${job}`)}</td>
      <td>${say(`room.record.${first}`)}</td>
      <td>${tries}</td>
      <td>${taken}</td>
      <td>${say(cured ? 'room.record.yes' : 'room.record.no')}</td>
    </tr>`
  }

  #open(code: string): void {
    const request = readDrill(code)
    if (request) void this.desk.open(request)
  }
}

customElements.define('tack-drill-record', DrillRecord)
