/** The readings of one ink against one of the three settings, and on request what the model's law says. */
import type { PropertyDeclarations } from 'lit'
import { html, nothing } from 'lit'
import type { TackConditions, Tackmeter } from '../../physics/tackmeter.ts'
import { filmOnRollers, readingOfTack } from '../../physics/tackmeter.ts'
import { tackmeterRanges } from '../../physics/tackmeter-run.ts'
import type { ChooseEvent } from '../choice.ts'
import '../choice.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import type { Point } from './line-plot.ts'
import './line-plot.ts'
import { RigElement } from './rig-element.ts'
import { rigStyles } from './rig-styles.ts'
import type { Sample } from './samples.ts'

const settings = ['speed', 'temperature', 'volume'] as const
type Setting = (typeof settings)[number]

/** Where the axis of each begins and ends: what can be dialled, rollers that turn. */
const ends: Readonly<Record<Setting, readonly [number, number]>> = {
  speed: [200, tackmeterRanges.speed.most],
  temperature: [tackmeterRanges.temperature.least, tackmeterRanges.temperature.most],
  volume: [tackmeterRanges.volume.least, tackmeterRanges.volume.most],
}
const pointsOfLaw = 40

export class TackmeterTrend extends RigElement {
  static override properties: PropertyDeclarations = {
    ...RigElement.properties,
    instrument: { attribute: false },
    sample: { attribute: false },
    set: { attribute: false },
    hidesLaw: { type: Boolean },
    _against: { state: true },
    _law: { state: true },
  }
  static override styles = [sharedStyles, rigStyles]

  declare instrument: Tackmeter
  declare sample: Sample
  declare set: TackConditions
  declare hidesLaw: boolean
  declare _against: Setting
  declare _law: boolean

  constructor() {
    super()
    this.hidesLaw = false
    this._against = 'speed'
    this._law = false
  }

  override render() {
    const { instrument, _against: against } = this
    const dots = this.#dots()
    const line = this._law && !this.hidesLaw ? this.#curve() : []
    const [least, most] = ends[against].map((value) => this.#across(value))
    return html`<figure>
      <div class="row">
        <tack-choice
          drawLegend
          .legend=${say('rig.chart.against')}
          .options=${settings.map((value) => ({ value, label: say(`rig.chart.${value}`) }))}
          .value=${against}
          @choose=${({ value }: ChooseEvent) => (this._against = value as Setting)}
        ></tack-choice>
        ${
          this.hidesLaw
            ? html`<p class="note">${say('rig.chart.lawHidden')}</p>`
            : html`<label class="check"
                ><input
                  type="checkbox"
                  .checked=${this._law}
                  @change=${(event: Event) => (this._law = (event.target as HTMLInputElement).checked)}
                />${say('rig.chart.law')}</label
              >`
        }
      </div>
      <tack-line-plot
        .line=${line}
        .dots=${dots}
        .from=${[least, instrument.offset]}
        .to=${[most, instrument.offset + 10 * instrument.perPull]}
        .across=${say(`rig.chart.axis.${against}`)}
        .upright=${say('rig.chart.readingAxis')}
        .summary=${say('rig.chart.trendSummary', {
          count: dots.length,
          law: line.length > 0 ? 'yes' : 'no',
          first: line.at(0)?.[1] ?? 0,
          last: line.at(-1)?.[1] ?? 0,
        })}
      ></tack-line-plot>
      ${dots.length > 0 ? html`<p class="note">${say('rig.chart.dots')}</p>` : nothing}
    </figure>`
  }

  /** A film is shown by its thickness, which is what the law knows. */
  #across(value: number): number {
    return this._against === 'volume' ? filmOnRollers(this.instrument, value) : value
  }

  #dots(): Point[] {
    const { name, ink } = this.sample
    return this.desk.state.readings
      .filter((each) => each.instrument === this.instrument.id && each.ink === name && each.tack === ink.tack)
      .map((each) => [this.#across(each[this._against]), each.reading])
  }

  #curve(): Point[] {
    const [least, most] = ends[this._against]
    const set = this.set.speed > 0 ? this.set : { ...this.set, speed: this.instrument.standard.speed }
    return Array.from({ length: pointsOfLaw + 1 }, (_, at): Point => {
      const value = least + ((most - least) * at) / pointsOfLaw
      return [
        this.#across(value),
        readingOfTack(this.instrument, this.sample.ink.tack, { ...set, [this._against]: value }),
      ]
    })
  }
}

customElements.define('tack-tackmeter-trend', TackmeterTrend)
