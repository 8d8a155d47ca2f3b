/** The press: its kind, speed, the time between units, temperature and dampening. */
import type { PropertyDeclarations } from 'lit'
import { css, html, nothing } from 'lit'
import type { Control } from '../lesson/control.ts'
import { intervalAt, unitSpacing } from '../press/presets.ts'
import { ranges } from '../press/ranges.ts'
import type { PressKind, SetUp } from '../press/setup.ts'
import type { PressField } from '../session/change.ts'
import { fromShown, toShown } from '../session/measures.ts'
import type { UnitName } from '../session/unit-names.ts'
import { sheetPitch } from '../session/unit-names.ts'
import type { ChooseEvent } from './choice.ts'
import './choice.ts'
import './measure-choice.ts'
import './number-field.ts'
import { isRoomy } from './roomy.ts'
import { say, sayNumber } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'

type Press = SetUp['press']

/** The controls of the panel, and the word of the glossary that some of them go by. */
const terms = {
  kind: 'web-press',
  waterless: 'waterless',
  speed: null,
  interval: 'interval',
  temperature: null,
  dampening: 'dampening',
} as const satisfies Partial<Record<Control, string | null>>
const controls = Object.keys(terms) as (keyof typeof terms)[]

function decimalsOf(unit: UnitName): number {
  return unit === 'm/s' ? 2 : unit === 'm/min' ? 1 : 0
}

export class PressPanel extends SessionElement {
  static override properties: PropertyDeclarations = { ...SessionElement.properties, unfolded: { type: Boolean } }
  static override styles = [
    sharedStyles,
    css`
      .head {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 4px 8px;
      }
      .fields {
        display: grid;
        grid-template-columns: repeat(2, minmax(0, 1fr));
        gap: 8px 16px;
        margin-top: 8px;
      }
      .pair {
        display: flex;
        flex-wrap: wrap;
        gap: 4px;
        align-items: flex-end;
      }
      .pair tack-number-field {
        flex: 0 1 5.5rem;
      }
      .check {
        display: flex;
        align-items: center;
        gap: 4px;
        margin-inline-start: auto;
        font-size: 0.9375rem;
      }
      .note {
        margin-top: 2px;
        line-height: 1.125rem;
      }
      .note button {
        height: auto;
        min-height: 24px;
        padding: 2px 8px;
        font-size: 0.875rem;
        line-height: 1.125rem;
      }
    `,
  ]

  /** stands open at first whatever the room, as a lesson asks for what is in it */
  declare unfolded: boolean

  constructor() {
    super()
    this.unfolded = false
  }

  override render() {
    const { press } = this.session.setUp
    const { speed } = this.session.look.measures
    const said = this.knows('sheet-fed-press') ? 'bench.pressNow' : 'bench.speedNow'
    return html`
      <details ?open=${(this.unfolded || isRoomy()) && controls.some((control) => this.#has(control))}>
        <summary>
          <h2>${say('bench.press')}</h2>
          <span>
            ${say(said, {
              kind: say(`bench.press.${press.kind}`),
              speed: sayNumber(toShown(press.speed, speed), 0, decimalsOf(speed.unit)),
              unit: say(`bench.unit.${speed.unit}`),
              waterless: String(press.waterless),
            })}
          </span>
        </summary>
        <div class="head">
          ${
            this.#has('kind')
              ? html`<tack-choice
                  .legend=${say('bench.pressKind')}
                  ?disabled=${this.isClosed('kind')}
                  .options=${(['sheet-fed', 'web'] as const).map((value) => ({ value, label: say(`bench.press.${value}`) }))}
                  .value=${press.kind}
                  @choose=${(event: ChooseEvent) => this.attempt({ kind: 'take press', press: event.value as PressKind })}
                ></tack-choice>`
              : nothing
          }
          ${
            this.#has('waterless')
              ? html`<label class="check"
                  ><input
                    type="checkbox"
                    .checked=${press.waterless}
                    ?disabled=${this.isClosed('waterless')}
                    @change=${(event: Event) => this.#edit('waterless', (event.target as HTMLInputElement).checked)}
                  />${say('bench.waterless')}</label
                >`
              : nothing
          }
        </div>
        <div class="fields">
          ${this.#has('speed') ? this.#speed(press) : nothing}
          ${this.#has('interval') ? this.#interval(press) : nothing}
          ${this.#has('temperature') ? this.#temperature(press) : nothing}
          ${this.#has('dampening') ? this.#dampening(press) : nothing}
        </div>
      </details>
    `
  }

  /** Whether it has its place here, and a lesson of the course has come to its word. */
  #has(control: keyof typeof terms): boolean {
    const term = terms[control]
    return this.isShown(control) && (term === null || this.knows(term))
  }

  #speed({ speed: now }: Press) {
    const { speed } = this.session.look.measures
    const decimals = decimalsOf(speed.unit)
    return html`<div>
      <div class="pair">
        <tack-number-field
          unit-apart
          .label=${say('bench.speed')}
          ?disabled=${this.isClosed('speed')}
          .unit=${say(`bench.unit.${speed.unit}`)}
          .least=${toShown(ranges.speed.least, speed)}
          .most=${toShown(ranges.speed.most, speed)}
          .step=${ranges.speed.step * speed.scale}
          .decimals=${decimals}
          .value=${toShown(now, speed)}
          .offer=${(value: number) => this.#edit('speed', fromShown(value, speed))}
        ></tack-number-field>
        <tack-measure-choice .session=${this.session} .quantity=${'speed'}></tack-measure-choice>
      </div>
      ${
        speed.unit === 'sheets/h'
          ? html`<p class="note">${say('bench.sheetPitch', { length: sayNumber(sheetPitch, 1) })}</p>`
          : nothing
      }
    </div>`
  }

  #interval({ kind, speed, interval, intervalPinned }: Press) {
    return html`<div>
      <tack-number-field
        end
        .label=${say('bench.interval')}
        ?disabled=${this.isClosed('interval')}
        .unit=${'s'}
        .least=${ranges.interval.least}
        .most=${ranges.interval.most}
        .step=${ranges.interval.step}
        .decimals=${3}
        .value=${interval}
        .offer=${(value: number) => this.#edit('interval', value)}
      ></tack-number-field>
      <p class="note">
        ${
          intervalPinned && !this.isClosed('interval')
            ? html`<button type="button" @click=${() => this.#edit('interval', undefined)}>
                ${say('bench.letFollow', { interval: sayNumber(intervalAt(kind, speed), 0, 3) })}
              </button>`
            : say('bench.follows', { spacing: sayNumber(unitSpacing[kind], 0, 3) })
        }
      </p>
    </div>`
  }

  #temperature({ temperature: now }: Press) {
    const { temperature } = this.session.look.measures
    return html`<div class="pair">
      <tack-number-field
        unit-apart
        .label=${say('bench.temperature')}
        ?disabled=${this.isClosed('temperature')}
        .unit=${say(`bench.unit.${temperature.unit}`)}
        .least=${toShown(ranges.temperature.least, temperature)}
        .most=${toShown(ranges.temperature.most, temperature)}
        .step=${ranges.temperature.step}
        .decimals=${1}
        .value=${toShown(now, temperature)}
        .offer=${(value: number) => this.#edit('temperature', fromShown(value, temperature))}
      ></tack-number-field>
      <tack-measure-choice .session=${this.session} .quantity=${'temperature'}></tack-measure-choice>
    </div>`
  }

  #dampening({ waterless, dampening }: Press) {
    return waterless
      ? html`<p class="note">${say('bench.noDampening')}</p>`
      : html`<tack-number-field
          end
          .label=${say('bench.dampening')}
          ?disabled=${this.isClosed('dampening')}
          .unit=${say('bench.timesNormal')}
          .least=${ranges.dampening.least}
          .most=${ranges.dampening.most}
          .step=${ranges.dampening.step}
          .value=${dampening}
          .offer=${(value: number) => this.#edit('dampening', value)}
        ></tack-number-field>`
  }

  #edit(field: PressField, value: number | boolean | undefined): string | null {
    return this.attempt({ kind: 'edit press', field, value })
  }
}

customElements.define('tack-press-panel', PressPanel)
