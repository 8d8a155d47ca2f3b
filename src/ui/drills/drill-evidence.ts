/** Everything a crew can look at or measure, and what of it was taken. */
import type { PropertyDeclarations } from 'lit'
import { css, html } from 'lit'
import { repeat } from 'lit/directives/repeat.js'
import type { Drill } from '../../drill/drill.ts'
import type { Evidence } from '../../drill/evidence.ts'
import { allEvidence, evidenceKey, seenEvidence } from '../../drill/evidence.ts'
import { observe } from '../../drill/observe.ts'
import { evidenceSaid } from '../../drill/said.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { DrillElement, saySaid } from './drill-element.ts'
import { drillStyles } from './drill-styles.ts'
import './evidence-card.ts'
import { outsideUsual } from './reading-table.ts'

export class DrillEvidence extends DrillElement {
  static override properties: PropertyDeclarations = {
    ...DrillElement.properties,
    drill: { attribute: false },
    _said: { state: true },
  }
  static override styles = [
    sharedStyles,
    drillStyles,
    css`
      .pieces {
        display: flex;
        flex-wrap: wrap;
        gap: 4px;
        margin-top: 4px;
      }
      .cards {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        margin-top: 8px;
      }
    `,
  ]

  declare drill: Drill
  declare _said: string

  constructor() {
    super()
    this._said = ''
  }

  override render() {
    const { drill } = this
    const { taken } = this.desk.state.work
    const pieces = allEvidence(drill.ticket)
    const isSeen = ({ kind }: Evidence) => seenEvidence.some((each) => each === kind)
    const cards = [...taken].reverse()
    return html`
      <h2>${say('room.evidence')}</h2>
      <p>${say('room.evidence.about')}</p>
      <h3>${say('room.look')}</h3>
      <div class="pieces">${pieces.filter(isSeen).map((piece) => this.#button(piece))}</div>
      <h3>${say('room.measure')}</h3>
      <div class="pieces">${pieces.filter((piece) => !isSeen(piece)).map((piece) => this.#button(piece))}</div>
      <p class="unseen" aria-live="polite">${this._said}</p>
      <div class="cards">
        ${repeat(
          cards,
          ({ evidence }) => evidenceKey(evidence),
          ({ evidence, readings }) =>
            html`<tack-evidence-card
              .session=${this.session}
              .drill=${drill}
              .evidence=${evidence}
              .readings=${readings}
              @read=${({ detail }: CustomEvent<number>) => this.#take(evidence, detail)}
            ></tack-evidence-card>`,
        )}
      </div>
    `
  }

  #button(evidence: Evidence) {
    const key = evidenceKey(evidence)
    const isTaken = this.desk.state.work.taken.some((each) => evidenceKey(each.evidence) === key)
    return html`<button type="button" aria-pressed=${isTaken} @click=${() => this.#take(evidence)}>
      ${saySaid(evidenceSaid(this.drill, evidence))}
    </button>`
  }

  #take(evidence: Evidence, more = 1): void {
    this.desk.take(evidence, more)
    const key = evidenceKey(evidence)
    const { readings = 1 } = this.desk.state.work.taken.find((each) => evidenceKey(each.evidence) === key) ?? {}
    const outside = observe(this.drill, evidence, readings).filter(outsideUsual).length
    this._said = say('room.took', { name: saySaid(evidenceSaid(this.drill, evidence)), readings, outside })
  }
}

customElements.define('tack-drill-evidence', DrillEvidence)
