/** The tackmeter to work with: ink is metered on, the rollers are started, and readings are written down. */
import type { PropertyDeclarations, PropertyValues } from 'lit'
import { css, html, nothing } from 'lit'
import { filmOnRollers, tackmeters } from '../../physics/tackmeter.ts'
import type { TackConditions, Tackmeter } from '../../physics/tackmeter.ts'
import type { TackmeterState } from '../../physics/tackmeter-run.ts'
import { meterInk, readNeedle, stepTackmeter, tackmeterRanges } from '../../physics/tackmeter-run.ts'
import type { TackReading } from '../../session/rig-desk.ts'
import type { ChooseEvent } from '../choice.ts'
import '../choice.ts'
import { linkedText } from '../linked-text.ts'
import { prefersStill } from '../motion.ts'
import '../number-field.ts'
import { say, sayName } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import type { Point } from './line-plot.ts'
import { RigElement } from './rig-element.ts'
import { rigStyles } from './rig-styles.ts'
import type { Sample } from './samples.ts'
import './tackmeter-now.ts'
import './tackmeter-picture.ts'
import './tackmeter-trend.ts'

const dials = ['volume', 'temperature', 'speed'] as const
const decimals = { volume: 2, temperature: 1, speed: 0 } as const
/** s of the instrument between two points of the chart, and between two redraws of what is in words. */
const betweenPoints = 0.5
/** s: a frame later than this was not late but asleep. */
const longestFrame = 0.25
/** How many times slower the rollers are drawn: turning at their own speed they would only flicker. */
const drawnSlower = 40
/** s gone on at once when asked to. */
const stretch = 60

export class TackmeterRig extends RigElement {
  static override properties: PropertyDeclarations = {
    ...RigElement.properties,
    samples: { attribute: false },
    hidesLaw: { type: Boolean },
    _instrument: { state: true },
    _ink: { state: true },
    _set: { state: true },
    _state: { state: true },
    _running: { state: true },
    _said: { state: true },
  }
  static override styles = [
    sharedStyles,
    rigStyles,
    css`
      .rig {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 8px 24px;
        margin-top: 8px;
      }
      @media (min-width: 62.5em) {
        .rig {
          grid-template-columns: minmax(0, 35rem) minmax(0, 1fr);
        }
      }
    `,
  ]

  declare samples: readonly Sample[]
  /** while an exercise is on, no curve may give the tack away */
  declare hidesLaw: boolean
  declare _instrument: Tackmeter
  declare _ink: number
  declare _set: TackConditions
  declare _state: TackmeterState
  declare _running: boolean
  declare _said: string

  #trace: Point[] = []
  #turned = 0
  #frame = 0
  #last = 0

  constructor() {
    super()
    this.samples = []
    this.hidesLaw = false
    this._instrument = tackmeters[0]
    this._ink = 0
    this._set = conditionsOf(tackmeters[0])
    this._state = meterInk(this._instrument, this._set.volume, this._set.temperature)
    this._running = false
    this._said = ''
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#pause()
  }

  override willUpdate(changed: PropertyValues): void {
    if (changed.has('samples') && this.samples.length > 0) {
      const before = (changed.get('samples') as readonly Sample[] | undefined) ?? []
      const same = (one: Sample | undefined, other: Sample | undefined) =>
        one?.name === other?.name && one?.ink.tack === other?.ink.tack
      if (!same(before[this._ink], this.samples[this._ink])) this.#fresh({ ink: 0 })
    }
  }

  override render() {
    const { samples, _instrument: instrument, _set: set, _state: state } = this
    if (samples.length === 0) return nothing
    const { standard } = instrument
    return html`
      <p>${linkedText(say('tackmeter.what'))} ${say('tackmeter.scale')}</p>
      <div class="row">
        <tack-choice
          drawLegend
          .legend=${say('rig.instrument')}
          .options=${tackmeters.map(({ id }) => ({
            value: id,
            label: say(`rig.instrument.${id}`),
            name: say(`tackmeter.instrument.${id}`),
          }))}
          .value=${instrument.id}
          @choose=${({ value }: ChooseEvent) => {
            const chosen = tackmeters.find(({ id }) => id === value) ?? instrument
            this.#fresh({ instrument: chosen })
          }}
        ></tack-choice>
        <tack-choice
          drawLegend
          .legend=${say('rig.ink')}
          .options=${samples.map(({ name }, at) => ({ value: String(at), label: sayName(name) }))}
          .value=${String(this._ink)}
          @choose=${({ value }: ChooseEvent) => this.#fresh({ ink: Number(value) })}
        ></tack-choice>
      </div>
      <p class="note">${say(`tackmeter.instrument.${instrument.id}`)}. ${say('tackmeter.standard', { ...standard })}</p>
      <div class="row">
        ${dials.map((dial) => this.#dial(dial))}
        <button type="button" @click=${() => this.#fresh({ set: conditionsOf(instrument) })}>
          ${say('rig.toStandard')}
        </button>
      </div>
      <div class="rig">
        <div>
          <tack-tackmeter-picture
            .instrument=${instrument}
            .state=${state}
            .turned=${this.#turned}
            .colour=${samples[this._ink].colour}
          ></tack-tackmeter-picture>
          <p class="note">${say('rig.drawnSlower', { times: drawnSlower })}</p>
          <div class="row">
            <button type="button" @click=${() => (this._running ? this.#pause() : this.#start())}>
              ${say(this._running ? 'rig.pause' : 'rig.start')}
            </button>
            <button
              type="button"
              ?disabled=${state.time >= standard.seconds}
              @click=${() => this.#goOn(standard.seconds - state.time)}
            >
              ${say('rig.minute', { seconds: standard.seconds })}
            </button>
            <button type="button" @click=${() => this.#goOn(stretch)}>${say('rig.later', { seconds: stretch })}</button>
            <button type="button" @click=${() => this.#fresh({})}>${say('rig.meterInk')}</button>
          </div>
          <div class="row">
            <button type="button" ?disabled=${state.time === 0} @click=${() => this.#read(1)}>
              ${say('rig.read')}
            </button>
            <button type="button" ?disabled=${state.time === 0} @click=${() => this.#read(5)}>
              ${say('rig.readFive')}
            </button>
            <p aria-live="polite">${this._said}</p>
          </div>
          <tack-tackmeter-trend
            .session=${this.session}
            .instrument=${instrument}
            .sample=${samples[this._ink]}
            .set=${set}
            .hidesLaw=${this.hidesLaw}
          ></tack-tackmeter-trend>
        </div>
        <div>
          <tack-tackmeter-now
            .instrument=${instrument}
            .ink=${this.#ink}
            .set=${set}
            .state=${state}
            .trace=${this.#trace}
          ></tack-tackmeter-now>
        </div>
      </div>
    `
  }

  #dial(dial: (typeof dials)[number]) {
    const { least, most, step } = tackmeterRanges[dial]
    return html`<tack-number-field
      .label=${say(`tackmeter.${dial}`)}
      .least=${least}
      .most=${most}
      .step=${step}
      .decimals=${decimals[dial]}
      .value=${this._set[dial]}
      .offer=${(value: number | null) => {
        if (value === null) return null
        const set = { ...this._set, [dial]: value }
        // Another amount of ink has to be metered on afresh; the other two are dialled while it runs.
        if (dial === 'volume') this.#fresh({ set })
        else this._set = set
        return null
      }}
    ></tack-number-field>`
  }

  get #ink() {
    return this.samples[this._ink].ink
  }

  /** Washed rollers with fresh ink, standing still. */
  #fresh({ instrument, ink, set }: { instrument?: Tackmeter; ink?: number; set?: TackConditions }): void {
    this.#pause()
    if (instrument) this._instrument = instrument
    if (ink !== undefined) this._ink = ink
    if (set ?? instrument) this._set = set ?? conditionsOf(this._instrument)
    this._state = meterInk(this._instrument, this._set.volume, this._set.temperature)
    this.#trace = []
    this._said = say('rig.clean')
  }

  #start(): void {
    this._running = true
    this._said = say('rig.running')
    this.#last = performance.now()
    this.#frame = requestAnimationFrame(this.#tick)
  }

  #pause(): void {
    cancelAnimationFrame(this.#frame)
    this._running = false
  }

  readonly #tick = (now: number): void => {
    const seconds = Math.min(longestFrame, (now - this.#last) / 1000)
    this.#last = now
    this.#step(seconds)
    this.#frame = requestAnimationFrame(this.#tick)
  }

  #goOn(seconds: number): void {
    this._said = ''
    for (let left = seconds; left > 1e-9; left -= betweenPoints) this.#step(Math.min(betweenPoints, left))
  }

  #step(seconds: number): void {
    this._state = stepTackmeter(this._instrument, this.#ink, this._state, this._set, seconds)
    if (!prefersStill()) this.#turned += (this._state.speed / 60 / drawnSlower) * seconds
    const last = this.#trace.at(-1)
    if (!last || this._state.time - last[0] >= betweenPoints - 1e-9) {
      this.#trace = [...this.#trace, [this._state.time, this._state.needle]]
    }
  }

  #read(count: number): void {
    const { _instrument: instrument, _state: state } = this
    const first = this.nextTaken(count)
    const { name, ink } = this.samples[this._ink]
    const readings = Array.from({ length: count }, (_, each): TackReading => ({
      instrument: instrument.id,
      ink: name,
      tack: ink.tack,
      volume: state.volume,
      temperature: state.temperature,
      speed: state.speed,
      time: state.time,
      film: filmOnRollers(instrument, state.volume),
      reading: readNeedle(instrument, state, this.session.setUp.seed, first + each),
    }))
    this.desk.set({ readings: [...this.desk.state.readings, ...readings] })
    this._said = say('rig.took', { count, reading: readings[count - 1].reading })
  }
}

function conditionsOf({ standard: { volume, temperature, speed } }: Tackmeter): TackConditions {
  return { volume, temperature, speed }
}

customElements.define('tack-tackmeter-rig', TackmeterRig)
