/** What an ink carries beside tack, film and coverage: how its unit differs from the press, and what it starts with. */
import { css, html, nothing } from 'lit'
import { inkCount, ranges } from '../press/ranges.ts'
import type { Ink } from '../press/setup.ts'
import { fromShown, toShown } from '../session/measures.ts'
import './number-field.ts'
import { say, sayNumber } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'

export class InkDetails extends SessionElement {
  static override properties = { unit: { type: Number } }
  static override styles = [
    sharedStyles,
    css`
      .fields {
        display: grid;
        grid-template-columns: repeat(2, minmax(0, 1fr));
        gap: 8px 16px;
        padding: 4px 8px 12px;
      }
      .check {
        display: flex;
        align-items: center;
        gap: 4px;
        font-size: 0.875rem;
      }
      input[type='color'] {
        width: 3.5rem;
        padding: 2px;
        cursor: pointer;
      }
      .wide {
        grid-column: 1 / -1;
      }
    `,
  ]

  declare unit: number

  override render() {
    const ink = this.session.setUp.inks[this.unit] as Ink | undefined
    if (!ink) return nothing
    return html`
      <div class="fields">
        ${this.isShown('unit temperature') ? this.#temperature(ink) : nothing}
        ${this.isShown('unit dampening') ? this.#dampening(ink) : nothing}
        ${this.isShown('inks') ? this.#rest(ink) : nothing}
      </div>
    `
  }

  #temperature(ink: Ink) {
    const { setUp, look } = this.session
    const degrees = look.measures.temperature
    return html`<tack-number-field
      .label=${say('bench.unitTemperature')}
      ?disabled=${this.isClosed('unit temperature')}
      .unit=${say(`bench.unit.${degrees.unit}`)}
      .least=${toShown(ranges.temperature.least, degrees)}
      .most=${toShown(ranges.temperature.most, degrees)}
      .step=${ranges.temperature.step}
      .decimals=${1}
      .value=${ink.temperature === undefined ? null : toShown(ink.temperature, degrees)}
      .placeholder=${sayNumber(toShown(setUp.press.temperature, degrees), 0, 1)}
      .offer=${(value: number | null) =>
        this.#edit('temperature', value === null ? undefined : fromShown(value, degrees))}
    ></tack-number-field>`
  }

  #dampening(ink: Ink) {
    const { press } = this.session.setUp
    return html`<tack-number-field
      end
      .label=${say('bench.unitDampening')}
      ?disabled=${this.isClosed('unit dampening')}
      .unit=${say('bench.timesNormal')}
      .least=${ranges.dampening.least}
      .most=${ranges.dampening.most}
      .step=${ranges.dampening.step}
      .value=${ink.dampening ?? null}
      .placeholder=${sayNumber(press.waterless ? 0 : press.dampening, 0, 2)}
      .offer=${(value: number | null) => this.#edit('dampening', value ?? undefined)}
    ></tack-number-field>`
  }

  /** What makes an ink of its own. */
  #rest(ink: Ink) {
    const { inks } = this.session.setUp
    return html`<tack-number-field
        .label=${say('bench.soiled')}
        ?disabled=${this.isClosed('inks')}
        .unit=${'%'}
        .least=${0}
        .most=${100 * ranges.soiled.most}
        .step=${1}
        .decimals=${1}
        .value=${100 * (ink.soiled ?? 0)}
        .offer=${(value: number) => this.#edit('soiled', value === 0 ? undefined : value / 100)}
      ></tack-number-field>
      ${
        typeof ink.colour === 'string'
          ? html`<label class="check"
              >${say('bench.colour')}
              <input
                type="color"
                ?disabled=${this.isClosed('inks')}
                .value=${ink.colour}
                @change=${(event: Event) => this.#colour(event)}
              />
            </label>`
          : nothing
      }
      <label class="check wide">
        <input
          type="checkbox"
          .checked=${ink.dryBefore ?? false}
          ?disabled=${this.unit === 0 || this.isClosed('inks')}
          @change=${(event: Event) => this.#edit('dryBefore', (event.target as HTMLInputElement).checked || undefined)}
        />${say('bench.dryBefore')}
      </label>
      <button
        type="button"
        class="wide"
        ?disabled=${inks.length <= inkCount.least || this.isClosed('inks')}
        @click=${() => this.attempt({ kind: 'remove ink', unit: this.unit })}
      >
        ${say('bench.removeInk', { name: ink.name })}
      </button>`
  }

  #edit(field: keyof Ink, value: Ink[keyof Ink] | undefined): string | null {
    return this.attempt({ kind: 'edit ink', unit: this.unit, field, value })
  }

  #colour(event: Event): void {
    this.#edit('colour', (event.target as HTMLInputElement).value)
  }
}

customElements.define('tack-ink-details', InkDetails)
