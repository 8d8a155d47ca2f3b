/** Readings as tables for a spreadsheet, one CSV file each. */
import type { PropertyDeclarations } from 'lit'
import { html } from 'lit'
import { stripOf } from '../../measure/strip.ts'
import type { CsvManner, Table } from '../../report/csv.ts'
import { mannerOf, plainManner, writeCsv } from '../../report/csv.ts'
import { filmsTable, inksTable, stripTable, trapsTable } from '../../report/sheet-tables.ts'
import { deskOf } from '../../session/desk.ts'
import type { Session } from '../../session/session.ts'
import { say } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import { saveText } from '../strip/save-text.ts'
import { toolStyles } from './tool-styles.ts'

/** Each by the name of its file. */
const tables = {
  inks: ({ setUp, results }: Session) => inksTable(setUp, results.readings, say),
  traps: ({ setUp, results }: Session) => trapsTable(setUp, results.readings, say),
  films: ({ setUp, results }: Session) => filmsTable(setUp, results.readings, say),
  strip: (session: Session) => stripTable(stripOf(session.results.run), deskOf(session).state.status, say),
} as const satisfies Readonly<Record<string, (session: Session) => Table>>

const names = Object.keys(tables) as (keyof typeof tables)[]
const commaManner: CsvManner = { separator: ';', decimal: ',' }

export class TablesPanel extends SessionElement {
  static override properties: PropertyDeclarations = { ...SessionElement.properties, manner: { state: true } }
  static override styles = [sharedStyles, toolStyles]

  declare protected manner: CsvManner

  constructor() {
    super()
    this.manner = mannerOf(navigator.language)
  }

  override render() {
    const { decimal } = this.manner
    return html`
      <h3>${say('tools.tables')}</h3>
      <p>${say('tools.tablesHow')}</p>
      <div class="row">
        <label for="manner">${say('tools.manner')}</label>
        <select id="manner" @change=${this.#choose}>
          <option value="point" ?selected=${decimal === '.'}>${say('tools.manner.point')}</option>
          <option value="comma" ?selected=${decimal === ','}>${say('tools.manner.comma')}</option>
        </select>
      </div>
      <div class="row">
        ${names.map(
          (name) => html`<button type="button" @click=${() => this.#save(name)}>${say(`tools.table.${name}`)}</button>`,
        )}
      </div>
    `
  }

  #choose(event: Event): void {
    this.manner = (event.target as HTMLSelectElement).value === 'comma' ? commaManner : plainManner
  }

  #save(name: keyof typeof tables): void {
    saveText(`tackstair-${name}.csv`, 'text/csv', writeCsv(tables[name](this.session), this.manner))
  }
}

customElements.define('tack-tables-panel', TablesPanel)
