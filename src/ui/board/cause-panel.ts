/** The fault drills of a class: how often each cause was found, and what it was taken for. */
import { LitElement, html, nothing } from 'lit'
import type { CauseCount } from '../../class/count-drills.ts'
import { causesTable, confusionTable } from '../../report/class-tables.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { boardStyles } from './board-styles.ts'
import './class-table.ts'

export class CausePanel extends LitElement {
  static override properties = { causes: { attribute: false } }
  static override styles = [sharedStyles, boardStyles]

  declare causes: readonly CauseCount[]

  override render() {
    const { causes } = this
    if (causes.length === 0)
      return html`<h3>${say('board.causes')}</h3>
        <p>${say('board.noDrills')}</p>`
    const confusion = confusionTable(causes, say)
    return html`<div class="beside">
      <div>
        <h3>${say('board.causes')}</h3>
        <p class="note">${say('board.causesAre')}</p>
        <tack-class-table
          .label=${say('board.causes')}
          .file=${'tackstair-causes'}
          .table=${causesTable(causes, say)}
          .bars=${[2, 3]}
        ></tack-class-table>
      </div>
      ${
        confusion.rows.length === 0
          ? nothing
          : html`<div>
              <h3>${say('board.confusion')}</h3>
              <p class="note">${say('board.confusionIs')}</p>
              <tack-class-table
                .label=${say('board.confusion')}
                .file=${'tackstair-confusion'}
                .table=${confusion}
              ></tack-class-table>
            </div>`
      }
    </div>`
  }
}

customElements.define('tack-cause-panel', CausePanel)
