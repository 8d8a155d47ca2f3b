/** One piece of evidence that was taken: what was read. Fires `read`, with how many times more it is to be read for the mean. */
import type { PropertyDeclarations } from 'lit'
import { css, html, nothing } from 'lit'
import type { Drill } from '../../drill/drill.ts'
import type { Evidence } from '../../drill/evidence.ts'
import type { Observation } from '../../drill/observe.ts'
import { mostReadings, observe } from '../../drill/observe.ts'
import { evidenceSaid, howSaid } from '../../drill/said.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { tableStyles } from '../table-styles.ts'
import { DrillElement, saySaid } from './drill-element.ts'
import '../colour-scales.ts'
import './drill-loupe.ts'
import './drill-run.ts'
import { drillStyles } from './drill-styles.ts'
import './eye-patches.ts'
import { readingTable } from './reading-table.ts'

export class EvidenceCard extends DrillElement {
  static override properties: PropertyDeclarations = {
    ...DrillElement.properties,
    drill: { attribute: false },
    evidence: { attribute: false },
    readings: { type: Number },
  }
  static override styles = [
    sharedStyles,
    tableStyles,
    drillStyles,
    css`
      :host {
        padding: 8px 0;
        border-top: 1px solid var(--line);
      }
      small {
        display: block;
        color: var(--soft);
        font-size: 0.8125rem;
      }
    `,
  ]

  declare drill: Drill
  declare evidence: Evidence
  declare readings: number

  override render() {
    const { drill, evidence, readings } = this
    const name = saySaid(evidenceSaid(drill, evidence))
    const observations = observe(drill, evidence, readings)
    return html`
      <h3>${name}</h3>
      <p class="note">${saySaid(howSaid(evidence))} ${say('room.mean', { count: readings })}</p>
      ${this.#picture(observations)}
      <div class="scroll" tabindex="0" role="region" aria-label=${name}>${readingTable(drill, observations)}</div>
      ${
        evidence.kind === 'units'
          ? nothing
          : html`<div class="row">
              ${([1, 3] as const).map(
                (more) =>
                  html`<button
                    type="button"
                    aria-label="${name}: ${say(more === 1 ? 'room.again' : 'room.threeMore')}"
                    ?disabled=${readings + more > mostReadings}
                    @click=${() => this.dispatchEvent(new CustomEvent('read', { detail: more }))}
                  >
                    ${say(more === 1 ? 'room.again' : 'room.threeMore')}
                  </button>`,
              )}
            </div>`
      }
    `
  }

  #picture(observations: readonly Observation[]) {
    const { drill, evidence } = this
    if (evidence.kind === 'eye')
      return html`<tack-eye-patches .drill=${drill} .observations=${observations}></tack-eye-patches>
        <tack-colour-scales></tack-colour-scales>`
    if (evidence.kind === 'run chart')
      return html`<tack-drill-run .session=${this.session} .drill=${drill}></tack-drill-run>`
    if (evidence.kind !== 'loupe') return nothing
    return html`<div class="row">
      ${(['loupeGood', 'loupeThis'] as const).map(
        (which) =>
          html`<tack-drill-loupe
            .setUp=${which === 'loupeGood' ? drill.ticket : drill.press}
            .label=${say('room.loupePicture', { which: say(`room.${which}`) })}
            .caption=${say(`room.${which}`)}
          ></tack-drill-loupe>`,
      )}
    </div>`
  }
}

customElements.define('tack-evidence-card', EvidenceCard)
