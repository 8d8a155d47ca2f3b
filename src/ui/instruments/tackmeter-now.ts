/** How the tackmeter stands at this moment, in words, and its reading over the time since the ink was metered on. */
import { LitElement, css, html, nothing } from 'lit'
import type { TackConditions, Tackmeter } from '../../physics/tackmeter.ts'
import { pullPerTack, surfaceSpeed } from '../../physics/tackmeter.ts'
import type { TackmeterState } from '../../physics/tackmeter-run.ts'
import { filmNow, pullNow, readingDeviation, torqueOf } from '../../physics/tackmeter-run.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import type { Point } from './line-plot.ts'
import './line-plot.ts'
import { rigStyles } from './rig-styles.ts'

export class TackmeterNow extends LitElement {
  static override properties = {
    instrument: { attribute: false },
    ink: { attribute: false },
    set: { attribute: false },
    state: { attribute: false },
    trace: { attribute: false },
  }
  static override styles = [
    sharedStyles,
    rigStyles,
    css`
      ul {
        display: grid;
        gap: 0 16px;
        font-size: 0.9375rem;
      }
    `,
  ]

  declare instrument: Tackmeter
  declare ink: Parameters<typeof pullNow>[1]
  declare set: TackConditions
  declare state: TackmeterState
  /** s since the ink was metered on, and the reading then */
  declare trace: readonly Point[]

  override render() {
    const { instrument, state, set, trace } = this
    const film = filmNow(instrument, state)
    return html`<ul>
        <li>${say('rig.time', { seconds: state.time })}</li>
        <li>${say('rig.now', { speed: state.speed, temperature: state.temperature })}</li>
        <li>${say('tackmeter.surface', { speed: surfaceSpeed(instrument, state.speed) })}</li>
        <li>${say('tackmeter.film', { film })}; ${say('tackmeter.evaporated', { share: state.evaporated })}</li>
        <li>${say('rig.torque', { torque: torqueOf(pullNow(instrument, this.ink, state)) })}</li>
        ${set.speed > 0 ? html`<li>${say('tackmeter.conversion', { factor: pullPerTack(instrument, set) })}</li>` : nothing}
        <li>${say('tackmeter.repeats', { deviation: readingDeviation(instrument) })}</li>
      </ul>
      <figure>
        <figcaption>${say('rig.chart.time')}</figcaption>
        <tack-line-plot
          .line=${trace}
          .from=${[0, instrument.offset]}
          .to=${[instrument.standard.seconds, instrument.offset + 10 * instrument.perPull]}
          .across=${say('rig.chart.timeAxis')}
          .upright=${say('rig.chart.readingAxis')}
          .summary=${this.#traceWords()}
        ></tack-line-plot>
        <p class="note">${say('tackmeter.drying')}</p>
      </figure>`
  }

  #traceWords(): string {
    const last = this.trace.at(-1)
    return say('rig.chart.timeSummary', {
      count: this.trace.length,
      first: this.trace.at(0)?.[1] ?? 0,
      last: last?.[1] ?? 0,
      seconds: last?.[0] ?? 0,
    })
  }
}

customElements.define('tack-tackmeter-now', TackmeterNow)
