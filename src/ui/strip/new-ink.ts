/** A new ink for the shelf: its name, tack, and a colour picked on the screen or given as L*, a*, b*. */
import { css, html, nothing } from 'lit'
import { putOnShelf } from '../../measure/shelf-change.ts'
import { usualInk } from '../../press/presets.ts'
import { longestName, ranges } from '../../press/ranges.ts'
import type { Ink } from '../../press/setup.ts'
import type { ChooseEvent } from '../choice.ts'
import '../choice.ts'
import '../number-field.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { nameProblem } from './shelf-name.ts'
import { StripElement } from './strip-element.ts'
import { stripStyles } from './strip-styles.ts'

/** tack units: in the middle of the graded sheet-fed set. */
const usualTack = 13
const axes = ['L*', 'a*', 'b*'] as const
/** What a Lab colour of an ink may be. */
const axisRanges = [
  { least: 0, most: 100 },
  { least: -150, most: 150 },
  { least: -150, most: 150 },
] as const

export class NewInk extends StripElement {
  static override properties = {
    _tack: { state: true },
    _by: { state: true },
    _hex: { state: true },
    _lab: { state: true },
    _problem: { state: true },
    _said: { state: true },
  }
  static override styles = [
    sharedStyles,
    stripStyles,
    css`
      label {
        display: grid;
        font-size: 0.875rem;
      }
      input[type='text'] {
        width: 10rem;
        padding: 0 8px;
      }
      input[type='color'] {
        width: 3.5rem;
        padding: 2px;
        cursor: pointer;
      }
      tack-number-field {
        width: 5.5rem;
      }
    `,
  ]

  declare _tack: number
  declare _by: 'screen' | 'lab'
  declare _hex: string
  declare _lab: readonly [number, number, number]
  declare _problem: string | null
  declare _said: string | null

  constructor() {
    super()
    this._tack = usualTack
    this._by = 'screen'
    this._hex = '#b5372c'
    this._lab = [50, 60, 40]
    this._problem = null
    this._said = null
  }

  override render() {
    return html`<details>
      <summary>${say('strip.newInk')}</summary>
      <form @submit=${this.#make}>
        <div class="row">
          <label
            >${say('strip.nameIt')}
            <input
              type="text"
              name="name"
              autocomplete="off"
              maxlength=${longestName}
              aria-describedby="problem"
              aria-invalid=${this._problem === null ? 'false' : 'true'}
          /></label>
          <tack-number-field
            .label=${say('strip.tack')}
            .least=${ranges.tack.least}
            .most=${ranges.tack.most}
            .step=${ranges.tack.step}
            .decimals=${1}
            .value=${this._tack}
            .offer=${(tack: number) => {
              this._tack = tack
              return null
            }}
          ></tack-number-field>
        </div>
        <div class="row">
          <tack-choice
            drawLegend
            .legend=${say('strip.colourBy')}
            .options=${(['screen', 'lab'] as const).map((value) => ({ value, label: say(`strip.colourBy.${value}`) }))}
            .value=${this._by}
            @choose=${({ value }: ChooseEvent) => (this._by = value as 'screen' | 'lab')}
          ></tack-choice>
          ${this._by === 'screen' ? this.#picker() : axes.map((axis, at) => this.#axis(axis, at))}
        </div>
        <div class="row"><button type="submit">${say('strip.make')}</button></div>
      </form>
      <p id="problem" class=${this._problem === null ? 'note' : 'mark'} role="status">
        ${this._problem ?? this._said ?? nothing}
      </p>
    </details>`
  }

  #picker() {
    return html`<label
      >${say('strip.colourPick')}
      <input
        type="color"
        value=${this._hex}
        .value=${this._hex}
        @change=${(event: Event) => (this._hex = (event.target as HTMLInputElement).value)}
    /></label>`
  }

  #axis(axis: string, at: number) {
    return html`<tack-number-field
      .label=${axis}
      .least=${axisRanges[at].least}
      .most=${axisRanges[at].most}
      .decimals=${1}
      .value=${this._lab[at]}
      .offer=${(value: number) => {
        const [L, a, b] = this._lab.map((each, other) => (other === at ? value : each))
        this._lab = [L, a, b]
        return null
      }}
    ></tack-number-field>`
  }

  readonly #make = (event: Event): void => {
    event.preventDefault()
    const form = event.target as HTMLFormElement
    const text = new FormData(form).get('name')
    const name = typeof text === 'string' ? text.trim() : ''
    this._said = null
    this._problem = nameProblem(name)
    if (this._problem !== null) return
    const colour = this._by === 'screen' ? this._hex : this._lab
    const ink: Ink = { ...usualInk(name, this._tack), colour }
    const { shelf, replaced } = putOnShelf(this.desk.state.shelf, { inks: [ink] })
    this.desk.set({ shelf })
    this._said = say(replaced.length > 0 ? 'strip.savedOver' : 'strip.saved', { name })
    form.reset()
  }
}

customElements.define('tack-new-ink', NewInk)
