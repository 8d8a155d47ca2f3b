/** Which drill: the next one of a level, or the number that a class was given. */
import { html, nothing } from 'lit'
import type { Level } from '../../drill/level.ts'
import { levels } from '../../drill/level.ts'
import { writeDrill } from '../../drill/link.ts'
import { ranges } from '../../press/ranges.ts'
import { addressOf } from '../address.ts'
import type { ChooseEvent } from '../choice.ts'
import '../choice.ts'
import '../number-field.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { DrillElement } from './drill-element.ts'
import './drill-glimpse.ts'
import { drillStyles } from './drill-styles.ts'

export class DrillStart extends DrillElement {
  static override styles = [sharedStyles, drillStyles]

  override render() {
    const { level, request, drill, problem } = this.desk.state
    const making = request !== null && drill === null && problem === null
    return html`
      <p>${say('drill.intro')} ${say('drill.misleading')}</p>
      <div class="row">
        <tack-choice
          drawLegend
          .legend=${say('room.level')}
          .options=${levels.map((value) => ({ value, label: say(`room.${value}`), name: say(`drill.level.${value}`) }))}
          .value=${level}
          @choose=${({ value }: ChooseEvent) => this.desk.setLevel(value as Level)}
        ></tack-choice>
        <button
          type="button"
          class=${request ? nothing : 'first'}
          aria-disabled=${making}
          @click=${() => !making && void this.desk.next()}
        >
          ${say('room.next')}
        </button>
        <tack-number-field
          .label=${say('room.seed')}
          .least=${ranges.seed.least}
          .most=${ranges.seed.most}
          .step=${1}
          .decimals=${0}
          .value=${request?.seed ?? null}
          .offer=${(seed: number | null) => {
            if (seed !== null) void this.desk.open({ seed: Math.round(seed), level: this.desk.state.level })
            return null
          }}
        ></tack-number-field>
      </div>
      <p class="note">${say('room.next.about')}</p>
      <p aria-live="polite">
        ${
          problem !== null
            ? say('room.failed', { reason: problem })
            : making
              ? say('room.making')
              : drill
                ? say('room.ready', { job: say(`drill.job.${drill.job}`) })
                : say('room.none')
        }
      </p>
      ${request ? nothing : html`<tack-drill-glimpse></tack-drill-glimpse>`}
      ${
        request && drill
          ? html`<p>
                ${say('room.code', { code: writeDrill(request) })}
                <a href="${addressOf('drills')}&drill=${request.level}:${request.seed}">${say('room.link')}</a>
              </p>
              ${request.level === 'hard' ? html`<p class="mark">${say('drill.twoFaults')}</p>` : nothing}
              <p class="row">
                <button type="button" @click=${() => void this.desk.open({ ...request }, true)}>
                  ${say('room.retry')}
                </button>
              </p>`
          : nothing
      }
    `
  }
}

customElements.define('tack-drill-start', DrillStart)
